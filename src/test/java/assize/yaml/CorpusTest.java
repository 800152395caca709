package assize.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import assize.Pinned;
import assize.check.Accepting;
import assize.check.Doubt;
import assize.check.RecordDoubt;
import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.record.RecordReader;
import assize.report.text.DiagnosticPrinter;
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
 * reading says in {@code expected.txt}, what is doubtful besides in {@code doubts.txt}.
 */
class CorpusTest {
  private static final Path CORPUS = Path.of("src/test/corpus");

  /**
   * What takes a large file, a picture, a table or several records: {@link BoundsTest} and others
   * make them.
   */
  private static final Set<Code> MADE_ELSEWHERE =
      EnumSet.of(
          Code.FILE_TOO_LARGE,
          Code.TOO_MANY_ENTRIES,
          Code.TEXT_TOO_LONG,
          Code.TOO_MANY_PROBLEMS,
          Code.TOO_MUCH_CHANGED,
          Code.DIFFERENT_VEHICLE,
          Code.DIFFERENT_EDITION,
          Code.CHANGED_DURING_MERGE,
          Code.PHOTO_CANNOT_BE_SHOWN,
          Code.NOT_A_TABLE,
          Code.MISSING_COLUMN,
          Code.ROW_WITHOUT_NAME,
          Code.FORMULA,
          Code.CONVERTED_CELL,
          Code.MERGED_CELLS,
          Code.SHEET_FOR_OTHER_RULE_SET,
          Code.SHEET_FOR_OTHER_RECORD,
          Code.RULES_CHANGED,
          Code.COLUMN_NOT_READ,
          Code.POSSIBLY_CONVERTED_CELL,
          Code.PHOTO_MISNAMED,
          Code.PHOTO_LEFT_OUT);

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
    String said = DiagnosticPrinter.print(diagnostics(folder), false);
    Pinned.equal(folder.resolve("expected.txt"), said);
  }

  @Tag("pinned")
  @ParameterizedTest
  @MethodSource("cases")
  void doubtsWhatIsExpected(Path folder) {
    String said = DiagnosticPrinter.print(doubts(folder), false);
    Pinned.equal(folder.resolve("doubts.txt"), said);
  }

  @Test
  void everyCodeHasACase() throws IOException {
    Set<Code> seen = EnumSet.noneOf(Code.class);
    for (Path folder : cases()) {
      diagnostics(folder).forEach(it -> seen.add(it.code()));
      doubts(folder).forEach(it -> seen.add(it.code()));
    }
    assertThat(seen)
        .containsAll(
            Arrays.stream(Code.values())
                .filter(it -> !MADE_ELSEWHERE.contains(it))
                .collect(Collectors.toSet()));
  }

  /** Returns what is doubtful and not accepted; none where something is wrong. */
  private static List<Diagnostic> doubts(Path folder) {
    List<Diagnostic> found = new ArrayList<>();
    Optional<RuleSet> rules = rules(folder).value();
    rules.ifPresent(it -> found.addAll(Accepting.of(Doubt.all(it), it.accepted()).open()));
    Path record = folder.resolve("record.yaml");
    if (rules.isPresent() && Files.exists(record)) {
      RecordReader.read(record, "record.yaml", rules.get())
          .value()
          .map(
              it ->
                  Accepting.of(
                      RecordDoubt.all(Judge.judge(rules.get(), it, Optional.of(AS_OF)), AS_OF),
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
