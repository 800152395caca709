package assize.newrecord;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YamlCommentsTest {
  @Test
  void breaksLongLinesAndKeepsParagraphs() {
    String text = "One\nline.\n\n- an entry\n- another\n  that goes on\n" + "word ".repeat(40);
    assertThat(YamlComments.of(2, "Note: ", text))
        .startsWith("  # Note: One line.", "  #", "  #       - an entry")
        .allMatch(line -> line.length() <= 92 && line.startsWith("  #"))
        .anyMatch(line -> line.startsWith("  #       - another that goes on word"))
        .anyMatch(line -> line.startsWith("  #         word"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a\nb: c",
        "a\r\nb: c",
        "a\rb: c",
        "a\u0085b: c",
        "a\u2028b: c",
        "a\u2029b: c",
        "a\u000Bb\u000Cc",
        "a\u202Eb\u200B\uFEFFc",
        "# yaml-language-server: $schema=https://example.org/x",
        "\u0000\u0007",
        "--- x\n...\n%YAML 1.2",
        "*/ <!-- {{ ]]> ' \" \\",
      })
  void nothingBreaksOut(String text) {
    List<String> lines = YamlComments.of(0, "", "first " + text);
    assertThat(lines)
        .isNotEmpty()
        .allMatch(line -> line.startsWith("#"))
        .allMatch(line -> line.matches("[^\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}]*"))
        .noneMatch(line -> line.contains("yaml-language-server"));
  }
}
