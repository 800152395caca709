package assize.schema;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
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
  static final Set<Code> STRUCTURAL =
      EnumSet.of(
          Code.MISSING_VALUE,
          Code.WRONG_STRUCTURE,
          Code.UNKNOWN_KEY,
          Code.MISSING_KEY,
          Code.BAD_NAME,
          Code.BLANK_NAME,
          Code.BAD_YES_NO,
          Code.BAD_CREDIT,
          Code.UNKNOWN_ORIGIN,
          Code.UNKNOWN_CAUTION,
          Code.UNKNOWN_WORD,
          Code.UNKNOWN_WARNING,
          Code.CLAIM_WITHOUT_SOURCE,
          Code.NOTHING_EXPECTED);

  private ReaderMessages() {}

  static Set<Code> errors(List<Diagnostic> said) {
    return said.stream()
        .map(Diagnostic::code)
        .filter(it -> it.severity() == Severity.ERROR)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Code.class)));
  }

  static Set<Code> ofRules(String... files) {
    return errors(
        RuleSetReader.parse(
                List.of(files).stream().map(it -> new SourceFile("rules.yaml", it)).toList())
            .diagnostics());
  }

  static Set<Code> ofRecord(String text, RuleSet rules) {
    return errors(RecordReader.parse(new SourceFile("record.yaml", text), rules).diagnostics());
  }
}
