package assize.record;

import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Reading;
import assize.schema.Table;
import assize.schema.Type;
import java.util.List;
import java.util.Optional;

/** Which vehicle it is. */
public final class Named extends Facts {
  public static final Field<Reading, String> NAME =
      Field.need("name", "", Type.visible(), "How the report calls it.");
  public static final Field<RecordReading, Optional<String>> MODEL =
      Field.may(
          "model",
          RecordReading.word(in -> in.names().models),
          "The rule set's short name of the model.");
  public static final Field<Reading, Optional<String>> NOTES =
      Field.may("notes", Type.text(), "What should be known of it.");

  public static final Table<RecordReading, Named> TABLE =
      Table.of("a vehicle", Named::new, List.of(NAME, MODEL, NOTES));

  private Named(Drawn drawn) {
    super(drawn);
  }

  /** Returns the same, one of its facts changed. */
  <T> Named with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
