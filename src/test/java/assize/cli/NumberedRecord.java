package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** A record with two numbers, to be redacted and proved. */
record NumberedRecord(Path folder) {
  private static final Pattern CODE = Pattern.compile("proof code  (\\S+)");

  private static final String RULES =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      models: {X1: {name: Dropside, production: 1932-03/1936-08}}
      sources: {guide: {kind: club guide, grade: C, title: Guide}}
      number_tables:
        chassis: {name: Chassis number, series: [{prefix: L45-, models: [X1], first_numbers: {4000: 1934-01-01, 5000: 1935-01-01}}]}
        engine: {name: Engine number, series: [{prefix: E, models: [X1], first_numbers: {1: 1934-01-01, 9000: 1935-01-01}}]}
      colors: {black: {name: Black}}
      areas: {cab: {name: Cab, items: {lamp: {title: Lamp, points: 4, expect: {color: black}, source: guide}}}}
      """;

  static final String TEXT =
      """
      record: truck
      rules: rules.yaml
      vehicle: {name: The truck, model: X1}
      numbers: {chassis: L45-4388, engine: E4711}
      built: {date: 1934-05, basis: plate}
      """;

  /** Writes the record and its rule set into a folder. */
  static NumberedRecord in(Path folder) throws IOException {
    Files.writeString(folder.resolve("rules.yaml"), RULES);
    NumberedRecord made = new NumberedRecord(folder);
    Files.writeString(made.file(), TEXT);
    return made;
  }

  Path file() {
    return folder.resolve("truck.yaml");
  }

  /** Makes the redacted copy. */
  CommandResult redact() {
    return CommandResult.of("judge", file(), "--redact", "--out", folder.resolve("out"));
  }

  Path page() {
    return folder.resolve("out/truck-redacted.html");
  }

  /** Returns what opens each number, as the owner is told it. */
  List<String> keys() {
    CommandResult ran = CommandResult.of("prove", file());
    assertThat(ran.exit()).as(ran.err()).isZero();
    return CODE.matcher(ran.out()).results().map(one -> one.group(1)).toList();
  }
}
