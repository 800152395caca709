package assize.yaml;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.aspect.Origin;
import assize.diagnostic.Code;
import assize.measure.GlossReading;
import assize.measure.Lab;
import assize.measure.Measured;
import assize.measure.Thread;
import assize.shape.AspectShapes;
import java.util.Optional;

/** Reads what was found of one aspect. */
final class FindingReader {
  private static final long MOST_PIECES = 1_000_000;
  private static final double WIDEST_UNCERTAINTY = 100;

  private final Vocabulary names;
  private final Values values;

  FindingReader(Vocabulary names, Values values) {
    this.names = names;
    this.values = values;
  }

  /**
   * Reads a finding.
   *
   * @param choices the words that the item lets one choose from
   */
  Optional<Finding> read(Aspect aspect, Node.Entry entry, Names choices) {
    return switch (aspect) {
      case FINISH -> word(entry, names.finishes);
      case MATERIAL -> word(entry, names.materials);
      case CHOICE -> word(entry, choices);
      case COLOR -> color(entry);
      case GLOSS ->
          values
              .parsed(Optional.of(entry), Code.BAD_GLOSS, "a gloss", GlossReading::parse)
              .map(Finding.Gloss::new);
      case SIZE -> values.scalar(entry, "one size").flatMap(this::size);
      case PART_NUMBER, DATE_CODE ->
          values.scalar(entry, "one text, as stamped,").map(this::stamped);
      case COUNT -> pieces(entry);
      case PRESENT, WORKS -> values.yesNo(Optional.of(entry)).map(Finding.YesNo::new);
      case ORIGIN ->
          ExpectationReader.ORIGINS
              .read(Optional.of(entry), values)
              .map(Origin::word)
              .map(Finding.Word::new);
      case CONDITION -> names.conditions.find(entry, values).map(Finding.Word::new);
    };
  }

  private Finding stamped(Node.Scalar text) {
    values.checkStamp(text);
    return new Finding.Stamped(text.text());
  }

  private Optional<Finding> word(Node.Entry entry, Names known) {
    return values
        .scalar(entry, "one word")
        .flatMap(it -> orOther(it, known))
        .map(Finding.Word::new);
  }

  private Optional<String> orOther(Node.Scalar text, Names known) {
    return text.text().equals(Finding.OTHER)
        ? Optional.of(Finding.OTHER)
        : known.find(text, values.problems());
  }

  private Optional<Finding> size(Node.Scalar text) {
    Optional<Thread> thread = Thread.parse(text.text()).toOptional();
    return thread.isPresent()
        ? thread.map(Finding.ScrewThread::new)
        : values.parsed(text, Code.BAD_SIZE, Measured::parse).map(Finding.Size::new);
  }

  private Optional<Finding> pieces(Node.Entry entry) {
    Optional<Node.Scalar> text = values.scalar(entry, "a number of pieces");
    Optional<Long> count = text.flatMap(it -> values.whole(it, "a count"));
    if (count.isPresent() && count.get() > MOST_PIECES) {
      return values.refuse(Code.BAD_NUMBER, text.orElseThrow(), "this is more than a million");
    }
    return count.map(it -> new Finding.Pieces(it.intValue()));
  }

  private Optional<Finding> color(Node.Entry entry) {
    if (!(entry.value() instanceof Node.Mapping mapping)) {
      return values
          .scalar(entry, "one color")
          .flatMap(it -> orOther(it, names.colors))
          .map(it -> byEye(Optional.of(it)));
    }
    Fields fields = values.fields(mapping, AspectShapes.COLOR_FOUND, entry.key().at());
    Optional<Node.Entry> chipEntry = fields.get("chip");
    Optional<Node.Entry> labEntry = fields.get("lab");
    Optional<String> chip =
        chipEntry
            .flatMap(it -> values.scalar(it, "one color"))
            .flatMap(it -> orOther(it, names.colors));
    Optional<Lab> lab = labEntry.flatMap(it -> new LabReader(values).read(it));
    Optional<Double> uncertainty =
        values.decimal(fields.get("uncertainty"), 0, WIDEST_UNCERTAINTY, "an uncertainty");
    Optional<String> light = values.text(fields.get("light"));
    Optional<String> by = values.text(fields.get("by"));
    fields.done();
    if (chipEntry.isEmpty() && labEntry.isEmpty()) {
      values
          .problems()
          .add(
              Code.MISSING_KEY,
              entry.key().at(),
              "this color has neither `chip` nor `lab`",
              "add `chip:` for a match by eye, `lab:` for an instrument's reading");
    }
    return chip.isEmpty() && lab.isEmpty()
        ? Optional.empty()
        : Optional.of(new Finding.Color(chip, lab, uncertainty.orElse(0.0), light, by));
  }

  private static Finding byEye(Optional<String> chip) {
    return new Finding.Color(chip, Optional.empty(), 0, Optional.empty(), Optional.empty());
  }
}
