package assize.schema;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.judge.Judge;
import assize.newrecord.RecordTemplate;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView;
import assize.report.sheet.InspectionViewFactory;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas refuse nothing that the readers read, and what is wrong in shape they refuse too. */
class SchemaAgreementTest {
  private static final Path CORPUS = Path.of("src/test/corpus");

  /** What an editor tells by itself, since it is no YAML, or none that one file can tell. */
  private static final Set<DiagnosticCode> NO_TREE =
      EnumSet.of(
          DiagnosticCode.FILE_NOT_FOUND,
          DiagnosticCode.CANNOT_OPEN_FILE,
          DiagnosticCode.NOT_UTF8,
          DiagnosticCode.EMPTY_FILE,
          DiagnosticCode.CONTROL_CHARACTER,
          DiagnosticCode.TAB_INDENTATION,
          DiagnosticCode.SYNTAX,
          DiagnosticCode.ALIAS,
          DiagnosticCode.ANCHOR,
          DiagnosticCode.MERGE_KEY,
          DiagnosticCode.TAG,
          DiagnosticCode.SECOND_DOCUMENT,
          DiagnosticCode.DUPLICATE_KEY,
          DiagnosticCode.INVALID_KEY,
          DiagnosticCode.TOO_DEEP);

  static List<Path> cases() throws IOException {
    try (Stream<Path> folders = Files.list(CORPUS)) {
      return folders.filter(Files::isDirectory).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agreesOnTheCorpus(Path folder) throws IOException {
    Path single = folder.resolve("rules.yaml");
    Path rules = Files.exists(single) ? single : folder.resolve("rules");
    var read = RuleSetReader.read(rules, "rules");
    hold(files(rules), read.diagnostics(), EditorYaml.RULE_SET);
    Path record = folder.resolve("record.yaml");
    if (read.value().isPresent() && Files.exists(record)) {
      RuleSet value = read.value().get();
      hold(
          List.of(record),
          RecordReader.read(record, "record.yaml", value).diagnostics(),
          EditorYaml.RECORD);
    }
  }

  private static List<Path> files(Path rules) throws IOException {
    if (!Files.isDirectory(rules)) {
      return Files.isRegularFile(rules) ? List.of(rules) : List.of();
    }
    try (Stream<Path> all = Files.walk(rules)) {
      return all.filter(it -> it.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static void hold(
      List<Path> files, List<Diagnostic> said, com.networknt.schema.Schema schema)
      throws IOException {
    Set<DiagnosticCode> codes = ReaderMessages.errors(said);
    if (codes.stream().anyMatch(NO_TREE::contains)) {
      return;
    }
    List<String> refused = new ArrayList<>();
    for (Path file : files) {
      refused.addAll(EditorYaml.refused(schema, Files.readString(file)));
    }
    if (codes.stream().anyMatch(ReaderMessages.STRUCTURAL::contains)) {
      assertThat(refused).as("%s: %s", files, codes).isNotEmpty();
    } else if (codes.isEmpty()) {
      assertThat(refused).as("%s", files).isEmpty();
    }
  }

  /** An editor finds no fault in a record that is not filled in yet. */
  @Test
  void readsARecordToFillIn() {
    RuleSet rules = RuleSetReader.read(Path.of("rules/tarrowby-type-l")).value().orElseThrow();
    String known = "record: r\nrules: r\nvehicle: {name: Ours, model: L45}\n";
    VehicleRecord vehicle =
        RecordReader.parse(new SourceFile("r.yaml", known), rules).value().orElseThrow();
    InspectionView view = InspectionViewFactory.of(Judge.judge(rules, vehicle, Optional.empty()));
    String text = RecordTemplate.text(view, vehicle, rules, "r.yaml");
    assertThat(EditorYaml.refused(EditorYaml.RECORD, text)).isEmpty();
    assertThat(EditorYaml.refused(EditorYaml.RECORD, text + "traces:\n")).isNotEmpty();
  }

  @Test
  void readsTheDemonstration() throws IOException {
    Path demo = Path.of("rules");
    int records = 0;
    try (Stream<Path> all = Files.walk(demo)) {
      for (Path file : all.filter(it -> it.toString().endsWith(".yaml")).toList()) {
        boolean isRecord = RecordReader.isRecord(file);
        assertThat(
                EditorYaml.refused(
                    isRecord ? EditorYaml.RECORD : EditorYaml.RULE_SET, Files.readString(file)))
            .as("%s", file)
            .isEmpty();
        records += isRecord ? 1 : 0;
      }
    }
    assertThat(records).isGreaterThan(2);
  }
}
