package assize.aspect;

import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Reading;
import assize.schema.Table;
import assize.schema.Type;
import java.util.List;
import java.util.Optional;

/** A finish of the rule set; it stands where it says what it is a kind of. */
public final class Finish extends Facts {
  public static final Field<Definition, String> ID = Field.given("id", "", Definition::id);
  public static final Field<Reading, String> NAME =
      Field.need("name", "", Type.visible(), "How reports say it.");
  public static final Field<Definition, Optional<String>> KIND_OF =
      Field.<Definition, String>may(
              "kind_of",
              Definition.word(it -> it.finishes),
              "Another finish, where this one is right too: bright nickel is a kind of nickel.")
          .placing();

  public static final Table<Definition, Finish> TABLE =
      Table.of("a finish", Finish::new, List.of(ID, NAME, KIND_OF));

  private Finish(Drawn drawn) {
    super(drawn);
  }

  /** Returns a finish that is no kind of another. */
  public static Finish of(String id, String name) {
    return TABLE.with(TABLE.with(TABLE.blank(), ID, id), NAME, name);
  }

  public String id() {
    return get(ID);
  }

  public String name() {
    return get(NAME);
  }

  /** Returns the finish in whose place it may stand. */
  public Optional<String> kindOf() {
    return get(KIND_OF);
  }
}
