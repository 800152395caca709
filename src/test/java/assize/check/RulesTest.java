package assize.check;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Severity;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each rule has a code of its own, and finds that alone. */
class RulesTest {
  @Test
  void eachHasACodeOfItsOwn() {
    List<DiagnosticCode> codes =
        Stream.concat(
                RuleSetWarningRule.ALL.stream().map(RuleSetWarningRule::code),
                RecordWarningRule.ALL.stream().map(RecordWarningRule::code))
            .toList();
    assertThat(codes).doesNotHaveDuplicates();
    assertThat(codes).allMatch(code -> code.severity() == Severity.WARNING);
  }

  @Test
  void eachFindsWhatItsCodeSaysInTheCorpusAndNothingElse() throws IOException {
    List<RuleSetWarningRule> silent = new ArrayList<>(RuleSetWarningRule.ALL);
    for (RuleSet rules : corpus()) {
      for (RuleSetWarningRule rule : RuleSetWarningRule.ALL) {
        List<DiagnosticCode> found = rule.in(rules).map(it -> it.code()).toList();
        assertThat(found).allMatch(code -> code == rule.code());
        if (!found.isEmpty()) {
          silent.remove(rule);
        }
      }
    }
    assertThat(silent).isEmpty();
  }

  private static List<RuleSet> corpus() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("src/test/corpus"))) {
      return folders
          .map(folder -> folder.resolve("rules.yaml"))
          .filter(Files::exists)
          .map(file -> RuleSetReader.read(file).value())
          .flatMap(Optional::stream)
          .toList();
    }
  }
}
