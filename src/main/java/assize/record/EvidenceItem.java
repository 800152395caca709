package assize.record;

import assize.date.Edtf;
import assize.diagnostic.DiagnosticCode;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.MappingReader;
import assize.schema.PropertyConstraint;
import assize.schema.PropertySchema;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Something that shows what was found. */
public final class EvidenceItem extends Facts {
  /** What kind of thing it is. */
  public enum Kind {
    PHOTO("photo", "The file of a photo, in the record's folder or below."),
    DOCUMENT("document", "The file of a document, in the record's folder or below."),
    MEASUREMENT("measurement", "What was measured with: Vernier caliper, read to 1/128 in.");

    private final String word;
    private final String about;

    Kind(String word, String about) {
      this.word = word;
      this.about = about;
    }

    /** Returns the name that records use. */
    public String word() {
      return word;
    }

    private PropertySchema key() {
      return PropertySchema.may(word, ScalarFormat.visible(), about);
    }

    static List<String> words() {
      return Arrays.stream(values()).map(Kind::word).toList();
    }
  }

  /**
   * What is shown.
   *
   * @param what the file, or for a measurement what was measured with
   */
  public record Shown(Kind kind, String what) {
    private boolean isAlike(Shown other) {
      return kind == other.kind && Type.spaced(what).equals(Type.spaced(other.what));
    }
  }

  /** Its name in the record, by which two records need not mean the same. */
  public static final Field<AtEvidence, String> ID =
      Field.<AtEvidence, String>given("id", "", it -> it.entry().name())
          .alike((one, other) -> true)
          .reworded((id, rewording) -> rewording.name(id));

  public static final Field<AtEvidence, Shown> SHOWN =
      Field.need(
              new Shown(Kind.PHOTO, ""),
              EvidenceItem::shown,
              Arrays.stream(Kind.values()).map(Kind::key).toArray(PropertySchema[]::new))
          .alike(Shown::isAlike)
          .reworded((it, rewording) -> new Shown(it.kind(), rewording.text(it.what())));
  public static final Field<Reading, Optional<String>> CAPTION =
      Field.may("caption", Type.visible(), "What it shows.");
  public static final Field<Reading, Optional<Edtf>> TAKEN =
      Field.may("taken", Type.date("2025-11"), "When it was taken or written.");
  public static final Field<Reading, Optional<String>> BY =
      Field.may("by", Type.text(), "Who took or wrote it.");

  /** Parts of a photo that are painted over in the copy for others. */
  public static final Field<Reading, List<BlackoutArea>> BLACK_OUT =
      Field.of(
          List.of(),
          (fields, in) ->
              new BlackoutReader(in.values()).read(fields.get("black_out"), kind(fields)),
          PropertySchema.may(
              "black_out",
              ValueSchema.either(
                  new ValueSchema.Group(BlackoutReader.COVER),
                  new ValueSchema.Many(
                      new ValueSchema.Group(BlackoutReader.COVER),
                      OptionalInt.of(BlackoutReader.MOST))),
              "Parts of the photo that are painted over in the copy for others."));

  /** Whether all of it stays out of the copy for others. */
  public static final Field<Reading, Boolean> PRIVATE =
      Field.orNone(
          "private",
          false,
          Type.of(ScalarFormat.yesNo(), (entry, in) -> in.values().yesNo(entry)),
          "yes: all of it stays out of the copy for others.");

  public static final Table<AtEvidence, EvidenceItem> TABLE =
      Table.of(
          "evidence",
          EvidenceItem::new,
          List.of(ID, SHOWN, CAPTION, TAKEN, BY, BLACK_OUT, PRIVATE),
          PropertyConstraint.oneOf(Kind.words()),
          PropertyConstraint.needs(BLACK_OUT.name(), Kind.PHOTO.word()));

  private EvidenceItem(Drawn drawn) {
    super(drawn);
  }

  /** Reads a piece of evidence, and looks whether its file is there. */
  static Optional<EvidenceItem> read(Node.Entry entry, RecordReading in) {
    String owner = TABLE.block().owner() + " " + MessageParts.quoted(entry.name());
    return in.values()
        .fields(entry, owner, TABLE.block())
        .flatMap(
            fields -> {
              Optional<EvidenceItem> read =
                  TABLE.read(fields, new AtEvidence(in, entry), entry.key().at());
              if (kind(fields).isEmpty()) {
                in.values()
                    .problems()
                    .add(
                        DiagnosticCode.MISSING_KEY,
                        entry.key().at(),
                        owner + " does not say what it is",
                        "add `photo:`, `document:` or `measurement:`");
              }
              return read;
            });
  }

  private static Optional<Kind> kind(MappingReader fields) {
    return Arrays.stream(Kind.values())
        .filter(it -> fields.peek(it.word()).isPresent())
        .findFirst();
  }

  private static Optional<Shown> shown(MappingReader fields, AtEvidence in) {
    Optional<Kind> kind = kind(fields);
    Optional<Shown> shown = Optional.empty();
    for (Kind one : Kind.values()) {
      Optional<Node.Entry> written = fields.get(one.word());
      if (kind.equals(Optional.of(one))) {
        shown = what(one, written, in.record()).map(it -> new Shown(one, it));
      } else if (written.isPresent()) {
        in.values()
            .problems()
            .add(
                DiagnosticCode.WRONG_STRUCTURE,
                written.get().key().at(),
                "one piece of evidence is a photo, a document or a measurement, not two of them",
                "write two pieces of evidence");
      }
    }
    return shown;
  }

  private static Optional<String> what(Kind kind, Optional<Node.Entry> written, RecordReading in) {
    if (kind == Kind.MEASUREMENT) {
      return in.values().name(written);
    }
    Optional<Node.Scalar> file = in.values().visible(written, "a single text");
    file.ifPresent(in.files()::look);
    return file.map(Node.Scalar::text);
  }

  public String id() {
    return get(ID);
  }

  public Kind kind() {
    return get(SHOWN).kind();
  }

  /** Returns the file, or for a measurement what was measured with. */
  public String what() {
    return get(SHOWN).what();
  }

  public Optional<String> caption() {
    return get(CAPTION);
  }

  public Optional<Edtf> taken() {
    return get(TAKEN);
  }

  public Optional<String> by() {
    return get(BY);
  }

  public List<BlackoutArea> blackOut() {
    return get(BLACK_OUT);
  }

  public boolean isPrivate() {
    return get(PRIVATE);
  }

  /** Returns the same, one of its facts changed. */
  public <T> EvidenceItem with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
