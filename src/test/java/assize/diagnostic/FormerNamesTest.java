package assize.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class FormerNamesTest {
  private static final Path SCHEMAS = Path.of("docs/schema");

  @Test
  void eachHasBecomeANameOfToday() throws IOException {
    String schemas =
        Files.readString(SCHEMAS.resolve("rule-set.json"))
            + Files.readString(SCHEMAS.resolve("record.json"));
    assertThat(FormerNames.ALL)
        .isNotEmpty()
        .allSatisfy(
            it -> {
              assertThat(DiagnosticCode.of(it.before())).as(it.before()).isEmpty();
              assertThat(
                      DiagnosticCode.of(it.now()).isPresent()
                          || schemas.contains("\"" + it.now() + "\""))
                  .as(it.now())
                  .isTrue();
            });
  }

  @Test
  void isAnsweredOnlyWhereTheNameOfTodayCanStand() {
    assertThat(NameSuggestions.nearest("because", List.of("warning", "about", "reason")))
        .contains("reason");
    assertThat(NameSuggestions.nearest("because", List.of("finish", "owner_view")))
        .contains("owner_view");
    assertThat(NameSuggestions.nearest("because", List.of("finish", "note"))).isEmpty();
    assertThat(NameSuggestions.nearest("no-such-file", List.of("file-not-found")))
        .contains("file-not-found");
  }
}
