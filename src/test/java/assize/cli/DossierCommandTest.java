package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DossierCommandTest {
  private CommandBench bench = new CommandBench(Path.of(""));
  private Path out = Path.of("");

  @BeforeEach
  void lay(@TempDir Path folder) {
    bench = CommandBench.in(folder);
    out = bench.at("out");
  }

  private CommandResult run(Object... words) {
    Object[] all = new Object[words.length + 3];
    all[0] = "dossier";
    System.arraycopy(words, 0, all, 1, words.length);
    all[words.length + 1] = "--out";
    all[words.length + 2] = out;
    return CommandResult.of(all);
  }

  @Test
  void writesUpEveryDisputedItem() {
    CommandResult ran = run(bench.at("one.yaml"));
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .contains("Door key")
        .contains(out.resolve("one-door-key.html").toString());
    assertThat(CommandBench.content(out)).containsOnlyKeys("", "one-door-key.html");
  }

  @Test
  void writesUpWhatIsNamed() {
    assertThat(run(bench.at("two.yaml"), "door-key", "door-key").exit()).isZero();
    assertThat(CommandBench.content(out)).containsOnlyKeys("", "two-door-key.html");
  }

  @Test
  void anUnknownItemIsToldWithTheNearName() {
    CommandResult ran = run(bench.at("one.yaml"), "door-kee", "hubcap");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err())
        .isEqualTo(
            "error: this rule set has no item \"door-kee\"; did you mean \"door-key\"?\n"
                + "error: this rule set has no item \"hubcap\"; disputed: door-key\n");
    assertThat(out).doesNotExist();
  }

  @Test
  void anItemOnWhichSourcesAgreeIsNotWrittenUp() {
    CommandResult ran = run(bench.at("one.yaml"), "horn-button", "door-key");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err())
        .isEqualTo(
            "error: sources do not differ on \"horn-button\" for this vehicle;"
                + " disputed: door-key\n");
    assertThat(out).doesNotExist();
  }

  /** Drawing (A) and photograph (B) against guide (C): 0.485 ÷ 0.515 = 0.942, by hand. */
  @Test
  void whatIsSettledAgainstDissentIsWrittenUpWhereItIsNamed() throws IOException {
    Path rules = bench.at("rules.yaml");
    Files.writeString(
        rules,
        Files.readString(rules)
            .replace(
                "  guide:",
                "  photo: {kind: factory photograph, grade: B, title: Works photograph 11}\n  guide:")
            .replace(
                "          - {source: guide,",
                "          - {source: photo, says: {finish: nickel}}\n          - {source: guide,"));
    CommandResult none = run(bench.at("one.yaml"));
    assertThat(none.exit()).as(none.err()).isZero();
    assertThat(none.out()).isEqualTo("No item is disputed; nothing was written.\n");
    assertThat(out).doesNotExist();
    assertThat(run(bench.at("one.yaml"), "door-key").exit()).isZero();
    assertThat(text("one-door-key.html")).contains("settled against dissent").contains("0.942");
    assertThat(run(bench.at("one.yaml"), "horn-button").err())
        .contains("for this vehicle; no item is disputed");
  }

  @Test
  void showsWhatTheSourcesShow() throws IOException {
    Path rules = bench.at("rules.yaml");
    Files.createDirectory(bench.at("pictures"));
    Files.copy(Path.of("rules/photos/bed-trace.png"), bench.at("pictures/note.png"));
    Files.writeString(
        rules,
        Files.readString(rules)
            .replace(
                "- {source: drawing, says: {finish: nickel}}",
                "- {source: drawing, says: {finish: nickel}, photo: pictures/note.png}"));
    assertThat(run(bench.at("one.yaml")).exit()).isZero();
    assertThat(page("one-door-key.html").select("figure img")).hasSize(1);
    assertThat(text("one-door-key.html")).contains("Works drawing 204 pictures/note.png");
    assertThat(CommandResult.of("judge", bench.at("one.yaml"), "--out", out).exit()).isZero();
    assertThat(page("one.html").select("#disputed figure img")).hasSize(1);
    Files.writeString(bench.at("pictures/note.png"), "no picture");
    CommandResult broken = run(bench.at("one.yaml"));
    assertThat(broken.err() + broken.out()).contains("photo of source \"drawing\"");
  }

  @Test
  void judgesByTheRuleSetAndTheDayThatAreGiven() {
    CommandResult ran =
        run(bench.at("one.yaml"), "--rules", bench.at("rules.yaml"), "--as-of", "2030-01-01");
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(run(bench.at("one.yaml"), "--rules", bench.at("warnings.yaml")).exit()).isEqualTo(1);
    assertThat(run().exit()).isEqualTo(2);
    assertThat(run(bench.at("wrong.yaml")).exit()).isEqualTo(1);
  }

  @Test
  void whatCannotBeWrittenIsSaid() {
    out = bench.at("plain");
    assertThat(run(bench.at("one.yaml")).exit()).isEqualTo(3);
  }

  private Document page(String name) throws IOException {
    return Jsoup.parse(Files.readString(out.resolve(name)));
  }

  private String text(String name) throws IOException {
    return page(name).text();
  }
}
