package assize.ruleset;

import static assize.schema.PropertySchema.may;
import static assize.schema.PropertySchema.need;
import static assize.schema.ValueSchema.list;
import static assize.schema.ValueSchema.oneOrMore;

import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Severity;
import assize.schema.ObjectSchema;
import assize.schema.PropertySchema;
import assize.schema.ScalarFormat;
import assize.schema.ValueSchema;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How rule sets and records let a doubt stand. */
public final class AcceptedWarningsSchema {
  /** What is not said by check, or of what was accepted itself. */
  private static final Set<DiagnosticCode> NOT_OF_LINT =
      EnumSet.of(
          DiagnosticCode.PHOTO_LEFT_OUT,
          DiagnosticCode.SHEET_FOR_OTHER_RECORD,
          DiagnosticCode.RULES_CHANGED,
          DiagnosticCode.COLUMN_NOT_READ,
          DiagnosticCode.POSSIBLY_CONVERTED_CELL,
          DiagnosticCode.UNUSED_ACCEPTANCE);

  /** The doubts that can be accepted. */
  public static final List<String> DOUBTS =
      Arrays.stream(DiagnosticCode.values())
          .filter(code -> code.severity() == Severity.WARNING && !NOT_OF_LINT.contains(code))
          .map(DiagnosticCode::id)
          .toList();

  static final PropertySchema DOUBT =
      need("doubt", ValueSchema.word(DOUBTS), "The doubt: the name in brackets in its message.");
  static final PropertySchema OF =
      may(
          "of",
          oneOrMore(ScalarFormat.name()),
          "What it is about: the item, the source, the table or the word that its message"
              + " names; without it, whatever it is about.");
  static final PropertySchema BECAUSE =
      need("because", ScalarFormat.visible(), "Why it may stand.");

  static final ObjectSchema ACCEPTED = ObjectSchema.of("an accepted doubt", DOUBT, OF, BECAUSE);

  public static final PropertySchema KEY =
      may(
          "accepted",
          list(new ValueSchema.Group(ACCEPTED)),
          "Doubts of check that somebody has looked at and lets stand.");

  private AcceptedWarningsSchema() {}
}
