package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Goes to each limit of the page, and one past it: only there is it said, in the page's words. */
@Tag("slow")
class LimitsPageTest {
  private static final Path PAGE = Path.of("docs/limits.md");

  /** A row of the table. */
  record LimitRow(String what, long most, String said) {
    @Override
    public String toString() {
      return what;
    }
  }

  static List<LimitRow> rows() throws Exception {
    String page = Files.readString(PAGE);
    String table = page.substring(page.indexOf("| what "), page.indexOf("\n\nA workbook"));
    return table
        .lines()
        .skip(2)
        .map(line -> line.split("\\|"))
        .map(
            cell ->
                new LimitRow(
                    cell[1].strip(),
                    Long.parseLong(cell[2].strip()),
                    cell[3].strip().replaceAll("^`|`$", "")))
        .toList();
  }

  @Test
  void eachRowIsTried() throws Exception {
    Map<String, LimitInputs> tried = new LinkedHashMap<>(LimitInputs.ALL);
    assertThat(rows())
        .extracting(LimitRow::what)
        .containsExactlyInAnyOrderElementsOf(tried.keySet());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isSaidOnePastTheLimitAndNotBefore(LimitRow row, @TempDir Path folder) throws Exception {
    LimitInputs limit = LimitInputs.ALL.get(row.what());
    Path at = Files.createDirectory(folder.resolve("at"));
    Path past = Files.createDirectory(folder.resolve("past"));
    String fine = limit.said(at, row.most());
    String stable = row.said().replaceAll("[0-9]+", "").split("; ")[0].strip();
    assertThat(fine.replaceAll("[0-9]+", "")).as("at %s", row.most()).doesNotContain(stable);
    assertThat(limit.said(past, row.most() + 1)).as("past %s", row.most()).contains(row.said());
    try (Stream<Path> all = Files.list(past)) {
      assertThat(all).noneMatch(it -> it.toString().endsWith("reports"));
    }
  }
}
