package assize.schema;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Severity;
import assize.record.RecordReader;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What the readers say of a text, and which of it a schema has to say too. */
final class ReaderMessages {
  /** What can be told from one file's names and shapes alone. */
  static final Set<DiagnosticCode> STRUCTURAL =
      EnumSet.of(
          DiagnosticCode.MISSING_VALUE,
          DiagnosticCode.WRONG_STRUCTURE,
          DiagnosticCode.UNKNOWN_KEY,
          DiagnosticCode.MISSING_KEY,
          DiagnosticCode.BAD_NAME,
          DiagnosticCode.BLANK_NAME,
          DiagnosticCode.BAD_YES_NO,
          DiagnosticCode.BAD_CREDIT,
          DiagnosticCode.UNKNOWN_ORIGIN,
          DiagnosticCode.UNKNOWN_HAZARD,
          DiagnosticCode.UNKNOWN_WORD,
          DiagnosticCode.UNKNOWN_WARNING,
          DiagnosticCode.CLAIM_WITHOUT_SOURCE,
          DiagnosticCode.NOTHING_EXPECTED);

  private ReaderMessages() {}

  static Set<DiagnosticCode> errors(List<Diagnostic> said) {
    return said.stream()
        .map(Diagnostic::code)
        .filter(it -> it.severity() == Severity.ERROR)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(DiagnosticCode.class)));
  }

  static Set<DiagnosticCode> ofRules(String... files) {
    return errors(
        RuleSetReader.parse(
                List.of(files).stream().map(it -> new SourceFile("rules.yaml", it)).toList())
            .diagnostics());
  }

  static Set<DiagnosticCode> ofRecord(String text, RuleSet rules) {
    return errors(RecordReader.parse(new SourceFile("record.yaml", text), rules).diagnostics());
  }
}
