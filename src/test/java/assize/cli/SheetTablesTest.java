package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.spreadsheet.FilledSheet;
import assize.spreadsheet.TableReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Inspection sheets for a spreadsheet, by the command line. */
class SheetTablesTest {
  private static final Path TABLES = Path.of("src/test/tables");

  @TempDir private Path folder = Path.of("");

  private Path record() throws IOException {
    Files.copy(TABLES.resolve("rules.yaml"), folder.resolve("rules.yaml"));
    String record = Files.readString(TABLES.resolve("record.yaml"));
    return Files.writeString(
        folder.resolve("ours.yaml"),
        record
            + "observations:\n"
            + "  horn-button: {finish: nickel, evidence: photo-12, note: \"=1+1\"}\n"
            + "  data-plate: {part_number: \"0123-7\"}\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {".xlsx", ".csv"})
  void aRecordIsWrittenAndReadBack(String ending) throws IOException {
    Path record = record();
    Path out = folder.resolve("Sheet" + ending);
    CommandResult ran = CommandResult.of("sheet", record, "--out", out);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).isEqualTo("wrote " + RecordFileFinder.shown(out) + "\n");
    RuleSet rules = RuleSetReader.read(folder.resolve("rules.yaml")).value().orElseThrow();
    VehicleRecord vehicle = RecordReader.read(record, rules).value().orElseThrow();
    FilledSheet filled = TableReader.read(out, "s", rules, vehicle).value().orElseThrow();
    assertThat(filled.entries())
        .extracting(it -> it.item() + " " + it.key() + ": " + it.yaml())
        .containsExactly(
            "horn-button finish: nickel",
            "horn-button note: '=1+1'",
            "horn-button evidence: [photo-12]",
            "data-plate part_number: 0123-7");
  }

  @Test
  void aRuleSetGivesATableWithNothingFilledIn() throws IOException {
    record();
    Path out = folder.resolve("new.csv");
    CommandResult ran =
        CommandResult.of("sheet", folder.resolve("rules.yaml"), "--model", "X1", "--out", out);
    assertThat(ran.err()).isEmpty();
    List<String> lines = Files.readAllLines(out, StandardCharsets.UTF_8);
    assertThat(lines).hasSize(7);
    assertThat(lines.get(0)).startsWith("\uFEFF\"No.\",\"Area\"");
    assertThat(lines.get(1)).contains("\"Horn button\",\"finish\"", "\"horn-button\"");
  }

  @Test
  void anotherEndingIsRefusedWithThoseThatAreKnown() throws IOException {
    CommandResult ran = CommandResult.of("sheet", record(), "--out", folder.resolve("ours.ods"));
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("ends in .html, .xlsx, .csv");
    assertThat(folder.resolve("ours.ods")).doesNotExist();
  }
}
