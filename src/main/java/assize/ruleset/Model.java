package assize.ruleset;

import assize.aspect.Definition;
import assize.date.DaySpan;
import assize.diagnostic.Code;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Form;
import assize.schema.Reading;
import assize.schema.Table;
import assize.schema.Type;
import java.util.List;

/** A model of the maker; it stands where its production is written. */
public final class Model extends Facts {
  public static final Field<Definition, String> ID = Field.given("id", "", Definition::id);
  public static final Field<Reading, String> NAME =
      Field.need("name", "", Type.visible(), "How reports say it.");
  public static final Field<Reading, DaySpan> BUILT =
      Field.<Reading, DaySpan>need(
              "built",
              DaySpan.ALL,
              Type.parsed(
                  Form.date("1932-03/1936-08"), Code.BAD_DATE, "a span of dates", Dates::span),
              "From when to when it was made: 1932-03/1936-08.")
          .placing();

  static final Table<Definition, Model> TABLE =
      Table.of("a model", Model::new, List.of(ID, NAME, BUILT));

  private Model(Drawn drawn) {
    super(drawn);
  }

  public static Model of(String id, String name, DaySpan built) {
    return TABLE.with(TABLE.with(TABLE.with(TABLE.blank(), ID, id), NAME, name), BUILT, built);
  }

  public String id() {
    return get(ID);
  }

  public String name() {
    return get(NAME);
  }

  /** Returns the days of its production. */
  public DaySpan built() {
    return get(BUILT);
  }
}
