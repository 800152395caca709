package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewCommandTest {
  private static final String RULES =
      """
      rule_set: club
      name: Club rules
      edition: "2"
      models:
        X1: {name: "X1: the dropside", production: 1932/1936}
        X2: {name: X2 van, production: 1932/1936}
      plants: {north: North Works}
      markets: {home: Home}
      equipment: {heater: Cab heater, tilt: Canvas tilt}
      number_tables:
        chassis:
          name: Chassis number
          series: [{prefix: X-, first_numbers: {1: 1932-01, 500: 1934-01}, last: {number: 900, built: 1936-12}}]
      finishes: {nickel: {name: nickel plate}}
      areas:
        cab:
          name: Cab
          items:
            button: {title: Horn button, points: 2, expect: {finish: nickel}}
            heater: {title: Heater, points: 2, equipment: heater, expect: {present: yes}}
      """;

  private Path folder = Path.of("");

  @BeforeEach
  void lay(@TempDir Path empty) throws IOException {
    folder = empty;
    Files.writeString(at("club.yaml"), RULES);
  }

  private Path at(String name) {
    return folder.resolve(name);
  }

  private CommandResult create(String record, Object... options) {
    Object[] words = new Object[3 + options.length];
    words[0] = "new";
    words[1] = at("club.yaml");
    words[2] = at(record);
    System.arraycopy(options, 0, words, 3, options.length);
    return CommandResult.of(words);
  }

  private String text(String name) throws IOException {
    return Files.readString(at(name));
  }

  @Test
  void writesARecordThatCanBeJudgedAtOnce() throws IOException {
    CommandResult ran = create("our-truck.yaml", "--model", "X1", "--built", "1934-05");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .isEqualTo(
            at("our-truck.yaml")
                + ": 2 items to look at; a walk round the vehicle takes about 5 minutes.\n"
                + "1 of them depends on the build day, or on equipment, market or works that are"
                + " not stated.\n"
                + "Put what you find behind the colons, then: assize judge "
                + at("our-truck.yaml")
                + "\n");
    assertThat(text("our-truck.yaml"))
        .contains("\nrecord: our-truck\nrules: club.yaml\nedition: \"2\"\n")
        .contains("\n  name: 'X1: the dropside'\n  model: X1\n", "\nbuilt: 1934-05\n")
        .contains("\nobservations:\n\n  # == Cab ==\n\n  # 1. Horn button (2 points)\n  button:\n")
        .contains(
            "\n    # Expected: nickel plate\n    # Write one of: nickel; other\n    finish:\n");
    CommandResult judged = CommandResult.of("judge", at("our-truck.yaml"), "--out", at("reports"));
    assertThat(judged.exit()).isZero();
    assertThat(judged.err()).isEmpty();
    assertThat(CommandResult.of("check", at("our-truck.yaml")).exit()).isZero();
  }

  @Test
  void keepsWhatIsStated() throws IOException {
    CommandResult ran =
        create(
            "t.yaml",
            "--number=chassis=X-77",
            "--equipment=heater=no",
            "--equipment",
            "tilt",
            "--plant=north",
            "--market=home",
            "--name",
            "Number 7: \"ours\" # or not");
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(text("t.yaml"))
        .contains("\n  name: 'Number 7: \"ours\" # or not'\n")
        .contains("\nnumbers:\n  chassis: X-77\n")
        .contains("\nplant: north\nmarket: home\nequipment:\n  heater: no\n  tilt: yes\n")
        .contains("\n  #model:\n")
        .doesNotContain("\n  heater:\n");
    assertThat(
            CommandResult.of("judge", at("t.yaml"), "--json")
                .json()
                .get("built")
                .get("basis")
                .asString())
        .isEqualTo("number");
  }

  @Test
  void whatIsNotKnownIsOfferedAsARemark() throws IOException {
    assertThat(create("t.yaml").exit()).isZero();
    assertThat(text("t.yaml"))
        .contains("# Works, if it is known, one of: north (North Works)\n#plant:\n")
        .contains("#numbers:\n#   Chassis number\n#  chassis:\n")
        .contains("#equipment:\n#   Cab heater\n#  heater:\n#   Canvas tilt\n#  tilt:\n")
        .contains("# When it was built, if something says so.\n#built: {date: ");
  }

  @Test
  void takingTheMarkAwayIsAllThatAFactNeeds() throws IOException {
    assertThat(create("t.yaml").exit()).isZero();
    String stated =
        text("t.yaml")
            .replace("\n#plant:\n", "\nplant: north\n")
            .replace("\n#numbers:\n", "\nnumbers:\n")
            .replace("\n#  chassis:\n", "\n  chassis: X-77\n")
            .replace("\n#equipment:\n", "\nequipment:\n")
            .replace("\n#  heater:\n", "\n  heater: yes\n")
            .replace("\n  #model:\n", "\n  model: X1\n")
            .replace("\n#built:", "\nbuilt:")
            .replace("\n#inspected:", "\ninspected:");
    Files.writeString(at("t.yaml"), stated);
    CommandResult ran = CommandResult.of("judge", at("t.yaml"), "--json");
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.err()).isEmpty();
  }

  @Test
  void theMachineIsToldWhatWasWritten() {
    CommandResult ran = create("t.yaml", "--model=X2", "--json");
    assertThat(ran.json())
        .isEqualTo(
            CommandResult.json(
                "{\"file\": \""
                    + at("t.yaml")
                    + "\", \"record\": \"t\", \"rule_set\": \"club\", \"items\": 2, \"aspects\": 2,"
                    + " \"may_apply\": 1, \"minutes\": 5}"));
  }

  @Test
  void leadsAnEditorToTheSchemaThatLiesThere() throws IOException {
    assertThat(create("t.yaml", "--model", "X1").exit()).isZero();
    String without = text("t.yaml");
    assertThat(without).doesNotContain("yaml-language-server");
    Files.delete(at("t.yaml"));
    assertThat(CommandResult.of("schema", folder).exit()).isZero();
    assertThat(create("t.yaml", "--model", "X1").exit()).isZero();
    assertThat(text("t.yaml"))
        .isEqualTo("# yaml-language-server: $schema=assize-record.json\n" + without);
    assertThat(CommandResult.of("check", at("t.yaml")).exit()).isZero();
  }

  @Test
  void neverWritesOverARecord() throws IOException {
    Files.writeString(at("t.yaml"), "mine");
    CommandResult ran = create("t.yaml", "--model", "X1");
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .isEqualTo(
            "error: " + at("t.yaml") + " is there already and stays as it is; name a new file\n");
    assertThat(text("t.yaml")).isEqualTo("mine");
  }

  @Test
  void theRuleSetLiesBesideOrBelow() throws IOException {
    Files.createDirectories(at("below/deeper"));
    Files.copy(at("club.yaml"), at("below/deeper/rules.yaml"));
    CommandResult below = CommandResult.of("new", at("below/deeper"), at("a.yaml"));
    assertThat(below.exit()).as(below.err()).isZero();
    assertThat(text("a.yaml")).contains("\nrules: below/deeper\n");
    assertThat(CommandResult.of("judge", at("a.yaml"), "--json").exit()).isZero();

    CommandResult above = CommandResult.of("new", at("club.yaml"), at("below/b.yaml"));
    assertThat(above.exit()).isEqualTo(1);
    assertThat(above.err())
        .isEqualTo(
            "error: a record finds its rule set in its own folder or below, and "
                + at("club.yaml")
                + " lies elsewhere; copy the rule set there, or write the record beside it: "
                + at("b.yaml")
                + "\n");

    CommandResult within = CommandResult.of("new", at("below/deeper"), at("below/deeper/c.yaml"));
    assertThat(within.exit()).isEqualTo(1);
    assertThat(within.err())
        .isEqualTo(
            "error: "
                + at("below/deeper/c.yaml")
                + " would lie in the rule set's own folder and be read as a part of it; name a"
                + " file beside that folder\n");
    assertThat(at("below/b.yaml")).doesNotExist();
    assertThat(at("below/deeper/c.yaml")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({
    "our truck.yaml, our-truck",
    "Ünser 7.yml, nser-7",
    "---.yaml, vehicle",
    "a.b.yaml, a-b"
  })
  void theRecordIsNamedLikeItsFile(String file, String id) throws IOException {
    assertThat(create(file).exit()).isZero();
    assertThat(text(file)).contains("\nrecord: " + id + "\n");
  }

  /** {@code ;} parts the lines that are said. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "--model X3 | --model: this rule set has no model \"X3\"; known: X1, X2",
        "--model x1x | --model: this rule set has no model \"x1x\"; did you mean \"X1\"?",
        "--plant nrth | --plant: this rule set has no plant \"nrth\"; did you mean \"north\"?",
        "--market export | --market: this rule set has no market \"export\"; known: home",
        "--built 1934-13 | --built: there is no month 13",
        "--equipment heatr | --equipment: this rule set has no equipment \"heatr\"; did you mean"
            + " \"heater\"?",
        "--equipment heater=perhaps | --equipment: write heater=yes or heater=no, not =perhaps",
        "--equipment heater --equipment heater=no | --equipment: heater is given as yes and as no",
        "--number X-77 | --number: name the number table too, as in chassis=X-77",
        "--number engine=1 | --number: this rule set has no number table \"engine\"; known: chassis",
        "--number chassis= | --number: no number stands behind chassis=",
        "--number chassis=1 --number chassis=2 | --number: chassis is given twice, as 1 and 2",
        "--model X3 --plant no --built soon | --model: this rule set has no model \"X3\"; known: X1,"
            + " X2\n--built: ",
      })
  void whatIsTypedWrongIsAnsweredAllAtOnce(String options, String says) {
    CommandResult ran = create("t.yaml", (Object[]) options.split(" "));
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(says).endsWith("Try: assize new --help\n");
    assertThat(at("t.yaml")).doesNotExist();
  }

  @Test
  void hiddenLettersAreRefused() {
    CommandResult ran = create("t.yaml", "--name", "a\nb", "--number", "chassis=X\u202E1");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err().lines())
        .containsExactly(
            "--number: this has a character that can't be seen or ends a line",
            "--name: this has a character that can't be seen or ends a line",
            "Try: assize new --help");
    assertThat(create("t.yaml", "--name", " ").err()).startsWith("--name: this is empty");
  }

  @Test
  void theRecordIsYaml() {
    CommandResult ran = create("t.txt");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).startsWith("RECORD: name a file that ends in .yaml, not ");
  }

  @Test
  void aRuleSetWithFaultsIsNotStartedFrom() throws IOException {
    Files.writeString(at("club.yaml"), RULES.replace("finish: nickel", "finish: nickle"));
    CommandResult ran = create("t.yaml");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("did you mean \"nickel\"");
    assertThat(at("t.yaml")).doesNotExist();
  }

  @Test
  void aNumberThatFitsNoSeriesIsSaid() {
    CommandResult ran = create("t.yaml", "--number", "chassis=Z-1");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err())
        .isEqualTo("Chassis number Z-1 fits no series of this rule set's table.\n");
  }
}
