package assize.yaml;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.NumberPattern;
import assize.aspect.Origin;
import assize.diagnostic.Code;
import assize.measure.GlossRange;
import assize.measure.Limits;
import assize.measure.Thread;
import assize.shape.AspectShapes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads what is held to be right for one aspect: one value, several, or several with credits. */
final class ExpectationReader {
  private static final Pattern PIECES = Pattern.compile("([0-9]{1,6})(?:\\s+to\\s+([0-9]{1,6}))?");
  private static final double WIDEST_TOLERANCE = 100;

  static final FixedWords<Origin> ORIGINS =
      FixedWords.of("an origin", Code.UNKNOWN_ORIGIN, Origin.values(), Origin::word);

  private final Vocabulary names;
  private final Values values;

  ExpectationReader(Vocabulary names, Values values) {
    this.names = names;
    this.values = values;
  }

  /**
   * Reads the values of one aspect.
   *
   * @param choices the words that the item lets one choose from
   */
  List<Expectation> read(Aspect aspect, Node.Entry entry, Names choices) {
    return switch (aspect) {
      case FINISH -> words(entry, names.finishes);
      case MATERIAL -> words(entry, names.materials);
      case CHOICE -> words(entry, choices);
      case COLOR -> colors(entry);
      case GLOSS ->
          each(
              entry,
              it -> values.parsed(it, Code.BAD_GLOSS, GlossRange::parse),
              Expectation.Gloss::new);
      case SIZE -> sizes(entry);
      case PART_NUMBER -> partNumbers(entry);
      case DATE_CODE -> new DateCodeReader(values).read(entry).stream().toList();
      case COUNT -> pieces(entry);
      case PRESENT, WORKS ->
          values.yesNo(Optional.of(entry)).<Expectation>map(Expectation.YesNo::new).stream()
              .toList();
      case ORIGIN -> graded(entry, "an origin", this::origin);
      case CONDITION ->
          graded(entry, "a condition", it -> names.conditions.find(it, values.problems()));
    };
  }

  private List<Expectation> words(Node.Entry entry, Names known) {
    if (entry.value() instanceof Node.Mapping mapping) {
      return credits(mapping, key -> known.find(key, values.problems()), Expectation.Word::new);
    }
    List<Expectation> words = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(Optional.of(entry))) {
      known.find(one, values).ifPresent(it -> words.add(new Expectation.Word(it, BigFraction.ONE)));
    }
    return words;
  }

  private interface WithCredit<T> {
    Expectation of(T value, BigFraction credit);
  }

  private <T> List<Expectation> credits(
      Node.Mapping mapping, Function<Node.Scalar, Optional<T>> reader, WithCredit<T> make) {
    List<Expectation> found = new ArrayList<>();
    for (Node.Entry one : mapping.entries()) {
      Optional<T> value = reader.apply(one.key());
      Optional<BigFraction> credit = values.credit(Optional.of(one));
      if (value.isPresent() && credit.isPresent()) {
        found.add(make.of(value.get(), credit.get()));
      }
    }
    return found;
  }

  private List<Expectation> colors(Node.Entry entry) {
    if (!(entry.value() instanceof Node.Mapping mapping)) {
      return chips(entry, OptionalDouble.empty());
    }
    Fields fields = values.fields(mapping, AspectShapes.COLOR_EXPECTED, entry.key().at());
    Optional<Node.Entry> same = fields.get("same_as");
    Optional<Node.Entry> any = fields.get("any");
    if (same.isEmpty() && any.isEmpty()) {
      fields.missing("any");
    }
    OptionalDouble tolerance =
        values
            .decimal(fields.get("tolerance"), 0, WIDEST_TOLERANCE, "a tolerance")
            .map(OptionalDouble::of)
            .orElseGet(OptionalDouble::empty);
    fields.done();
    List<Expectation> found = new ArrayList<>();
    any.ifPresent(it -> found.addAll(chips(it, tolerance)));
    same.flatMap(it -> names.items.find(it, values))
        .ifPresent(it -> found.add(new Expectation.SameColor(it, tolerance)));
    return found;
  }

  private List<Expectation> chips(Node.Entry entry, OptionalDouble tolerance) {
    List<Expectation> chips = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(Optional.of(entry))) {
      names
          .colors
          .find(one, values)
          .ifPresent(it -> chips.add(new Expectation.Chip(it, tolerance)));
    }
    return chips;
  }

  private <T> List<Expectation> each(
      Node.Entry entry, Function<Node.Scalar, Optional<T>> reader, Function<T, Expectation> make) {
    List<Expectation> found = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(Optional.of(entry))) {
      values.scalar(one, "a single text").flatMap(reader).map(make).ifPresent(found::add);
    }
    return found;
  }

  private List<Expectation> sizes(Node.Entry entry) {
    return each(entry, this::size, Function.identity());
  }

  private Optional<Expectation> size(Node.Scalar text) {
    Optional<Thread> thread = Thread.parse(text.text()).toOptional();
    return thread.isPresent()
        ? thread.map(Expectation.ScrewThread::new)
        : values.parsed(text, Code.BAD_SIZE, Limits::parse).map(Expectation.Size::new);
  }

  private List<Expectation> partNumbers(Node.Entry entry) {
    if (entry.value() instanceof Node.Mapping mapping) {
      return credits(
          mapping,
          key -> Optional.of(NumberPattern.exactly(key.text())),
          Expectation.PartNumber::new);
    }
    boolean list = entry.value() instanceof Node.Sequence;
    return each(
        entry,
        it ->
            list
                ? Optional.of(NumberPattern.exactly(it.text()))
                : values.parsed(it, Code.BAD_PATTERN, NumberPattern::compile),
        it -> new Expectation.PartNumber(it, BigFraction.ONE));
  }

  private List<Expectation> pieces(Node.Entry entry) {
    if (!(entry.value() instanceof Node.Mapping mapping)) {
      return each(entry, it -> pieces(it, Optional.empty()), Function.identity());
    }
    Fields fields = values.fields(mapping, AspectShapes.COUNT, entry.key().at());
    Optional<Node.Entry> of = fields.get("of");
    Optional<BigFraction> eachOff = values.credit(fields.get("each_missing"));
    fields.done();
    return of.map(it -> each(it, one -> pieces(one, eachOff), Function.identity()))
        .orElse(List.of());
  }

  private Optional<Expectation> pieces(Node.Scalar text, Optional<BigFraction> eachOff) {
    Matcher match = PIECES.matcher(text.text().strip());
    if (!match.matches()) {
      return values.refuse(
          Code.BAD_NUMBER,
          text,
          "a count is a whole number, or two as in 6 to 8, not " + Words.quoted(text.text()));
    }
    int least = Integer.parseInt(match.group(1));
    int most = Optional.ofNullable(match.group(2)).map(Integer::parseInt).orElse(least);
    if (most < least) {
      return values.refuse(Code.BAD_RANGE, text, least + " to " + most + " goes backward");
    }
    return Optional.of(new Expectation.Pieces(least, most, eachOff));
  }

  private List<Expectation> graded(
      Node.Entry entry, String what, Function<Node.Scalar, Optional<String>> word) {
    if (entry.value() instanceof Node.Mapping mapping) {
      Map<String, BigFraction> credits = new LinkedHashMap<>();
      for (Node.Entry one : mapping.entries()) {
        Optional<String> known = word.apply(one.key());
        Optional<BigFraction> credit = values.credit(Optional.of(one));
        if (known.isPresent() && credit.isPresent()) {
          credits.put(known.get(), credit.get());
        }
      }
      return credits.isEmpty() ? List.of() : List.of(new Expectation.Graded(credits));
    }
    Optional<Node.Scalar> text = values.scalar(entry, "`graded`, or credits for each word,");
    if (text.isPresent() && !text.get().text().equals(AspectShapes.GRADED)) {
      values
          .problems()
          .add(
              Code.UNKNOWN_WORD,
              text.get().at(),
              what + " is expected as `graded`, not as " + Words.quoted(text.get().text()),
              "write graded, or credits: {" + Words.brief(text.get().text()) + ": 1}");
      return List.of();
    }
    return text.isPresent() ? List.of(new Expectation.Graded(Map.of())) : List.of();
  }

  private Optional<String> origin(Node.Scalar text) {
    return ORIGINS.find(text, values.problems()).map(Origin::word);
  }
}
