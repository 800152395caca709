package assize.evidence;

import assize.aspect.Definition;
import assize.date.Edtf;
import assize.diagnostic.DiagnosticCode;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.FixedVocabulary;
import assize.schema.Reading;
import assize.schema.Table;
import assize.schema.Type;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One thing that speaks of what is right: a drawing, a photograph, somebody's memory. */
public final class Source extends Facts {
  public static final Field<Definition, String> ID = Field.given("id", "", Definition::id);
  public static final Field<Reading, SourceKind> KIND =
      Field.need(
          "kind",
          SourceKind.DRAWING,
          Type.oneOf(
              FixedVocabulary.of(
                  "a kind of source",
                  DiagnosticCode.UNKNOWN_WORD,
                  SourceKind.values(),
                  SourceKind::word)),
          "What kind of thing it is.");
  public static final Field<Reading, Grade> GRADE =
      Field.need(
          "grade",
          Grade.D,
          Type.oneOf(Grade.WORDS),
          "How far it is trusted: A the most, D the least.");
  public static final Field<Reading, String> TITLE =
      Field.need("title", "", Type.visible(), "What it is called.");
  public static final Field<Reading, Optional<Edtf>> DATE =
      Field.may("date", Type.date("1932-02", "1978~"), "When it was made.");
  public static final Field<Reading, Optional<String>> HELD_BY =
      Field.may("held_by", Type.text(), "Where it can be seen: the club's archive.");
  public static final Field<Definition, Set<String>> COPIES =
      Field.orNone(
          "copies",
          Set.of(),
          Type.oneOrMore(Definition.word(it -> it.sources)).as(Set::copyOf),
          "The sources that it repeats: where it says the same, it is no second witness.");
  public static final Field<Reading, Optional<String>> NOTES =
      Field.may("notes", Type.text(), "Remarks.");

  public static final Table<Definition, Source> TABLE =
      Table.of(
          "a source", Source::new, List.of(ID, KIND, GRADE, TITLE, DATE, HELD_BY, COPIES, NOTES));

  private Source(Drawn drawn) {
    super(drawn);
  }

  /** Returns a source of which no more is known. */
  public static Source of(String id, SourceKind kind, Grade grade, String title) {
    return TABLE.blank().with(ID, id).with(KIND, kind).with(GRADE, grade).with(TITLE, title);
  }

  /** Returns its name in the rule set. */
  public String id() {
    return get(ID);
  }

  public SourceKind kind() {
    return get(KIND);
  }

  public Grade grade() {
    return get(GRADE);
  }

  public String title() {
    return get(TITLE);
  }

  public Optional<Edtf> date() {
    return get(DATE);
  }

  public Optional<String> heldBy() {
    return get(HELD_BY);
  }

  /** Returns the sources whose sayings it repeats. */
  public Set<String> copies() {
    return get(COPIES);
  }

  public Optional<String> notes() {
    return get(NOTES);
  }

  /** Returns the same, one of its facts changed. */
  public <T> Source with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
