package assize.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.Pinned;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.spreadsheet.Tables.Vehicle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each table of the folder {@code src/test/tables}, and each of {@link BadWorkbooks}, and what is
 * said of it.
 */
class BadTablesTest {
  private static final Path TABLES = Path.of("src/test/tables");

  @TempDir private Path folder = Path.of("");

  static List<String> names() throws IOException {
    return new ArrayList<>(tables().keySet());
  }

  private static Map<String, byte[]> tables() throws IOException {
    Map<String, byte[]> all = new TreeMap<>();
    try (Stream<Path> files = Files.list(TABLES)) {
      for (Path file : files.filter(it -> it.toString().endsWith(".csv")).toList()) {
        all.put(String.valueOf(file.getFileName()), Files.readAllBytes(file));
      }
    }
    BadWorkbooks.all().forEach((name, bytes) -> all.put(name + ".xlsx", bytes));
    return all;
  }

  static Vehicle vehicle() throws IOException {
    return Vehicle.of(
        Files.readString(TABLES.resolve("rules.yaml")),
        Files.readString(TABLES.resolve("record.yaml")));
  }

  @Tag("pinned")
  @ParameterizedTest
  @MethodSource("names")
  void saysWhatIsExpected(String name) throws IOException {
    byte[] bytes = tables().getOrDefault(name, new byte[0]);
    String said = vehicle().said(Tables.file(folder, name, bytes));
    assertThat(said).isNotEmpty();
    Pinned.equal(TABLES.resolve(name + ".txt"), said);
  }

  @Test
  void everyCodeOfTablesHasACase() throws IOException {
    Set<DiagnosticCode> seen = EnumSet.noneOf(DiagnosticCode.class);
    for (Map.Entry<String, byte[]> table : tables().entrySet()) {
      Result<FilledSheet> read =
          vehicle().read(Tables.file(folder, table.getKey(), table.getValue()));
      assertThat(read.value().isPresent()).as(table.getKey()).isEqualTo(!read.hasErrors());
      read.diagnostics().stream().map(Diagnostic::code).forEach(seen::add);
    }
    List<DiagnosticCode> all = Arrays.asList(DiagnosticCode.values());
    assertThat(seen)
        .containsAll(
            EnumSet.range(DiagnosticCode.NOT_A_TABLE, DiagnosticCode.SHEET_FOR_OTHER_RULE_SET))
        .containsAll(
            all.subList(
                all.indexOf(DiagnosticCode.SHEET_FOR_OTHER_RECORD),
                all.indexOf(DiagnosticCode.POSSIBLY_CONVERTED_CELL)))
        .contains(DiagnosticCode.POSSIBLY_CONVERTED_CELL);
  }

  @Test
  void everyBeginningOfATableGivesMessagesAndNeverMore() throws IOException {
    Vehicle vehicle = vehicle();
    for (String ending : List.of(".xlsx", ".csv")) {
      byte[] whole = vehicle.table(ending);
      for (int length = 0; length < whole.length; length += 1 + whole.length / 150) {
        Path file = Tables.file(folder, "cut" + ending, Arrays.copyOf(whole, length));
        Result<FilledSheet> read = vehicle.read(file);
        assertThat(read.value().isPresent()).isEqualTo(!read.hasErrors());
      }
    }
  }
}
