package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.evidence.Grade;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.FixedVocabulary;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.yaml.Node;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** How points become a score. */
public final class Scale extends Facts {
  /** The plausibility, in thousandths, below which a position is no longer judged. */
  public static final int LIVE_AT = 100;

  private static final Map<Grade, Integer> USUAL =
      Map.of(Grade.A, 900, Grade.B, 700, Grade.C, 500, Grade.D, 300);

  public static final Field<Reading, Map<Grade, Integer>> GRADES =
      Field.orNone(
          "grades",
          USUAL,
          Type.of(
              new ValueSchema.Named(
                  Grade.WORDS.value(), ScalarFormat.share("0.001", "0.99", "0.90")),
              Scale::grades),
          "How much a source of each grade weighs: {A: 0.90, B: 0.70, C: 0.50, D: 0.30}.");
  public static final Field<Reading, Map<String, BigFraction>> ALLOWANCES =
      Field.orNone(
          "allowances",
          Map.of(),
          Type.of(
              new ValueSchema.Named(ScalarFormat.visible(), ScalarFormat.credit()),
              Scale::allowances),
          "Reasons for a departure that keep part of the credit; the words are yours.");
  public static final Field<Reading, Method> METHOD =
      Field.orNone(
          "method",
          Method.SUM,
          Type.oneOf(
              FixedVocabulary.of(
                  "a method", DiagnosticCode.UNKNOWN_WORD, Method.values(), Method::word)),
          "How points add up: sum, areas (each area's share, weighed by its points) or"
              + " deductions (points lost are taken from the full score).");
  public static final Field<Reading, Long> OUT_OF =
      Field.orNone(
          "out_of",
          100_000L,
          Type.of(ScalarFormat.points(), Scale::outOf),
          "The full score; 100 if nothing is said.");
  public static final Field<Reading, BigFraction> NOT_ASSESSED =
      Field.orNone(
          "not_assessed",
          BigFraction.ZERO,
          Type.credit(),
          "The likely credit of what was not assessed; 0 if nothing is said.");
  public static final Field<Reading, Integer> SETTLED_AT =
      Field.orNone(
          "settled_at",
          850,
          Type.of(
              ScalarFormat.share("0.501", "0.99", "0.90"),
              (entry, in) ->
                  in.values().thousandths(entry, 501, 990, "a belief above 0.5, up to 0.99")),
          "The belief at which a dispute counts as settled; 0.85 if nothing is said.");
  public static final Field<Reading, BigFraction> EARLY_PART_CREDIT =
      Field.orNone(
          "early_part_credit",
          BigFraction.of(1, 2),
          Type.credit(),
          "The credit of a part that was made earlier than its window; 1/2 if nothing is said.");

  public static final Table<Reading, Scale> TABLE =
      Table.of(
          "a scale",
          Scale::new,
          List.of(GRADES, ALLOWANCES, METHOD, OUT_OF, NOT_ASSESSED, SETTLED_AT, EARLY_PART_CREDIT));

  private Scale(Drawn drawn) {
    super(drawn);
  }

  /** How areas and items add up. */
  public enum Method {
    /** Points earned over points possible (XCCDF's flat model). */
    SUM("sum"),
    /** Each area's own share, weighed by its points (XCCDF's default model on two levels). */
    AREAS("areas"),
    /** Points lost are taken from the full score, never below zero. */
    DEDUCTIONS("deductions");

    private final String word;

    Method(String word) {
      this.word = word;
    }

    /** Returns the name that rule sets use. */
    public String word() {
      return word;
    }
  }

  /** Returns the scale of a rule set that says nothing of it. */
  public static Scale usual() {
    return TABLE.blank();
  }

  private static Optional<Map<Grade, Integer>> grades(Optional<Node.Entry> entry, Reading in) {
    Map<Grade, Integer> grades = new EnumMap<>(USUAL);
    for (Node.Entry one : in.values().entries(entry, "grades with their weights")) {
      Optional<Grade> grade = Grade.WORDS.find(one.key(), in.values().problems());
      Optional<Integer> weight =
          in.values().thousandths(Optional.of(one), 1, 990, "a weight from 0.001 to 0.99");
      grade.ifPresent(it -> weight.ifPresent(thousandths -> grades.put(it, thousandths)));
    }
    return Optional.of(Map.copyOf(grades));
  }

  private static Optional<Map<String, BigFraction>> allowances(
      Optional<Node.Entry> entry, Reading in) {
    Map<String, BigFraction> allow = new LinkedHashMap<>();
    for (Node.Entry one : in.values().entries(entry, "reasons with their credits")) {
      in.values().checkWord(one.key());
      in.values().credit(Optional.of(one)).ifPresent(it -> allow.put(one.name(), it));
    }
    return Optional.of(Map.copyOf(allow));
  }

  private static Optional<Long> outOf(Optional<Node.Entry> entry, Reading in) {
    Optional<Long> points = in.values().points(entry);
    if (points.isPresent() && points.get() == 0) {
      in.values()
          .problems()
          .add(
              DiagnosticCode.BAD_POINTS,
              entry.orElseThrow().at(),
              "a score out of 0 points is no score");
    }
    return points;
  }

  public Method method() {
    return get(METHOD);
  }

  /** Returns the full score, in thousandths of a point. */
  public long outOf() {
    return get(OUT_OF);
  }

  /** Returns the likely credit of what was not assessed, 0 to 1. */
  public BigFraction notAssessed() {
    return get(NOT_ASSESSED);
  }

  /** Returns the belief at which a dispute counts as settled, in thousandths. */
  public int settledAt() {
    return get(SETTLED_AT);
  }

  /** Returns the weight of a source of each grade, in thousandths, 1 to 990. */
  public Map<Grade, Integer> grades() {
    return get(GRADES);
  }

  /** Returns the credit of a part that was made earlier than its window, 0 to 1. */
  public BigFraction earlyPartCredit() {
    return get(EARLY_PART_CREDIT);
  }

  /** Returns reasons for a departure, and the credit that each keeps, 0 to 1. */
  public Map<String, BigFraction> allowances() {
    return get(ALLOWANCES);
  }

  /** Returns the same, one of its facts changed. */
  public <T> Scale with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
