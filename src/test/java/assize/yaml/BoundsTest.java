package assize.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that asks for too much is refused with a word why. */
class BoundsTest {
  @Test
  void aFileOfMoreThanFourMebibytesIsNotRead(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("rules.yaml"), "#".repeat(4 * 1024 * 1024 + 1));
    assertThat(codes(RuleSetReader.read(file, "rules.yaml").diagnostics()))
        .containsExactly(DiagnosticCode.FILE_TOO_LARGE);
  }

  @Test
  void aFileOfFourMebibytesIsRead(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("rules.yaml"), "#".repeat(4 * 1024 * 1024));
    assertThat(codes(RuleSetReader.read(file, "rules.yaml").diagnostics()))
        .containsExactly(DiagnosticCode.EMPTY_FILE);
  }

  @Test
  void moreThanTwoHundredThousandEntriesAreRefused() {
    assertThat(said("notes: [" + "1,".repeat(200_001) + "]"))
        .contains(DiagnosticCode.TOO_MANY_ENTRIES);
  }

  @Test
  void aTextOfMoreThan65536CharactersIsRefused() {
    assertThat(said("notes: " + "x".repeat(65_537))).contains(DiagnosticCode.TEXT_TOO_LONG);
    assertThat(said("notes: " + "x".repeat(65_536))).doesNotContain(DiagnosticCode.TEXT_TOO_LONG);
  }

  /** Of two UTF-16 units: one may be the last that the library's buffer holds. */
  @Test
  void aCharacterOfTwoHalvesIsReadWhereverItStands() {
    for (int before = 65_400; before < 65_540; before++) {
      String text = "notes: |\n  x\n" + "#".repeat(before) + "\n# \uD83D\uDE9A\n";
      assertThat(YamlTreeBuilder.read(new SourceFile("r", text)).diagnostics())
          .as("%s", before)
          .isEmpty();
    }
    String trucks = "notes: \"" + "\uD83D\uDE9A".repeat(32_768) + "\"\n";
    for (String text : List.of(trucks, "more-" + trucks, "some-" + "more-" + trucks)) {
      assertThat(YamlTreeBuilder.read(new SourceFile("r", text)).diagnostics()).isEmpty();
    }
  }

  @Test
  void afterAThousandProblemsTheRestIsLeftOut() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 1500; i++) {
      text.append("unknown-").append(i).append(": x\n");
    }
    assertThat(said(text.toString())).contains(DiagnosticCode.TOO_MANY_PROBLEMS).hasSize(1001);
  }

  @Test
  void moreThanFiftyThingsHeldToBeRightAreRefused() {
    assertThat(said(pairs(50))).doesNotContain(DiagnosticCode.TOO_MANY_CLAIMS);
    assertThat(said(pairs(51))).contains(DiagnosticCode.TOO_MANY_CLAIMS);
  }

  /** Sources that each say another pair of eleven finishes, of which there are 55. */
  private static String pairs(int sources) {
    StringBuilder yaml = new StringBuilder("finishes:\n");
    for (int i = 0; i < 11; i++) {
      yaml.append("  f%d: {name: F}\n".formatted(i));
    }
    yaml.append("sources:\n");
    for (int i = 0; i < sources; i++) {
      yaml.append("  s%d: {kind: drawing, grade: A, title: S}\n".formatted(i));
    }
    yaml.append("areas:\n  a:\n    name: A\n    items:\n      i:\n        title: I\n");
    yaml.append("        points: 1\n        claims:\n");
    int source = 0;
    for (int one = 0; one < 11; one++) {
      for (int other = one + 1; other < 11 && source < sources; other++) {
        yaml.append(
            "          - {source: s%d, says: {finish: [f%d, f%d]}}\n"
                .formatted(source++, one, other));
      }
    }
    return yaml.toString();
  }

  @Test
  void aLongChainOfCopiesIsWalkedThrough() {
    StringBuilder text = new StringBuilder("sources:\n");
    for (int i = 0; i < 499; i++) {
      text.append("  s%d: {kind: drawing, grade: A, title: T, copies: s%d}\n".formatted(i, i + 1));
    }
    text.append("  s499: {kind: drawing, grade: A, title: T, copies: s0}\n");
    assertThat(said(text.toString())).contains(DiagnosticCode.CIRCULAR_COPIES);
  }

  private static List<DiagnosticCode> said(String text) {
    return codes(RuleSetReader.parse(List.of(new SourceFile("rules.yaml", text))).diagnostics());
  }

  private static List<DiagnosticCode> codes(List<Diagnostic> diagnostics) {
    return diagnostics.stream().map(Diagnostic::code).toList();
  }
}
