package assize.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import assize.Pinned;
import assize.check.RecordWarningRule;
import assize.check.RuleSetWarningRule;
import assize.check.WarningFilter;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.record.RecordReader;
import assize.report.text.DiagnosticFormatter;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each folder of the corpus is a rule set and perhaps a record, and what is said of them: what
 * reading says in {@code expected.txt}, what is doubtful besides in {@code warnings.txt}.
 */
class CorpusTest {
  private static final Path CORPUS = Path.of("src/test/corpus");

  /**
   * What takes a large file, a picture, a table or several records: {@link BoundsTest} and others
   * make them.
   */
  private static final Set<DiagnosticCode> MADE_ELSEWHERE =
      EnumSet.of(
          DiagnosticCode.FILE_TOO_LARGE,
          DiagnosticCode.TOO_MANY_ENTRIES,
          DiagnosticCode.TEXT_TOO_LONG,
          DiagnosticCode.TOO_MANY_PROBLEMS,
          DiagnosticCode.TOO_MUCH_CHANGED,
          DiagnosticCode.DIFFERENT_VEHICLE,
          DiagnosticCode.DIFFERENT_EDITION,
          DiagnosticCode.CHANGED_DURING_MERGE,
          DiagnosticCode.PHOTO_CANNOT_BE_SHOWN,
          DiagnosticCode.NOT_A_TABLE,
          DiagnosticCode.MISSING_COLUMN,
          DiagnosticCode.ROW_WITHOUT_NAME,
          DiagnosticCode.FORMULA,
          DiagnosticCode.CONVERTED_CELL,
          DiagnosticCode.MERGED_CELLS,
          DiagnosticCode.SHEET_FOR_OTHER_RULE_SET,
          DiagnosticCode.SHEET_FOR_OTHER_RECORD,
          DiagnosticCode.RULES_CHANGED,
          DiagnosticCode.COLUMN_NOT_READ,
          DiagnosticCode.POSSIBLY_CONVERTED_CELL,
          DiagnosticCode.PHOTO_MISNAMED,
          DiagnosticCode.PHOTO_LEFT_OUT);

  private static final LocalDate AS_OF = LocalDate.of(2026, 10, 3);

  static List<Path> cases() throws IOException {
    try (Stream<Path> folders = Files.list(CORPUS)) {
      return folders.filter(Files::isDirectory).sorted().toList();
    }
  }

  @Tag("pinned")
  @ParameterizedTest
  @MethodSource("cases")
  void saysWhatIsExpected(Path folder) {
    String said = DiagnosticFormatter.print(diagnostics(folder), false);
    Pinned.equal(folder.resolve("expected.txt"), said);
  }

  @Tag("pinned")
  @ParameterizedTest
  @MethodSource("cases")
  void doubtsWhatIsExpected(Path folder) {
    String said = DiagnosticFormatter.print(warnings(folder), false);
    Pinned.equal(folder.resolve("warnings.txt"), said);
  }

  @Test
  void everyCodeHasACase() throws IOException {
    Set<DiagnosticCode> seen = EnumSet.noneOf(DiagnosticCode.class);
    for (Path folder : cases()) {
      diagnostics(folder).forEach(it -> seen.add(it.code()));
      warnings(folder).forEach(it -> seen.add(it.code()));
    }
    assertThat(seen)
        .containsAll(
            Arrays.stream(DiagnosticCode.values())
                .filter(it -> !MADE_ELSEWHERE.contains(it))
                .collect(Collectors.toSet()));
  }

  /** Returns what is doubtful and not accepted; none where something is wrong. */
  private static List<Diagnostic> warnings(Path folder) {
    List<Diagnostic> found = new ArrayList<>();
    Optional<RuleSet> rules = rules(folder).value();
    rules.ifPresent(
        it -> found.addAll(WarningFilter.of(RuleSetWarningRule.all(it), it.accepted()).open()));
    Path record = folder.resolve("record.yaml");
    if (rules.isPresent() && Files.exists(record)) {
      RecordReader.read(record, "record.yaml", rules.get())
          .value()
          .map(
              it ->
                  WarningFilter.of(
                      RecordWarningRule.all(
                          Judge.judge(rules.get(), it, Optional.of(AS_OF)), AS_OF),
                      it.accepted()))
          .ifPresent(it -> found.addAll(it.open()));
    }
    return found;
  }

  private static Result<RuleSet> rules(Path folder) {
    String name = Files.exists(folder.resolve("rules.yaml")) ? "rules.yaml" : "rules";
    return RuleSetReader.read(folder.resolve(name), name);
  }

  private static List<Diagnostic> diagnostics(Path folder) {
    List<Diagnostic> found = new ArrayList<>();
    Result<RuleSet> rules = rules(folder);
    found.addAll(rules.diagnostics());
    assertThat(rules.value().isPresent()).isEqualTo(!rules.hasErrors());
    Path record = folder.resolve("record.yaml");
    if (rules.value().isPresent() && Files.exists(record)) {
      found.addAll(RecordReader.rulesOf(record, "record.yaml").diagnostics());
      found.addAll(RecordReader.read(record, "record.yaml", rules.value().get()).diagnostics());
    }
    return found;
  }
}
