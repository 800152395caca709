package assize.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The launcher as it is shipped, run as somebody would: whatever happens to its archive, Assize
 * says the same and nothing about archives. Runs after packaging.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {
  private static final Path SHIPPED = Path.of("target/assize").toAbsolutePath();
  private static final Path JAVA = Path.of(System.getProperty("java.home"));
  private static final String[] ASKED = {"date", "1934-05~", "no date", "*", ""};

  @TempDir Path temp;
  private Launched plain;

  @BeforeEach
  void askThePlainJar() throws Exception {
    plain = launch(Map.of(), words(JAVA + "/bin/java", "-jar", jar(SHIPPED), ASKED));
    assertThat(plain.exit()).isEqualTo(1);
    assertThat(plain.err()).isNotEmpty();
  }

  @Test
  void packagingLeavesAnArchiveThatThisJavaTakes() throws Exception {
    assertThat(archives(SHIPPED.resolve("archive"))).hasSize(1);
    assertThat(run(SHIPPED, Map.of(), ASKED)).isEqualTo(plain);
    assertThat(archives(SHIPPED.resolve("archive"))).hasSize(1);
    String archive = archives(SHIPPED.resolve("archive")).get(0).toString();
    boolean aot = Runtime.version().feature() >= 25;
    // Either option makes Java end with an error where it can't use the archive.
    List<String> strictly =
        aot
            ? List.of("-XX:AOTMode=on", "-XX:AOTCache=" + archive)
            : List.of("-Xshare:on", "-XX:SharedArchiveFile=" + archive);
    Launched strict =
        launch(
            Map.of(),
            words(
                JAVA + "/bin/java",
                List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"),
                strictly,
                List.of("-jar", jar(SHIPPED), "date", "1934")));
    assertThat(strict.exit()).isZero();
  }

  @Test
  void aReportHasTheSameBytes() throws Exception {
    Launched with = run(SHIPPED, Map.of(), "demo", temp.resolve("with").toString());
    Launched without =
        launch(
            Map.of(), words(JAVA + "/bin/java", "-jar", jar(SHIPPED), "demo", temp + "/without"));
    assertThat(with.exit()).isZero();
    assertThat(with.err()).isEmpty();
    assertThat(with.out().replace("/with/", "/without/").replace("/with.", "/without."))
        .isEqualTo(without.out());
    for (Path page : files(temp.resolve("without/reports"))) {
      assertThat(temp.resolve("with/reports").resolve(page.getFileName()))
          .hasSameBinaryContentAs(page);
    }
    assertThat(files(temp.resolve("without/reports"))).hasSize(3);
  }

  static Stream<List<String>> shells() {
    return Stream.of(
            List.of("sh"),
            List.of("dash"),
            List.of("bash", "--posix"),
            List.of("zsh", "--emulate", "sh"),
            List.of("busybox", "sh"))
        .filter(LauncherIT::isThere);
  }

  private static boolean isThere(List<String> shell) {
    return Stream.of(System.getenv("PATH").split(":"))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, shell.get(0))));
  }

  @ParameterizedTest
  @MethodSource("shells")
  void runsFromAFolderWithSpacesThroughLinks(List<String> shell) throws Exception {
    Path moved = copy("a folder/of  mine [1] ü");
    Files.createDirectories(temp.resolve("on path"));
    Files.createSymbolicLink(temp.resolve("second"), moved.resolve("bin/assize"));
    Files.createSymbolicLink(temp.resolve("on path/assize"), Path.of("../second"));
    Recorder java = new Recorder();
    List<String> command = words(shell, temp.resolve("on path/assize").toString(), ASKED);
    assertThat(launch(java.environment(), command)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(1);
    assertThat(launch(java.environment(), command)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(1);
    assertThat(java.lastArguments()).contains(archives(moved.resolve("archive")).get(0) + "");
  }

  @Test
  void isFoundOnThePath() throws Exception {
    Path moved = copy("installed");
    Launched found =
        launch(
            Map.of(
                "PATH",
                moved.resolve("bin") + ":" + System.getenv("PATH"),
                "JAVA_HOME",
                JAVA.toString(),
                "ASSIZE_ARCHIVE",
                "no"),
            words("sh", "-c", "assize \"$@\"", "sh", ASKED));
    assertThat(found).isEqualTo(plain);
    assertThat(moved.resolve("archive")).doesNotExist();
  }

  /** A result that is printed to nobody is not done; errors keep their exit code. */
  @ParameterizedTest
  @MethodSource("shells")
  void theExitCodeTellsWhereStreamsAreClosed(List<String> shell) throws Exception {
    String assize = String.join(" ", shell) + " " + SHIPPED.resolve("bin/assize");
    Map<String, Integer> exits =
        Map.of(
            " date 1934 >&- 2>&- <&-", 3,
            " date 1934 >&- <&-", 3,
            " date 1934 >&-", 3,
            " date 1934 2>&- <&-", 0,
            " date 1934 >/dev/null 2>&- <&-", 0,
            " date nonsense >&- 2>&- <&-", 1,
            " date >&- 2>&- <&-", 2);
    for (Map.Entry<String, Integer> one : exits.entrySet()) {
      Launched ran = launch(Map.of(), List.of("sh", "-c", assize + one.getKey()));
      assertThat(ran.exit()).as(one.getKey()).isEqualTo(one.getValue());
    }
  }

  @Test
  void aMovedFolderGetsAnArchiveOfItsOwn() throws Exception {
    Recorder java = new Recorder();
    Path first = copy("first");
    assertThat(java.run(first, ASKED)).isEqualTo(plain);
    Path second = temp.resolve("second");
    Files.move(first, second);
    assertThat(java.run(second, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(2);
  }

  @Test
  void anotherJarGetsAnArchiveOfItsOwn() throws Exception {
    Recorder java = new Recorder();
    Path moved = copy("moved");
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    Path jar = moved.resolve("lib/assize.jar");
    Files.setLastModifiedTime(jar, FileTime.fromMillis(System.currentTimeMillis() + 60_000));
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(2);
    // Of the next release, whose files say the same day and may be as long: its launcher knows it.
    Path launcher = moved.resolve("bin/assize");
    String text = Files.readString(launcher);
    assertThat(text).containsPattern("digest='[0-9a-f]{64}'");
    Files.writeString(launcher, text.replaceFirst("digest='.", "digest='x"));
    Files.setLastModifiedTime(jar, FileTime.fromMillis(0));
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(3);
  }

  @Test
  void anotherJavaGetsAnArchiveOfItsOwn() throws Exception {
    Path moved = copy("moved");
    Recorder one = new Recorder();
    Recorder other = new Recorder();
    assertThat(one.run(moved, ASKED)).isEqualTo(plain);
    assertThat(other.run(moved, ASKED)).isEqualTo(plain);
    assertThat(archives(moved.resolve("archive"))).hasSize(2);
    // The same place, with the next release of Java in it.
    Files.writeString(
        one.home.resolve("release"),
        Files.readString(one.home.resolve("release"))
            .replaceAll("(?m)^(JAVA_VERSION=\"\\d+)[^\"]*", "$1.0.99"));
    assertThat(one.run(moved, ASKED)).isEqualTo(plain);
    assertThat(one.rehearsals()).isEqualTo(2);
  }

  @ParameterizedTest
  @MethodSource("damages")
  void aDamagedArchiveIsMadeAnew(int kept, boolean garbage) throws Exception {
    Path moved = copy("moved");
    Recorder java = new Recorder();
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    Path archive = archives(moved.resolve("archive")).get(0);
    byte[] whole = Files.readAllBytes(archives(SHIPPED.resolve("archive")).get(0));
    byte[] damaged = Arrays.copyOf(whole, Math.min(kept, whole.length));
    if (garbage) {
      Arrays.fill(damaged, (byte) 'x');
    }
    Files.deleteIfExists(archive);
    Files.write(archive, damaged);
    Files.setLastModifiedTime(archive, FileTime.fromMillis(0));
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(2);
    assertThat(java.lastArguments()).contains(archive.toString());
    // As long as it was, yet written to since.
    Files.write(archive, "no archivX\n".getBytes(StandardCharsets.US_ASCII));
    Files.setLastModifiedTime(archive, FileTime.fromMillis(System.currentTimeMillis() + 60_000));
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(3);
  }

  static Stream<Arguments> damages() {
    return Stream.of(0, 1, 100, 5_000, 1_000_000, 9_999_999)
        .flatMap(kept -> Stream.of(true, false).map(it -> Arguments.of(kept, it)));
  }

  @Test
  void whereNothingCanBeWrittenItStartsWithout() throws Exception {
    Path moved = copy("moved");
    Recorder java = new Recorder();
    // A file where the folder would be stops everybody, the administrator too.
    Files.writeString(moved.resolve("archive"), "");
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isZero();
    Map<String, String> cached = java.environment("XDG_CACHE_HOME", temp + "/a cache");
    assertThat(run(moved, cached, ASKED)).isEqualTo(plain);
    assertThat(run(moved, cached, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(1);
    assertThat(java.lastArguments()).contains(temp + "/a cache/assize" + moved.toRealPath());
    Map<String, String> home = java.environment("HOME", temp + "/somebody");
    assertThat(run(moved, home, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(2);
    Map<String, String> nowhere = java.environment("HOME", moved + "/archive");
    assertThat(run(moved, nowhere, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(2);
  }

  @Test
  void severalMayStartAtOnce() throws Exception {
    Path moved = copy("moved");
    Recorder java = new Recorder();
    List<Process> all =
        Stream.of("a", "b", "c", "d").map(name -> start(java, moved, name)).toList();
    for (Process one : all) {
      one.waitFor();
    }
    for (String name : List.of("a", "b", "c", "d")) {
      assertThat(temp.resolve(name + ".out")).hasContent(plain.out());
      assertThat(temp.resolve(name + ".err")).hasContent(plain.err());
    }
    try (Stream<Path> left = Files.list(moved.resolve("archive"))) {
      assertThat(left).hasSize(2).noneMatch(file -> file.getFileName().toString().startsWith("."));
    }
  }

  private Process start(Recorder java, Path moved, String name) {
    try {
      ProcessBuilder builder =
          new ProcessBuilder(words(moved.resolve("bin/assize").toString(), ASKED))
              .redirectOutput(temp.resolve(name + ".out").toFile())
              .redirectError(temp.resolve(name + ".err").toFile());
      environment(builder, java.environment());
      return builder.start();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void saysThatThereIsNoJavaOrTooOldAOne() throws Exception {
    Path empty = Files.createDirectories(temp.resolve("empty"));
    List<String> command = words("/bin/sh", SHIPPED + "/bin/assize", "date", "1934");
    Launched none = launch(Map.of("PATH", empty.toString()), command);
    assertThat(none.exit()).isEqualTo(127);
    assertThat(none.err()).contains("install Java 17 or later").hasLineCount(1);
    Recorder old = new Recorder();
    Files.writeString(old.home.resolve("release"), "JAVA_VERSION=\"1.8.0_402\"\n");
    Launched refused = launch(old.environment(), command);
    assertThat(refused.exit()).isEqualTo(127);
    assertThat(refused.err()).contains(old.home + "/bin/java is older than Java 17");
  }

  /** A Java that notes what it was given; what it keeps of a rehearsal is no archive. */
  private final class Recorder {
    private final Path home;

    Recorder() throws IOException {
      home = Files.createTempDirectory(temp.toRealPath(), "java");
      Files.createDirectory(home.resolve("bin"));
      Files.copy(JAVA.resolve("release"), home.resolve("release"));
      String aside =
          """
          case $* in
            *Rehearsal*)
              echo >>'HOME/rehearsals'
              for one; do
                case $one in
                  -XX:*=*jsa) echo 'no archive' >"${one#*=}" ;;
                esac
              done
              exit
              ;;
          esac
          """;
      String script =
          "#!/bin/sh\nprintf '%s\\n' \"$*\" >'HOME/arguments'\n"
              + aside
              + "exec 'JAVA/bin/java' \"$@\"\n";
      Path java = home.resolve("bin/java");
      Files.writeString(
          java, script.replace("HOME", home.toString()).replace("JAVA", JAVA.toString()));
      Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    Map<String, String> environment(String... more) {
      return more.length == 0
          ? Map.of("JAVA_HOME", home.toString())
          : Map.of("JAVA_HOME", home.toString(), more[0], more[1]);
    }

    Launched run(Path folder, String... arguments) throws Exception {
      return LauncherIT.this.run(folder, environment(), arguments);
    }

    long rehearsals() throws IOException {
      Path noted = home.resolve("rehearsals");
      return Files.exists(noted) ? Files.readAllLines(noted).size() : 0;
    }

    String lastArguments() throws IOException {
      return Files.readString(home.resolve("arguments"));
    }
  }

  /** What came of a command. */
  private record Launched(int exit, String out, String err) {}

  private Launched run(Path folder, Map<String, String> environment, String... arguments)
      throws Exception {
    return launch(environment, words(folder.resolve("bin/assize").toString(), arguments));
  }

  private Launched launch(Map<String, String> environment, List<String> command) throws Exception {
    Path out = Files.createTempFile(temp, "out", "");
    Path err = Files.createTempFile(temp, "err", "");
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    environment(builder, environment);
    int exit = builder.start().waitFor();
    return new Launched(exit, Files.readString(out), Files.readString(err));
  }

  /** Leaves a process this alone, and by what path commands are found. */
  private static void environment(ProcessBuilder builder, Map<String, String> wanted) {
    builder.environment().clear();
    builder.environment().put("PATH", System.getenv("PATH"));
    builder.environment().put("LC_ALL", "C.UTF-8");
    builder.environment().put("JAVA_HOME", JAVA.toString());
    if (wanted.containsKey("PATH") && !wanted.containsKey("JAVA_HOME")) {
      builder.environment().remove("JAVA_HOME");
    }
    builder.environment().putAll(wanted);
  }

  private Path copy(String name) throws IOException {
    Path folder = temp.toRealPath().resolve(name);
    for (String file : List.of("bin/assize", "lib/assize.jar")) {
      Path to = folder.resolve(file);
      Files.createDirectories(to.getParent());
      Files.copy(SHIPPED.resolve(file), to, StandardCopyOption.COPY_ATTRIBUTES);
    }
    return folder;
  }

  private static String jar(Path folder) {
    return folder.resolve("lib/assize.jar").toString();
  }

  private static List<Path> archives(Path folder) throws IOException {
    return files(folder).stream().filter(file -> file.toString().endsWith(".jsa")).toList();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.sorted().toList();
    }
  }

  /** Returns one command of words, and of several words that stand together. */
  private static List<String> words(Object... parts) {
    return Stream.of(parts)
        .flatMap(
            part ->
                part instanceof List<?> list
                    ? list.stream()
                    : part instanceof String[] several ? Stream.of(several) : Stream.of(part))
        .map(String::valueOf)
        .toList();
  }
}
