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

/** How rule sets and records let a warning stand. */
public final class AcceptedWarningsSchema {
  /** What is not said by check, or of what was accepted itself. */
  private static final Set<DiagnosticCode> NOT_OF_CHECK =
      EnumSet.of(
          DiagnosticCode.PHOTO_LEFT_OUT,
          DiagnosticCode.SHEET_FOR_OTHER_RECORD,
          DiagnosticCode.RULES_CHANGED,
          DiagnosticCode.COLUMN_NOT_READ,
          DiagnosticCode.POSSIBLY_CONVERTED_CELL,
          DiagnosticCode.UNUSED_ACCEPTANCE);

  /** The warnings that can be accepted. */
  public static final List<String> WARNINGS =
      Arrays.stream(DiagnosticCode.values())
          .filter(code -> code.severity() == Severity.WARNING && !NOT_OF_CHECK.contains(code))
          .map(DiagnosticCode::id)
          .toList();

  static final PropertySchema WARNING =
      need(
          "warning",
          ValueSchema.word(WARNINGS),
          "The warning: the name in brackets in its message.");
  static final PropertySchema ABOUT =
      may(
          "about",
          oneOrMore(ScalarFormat.name()),
          "What it is about: the item, the source, the table or the word that its message"
              + " names; without it, whatever it is about.");
  static final PropertySchema REASON = need("reason", ScalarFormat.visible(), "Why it may stand.");

  static final ObjectSchema ACCEPTED =
      ObjectSchema.of("an accepted warning", WARNING, ABOUT, REASON);

  public static final PropertySchema KEY =
      may(
          "accepted_warnings",
          list(new ValueSchema.Group(ACCEPTED)),
          "Warnings of check that somebody has looked at and lets stand.");

  private AcceptedWarningsSchema() {}
}
