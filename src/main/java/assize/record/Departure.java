package assize.record;

import assize.date.Edtf;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Reading;
import assize.schema.Table;
import assize.schema.Type;
import java.util.List;
import java.util.Optional;

/** That the owner knows an item not to be right, and why. */
public final class Departure extends Facts {
  public static final Field<Reading, String> REASON =
      Field.need(
          "reason",
          "",
          Type.word("safety"),
          "A word of the rule set's `allowances`, or any other word.");
  public static final Field<Reading, Optional<String>> EXPLANATION =
      Field.may("explanation", Type.text(), "Why, in your own words.");
  public static final Field<Reading, Optional<Edtf>> REVIEW_BY =
      Field.may("review_by", Type.date("2027-05"), "When it is to be looked at again.");

  public static final Table<Reading, Departure> TABLE =
      Table.of("a departure", Departure::new, List.of(REASON, EXPLANATION, REVIEW_BY));

  private Departure(Drawn drawn) {
    super(drawn);
  }

  /** Returns a word of the rule set's allowed reasons, or any other. */
  public String reason() {
    return get(REASON);
  }

  public Optional<String> explanation() {
    return get(EXPLANATION);
  }

  /** Returns when it is to be looked at again. */
  public Optional<Edtf> reviewBy() {
    return get(REVIEW_BY);
  }

  /** Returns the same, one of its facts changed. */
  public <T> Departure with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
