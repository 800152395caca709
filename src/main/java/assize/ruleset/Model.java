package assize.ruleset;

import assize.aspect.Definition;
import assize.date.DateRange;
import assize.diagnostic.DiagnosticCode;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import java.util.List;

/** A model of the maker; it stands where its production is written. */
public final class Model extends Facts {
  public static final Field<Definition, String> ID = Field.given("id", "", Definition::id);
  public static final Field<Reading, String> NAME =
      Field.need("name", "", Type.visible(), "How reports say it.");
  public static final Field<Reading, DateRange> PRODUCTION =
      Field.<Reading, DateRange>need(
              "production",
              DateRange.ALL,
              Type.parsed(
                  ScalarFormat.date("1932-03/1936-08"),
                  DiagnosticCode.BAD_DATE,
                  "a span of dates",
                  DateReader::span),
              "From when to when it was made: 1932-03/1936-08.")
          .placing();

  static final Table<Definition, Model> TABLE =
      Table.of("a model", Model::new, List.of(ID, NAME, PRODUCTION));

  private Model(Drawn drawn) {
    super(drawn);
  }

  public static Model of(String id, String name, DateRange built) {
    return TABLE.with(TABLE.with(TABLE.with(TABLE.blank(), ID, id), NAME, name), PRODUCTION, built);
  }

  public String id() {
    return get(ID);
  }

  public String name() {
    return get(NAME);
  }

  /** Returns the days of its production. */
  public DateRange production() {
    return get(PRODUCTION);
  }
}
