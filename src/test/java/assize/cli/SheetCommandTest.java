package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class SheetCommandTest {
  private static final String RULES =
      """
      rule_set: small
      name: Small standard
      edition: "1"
      scale: {method: sum, out_of: 100}
      models:
        X1: {name: Dropside, production: 1932/1936}
        X2: {name: Van, production: 1932/1936}
      equipment: {heater: Cab heater}
      finishes: {nickel: {name: nickel plate}, chrome: {name: chromium plate}}
      areas:
        cab:
          name: Cab
          items:
            horn-button:
              title: Horn </pre><script>alert(1)</script> button
              points: 2
              look: Rim & <b>center</b>
              hazards: [lead paint]
              expect: {finish: nickel}
            van-door:
              title: Door of the van
              points: 2
              models: [X2]
              expect: {present: yes}
            heater-hose:
              title: Hose of the heater
              points: 2
              equipment: heater
              expect: {count: 2}
      """;

  @TempDir private Path folder = Path.of("");

  private Path rules() throws IOException {
    return Files.writeString(folder.resolve("small.yaml"), RULES);
  }

  private Path record(String text) throws IOException {
    rules();
    return Files.writeString(folder.resolve("ours.yaml"), text);
  }

  private Document page(Object... options) throws IOException {
    Path out = folder.resolve("sheet.html");
    Object[] words = new Object[options.length + 3];
    words[0] = "sheet";
    System.arraycopy(options, 0, words, 1, options.length);
    words[options.length + 1] = "--out";
    words[options.length + 2] = out;
    CommandResult ran = CommandResult.of(words);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).isEqualTo("wrote " + RecordFileFinder.shown(out) + "\n");
    return Jsoup.parse(Files.readString(out));
  }

  private static JsonNode data(Document page) {
    return CommandResult.json(page.select("#data").text());
  }

  @Test
  void asksForWhatAppliesToTheVehicleByTheNumbersOfTheRuleSet() throws IOException {
    assertThat(page(rules(), "--model", "X1").select(".item h3").eachText())
        .containsExactly("1 Horn </pre><script>alert(1)</script> button", "3 Hose of the heater");
    assertThat(page(rules(), "--model", "X2", "--equipment", "heater=no").select("h3").eachText())
        .contains("2 Door of the van")
        .doesNotContain("3 Hose of the heater");
    assertThat(page(rules(), "--model", "X1").select(".may").eachText())
        .singleElement()
        .asString()
        .contains("Cab heater");
  }

  @Test
  void beginsARecordThatLiesBesideTheRuleSet() throws IOException {
    Document page =
        page(rules(), "--model", "X1", "--name", "Our Truck: no. 1", "--equipment", "heater");
    assertThat(data(page).get("file").asString()).isEqualTo("our-truck-no-1.yaml");
    Path record = record(data(page).get("text").asString());
    assertThat(Files.readString(record))
        .isEqualTo(
            """
            record: our-truck-no-1
            rules: small.yaml
            edition: "1"
            vehicle:
              name: 'Our Truck: no. 1'
              model: X1
            equipment:
              heater: yes
            """);
    assertThat(CommandResult.of("check", record).err()).isEmpty();
  }

  @Test
  void holdsARecordToTheLetter() throws IOException {
    String text =
        "\uFEFF# ours\r\nrecord: ours\r\nrules: small.yaml\r\nvehicle: {name: \"<T> & \u00e9\","
            + " model: X1}\r\nobservations:\r\n  horn-button: {finish: 'chrome'} # sic\r\n";
    JsonNode data = data(page(record(text)));
    assertThat(data.get("text").asString()).isEqualTo(text.substring(1));
    assertThat(data.get("marked").asBoolean()).isTrue();
    assertThat(data.get("file").asString()).isEqualTo("ours.yaml");
  }

  @Test
  void showsOnPaperWhatTheRecordSays() throws IOException {
    String head = "record: ours\nrules: small.yaml\nvehicle: {name: T, model: X1}\n";
    Document page =
        page(
            record(
                head
                    + "inspected: {by: the owner, on: 2026-10-03}\nobservations:\n"
                    + "  horn-button: {finish: chrome, note: Plated anew}\n"
                    + "  heater-hose: {count: 3}\n"));
    assertThat(page.select(".tick:has(.ticked)").eachText()).containsExactly("chromium plate");
    assertThat(page.select("[data-line=note], [data-line=typed], .who .line").eachText())
        .contains("Plated anew", "3", "the owner", "2026-10-03");
    assertThat(page.select(".hazard").text())
        .contains("dampen it")
        .contains("Local codes and licensed practice come first.");
  }

  @Test
  void saysWhatIsWrongAndWritesNothing() throws IOException {
    Path out = folder.resolve("none.html");
    Path record = record("record: ours\nrules: small.yaml\nvehicle: {name: T, model: X3}\n");
    for (List<Object> words :
        List.<List<Object>>of(
            List.of(1, "unknown-model", record),
            List.of(1, "file-not-found", folder.resolve("not-there.yaml")),
            List.of(2, "--model: this rule set has no model", rules(), "--model", "X3"),
            List.of(2, "leave those options out", record, "--model", "X1"))) {
      Object[] typed = new Object[words.size() + 1];
      typed[0] = "sheet";
      for (int i = 2; i < words.size(); i++) {
        typed[i - 1] = words.get(i);
      }
      typed[words.size() - 1] = "--out";
      typed[words.size()] = out;
      CommandResult ran = CommandResult.of(typed);
      assertThat(ran.err()).contains(String.valueOf(words.get(1)));
      assertThat(ran.exit()).isEqualTo(words.get(0));
      assertThat(out).doesNotExist();
    }
    CommandResult ran = CommandResult.of("sheet", rules(), "--out", folder.resolve("sheet.pdf"));
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("--out: the name of a sheet's file ends in .html");
    assertThat(folder.resolve("sheet.pdf")).doesNotExist();
  }

  @Test
  void theSameInputGivesTheSameBytes() throws IOException {
    String first = page(rules(), "--model", "X1").html();
    assertThat(page(rules(), "--model", "X1").html()).isEqualTo(first);
  }
}
