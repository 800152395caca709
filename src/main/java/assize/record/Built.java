package assize.record;

import assize.date.Edtf;
import assize.diagnostic.DiagnosticCode;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.PropertySchema;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.yaml.Node;
import java.util.List;
import java.util.Optional;

/** When a vehicle was built, and what says so. */
public final class Built extends Facts {
  private static final ValueSchema WHEN = ScalarFormat.date("1934-05");

  public static final Field<Reading, Optional<Edtf>> DATE =
      Field.need(
          Optional.empty(),
          (fields, in) -> date(fields.get("date"), in).map(Optional::of),
          PropertySchema.need("date", WHEN, "When it was built."));
  public static final Field<Reading, Optional<String>> BASIS =
      Field.may("basis", Type.text(), "What says so: a build plate, a build sheet.");

  public static final Table<Reading, Built> TABLE =
      Table.of("a build date", Built::new, List.of(DATE, BASIS));

  /** A date alone, or with what says so. */
  static final Type<Reading, Built> TYPE =
      Type.<Reading, Built>of(
              ValueSchema.either(WHEN, new ValueSchema.Group(TABLE.block())),
              (entry, in) ->
                  entry.isPresent() && entry.get().value() instanceof Node.Mapping mapping
                      ? TABLE.read(
                          in.values().fields(mapping, TABLE.block(), entry.get().key().at()),
                          in,
                          entry.get().key().at())
                      : date(entry, in).map(Built::on))
          .reworded(TABLE::reworded);

  private Built(Drawn drawn) {
    super(drawn);
  }

  private static Optional<Edtf> date(Optional<Node.Entry> entry, Reading in) {
    return in.values().parsed(entry, DiagnosticCode.BAD_DATE, "a date", Edtf::parse);
  }

  /** Returns a date of which nobody says where it comes from. */
  public static Built on(Edtf date) {
    return TABLE.with(TABLE.blank(), DATE, Optional.of(date));
  }

  public Edtf date() {
    return get(DATE).orElseThrow();
  }

  public Optional<String> basis() {
    return get(BASIS);
  }
}
