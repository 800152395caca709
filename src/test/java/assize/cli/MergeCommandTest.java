package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.merge.TakeChoices;
import assize.record.RecordReader;
import assize.ruleset.RuleSetReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What merging does to files, and what may stand on its command line. */
class MergeCommandTest {
  private static final String HEAD =
      "record: our-truck\nrules: rules.yaml\nvehicle: {name: Ours}\n";

  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    Files.copy(Path.of("src/test/merging/rules.yaml"), folder.resolve("rules.yaml"));
    write("ours.yaml", HEAD + "observations:\n  horn-button: {finish: chrome}\n");
    write("anna.yaml", HEAD + "observations:\n  horn-button: {finish: nickel, note: Seen.}\n");
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private String read(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }

  private CommandResult merge(Object... words) {
    Object[] all =
        Stream.concat(
                Stream.of("merge", folder.resolve("ours.yaml"), folder.resolve("anna.yaml")),
                Stream.of(words))
            .toArray();
    return CommandResult.of(all);
  }

  @Test
  void marksAndLineEndsStay() throws IOException {
    String text =
        "\uFEFF" + HEAD.replace("\n", "\r\n") + "observations: {bed-wood: {gloss: satin}}";
    write("ours.yaml", text);
    assertThat(merge("--write").exit()).isEqualTo(Exit.DONE);
    assertThat(read("ours.yaml"))
        .isEqualTo(
            text.substring(0, text.length() - 1) + ", horn-button: {finish: nickel, note: Seen.}}");
  }

  @Test
  void aLinkStaysALinkAndPermissionsStay() throws IOException {
    Path real = Files.createDirectory(folder.resolve("kept")).resolve("rules.yaml");
    Files.copy(folder.resolve("rules.yaml"), real);
    Path record = real.resolveSibling("truck.yaml");
    Files.move(folder.resolve("ours.yaml"), record);
    Files.setPosixFilePermissions(record, PosixFilePermissions.fromString("rw-r-----"));
    Files.createSymbolicLink(folder.resolve("ours.yaml"), record);
    assertThat(merge("--write").exit()).isEqualTo(Exit.DONE);
    assertThat(Files.isSymbolicLink(folder.resolve("ours.yaml"))).isTrue();
    assertThat(Files.readString(record)).contains("note: Seen.");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(record)))
        .isEqualTo("rw-r-----");
  }

  @Test
  void noOtherFileIsLeft() throws IOException {
    merge("--write");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all.map(it -> it.getFileName().toString()))
          .containsExactlyInAnyOrder("rules.yaml", "ours.yaml", "anna.yaml");
    }
  }

  @Test
  void aFileThatWasChangedMeanwhileIsNotWritten() throws IOException {
    Path ours = folder.resolve("ours.yaml");
    CommandResult unused = merge();
    InputLoader inputs = new InputLoader(new Terminal(System.out, System.err, false));
    MergeInputs.MergeOptions wanted = new MergeInputs.MergeOptions(Optional.empty(), false, false);
    var read =
        new MergeInputs(inputs, wanted)
            .read(ours, List.of(folder.resolve("anna.yaml")))
            .orElseThrow();
    var merged = read.merge(new TakeChoices(Map.of()));
    String saved = read("ours.yaml") + "# saved by somebody\n";
    write("ours.yaml", saved);
    assertThat(unused.exit()).isEqualTo(Exit.DONE);
    assertThat(new RecordFile(ours).replace(merged, inputs)).isFalse();
    assertThat(read("ours.yaml")).isEqualTo(saved);
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).hasSize(3);
    }
  }

  @Test
  void undecidedConflictsStayAndAreNoError() throws IOException {
    CommandResult ran = merge("--write");
    assertThat(ran.exit()).isEqualTo(Exit.DONE);
    assertThat(ran.out())
        .contains("1 said differently", "--take horn-button.finish\n", "is written.");
    assertThat(read("ours.yaml")).endsWith("  horn-button: {finish: chrome, note: Seen.}\n");
    assertThat(merge("--write", "--take", "horn-button.finish").exit()).isEqualTo(Exit.DONE);
    String decided = read("ours.yaml");
    assertThat(decided).endsWith("  horn-button: {finish: nickel, note: Seen.}\n");
    assertThat(merge("--write", "--take", "horn-button.finish").out()).contains(": 0 added,");
    assertThat(read("ours.yaml")).isEqualTo(decided);
  }

  @Test
  void thePreviewAsJsonSaysWhetherItIsWritten() {
    var shown = merge("--json").json();
    assertThat(shown.get("written").asBoolean()).isFalse();
    assertThat(shown.get("steps").size()).isEqualTo(1);
    assertThat(shown.get("conflicts").get(0).get("current").asString()).isEqualTo("chrome");
    assertThat(merge("--json", "--write").json().get("written").asBoolean()).isTrue();
    var again = merge("--json", "--write").json();
    assertThat(again.get("written").asBoolean()).isFalse();
    assertThat(again.get("steps").size()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "horn-button, 'write an item, a dot and what is taken, as in horn-button.finish'",
    ".finish, 'write an item, a dot'",
    "horn-button.finsh, 'no \"finsh\" that could be taken; did you mean \"finish\"?'",
    "horn-buton.finish, 'no file has an item'",
    "horn-button.part_number, 'none of the files says anything of horn-button.part_number'",
    "horn-button.finish=ana.yaml, '\"ana.yaml\" is none of the files'"
  })
  void whatCantBeTakenIsSaid(String taken, String said) throws IOException {
    String before = read("ours.yaml");
    CommandResult ran = merge("--write", "--take", taken);
    assertThat(ran.exit()).isEqualTo(Exit.BAD_COMMAND_LINE);
    assertThat(ran.err()).contains("--take: ", said.replace("no file has an item", "horn-button"));
    assertThat(read("ours.yaml")).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"nothing.yaml", "ours.yaml"})
  void aFileThatIsNoFriendsIsRefused(String name) throws IOException {
    String before = read("ours.yaml");
    CommandResult ran = merge(folder.resolve(name), "--write");
    assertThat(ran.exit()).isEqualTo(Exit.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("1 error in 1 file");
    assertThat(read("ours.yaml")).isEqualTo(before);
  }

  @Test
  void whatIsHiddenIsShownAndSteersNoTerminal() throws IOException {
    write("anna.yaml", HEAD + "observations: {bed-wood: {note: \"a\u200bb \u2028 c\"}}\n");
    assertThat(merge().out()).doesNotContain("\u200b", "\u2028");
    merge("--write");
    var rules = RuleSetReader.read(folder.resolve("rules.yaml")).value().orElseThrow();
    var ours = RecordReader.read(folder.resolve("ours.yaml"), rules).value().orElseThrow();
    assertThat(ours.observations().values().stream().flatMap(it -> it.note().stream()))
        .containsExactly("a\u200bb \u2028 c");
  }

  /**
   * A whole record, merged into one that says only what vehicle it is, judges as it does itself.
   */
  @ParameterizedTest
  @ValueSource(strings = {"l45-4388", "q-1187", "l41-half-recorded"})
  void aRecordMergedIntoAnEmptyOneIsJudgedAlike(String name) throws IOException {
    Path demo = folder.resolve("demo");
    assertThat(CommandResult.of("demo", demo).exit()).isEqualTo(Exit.DONE);
    Path whole = demo.resolve(name + ".yaml");
    String text = Files.readString(whole);
    String head =
        Stream.of(text.split("(?m)^(?=[a-z_]+:)"))
            .filter(it -> !it.matches("(?s)(observations|evidence|traces|judged|private_words):.*"))
            .collect(Collectors.joining());
    Path empty = Files.writeString(demo.resolve("empty.yaml"), head, StandardCharsets.UTF_8);
    assertThat(head.length()).isLessThan(text.length() / 4);
    CommandResult ran = CommandResult.of("merge", "--write", empty, whole);
    assertThat(ran.exit()).as(ran.err()).isEqualTo(Exit.DONE);
    assertThat(ran.out()).contains(" 0 said differently, 0 the same\n", "is written.");
    assertThat(Files.readString(empty)).startsWith(head.stripTrailing());
    assertThat(CommandResult.of("judge", "--json", empty).out())
        .isEqualTo(CommandResult.of("judge", "--json", whole).out())
        .contains("\"score\"");
    assertThat(CommandResult.of("merge", "--write", empty, whole).out()).contains(": 0 added,");
  }

  /** The same, merged into one that {@code new} wrote: what is blank there waits to be filled. */
  @ParameterizedTest
  @CsvSource({"l45-4388,tarrowby-type-l", "q-1187,quillhurst-q.yaml"})
  void aRecordMergedIntoOneToFillInIsJudgedAlike(String name, String rules) throws IOException {
    Path demo = folder.resolve("demo");
    assertThat(CommandResult.of("demo", demo).exit()).isEqualTo(Exit.DONE);
    Path whole = Files.move(demo.resolve(name + ".yaml"), demo.resolve("whole.yaml"));
    Path blank = demo.resolve(name + ".yaml");
    var set = RuleSetReader.read(demo.resolve(rules)).value().orElseThrow();
    var known = RecordReader.read(whole, set).value().orElseThrow();
    List<Object> words = new ArrayList<>(List.of("new", demo.resolve(rules), blank));
    known.model().ifPresent(it -> words.addAll(List.of("--model", it)));
    known.built().ifPresent(it -> words.addAll(List.of("--built", it.date().text())));
    known.plant().ifPresent(it -> words.addAll(List.of("--plant", it)));
    known.market().ifPresent(it -> words.addAll(List.of("--market", it)));
    known.equipment().forEach((it, yes) -> words.add("--equipment=" + it + (yes ? "" : "=no")));
    known.numbers().forEach((it, number) -> words.add("--number=" + it + "=" + number));
    words.addAll(List.of("--name", known.name()));
    CommandResult created = CommandResult.of(words.toArray());
    assertThat(created.exit()).as(created.err()).isEqualTo(Exit.DONE);
    List<String> before = Files.readAllLines(blank);
    CommandResult ran = CommandResult.of("merge", "--write", blank, whole);
    assertThat(ran.exit()).as(ran.err()).isEqualTo(Exit.DONE);
    assertThat(ran.out()).contains(" 0 said differently", "is written.");
    assertThat(Files.readAllLines(blank))
        .as("lines are filled in and added, none goes")
        .hasSizeGreaterThan(before.size())
        .containsSubsequence(before.stream().filter(it -> it.contains("#")).toList());
    assertThat(CommandResult.of("judge", "--json", blank).json().get("items"))
        .isEqualTo(CommandResult.of("judge", "--json", whole).json().get("items"));
    assertThat(CommandResult.of("merge", "--write", blank, whole).out()).contains(": 0 added,");
  }
}
