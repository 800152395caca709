package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Watching, with what happens to the files written down look by look; nobody waits. */
class FileWatcherTest {
  private static final String RULES =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      models:
        X1: {name: Dropside, production: 1932-03/1936-08}
      sources:
        drawing: {kind: drawing, grade: A, title: Works drawing 204}
      finishes:
        nickel: {name: nickel plate}
        chrome: {name: chromium plate}
      """;
  private static final String CAB =
      """
      areas:
        cab:
          name: Cab
          items:
            horn: {title: Horn, points: 2, expect: {finish: nickel}, source: drawing}
      """;
  private static final String RECORD =
      """
      record: our-x1
      rules: standard
      vehicle: {name: Our dropside, model: X1}
      observations:
        horn: {finish: chrome}
      """;

  @TempDir private Path folder = Path.of("");

  /** What is done to a file before a look. */
  private interface Step {
    void happen() throws IOException;
  }

  private final Queue<Step> steps = new ArrayDeque<>();
  private int looked;

  @BeforeEach
  void lay() throws IOException {
    Files.createDirectory(folder.resolve("standard"));
    write("standard/rules.yaml", RULES);
    write("standard/cab.yaml", CAB);
    write("our-x1.yaml", RECORD);
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private FileWatcherTest look(Step step) {
    steps.add(step);
    return this;
  }

  private FileWatcherTest looks(int count) {
    for (int i = 0; i < count; i++) {
      look(() -> {});
    }
    return this;
  }

  private boolean another() {
    looked++;
    Step next = steps.poll();
    if (next == null) {
      return false;
    }
    try {
      next.happen();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return true;
  }

  private static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, false, StandardCharsets.UTF_8);
  }

  private CommandResult watch(String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal = new Terminal(stream(out), stream(err), false);
    FileWatcher watch =
        new FileWatcher(terminal, () -> this::another, () -> LocalTime.of(14, 3, 9));
    int exit = Main.run(terminal, watch, words);
    return new CommandResult(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private CommandResult check() {
    return watch("check", "--watch", folder.resolve("our-x1.yaml").toString());
  }

  /** Returns at which looks something ran again. */
  private static List<String> saved(CommandResult ran) {
    return ran.err().lines().filter(it -> it.endsWith(" saved")).toList();
  }

  @Test
  void nothingHappensWhereNothingIsSaved() {
    CommandResult ran = looks(5).check();
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).isEqualTo("No errors.\n");
    assertThat(ran.err()).isEqualTo("watching 3 files; Ctrl-C ends\n");
  }

  @Test
  void oneSaveGivesOneRun() {
    CommandResult ran =
        looks(2)
            .look(() -> write("our-x1.yaml", RECORD.replace("chrome", "crome")))
            .looks(4)
            .check();
    assertThat(saved(ran)).containsExactly("14:03:09  our-x1.yaml saved");
    assertThat(ran.err()).containsOnlyOnce("error[unknown-finish]").contains("\"crome\"");
    assertThat(ran.exit()).isZero();
  }

  @Test
  void aBurstGivesOneRunOnceItIsOver() {
    CommandResult ran =
        look(() -> write("our-x1.yaml", RECORD + "#"))
            .look(() -> write("our-x1.yaml", RECORD + "##"))
            .look(() -> write("standard/cab.yaml", CAB + "#"))
            .look(() -> write("our-x1.yaml", RECORD + "###"))
            .looks(3)
            .check();
    assertThat(saved(ran)).containsExactly("14:03:09  our-x1.yaml, cab.yaml saved");
    assertThat(ran.out()).isEqualTo("No errors.\nNo errors.\n");
  }

  @Test
  void aHalfWrittenFileAndOneThatIsBrieflyMissingAreNoErrors() {
    Path record = folder.resolve("our-x1.yaml");
    Path fresh = folder.resolve("our-x1.yaml.new");
    CommandResult ran =
        look(() -> write("our-x1.yaml", RECORD.substring(0, 30)))
            .look(() -> write("our-x1.yaml", RECORD + "# again\n"))
            .looks(2)
            .look(() -> Files.delete(record))
            .look(
                () -> {
                  Files.writeString(fresh, RECORD + "# by another name\n");
                  Files.move(fresh, record, StandardCopyOption.ATOMIC_MOVE);
                })
            .looks(2)
            .check();
    assertThat(saved(ran)).hasSize(2);
    assertThat(ran.err()).doesNotContain("error[");
    assertThat(ran.out()).isEqualTo("No errors.\n".repeat(3));
  }

  @Test
  void aFileThatIsTakenAwayIsMissedAndTakenUpAgain() {
    CommandResult ran =
        look(() -> Files.delete(folder.resolve("our-x1.yaml")))
            .looks(3)
            .look(() -> write("our-x1.yaml", RECORD))
            .looks(3)
            .check();
    assertThat(saved(ran)).hasSize(2);
    assertThat(ran.err()).containsOnlyOnce("error[file-not-found]");
    assertThat(ran.out()).isEqualTo("No errors.\nNo errors.\n");
  }

  @Test
  void theSameTextSavedAgainIsNoChange() {
    CommandResult ran = looks(1).look(() -> write("our-x1.yaml", RECORD)).looks(3).check();
    assertThat(saved(ran)).isEmpty();
  }

  @Test
  void aFileAddedToTheRuleSetsFolderCounts() {
    CommandResult ran =
        looks(1)
            .look(() -> write("standard/colors.yaml", "colours:\n  black: {name: Black}\n"))
            .looks(2)
            .look(() -> Files.delete(folder.resolve("standard/colors.yaml")))
            .looks(2)
            .check();
    assertThat(saved(ran))
        .containsExactly("14:03:09  colors.yaml saved", "14:03:09  colors.yaml saved");
    assertThat(ran.err()).containsOnlyOnce("error[unknown-key]");
    assertThat(ran.out()).isEqualTo("No errors.\nNo errors.\n");
  }

  @Test
  void errorsMendedInAFileThatCouldNotBeReadBefore() throws IOException {
    write("standard/cab.yaml", CAB.replace("source:", "sauce:"));
    CommandResult ran = looks(2).look(() -> write("standard/cab.yaml", CAB)).looks(3).check();
    assertThat(ran.err()).containsOnlyOnce("error[unknown-key]");
    assertThat(saved(ran)).containsExactly("14:03:09  cab.yaml saved");
    assertThat(ran.out()).isEqualTo("No errors.\n");
  }

  @Test
  void evidenceThatIsNamedBeforeItIsThereIsWaitedFor() throws IOException {
    write(
        "our-x1.yaml",
        RECORD.replace("{finish: chrome}", "{finish: chrome, evidence: paper}")
            + "evidence:\n  paper: {document: papers/plater.txt}\n");
    Files.createDirectory(folder.resolve("papers"));
    CommandResult ran = looks(1).look(() -> write("papers/plater.txt", "Nickel.")).looks(3).check();
    assertThat(ran.err()).containsOnlyOnce("error[file-not-found]");
    assertThat(saved(ran)).containsExactly("14:03:09  plater.txt saved");
    assertThat(ran.out()).isEqualTo("No errors.\n");
  }

  @Test
  void theReportIsWrittenAnewAndStaysWhereThereAreErrors() throws IOException {
    Path report = folder.resolve("reports/our-x1.html");
    List<String> seen = new ArrayList<>();
    CommandResult ran =
        look(() -> seen.add(Files.readString(report)))
            .look(() -> write("our-x1.yaml", RECORD.replace("chrome", "nickel")))
            .looks(1)
            .look(() -> seen.add(Files.readString(report)))
            .look(() -> write("our-x1.yaml", RECORD.replace("chrome", "nikel")))
            .looks(2)
            .look(() -> seen.add(Files.readString(report)))
            .on("judge", "--watch", "--out", folder.resolve("reports").toString());
    assertThat(ran.exit()).isZero();
    assertThat(seen).hasSize(3);
    assertThat(seen.get(1)).isNotEqualTo(seen.get(0));
    assertThat(seen.get(2)).isEqualTo(seen.get(1));
    assertThat(ran.err()).containsOnlyOnce("error[unknown-finish]");
  }

  private CommandResult on(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.add(folder.resolve("our-x1.yaml").toString());
    return watch(all.toArray(String[]::new));
  }

  @Test
  void runsThatNobodyCouldTellApartAreRefused() {
    assertThat(watch("check", "--watch", "--json", "x.yaml").exit()).isEqualTo(2);
    assertThat(watch("judge", "--watch", "--json=-", "x.yaml").exit()).isEqualTo(2);
    assertThat(looked).isZero();
  }
}
