package assize.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.text.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class DiagnosticFormatterTest {
  @Test
  void showsTheLineWithCaretsUnderThePlace() {
    assertThat(
            print(
                "finishes:\n  a: b\nitem:\n    finish: nickle\n",
                "nickle",
                "did you mean \"nickel\"?"))
        .isEqualTo(
            """
            error[unknown-finish]: there is no such finish
             --> rules.yaml:4:13
            4 |     finish: nickle
              |             ^^^^^^ did you mean "nickel"?

            1 error in 1 file
            """);
  }

  @Test
  void aTabCountsAsTheSpacesItIsShownAs() {
    assertThat(print("\tfinish:\tx\n", "x", "here"))
        .contains("1 |     finish:    x\n  |                ^ here\n");
  }

  @Test
  void aWideLetterTakesTwoColumns() {
    assertThat(print("漆: x\n", "x", "here")).contains("1 | 漆: x\n  |     ^ here\n");
    assertThat(print("🚚🚚 x\n", "x", "here")).contains("  |      ^ here\n");
    assertThat(print("e\u0301: x\n", "x", "here")).contains("  |    ^ here\n");
  }

  @Test
  void whatWouldSteerTheTerminalIsShownAsAnEscape() {
    String said = print("a: \u001B[31mred\u202E x\n", "x", "\u001B]0;title\u0007");
    assertThat(said)
        .contains("a: <U+001B>[31mred<U+202E> x")
        .contains("^ <U+001B>]0;title<U+0007>")
        .doesNotContain("\u001B")
        .doesNotContain("\u202E");
  }

  @Test
  void aLongLineIsCutAroundThePlace() {
    String said = print("a".repeat(5000) + " nickle " + "b".repeat(5000) + "\n", "nickle", "here");
    assertThat(said).contains("...aaa").contains("aaa nickle bbb").contains("bbb...");
    assertThat(said.lines()).allMatch(line -> line.length() < 140);
    List<String> lines = said.lines().toList();
    assertThat(lines.get(3).indexOf('^')).isEqualTo(lines.get(2).indexOf("nickle"));
  }

  @Test
  void aPlaceOfManyLinesIsMarkedInTheFirst() {
    SourceFile file = new SourceFile("rules.yaml", "a:\n  - one\n  - two\n");
    String said =
        DiagnosticFormatter.print(
            List.of(Diagnostic.of(DiagnosticCode.WRONG_STRUCTURE, file.span(5, 18), "a list")),
            false);
    assertThat(said).contains("2 |   - one\n  |   ^^^^^\n");
  }

  @Test
  void countsErrorsAndDoubtsAndFilesAndSortsThem() {
    SourceFile first = new SourceFile("a.yaml", "x\ny\n");
    SourceFile second = new SourceFile("b.yaml", "z\n");
    String said =
        DiagnosticFormatter.print(
            List.of(
                Diagnostic.of(DiagnosticCode.NO_SOURCE, second.span(0, 1), "third"),
                Diagnostic.of(DiagnosticCode.UNKNOWN_FINISH, first.span(2, 3), "second"),
                Diagnostic.of(DiagnosticCode.UNKNOWN_COLOR, first.span(0, 1), "first")),
            false);
    assertThat(said).endsWith("2 errors and 1 warning in 2 files\n");
    assertThat(said.indexOf("first")).isLessThan(said.indexOf("second"));
    assertThat(said.indexOf("second")).isLessThan(said.indexOf("third"));
    assertThat(said).contains("warning[no-source]: third");
  }

  @Test
  void colorsOnlyIfAsked() {
    SourceFile file = new SourceFile("a.yaml", "x\n");
    List<Diagnostic> one =
        List.of(Diagnostic.of(DiagnosticCode.UNKNOWN_COLOR, file.span(0, 1), "first"));
    assertThat(DiagnosticFormatter.print(one, false)).doesNotContain("\u001B");
    assertThat(DiagnosticFormatter.print(one, true)).contains("\u001B[1;31merror[unknown-color]");
  }

  @Test
  void nothingIsPrintedOfNothing() {
    assertThat(DiagnosticFormatter.print(List.of(), false)).isEmpty();
  }

  private static String print(String text, String place, String hint) {
    SourceFile file = new SourceFile("rules.yaml", text);
    int at = text.indexOf(place);
    return DiagnosticFormatter.print(
        List.of(
            Diagnostic.of(
                DiagnosticCode.UNKNOWN_FINISH,
                file.span(at, at + place.length()),
                "there is no such finish",
                hint)),
        false);
  }
}
