package assize.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The documentation has a word on each code. */
class DiagnosticCodeTest {
  @ParameterizedTest
  @EnumSource(DiagnosticCode.class)
  void isExplainedWithAnExample(DiagnosticCode code) throws IOException {
    String entry = entries().get(code.id());
    assertThat(entry).as(code.id()).isNotNull().contains("\nnot:  ").contains("\nbut:  ");
    assertThat(entry).containsIgnoringCase(code.meaning());
  }

  @Test
  void nothingElseIsExplained() throws IOException {
    assertThat(entries().keySet())
        .containsExactlyElementsOf(
            Arrays.stream(DiagnosticCode.values()).map(DiagnosticCode::id).toList());
  }

  private static Map<String, String> entries() throws IOException {
    Map<String, String> entries = new LinkedHashMap<>();
    String page = Files.readString(Path.of("docs/messages.md"));
    for (String part : page.split("(?m)^### ")) {
      int end = part.indexOf('\n');
      entries.put(part.substring(0, end), part.substring(end).split("(?m)^## ")[0]);
    }
    entries.remove("# What the messages mean");
    return entries;
  }
}
