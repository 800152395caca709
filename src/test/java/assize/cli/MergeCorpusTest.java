package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.Pinned;
import assize.diagnostic.DiagnosticCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each folder of {@code src/test/merging} is a record and what friends filled in; what is said of
 * them stands in {@code expected.txt}, and the record as it is written afterwards in {@code
 * after.yaml} where it is written at all.
 */
class MergeCorpusTest {
  private static final Path CORPUS = Path.of("src/test/merging");
  private static final Set<String> OURS =
      Set.of("record.yaml", "after.yaml", "expected.txt", "options.txt");

  @TempDir private Path folder = Path.of("");

  static List<Path> cases() throws IOException {
    try (Stream<Path> all = Files.list(CORPUS)) {
      return all.filter(Files::isDirectory).sorted().toList();
    }
  }

  /** Copies a case, around the rule set that all share, and returns its friends' files. */
  private List<String> copy(Path one) throws IOException {
    Files.copy(CORPUS.resolve("rules.yaml"), folder.resolve("rules.yaml"));
    List<String> friends = new ArrayList<>();
    try (Stream<Path> all = Files.walk(one)) {
      for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
        Path relative = one.relativize(file);
        Path to = folder.resolve(relative);
        Files.createDirectories(AtomicFileWriter.folderOf(to));
        Files.copy(file, to);
        boolean isFriends = relative.getNameCount() == 1 && !OURS.contains(relative.toString());
        if (isFriends && !relative.toString().equals("other-rules.yaml")) {
          friends.add(to.toString());
        }
      }
    }
    return friends;
  }

  private CommandResult merge(Path one, List<String> friends, String... more) throws IOException {
    List<Object> words = new ArrayList<>(List.of("merge", folder.resolve("record.yaml")));
    words.addAll(friends);
    Path options = one.resolve("options.txt");
    if (Files.exists(options)) {
      words.addAll(List.of(Files.readString(options).strip().split("\\s+")));
    }
    words.addAll(List.of(more));
    return CommandResult.of(words.toArray());
  }

  private String said(CommandResult ran) {
    String all = ran.out() + ran.err() + "exit " + ran.exit() + "\n";
    return all.replace(folder + "/", "");
  }

  @Tag("pinned")
  @ParameterizedTest
  @MethodSource("cases")
  void showsWritesAndAddsNothingTwice(Path one) throws IOException {
    List<String> friends = copy(one);
    Path record = folder.resolve("record.yaml");
    String before = Files.readString(record);
    String said = said(merge(one, friends));
    assertThat(Files.readString(record)).as("a preview writes nothing").isEqualTo(before);
    merge(one, friends, "--write");
    String after = Files.readString(record);
    String written = after.equals(before) ? "" : after;
    Pinned.equal(Map.of(one.resolve("expected.txt"), said, one.resolve("after.yaml"), written));
    CommandResult again = merge(one, friends, "--write");
    assertThat(Files.readString(record)).as("nothing is added twice").isEqualTo(after);
    if (again.exit() == Exit.DONE) {
      assertThat(again.out()).contains(": 0 added,", "stays as it is.");
    }
  }

  @Test
  void everyErrorOfMergingHasACase() throws IOException {
    Set<String> seen = new TreeSet<>();
    for (Path one : cases()) {
      String expected = Files.readString(one.resolve("expected.txt"));
      Stream.of(
              DiagnosticCode.DIFFERENT_VEHICLE,
              DiagnosticCode.DIFFERENT_EDITION,
              DiagnosticCode.UNKNOWN_ITEM)
          .map(DiagnosticCode::id)
          .filter(it -> expected.contains("error[" + it + "]"))
          .forEach(seen::add);
    }
    assertThat(seen).containsExactly("different-edition", "different-vehicle", "unknown-item");
  }
}
