package assize.record;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.aspect.PartNumbers;
import assize.aspect.Worded;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordReaderTest {
  private static final Path TRUCK = Path.of("rules/tarrowby-type-l");

  @Test
  void theDemonstrationIsRead() {
    Path file = Path.of("rules/l45-4388.yaml");
    assertThat(RecordReader.isRecord(file)).isTrue();
    assertThat(RecordReader.isRecord(TRUCK.resolve("rules.yaml"))).isFalse();
    Path rulesAt = RecordReader.rulesOf(file).value().orElseThrow();
    assertThat(rulesAt.toAbsolutePath()).isEqualTo(TRUCK.toAbsolutePath());
    RuleSet rules = RuleSetReader.read(rulesAt).value().orElseThrow();
    VehicleRecord record = RecordReader.read(file, rules).value().orElseThrow();
    assertThat(record.id()).isEqualTo("l45-4388");
    assertThat(record.model()).contains("L45");
    assertThat(record.numbers()).isEqualTo(Map.of("chassis", "L45-4388", "engine", "E 20874"));
    assertThat(record.equipment()).containsEntry("heater", true).containsEntry("tilt", false);
    assertThat(at(record, "front-axle-date").findings())
        .containsEntry(Aspect.DATE_CODE, new PartNumbers.Found("09.34"));
    assertThat(record.files()).hasSizeGreaterThan(8);
    assertThat(record.files()).allMatch(it -> it.sha256().matches("[0-9a-f]{64}"));
    assertThat(record.files()).doesNotHaveDuplicates();
  }

  @Test
  void whatMatchesNoWordIsOther() {
    VehicleRecord record =
        small("observations:\n  horn-button:\n    finish: other\n").orElseThrow();
    assertThat(at(record, "horn-button").findings())
        .isEqualTo(Map.of(Aspect.FINISH, new Worded.Found(Finding.OTHER)));
  }

  /** Nothing behind a colon at the end of its line is an aspect that nobody looked at yet. */
  @ParameterizedTest
  @ValueSource(strings = {"finish:", "finish: ", "finish:\r", "finish :"})
  void anAspectMayBeLeftBlank(String line) {
    VehicleRecord record = small("observations:\n  horn-button:\n    " + line + "\n").orElseThrow();
    assertThat(at(record, "horn-button").findings()).isEmpty();
    assertThat(small("observations:\n  horn-button:\n    finish:")).isPresent();
  }

  /** What may be lost without anybody noticing is not taken for a blank. */
  @ParameterizedTest
  @ValueSource(
      strings = {"finish: # nickel", "finish: ~", "note:", "{finish: , note: x}", "{finish}"})
  void whatMayBeLostIsNoBlank(String line) {
    assertThat(small("observations:\n  horn-button:\n    " + line + "\n")).isEmpty();
  }

  @Test
  void aDepartureMayStandAlone() {
    VehicleRecord record =
        small(
                """
                observations:
                  horn-button:
                    departure: {reason: safety, review_by: 2027-05}
                """)
            .orElseThrow();
    var observation = at(record, "horn-button");
    assertThat(observation.findings()).isEmpty();
    assertThat(observation.departure().orElseThrow().reason()).isEqualTo("safety");
  }

  @Test
  void aLinkOutOfTheFolderIsNotFollowed(@TempDir Path folder) throws IOException {
    Path home = Files.createDirectory(folder.resolve("record"));
    Path secret = Files.writeString(folder.resolve("secret.txt"), "not yours");
    Files.createSymbolicLink(home.resolve("lamp.png"), secret);
    Path file =
        Files.writeString(
            home.resolve("record.yaml"),
            """
            record: our-x1
            rules: rules.yaml
            vehicle: {name: A dropside}
            evidence: {lamp: {photo: lamp.png}}
            """);
    assertThat(RecordReader.read(file, rules()).diagnostics())
        .extracting(Diagnostic::code)
        .containsExactly(DiagnosticCode.PATH_OUTSIDE);
  }

  @Test
  void theRuleSetMayNotLieOutside(@TempDir Path folder) throws IOException {
    for (String outside :
        List.of("../rules.yaml", "a/../../rules.yaml", "/etc/rules.yaml", "C:\\rules", "~/rules")) {
      Path file = Files.writeString(folder.resolve("record.yaml"), "rules: '" + outside + "'\n");
      assertThat(RecordReader.rulesOf(file).diagnostics())
          .as(outside)
          .extracting(Diagnostic::code)
          .containsExactly(DiagnosticCode.PATH_OUTSIDE);
    }
  }

  @Test
  void aRecordOfAnotherProgramIsNotOne() {
    assertThat(RecordReader.parse(new SourceFile("a.yaml", "[1, 2]"), rules()).value()).isEmpty();
  }

  private static Observation at(VehicleRecord record, String item) {
    return Optional.ofNullable(record.observations().get(item)).orElseThrow();
  }

  private static Optional<VehicleRecord> small(String more) {
    String head = "record: our-x1\nrules: rules.yaml\nvehicle: {name: A dropside}\n";
    return RecordReader.parse(new SourceFile("record.yaml", head + more), rules()).value();
  }

  private static RuleSet rules() {
    return RuleSetReader.read(Path.of("src/test/corpus/fine/rules.yaml")).value().orElseThrow();
  }
}
