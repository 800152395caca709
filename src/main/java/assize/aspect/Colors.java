package assize.aspect;

import assize.diagnostic.DiagnosticCode;
import assize.measure.CieLab;
import assize.measure.Ciede2000;
import assize.measure.ColorDifference;
import assize.measure.Figures;
import assize.measure.Swatch;
import assize.schema.MappingReader;
import assize.schema.ObjectSchema;
import assize.schema.PropertyConstraint;
import assize.schema.PropertySchema;
import assize.schema.Rewording;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.schema.ValueSchema;
import assize.yaml.FlowYamlWriter;
import assize.yaml.Node;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A color, by eye and by instrument; where they disagree the instrument decides. */
public final class Colors extends Kind {
  public static final ValueSchema LAB =
      new ValueSchema.Row(
          List.of(
              ScalarFormat.decimal("0", "100"),
              ScalarFormat.decimal("-128", "128"),
              ScalarFormat.decimal("-128", "128")));

  private static final double WIDEST = 100;

  /** A color that is expected, where more than its name is said. */
  private static final ObjectSchema EXPECTED =
      ObjectSchema.of(
              "a color",
              PropertySchema.may(
                  "same_as",
                  ScalarFormat.name(),
                  "The item whose color this one has to have, as it was found there."),
              PropertySchema.may(
                  "any",
                  ValueSchema.oneOrMore(ScalarFormat.name()),
                  "Colors of the rule set, each of which is right."),
              PropertySchema.may(
                  "tolerance",
                  ScalarFormat.decimal("0", "100"),
                  "The greatest color difference (CIEDE2000) that still passes here."))
          .with(PropertyConstraint.anyOf("same_as", "any"));

  /** A color that was found, where more than its name is said. */
  private static final ObjectSchema FOUND =
      ObjectSchema.of(
              "a color",
              PropertySchema.may(
                  "chip",
                  ScalarFormat.name(),
                  "The color of the rule set that it matches by eye; or other, for none."),
              PropertySchema.may("lab", LAB, "What an instrument reads: L*, a*, b* (D65, 2°)."),
              PropertySchema.may(
                  "uncertainty",
                  ScalarFormat.decimal("0", "100"),
                  "How far the instrument may be off, as a color difference."),
              PropertySchema.may(
                  "light", ScalarFormat.text(), "In what light it was matched: north daylight."),
              PropertySchema.may("by", ScalarFormat.text(), "Who matched it."))
          .with(PropertyConstraint.anyOf("chip", "lab"));

  @Override
  public ValueSchema right() {
    return ValueSchema.either(
        ScalarFormat.name(),
        ValueSchema.list(ScalarFormat.name()),
        new ValueSchema.Group(EXPECTED));
  }

  @Override
  public ValueSchema seen() {
    return ValueSchema.either(ScalarFormat.name(), new ValueSchema.Group(FOUND));
  }

  @Override
  public List<Expectation> right(Node.Entry entry, Reader reader) {
    if (!(entry.value() instanceof Node.Mapping mapping)) {
      return chips(entry, OptionalDouble.empty(), reader);
    }
    MappingReader fields = reader.values().fields(mapping, EXPECTED, entry.key().at());
    Optional<Node.Entry> same = fields.get("same_as");
    Optional<Node.Entry> any = fields.get("any");
    if (same.isEmpty() && any.isEmpty()) {
      fields.missing("any");
    }
    OptionalDouble tolerance =
        reader
            .values()
            .decimal(fields.get("tolerance"), 0, WIDEST, "a tolerance")
            .map(OptionalDouble::of)
            .orElseGet(OptionalDouble::empty);
    fields.done();
    List<Expectation> found = new ArrayList<>();
    any.ifPresent(it -> found.addAll(chips(it, tolerance, reader)));
    same.flatMap(it -> reader.names().items.find(it, reader.values()))
        .ifPresent(it -> found.add(new Same(it, tolerance)));
    return found;
  }

  private static List<Expectation> chips(
      Node.Entry entry, OptionalDouble tolerance, Reader reader) {
    List<Expectation> chips = new ArrayList<>();
    for (Node.Entry one : reader.values().oneOrMore(Optional.of(entry))) {
      reader
          .names()
          .colors
          .find(one, reader.values())
          .ifPresent(it -> chips.add(new Chip(it, tolerance)));
    }
    return chips;
  }

  @Override
  public Optional<Finding> seen(Node.Entry entry, Reader reader) {
    ScalarReader values = reader.values();
    if (!(entry.value() instanceof Node.Mapping mapping)) {
      return values
          .scalar(entry, "one color")
          .flatMap(it -> reader.orOther(it, reader.names().colors))
          .map(
              it ->
                  new Found(
                      Optional.of(it), Optional.empty(), 0, Optional.empty(), Optional.empty()));
    }
    MappingReader fields = values.fields(mapping, FOUND, entry.key().at());
    Optional<Node.Entry> chipEntry = fields.get("chip");
    Optional<Node.Entry> labEntry = fields.get("lab");
    Optional<String> chip =
        chipEntry
            .flatMap(it -> values.scalar(it, "one color"))
            .flatMap(it -> reader.orOther(it, reader.names().colors));
    Optional<CieLab> lab = labEntry.flatMap(it -> lab(it, values));
    Optional<Double> uncertainty =
        values.decimal(fields.get("uncertainty"), 0, WIDEST, "an uncertainty");
    Optional<String> light = values.text(fields.get("light"));
    Optional<String> by = values.text(fields.get("by"));
    fields.done();
    if (chipEntry.isEmpty() && labEntry.isEmpty()) {
      values
          .problems()
          .add(
              DiagnosticCode.MISSING_KEY,
              entry.key().at(),
              "this color has neither `chip` nor `lab`",
              "add `chip:` for a match by eye, `lab:` for an instrument's reading");
    }
    return chip.isEmpty() && lab.isEmpty()
        ? Optional.empty()
        : Optional.of(new Found(chip, lab, uncertainty.orElse(0.0), light, by));
  }

  /** Reads three numbers, L* from 0 to 100, a* and b* from -128 to 128. */
  public static Optional<CieLab> lab(Node.Entry entry, ScalarReader values) {
    List<Node.Entry> parts = values.list(Optional.of(entry), "a list of three numbers, [L, a, b],");
    if (parts.size() != 3) {
      if (entry.value() instanceof Node.Sequence) {
        values
            .problems()
            .add(
                DiagnosticCode.BAD_LAB,
                entry.at(),
                "a reading is three numbers, as in [34.2, -18.5, 9.1]");
      }
      return Optional.empty();
    }
    List<Double> numbers = new ArrayList<>();
    for (Node.Entry part : parts) {
      boolean lightness = numbers.isEmpty();
      String which = lightness ? "L*" : numbers.size() == 1 ? "a*" : "b*";
      values
          .decimal(Optional.of(part), lightness ? 0 : -128, lightness ? 100 : 128, which)
          .ifPresent(numbers::add);
    }
    return numbers.size() == 3
        ? Optional.of(new CieLab(numbers.get(0), numbers.get(1), numbers.get(2)))
        : Optional.empty();
  }

  @Override
  public Control.Kind control() {
    return Control.Kind.COLOR;
  }

  @Override
  protected List<Control.Choice> choices(Place at) {
    List<Control.Choice> choices = new ArrayList<>();
    for (ColorChip color : at.words().colors().values()) {
      String swatch = color.lab().map(lab -> Swatch.of(lab).hex()).orElse("");
      choices.add(new Control.Choice(color.id(), color.name(), swatch));
    }
    choices.add(Control.Choice.NONE);
    return choices;
  }

  @Override
  public Map<String, String> meanings(Place at) {
    Map<String, String> names = new LinkedHashMap<>();
    at.words().colors().values().forEach(color -> names.put(color.id(), color.name()));
    return names;
  }

  @Override
  public boolean mayBeGroup() {
    return true;
  }

  private static String within(OptionalDouble tolerance) {
    return tolerance.isPresent() ? ", within ΔE00 " + Figures.measure(tolerance.getAsDouble()) : "";
  }

  private static Optional<CieLab> sample(String chip, Place at) {
    return Optional.ofNullable(at.words().colors().get(chip)).flatMap(ColorChip::lab);
  }

  /**
   * A color of the rule set.
   *
   * @param chip the color's name
   * @param tolerance greatest CIEDE2000 difference, where the item says its own
   */
  public record Chip(String chip, OptionalDouble tolerance) implements Expectation {
    @Override
    public String key() {
      return chip;
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof Found color)) {
        return Comparison.unlike();
      }
      Place at = setting.at();
      Optional<CieLab> target = sample(chip, at);
      double most = tolerance(at);
      Optional<Comparison> byInstrument =
          color.lab.flatMap(lab -> target.map(aim -> measured(lab, aim, color.uncertainty, most)));
      Optional<Comparison> byEye = color.chip.map(seen -> byEye(seen, target, most, at));
      if (byInstrument.isPresent() && byEye.isPresent()) {
        Comparison decided = byInstrument.get();
        boolean agree = decided.verdict() == byEye.get().verdict();
        return new Comparison(
            decided.verdict(),
            decided.credit(),
            new Both(decided.reason(), color.chip.orElse(Finding.OTHER), agree));
      }
      return byInstrument
          .or(() -> byEye)
          .orElseGet(() -> Comparison.notAssessed(new NoSample(chip)));
    }

    /** Returns the greatest difference that is right: the item's own, the color's or the usual. */
    private double tolerance(Place at) {
      return tolerance.orElse(
          Optional.ofNullable(at.words().colors().get(chip))
              .map(ColorChip::tolerance)
              .orElse(ColorChip.USUAL_TOLERANCE));
    }

    private Comparison byEye(String seen, Optional<CieLab> target, double most, Place at) {
      if (seen.equals(chip)) {
        return Comparison.correct(new ByEye(seen, Optional.empty()));
      }
      Optional<CieLab> own = sample(seen, at);
      if (own.isPresent() && target.isPresent()) {
        double difference = Ciede2000.of(own.get(), target.get()).de00();
        ByEye why = new ByEye(seen, Optional.of(new Difference(difference, most)));
        return difference <= most ? Comparison.correct(why) : Comparison.incorrect(why);
      }
      return Comparison.incorrect(new ByEye(seen, Optional.empty()));
    }

    private static Comparison measured(CieLab lab, CieLab aim, double uncertainty, double most) {
      double difference = Ciede2000.of(lab, aim).de00();
      double probability = ColorDifference.withinTolerance(difference, uncertainty, most);
      return Comparison.probably(
          probability,
          new ByInstrument(lab, aim, new Difference(difference, most), probability, uncertainty));
    }

    @Override
    public String words(Place at) {
      return at.words().color(chip) + within(tolerance);
    }

    @Override
    public boolean isKnown(Place at) {
      return at.words().colors().containsKey(chip);
    }
  }

  /**
   * The color that was found on another item.
   *
   * @param item the other item
   * @param tolerance greatest CIEDE2000 difference, where the item says its own
   */
  public record Same(String item, OptionalDouble tolerance) implements Expectation {
    @Override
    public String key() {
      return "same as " + item;
    }

    @Override
    public Optional<String> other() {
      return Optional.of(item);
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      Optional<Finding> other = setting.others().apply(item);
      if (other.isEmpty()) {
        return Comparison.notAssessed(new Beside("the color of ", item, " was not assessed"));
      }
      return found instanceof Found color && other.get() instanceof Found theirs
          ? against(color, theirs, setting.at())
          : Comparison.unlike();
    }

    private Comparison against(Found found, Found other, Place at) {
      boolean instrument = found.lab.isPresent() || other.lab.isPresent();
      boolean sameChip = found.chip.isPresent() && found.chip.equals(other.chip);
      boolean bothOther = sameChip && found.chip.equals(Optional.of(Finding.OTHER));
      if (!instrument && !bothOther && sameChip) {
        return Comparison.correct(new Beside("by eye the same as ", item, ""));
      }
      Optional<CieLab> own = found.reading(at);
      Optional<CieLab> theirs = other.reading(at);
      if (own.isPresent() && theirs.isPresent()) {
        double most = tolerance.orElse(ColorChip.USUAL_TOLERANCE);
        double uncertainty = Math.hypot(found.uncertainty, other.uncertainty);
        double difference = Ciede2000.of(own.get(), theirs.get()).de00();
        double probability = ColorDifference.withinTolerance(difference, uncertainty, most);
        return Comparison.probably(
            probability,
            new AgainstItem(
                item,
                own.get(),
                theirs.get(),
                new Difference(difference, most),
                probability,
                uncertainty));
      }
      if (bothOther || found.chip.isEmpty() || other.chip.isEmpty()) {
        return Comparison.notAssessed(
            new Beside(
                "what was found of it and of ", item, " does not tell whether they are the same"));
      }
      return sameChip
          ? Comparison.correct(new Beside("by eye the same as ", item, ""))
          : Comparison.incorrect(new Beside("by eye not the same as ", item, ""));
    }

    @Override
    public String words(Place at) {
      return "the color found on ‘" + at.words().title(item) + "’" + within(tolerance);
    }
  }

  /**
   * A color.
   *
   * @param chip the color of the rule set that it matches by eye
   * @param lab what an instrument reads: CIELAB, D65, 2°
   * @param uncertainty standard uncertainty of a color difference taken with the instrument
   * @param light the light it was matched in
   * @param by who matched it
   */
  public record Found(
      Optional<String> chip,
      Optional<CieLab> lab,
      double uncertainty,
      Optional<String> light,
      Optional<String> by)
      implements Finding {
    private Optional<CieLab> reading(Place at) {
      return lab.or(() -> chip.flatMap(it -> sample(it, at)));
    }

    @Override
    public String words(Place at) {
      List<String> parts = new ArrayList<>();
      chip.ifPresent(
          it ->
              parts.add(
                  byEye(it, at)
                      + " by eye"
                      + light.map(one -> " in " + one).orElse("")
                      + by.map(one -> " (" + one + ")").orElse("")));
      lab.ifPresent(
          it ->
              parts.add(
                  "L* "
                      + Figures.measure(it.l())
                      + ", a* "
                      + Figures.measure(it.a())
                      + ", b* "
                      + Figures.measure(it.b())
                      + " by instrument"
                      + (uncertainty > 0 ? ", uncertainty " + Figures.measure(uncertainty) : "")));
      return String.join("; ", parts);
    }

    @Override
    public Written written() {
      if (lab.isEmpty() && uncertainty == 0 && light.isEmpty() && by.isEmpty()) {
        return Written.of(chip.orElse(""));
      }
      List<String> parts = new ArrayList<>();
      chip.ifPresent(it -> parts.add("chip: " + FlowYamlWriter.text(it, true)));
      lab.ifPresent(
          it ->
              parts.add(
                  "lab: [" + number(it.l()) + ", " + number(it.a()) + ", " + number(it.b()) + "]"));
      if (uncertainty > 0) {
        parts.add("uncertainty: " + number(uncertainty));
      }
      light.ifPresent(it -> parts.add("light: " + FlowYamlWriter.text(it, true)));
      by.ifPresent(it -> parts.add("by: " + FlowYamlWriter.text(it, true)));
      return new Written(chip.orElse(""), "{" + String.join(", ", parts) + "}");
    }

    private static String number(double value) {
      return Figures.plain(new BigDecimal(Double.toString(value)));
    }

    @Override
    public boolean isKnown(Place at) {
      return chip.map(it -> it.equals(OTHER) || at.words().colors().containsKey(it)).orElse(true);
    }

    @Override
    public Optional<Finding> reworded(String aspect, Rewording rewording) {
      return Optional.of(
          new Found(chip, lab, uncertainty, light.map(rewording::text), by.map(rewording::text)));
    }

    @Override
    public boolean saysBy() {
      return by.isPresent();
    }

    @Override
    public Finding withoutBy() {
      return new Found(chip, lab, uncertainty, light, Optional.empty());
    }
  }

  private static String byEye(String chip, Place at) {
    return chip.equals(Finding.OTHER) ? "none of the rule set's colors" : at.words().color(chip);
  }

  private static String figures(CieLab lab) {
    String figures =
        "L* "
            + Figures.figure(lab.l(), 4)
            + " a* "
            + Figures.figure(lab.a(), 4)
            + " b* "
            + Figures.figure(lab.b(), 4);
    return figures.replace('-', '−');
  }

  /** A color difference (CIEDE2000), and the greatest that is right. */
  private record Difference(double found, double most) {
    String words() {
      return "ΔE00 " + Figures.figure(found, 2) + ", " + Figures.figure(most, 2) + " allowed";
    }
  }

  private record ByEye(String seen, Optional<Difference> difference) implements Reason {
    @Override
    public String words(Place at) {
      return "by eye: "
          + byEye(seen, at)
          + difference.map(Difference::words).map(it -> ", " + it).orElse("");
    }
  }

  private record ByInstrument(
      CieLab found, CieLab aim, Difference difference, double probability, double uncertainty)
      implements Reason {
    @Override
    public String words(Place at) {
      return "by instrument: "
          + figures(found)
          + " against "
          + figures(aim)
          + ", "
          + difference.words()
          + Figures.probability(probability, uncertainty);
    }
  }

  /** The instrument decides; whether the eye says the same. */
  private record Both(Reason instrument, String seen, boolean agree) implements Reason {
    @Override
    public String words(Place at) {
      return instrument.words(at)
          + "; by eye "
          + byEye(seen, at)
          + (agree ? "" : " — eye and instrument disagree, and the instrument decides");
    }
  }

  private record NoSample(String chip) implements Reason {
    @Override
    public String words(Place at) {
      return byEye(chip, at) + " has no reading in the rule set, so it must be matched by eye";
    }
  }

  /** What another item has to do with it. */
  private record Beside(String before, String item, String after) implements Reason {
    @Override
    public String words(Place at) {
      return before + at.words().title(item) + after;
    }
  }

  private record AgainstItem(
      String item,
      CieLab found,
      CieLab theirs,
      Difference difference,
      double probability,
      double uncertainty)
      implements Reason {
    @Override
    public String words(Place at) {
      return "against "
          + at.words().title(item)
          + ", "
          + figures(found)
          + " against "
          + figures(theirs)
          + ": "
          + difference.words()
          + Figures.probability(probability, uncertainty);
    }
  }
}
