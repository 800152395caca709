package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Vehicles of few digits: their numbers are the same as points, days and counts of the page. A copy
 * of one reads as that of its neighbor, of which the standard says nothing.
 */
class LowNumberTest {
  private static final String RULES =
      """
      rule_set: standard-S
      name: Standard S
      edition: "S"
      issued: 1999-07-12
      maker: Maker S
      notes: "*S* notes, and S-S"
      scale: {method: sum, out_of: 165, allowances: {cause S: 0.5}}
      awards:
        gold-S: {name: Gold S, min_score: 12}
      models:
        X-S: {name: Model S, production: 1932-07-12/1936-12-07}
      plants:
        west-S: Works S
      markets:
        home-S: Market S
      equipment:
        heater-S: Heater S
      sources:
        drawing-S: {kind: drawing, grade: A, title: Drawing S, held_by: S, date: 1934-07-12, notes: "S, *S*"}
        guide-S: {kind: club guide, grade: C, title: "S", copies: [drawing-S]}
        album-S: {kind: club guide, grade: B, title: Album S}
      number_tables:
        chassis-S: {name: Number S, series: [{SERIES}]}
      colors:
        black-S: {name: Black S}
        red: {name: Red}
      finishes:
        nickel-S: {name: Nickel S}
        chrome: {name: "S"}
      conditions: {fine-S: 1, worn: 0.7}
      areas:
        cab-S:
          name: Cab S
          items:
            button-S:
              title: Button S
              points: 7
              look: Look at S, and at L-S
              notes: |
                S or more.

                S. thing
              claims:
                - {source: drawing-S, cite: "S", says: {finish: nickel-S}}
                - {source: guide-S, cite: page S, says: {finish: nickel-S}}
                - {source: album-S, cite: "page S, S", says: {finish: chrome}}
            lamp:
              title: "S"
              points: 12
              expect: {color: black-S}
              source: guide-S
            block:
              title: Block
              points: 45
              expect: {part_number: ["S"]}
              source: guide-S
            cap:
              title: Cap
              points: 50
              expect: {part_number: "[A-W]+[X-Z]+|S", count: 7, size: 12 mm}
              source: guide-S
            state:
              title: State
              points: 51
              expect: {condition: graded}
              source: guide-S
      """;

  /** S stands for the number that the standard is about, N for the vehicle's. */
  private static final String RECORD =
      """
      record: truck-N
      rules: rules.yaml
      edition: "S"
      vehicle: {name: Frame N, model: X-S, notes: "Frame N of the first batch (N)"}
      numbers: {chassis-S: "PREFIXN"}
      BUILT
      plant: west-S
      market: home-S
      equipment: {heater-S: yes}
      inspected: {by: "N", on: 1999-12-07}
      evidence:
        plate-N: {photo: photos/frame-N.png, caption: "N", taken: 1999-07, by: Guest N}
        reading-N: {measurement: "N"}
      traces:
        - {item: button-S, grade: B, says: {finish: chrome}, where: "Behind N", evidence: [plate-N]}
      observations:
        button-S:
          finish: chrome
          note: "N"
          by: "N"
          on: 1999-07-12
          departure: {reason: because of N, explanation: Because of N, review_by: 1999-08-07}
          owner_view: {expects: {finish: chrome}, reason: "N, [N](http://n.example/N) and (N)"}
          evidence: [plate-N, reading-N]
        lamp: {color: {chip: red, light: Lamp N, by: N}}
        block: {part_number: "N"}
        cap: {part_number: "N", count: 12, size: 45 mm}
        state: {condition: fine-S}
      """;

  private static final String SERIES =
      "prefix: PREFIX, models: [X-S], first_numbers: {1: 1934-01-01, 600: 1935-01-01},"
          + " last: {number: 1900, built: 1935-12-31}";

  private Path folder = Path.of("");

  @BeforeEach
  void lay(@TempDir Path folder) {
    this.folder = folder;
  }

  /**
   * Lays out a vehicle.
   *
   * @param said the number that the standard is about
   * @param number the vehicle's own
   * @param dated whether the standard dates it, and the record does not
   */
  private Path lay(String said, String number, boolean dated) throws IOException {
    Path at = folder.resolve(number);
    Files.createDirectories(at.resolve("photos"));
    Files.copy(
        Path.of("rules/photos/horn-button.png"), at.resolve("photos/frame-" + number + ".png"));
    String rules = RULES.replace("SERIES", SERIES).replace("PREFIX", dated ? "Q" : "Z");
    String record =
        RECORD
            .replace("BUILT", dated ? "" : "built: {date: 1934-07-12, basis: plate N}")
            .replace("PREFIX", dated ? "Q" : "");
    Files.writeString(at.resolve("rules.yaml"), put(rules, "S", said));
    Files.writeString(at.resolve("truck.yaml"), put(put(record, "S", said), "N", number));
    return at.resolve("truck.yaml");
  }

  private static String put(String text, String name, String number) {
    return text.replaceAll("\\b(Q?)" + name + "\\b", "$1" + number);
  }

  /** Returns all that is made for others, but for the hashes under a secret. */
  private static Map<String, String> made(Path record) throws IOException {
    Map<String, String> made = new TreeMap<>();
    for (String command : new String[] {"judge", "dossier", "results"}) {
      Path out = record.resolveSibling(command);
      boolean results = command.equals("results");
      CommandResult ran =
          CommandResult.of(
              command, results ? record.resolveSibling("") : record, "--redact", "--out", out);
      assertThat(ran.exit()).as(command + ran.err()).isZero();
      CommandBench.content(out)
          .forEach(
              (name, text) -> made.put(command + name, text.replaceAll("\\b[0-9a-f]{64}\\b", "")));
    }
    made.put("json", CommandResult.of("judge", record, "--redact", "--json", "-").out());
    return made;
  }

  @ParameterizedTest
  @CsvSource({
    "7, 8, false",
    "12, 7, false",
    "45, 46, false",
    "101, 9, false",
    "7, 8, true",
    "12, 101, true",
    "45, 46, true",
    "101, 599, true",
  })
  void readsAsTheCopyOfAnotherNumber(String number, String other, boolean dated)
      throws IOException {
    Map<String, String> made = made(lay(number, number, dated));
    assertThat(made).isEqualTo(made(lay(number, other, dated)));
    assertThat(made.get("judgetruck-xxx-redacted.html"))
        .contains("7 points", "Frame xxx of the first batch (xxx)", "page " + number);
  }

  /** A link in the middle of a number is nothing that the mask sees through. */
  @ParameterizedTest
  @ValueSource(strings = {"Came with 1[2](http://a.example)", "Came with 1&shy;2"})
  void aLowNumberThatIsLeftInANoteIsFound(String note) throws IOException {
    Path record = lay("3", "12", false);
    Files.writeString(
        record, Files.readString(record).replace("Frame 12 of the first batch (12)", note));
    Path out = record.resolveSibling("out");
    CommandResult ran = CommandResult.of("judge", record, "--redact", "--out", out);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err())
        .contains("still shows what it should not", "in “the record”: “Came with x")
        .doesNotContain("12”");
    assertThat(out).doesNotExist();
  }

  /** What a date code means is worked out from it, and could be turned back. */
  @Test
  void aDateCodeThatIsTheNumberIsLeftOut() throws IOException {
    Path record = lay("3", "7", false);
    Path rules = record.resolveSibling("rules.yaml");
    String code = "expect: {date_code: {pattern: \"(?P<year>[0-9])\", lead_time: P20Y..P0D}}";
    Files.writeString(
        rules, Files.readString(rules).replace("expect: {part_number: [\"3\"]}", code));
    Files.writeString(
        record, Files.readString(record).replace("block: {part_number:", "block: {date_code:"));
    String page = made(record).get("judgetruck-xxx-redacted.html");
    assertThat(page).contains(": the number stamped there, since").doesNotContain("is 1917");
  }
}
