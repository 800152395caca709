package assize.ruleset;

import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.schema.Table;
import assize.schema.Type;
import assize.yaml.Node;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a vehicle reaches from a score on; it stands where its points are written. */
public final class Award extends Facts {
  /** What reading an award needs: its name, and the full score. */
  record Scored(String id, long outOf, ScalarReader values) implements Reading {}

  public static final Field<Scored, String> ID = Field.given("id", "", Scored::id);
  public static final Field<Reading, String> NAME =
      Field.need("name", "", Type.visible(), "How reports say it.");
  public static final Field<Scored, Long> MIN_SCORE =
      Field.<Scored, Long>need(
              "min_score",
              0L,
              Type.of(ScalarFormat.share("0", "1000000", "460", "92 %"), Award::minScore),
              "The points that it takes, or a share of the full score.")
          .placing();
  public static final Field<Reading, Optional<BigFraction>> MIN_AREA_SHARE =
      Field.may("min_area_share", Type.credit(), "No area may earn a smaller share than this.");
  public static final Field<Reading, OptionalLong> MAX_ITEM_LOSS =
      Field.orNone(
          "max_item_loss",
          OptionalLong.empty(),
          Type.points().as(OptionalLong::of),
          "No single item may lose more points than this.");

  static final Table<Scored, Award> TABLE =
      Table.of("an award", Award::new, List.of(ID, NAME, MIN_SCORE, MIN_AREA_SHARE, MAX_ITEM_LOSS));

  private Award(Drawn drawn) {
    super(drawn);
  }

  private static Optional<Long> minScore(Optional<Node.Entry> entry, Scored in) {
    boolean share =
        entry
            .filter(it -> it.value() instanceof Node.Scalar text && text.text().contains("%"))
            .isPresent();
    return share
        ? in.values()
            .credit(entry)
            .map(it -> it.multiply(BigInteger.valueOf(in.outOf())))
            .map(it -> it.bigDecimalValue(0, RoundingMode.HALF_EVEN).longValueExact())
        : in.values().points(entry);
  }

  /** Returns an award that asks for points alone. */
  public static Award of(String id, String name, long points) {
    return TABLE.blank().with(ID, id).with(NAME, name).with(MIN_SCORE, points);
  }

  public String id() {
    return get(ID);
  }

  public String name() {
    return get(NAME);
  }

  /** Returns the least score, in thousandths of a point. */
  public long minScore() {
    return get(MIN_SCORE);
  }

  /** Returns the least share of its points that every area must earn, 0 to 1. */
  public Optional<BigFraction> minAreaShare() {
    return get(MIN_AREA_SHARE);
  }

  /** Returns the most that a single item may lose by departing, in thousandths of a point. */
  public OptionalLong maxItemLoss() {
    return get(MAX_ITEM_LOSS);
  }

  /** Returns the same, one of its facts changed. */
  public <T> Award with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
