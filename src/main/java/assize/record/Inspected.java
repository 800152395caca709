package assize.record;

import assize.date.Edtf;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Reading;
import assize.schema.Table;
import assize.schema.Type;
import java.util.List;
import java.util.Optional;

/** Who looked at a vehicle, and when. */
public final class Inspected extends Facts {
  public static final Field<Reading, Optional<String>> BY =
      Field.may("by", Type.text(), "Who looked.");
  public static final Field<Reading, Optional<Edtf>> ON =
      Field.may("on", Type.date("2026-10-03"), "On which day.");

  public static final Table<Reading, Inspected> TABLE =
      Table.of("a judging", Inspected::new, List.of(BY, ON));

  private Inspected(Drawn drawn) {
    super(drawn);
  }

  public static Inspected of(Optional<String> by, Optional<Edtf> on) {
    return TABLE.with(TABLE.with(TABLE.blank(), BY, by), ON, on);
  }

  public Optional<String> by() {
    return get(BY);
  }

  public Optional<Edtf> on() {
    return get(ON);
  }
}
