package assize.fault;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.Main;
import assize.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Runs every command that writes, again and again, each time with a disk that fails from another
 * step on, and looks at what is left. Run as a process of its own on {@link FaultyFiles}.
 */
final class FaultProgram {
  /** No process has such a number. */
  private static final String GONE = ".assize-99999999999-1-";

  private final Path root;

  private FaultProgram(Path root) {
    this.root = root;
  }

  /** How a command ended; {@code exit} is -1 where it was killed. */
  private record Ended(int exit, String said, int steps) {}

  /** Takes an empty folder. */
  public static void main(String[] args) throws IOException {
    FaultProgram program = new FaultProgram(Path.of(args[0]));
    for (WriteScenario scene : WriteScenario.ALL) {
      for (Fault fault : List.of(Fault.KILLED, Fault.FULL, Fault.DENIED, Fault.READ_ONLY)) {
        System.out.println(scene.name() + ", " + fault + ": " + program.tries(scene, fault));
      }
    }
    System.exit(0);
  }

  private int tries(WriteScenario scene, Fault fault) throws IOException {
    Path folder = root.resolve("here");
    empty(folder);
    scene.lay(folder);
    Map<String, String> before = WriteScenario.files(folder);
    Ended well = run(scene, folder, Fault.NONE, 0);
    int steps = well.steps();
    Map<String, String> after = WriteScenario.files(folder);
    assertThat(well.exit()).as(well.said()).isZero();
    assertThat(steps).as(scene.name()).isGreaterThan(3);
    assertThat(after.equals(before)).as(scene.name()).isFalse();
    for (int step = 1; step <= steps; step++) {
      String what = scene.name() + ", " + fault + " at step " + step + " of " + steps;
      empty(folder);
      scene.lay(folder);
      Ended ended = run(scene, folder, fault, step);
      Map<String, String> left = WriteScenario.files(folder);
      if (fault == Fault.KILLED) {
        assertThat(ended.exit()).as(what).isEqualTo(-1);
      } else {
        told(ended, what);
      }
      whole(scene, what, before, after, left, fault);
      if (fault == Fault.KILLED) {
        again(scene, folder, what, after, left);
      }
    }
    return steps;
  }

  /** Whoever is told anything is told which file and why, and of no failure if there was none. */
  private static void told(Ended ended, String what) {
    assertThat(ended.said()).as(what).doesNotContain("\tat ", "Exception");
    if (ended.exit() != 0) {
      assertThat(ended.exit()).as(what + "\n" + ended.said()).isEqualTo(3);
      assertThat(ended.said())
          .as(what)
          .contains("can't write /")
          .containsAnyOf("No space left on device", "permission denied", "Read-only file system");
    }
  }

  /** Each file is as it was or as it should be; a part that is left says whose it is. */
  private static void whole(
      WriteScenario scene,
      String what,
      Map<String, String> before,
      Map<String, String> after,
      Map<String, String> left,
      Fault fault) {
    before.forEach(
        (name, text) -> {
          if (name.endsWith(".secret")) {
            assertThat(left).as(what + ": " + name).containsValue(text);
          }
        });
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(after.keySet());
    names.addAll(left.keySet());
    for (String name : names) {
      String as = what + ": " + name;
      if (name.contains(".assize-")) {
        assertThat(fault).as(as).isNotIn(Fault.FULL);
      } else if (name.endsWith(".secret")) {
        // One that was there has been found in some file; a new one is drawn by lot.
        assertThat(left.getOrDefault(name, after.get(name))).as(as).hasSameSizeAs(after.get(name));
      } else if (name.endsWith("-redacted.html") && left.containsKey(name)) {
        // Its hashes are of a secret that is drawn by lot.
        assertThat(left.get(name).length())
            .as(as)
            .isIn(before.get(name).length(), after.get(name).length());
      } else if (scene.old().containsKey(name) || !before.containsKey(name)) {
        assertThat(left.get(name)).as(as).isIn(before.get(name), after.get(name));
      } else if (scene.changes().contains(name)) {
        assertThat(left).as(as).containsKey(name);
        assertThat(left.get(name)).as(as).isIn(before.get(name), after.get(name));
      } else {
        assertThat(left.get(name)).as(as + ", which is only read").isEqualTo(before.get(name));
      }
    }
  }

  /** The next run gives what it would have given, and clears what a killed one left. */
  private void again(
      WriteScenario scene,
      Path folder,
      String what,
      Map<String, String> after,
      Map<String, String> left)
      throws IOException {
    for (String name : left.keySet()) {
      if (name.contains(".assize-")) {
        Path part = folder.resolve(name);
        String file = part.getFileName().toString();
        Files.move(part, part.resolveSibling(GONE + file.substring(file.lastIndexOf('-') + 1)));
      }
    }
    Ended ended = run(scene, folder, Fault.NONE, 0);
    Map<String, String> now = new LinkedHashMap<>(WriteScenario.files(folder));
    boolean isNew = scene.words().get(0).startsWith("new") && left.containsKey("new.yaml");
    assertThat(ended.exit()).as(what + ", again\n" + ended.said()).isEqualTo(isNew ? 3 : 0);
    boolean isDone = isNew || left.equals(after);
    boolean isMerged =
        isDone || scene.changes().stream().anyMatch(it -> left.get(it).equals(after.get(it)));
    if (!isMerged) {
      Set<String> expected = new TreeSet<>(named(now));
      expected.removeIf(name -> scene.isForgotten(name, left, after));
      assertThat(expected).as(what + ", again").containsExactlyElementsOf(named(after));
    }
    after.forEach(
        (name, text) -> {
          if (!name.endsWith(".secret") && !name.endsWith("-redacted.html")) {
            assertThat(now.get(name)).as(what + ", again: " + name).isEqualTo(text);
          }
        });
  }

  /** Returns the names of files; earlier secrets have names that are drawn by lot. */
  private static List<String> named(Map<String, String> files) {
    return files.keySet().stream().filter(name -> !name.contains(".old-")).toList();
  }

  private static Ended run(WriteScenario scene, Path folder, Fault fault, int step) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream said = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    FaultyFiles files = FaultyFiles.ofThisProcess();
    files.arm(fault, step);
    int exit = Main.run(new Terminal(said, said, false), scene.words(folder));
    int steps = files.disarm();
    boolean killed = fault == Fault.KILLED && steps >= step;
    return new Ended(killed ? -1 : exit, bytes.toString(StandardCharsets.UTF_8), steps);
  }

  private static void empty(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(one);
        }
      }
    }
    Files.createDirectories(folder);
  }
}
