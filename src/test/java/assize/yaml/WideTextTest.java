package assize.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.RuleSetReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file in another Unicode encoding is one error, with or without a byte order mark. */
class WideTextTest {
  @TempDir private Path folder = Path.of("");

  private List<Diagnostic> said(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("rules.yaml"), bytes);
    return RuleSetReader.read(file, "rules.yaml").diagnostics();
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-16LE, '', UTF-16",
    "UTF-16BE, '', UTF-16",
    "UTF-32LE, '', UTF-32",
    "UTF-32BE, '', UTF-32",
    "UTF-16LE, \uFEFF, UTF-16",
    "UTF-16BE, \uFEFF, UTF-16",
    "UTF-32LE, \uFEFF, UTF-32",
    "UTF-32BE, \uFEFF, UTF-32"
  })
  void isSaidOnceWithWhatToDo(String encoding, String mark, String name) throws IOException {
    String fine = Files.readString(Path.of("src/test/corpus/fine/rules.yaml"));
    String text = mark + fine.replace("small", "gr\u00F6\u00DFere \u041C\u0430");
    List<Diagnostic> said = said(text.getBytes(Charset.forName(encoding)));
    assertThat(said).extracting(Diagnostic::code).containsExactly(DiagnosticCode.NOT_UTF8);
    assertThat(said.get(0).message()).isEqualTo("this file is " + name + "; save it as UTF-8");
    assertThat(said.get(0).hint())
        .contains("many editors offer UTF-8 under Save As, as the encoding");
  }

  /** Zero bytes alone, and few characters, are told as what they are. */
  @Test
  void zeroBytesAreNotTakenForAnotherEncoding() throws IOException {
    for (String text : List.of("rule_set: a\0b\0c\n", "\0\0\0\0\0\0", "a\0")) {
      assertThat(said(text.getBytes(StandardCharsets.UTF_8)))
          .as(text)
          .extracting(Diagnostic::code)
          .contains(DiagnosticCode.CONTROL_CHARACTER)
          .doesNotContain(DiagnosticCode.NOT_UTF8);
    }
  }

  /**
   * The beginning is what is looked at, so that a part of another encoding behind does not count.
   */
  @Test
  void aTextThatChangesItsEncodingIsReadAsUtf8() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes("# fine\n".repeat(1000).getBytes(StandardCharsets.UTF_8));
    bytes.writeBytes("name: x".getBytes(StandardCharsets.UTF_16LE));
    assertThat(said(bytes.toByteArray()))
        .extracting(Diagnostic::code)
        .contains(DiagnosticCode.CONTROL_CHARACTER);
  }
}
