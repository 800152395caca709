package assize.spreadsheet;

import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.record.Observation;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView;
import assize.report.sheet.InspectionViewFactory;
import assize.report.text.DiagnosticFormatter;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Writes tables of records, and makes records of what tables say. */
final class Tables {
  private static final Path RULES = Path.of("rules");

  /** What was read already: rule sets are long. */
  private static final Map<String, Vehicle> DEMONSTRATION = new ConcurrentHashMap<>();

  private Tables() {}

  /** A record and its rule set. */
  record Vehicle(RuleSet rules, VehicleRecord record) {
    static Vehicle demonstration(String name) {
      return DEMONSTRATION.computeIfAbsent(name, Vehicle::read);
    }

    private static Vehicle read(String name) {
      Path file = RULES.resolve(name + ".yaml");
      Path rules = good(RecordReader.rulesOf(file));
      RuleSet read = good(RuleSetReader.read(rules));
      return new Vehicle(read, good(RecordReader.read(file, read)));
    }

    static Vehicle of(String rulesYaml, String recordYaml) {
      RuleSet rules = good(RuleSetReader.parse(List.of(new SourceFile("rules.yaml", rulesYaml))));
      return new Vehicle(
          rules, good(RecordReader.parse(new SourceFile("record.yaml", recordYaml), rules)));
    }

    InspectionView view() {
      Judgment judgment = Judge.judge(rules, record, Optional.empty());
      return InspectionViewFactory.of(judgment);
    }

    byte[] table(String ending) {
      return ending.equals(".xlsx")
          ? TableWriter.xlsx(view(), rules, record)
          : TableWriter.csv(view(), rules, record);
    }

    Path write(Path folder, String ending) {
      return file(folder, "truck" + ending, table(ending));
    }

    Result<FilledSheet> read(Path file) {
      return TableReader.read(file, String.valueOf(file.getFileName()), rules, record);
    }

    /** Returns what is printed of a table. */
    String said(Path file) {
      return DiagnosticFormatter.print(read(file).diagnostics(), false);
    }

    Vehicle with(Map<String, Observation> observations) {
      return new Vehicle(rules, record.with(VehicleRecord.OBSERVATIONS, observations));
    }

    /** Makes a record that says what a table says, and nothing else. */
    Map<String, Observation> observations(FilledSheet filled) {
      Map<String, StringBuilder> items = new LinkedHashMap<>();
      for (FilledSheet.SheetEntry entry : filled.entries()) {
        items
            .computeIfAbsent(entry.item(), it -> new StringBuilder("  " + it + ":\n"))
            .append("    " + entry.key() + ": " + entry.yaml() + "\n");
      }
      StringBuilder yaml =
          new StringBuilder("record: r\nrules: x\nvehicle: {name: n}\nevidence:\n");
      record.evidence().keySet().forEach(it -> yaml.append("  " + it + ": {measurement: m}\n"));
      yaml.append("  spare: {measurement: m}\nobservations:\n");
      items.values().forEach(yaml::append);
      String text = items.isEmpty() ? yaml + "  {}\n" : yaml.toString();
      return good(RecordReader.parse(new SourceFile("made.yaml", text), rules)).observations();
    }
  }

  static Path file(Path folder, String name, byte[] bytes) {
    try {
      return Files.write(folder.resolve(name), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static <T> T good(Result<T> read) {
    return read.value()
        .orElseThrow(
            () -> new AssertionError(DiagnosticFormatter.print(read.diagnostics(), false)));
  }
}
