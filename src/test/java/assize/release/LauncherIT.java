package assize.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
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
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The launcher as it is shipped, run as somebody would: whatever happens to its archive, Assize
 * says the same and nothing about archives. Runs after packaging.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {
  private static final Path SHIPPED = Path.of("target/assize").toAbsolutePath();
  private static final Path JAVA = Path.of(System.getProperty("java.home"));
  private static final boolean CI = "true".equals(System.getenv("CI"));
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
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void saysThatThereIsNoJavaOrTooOldAOne() throws Exception {
    Path empty = Files.createDirectories(temp.resolve("empty"));
    List<String> command = words("/bin/sh", SHIPPED + "/bin/assize", "date", "1934");
    Launched none = launch(Map.of("PATH", empty.toString()), command);
    assertThat(none.exit()).isEqualTo(127);
    assertThat(none.err()).contains("install Java 17 or later").hasLineCount(1);
    Launched wrong =
        launch(Map.of("PATH", empty.toString(), "JAVA_HOME", empty.toString()), command);
    assertThat(wrong.exit()).isEqualTo(127);
    assertThat(wrong.err()).contains("JAVA_HOME, which names " + empty).hasLineCount(1);
    Recorder old = new Recorder();
    Files.writeString(old.home.resolve("release"), "JAVA_VERSION=\"1.8.0_402\"\n");
    Launched refused = launch(old.environment(), command);
    assertThat(refused.exit()).isEqualTo(127);
    assertThat(refused.err()).contains(old.home + "/bin/java is older than Java 17");
    // An old one that has no such file is asked.
    Path silent = java("echo 'openjdk version \"1.8.0_402\"' >&2");
    Launched asked = launch(Map.of("JAVA_HOME", silent.toString()), command);
    assertThat(asked.exit()).isEqualTo(127);
    assertThat(asked.err()).contains(silent + "/bin/java is older than Java 17").hasLineCount(1);
  }

  /** Exit code 1 means that what was asked has errors, 2 that it was asked wrongly. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aJavaThatDoesNotStartIsNoErrorOfTheInput(boolean withRelease) throws Exception {
    Path broken = java("echo 'Error: could not find libjava.so' >&2; exit 2");
    if (withRelease) {
      Files.copy(JAVA.resolve("release"), broken.resolve("release"));
    }
    Path moved = copy("moved");
    Launched said = run(moved, Map.of("JAVA_HOME", broken.toString()), "date", "1934");
    assertThat(said.exit()).isEqualTo(127);
    assertThat(said.out()).isEmpty();
    assertThat(said.err().lines())
        .containsExactly(
            "Error: could not find libjava.so",
            "assize: "
                + broken
                + "/bin/java does not start and says the above; say where Java 17 or later is by"
                + " JAVA_HOME");
  }

  @Test
  void whatKeptJavaFromStartingOnceIsNotRemembered() throws Exception {
    Path moved = copy("moved");
    Recorder java = new Recorder();
    Map<String, String> wrong = java.environment("JAVA_TOOL_OPTIONS", "-XX:+NoSuchThing");
    Launched first = run(moved, wrong, ASKED);
    assertThat(first.exit()).isEqualTo(127);
    assertThat(first.err()).contains("NoSuchThing", "does not start and says the above");
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    assertThat(java.lastArguments()).contains(archives(moved.resolve("archive")).get(0) + "");
    // With an archive of an earlier start too.
    Launched later = run(moved, wrong, ASKED);
    assertThat(later.exit()).isEqualTo(127);
    assertThat(later.err()).isEqualTo(first.err());
  }

  /** Makes a Java that only does what a script says. */
  private Path java(String script) throws IOException {
    Path home = Files.createTempDirectory(temp.toRealPath(), "java");
    Path java = Files.createDirectory(home.resolve("bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\n" + script + "\n");
    mode(java, "rwxr-xr-x");
    return home;
  }

  @ParameterizedTest
  @MethodSource("shells")
  void startsFromItsOwnFolder(List<String> shell) throws Exception {
    Path moved = copy("moved");
    ProcessBuilder builder =
        new ProcessBuilder(words(shell, "assize", ASKED))
            .directory(moved.resolve("bin").toFile())
            .redirectOutput(temp.resolve("out").toFile())
            .redirectError(temp.resolve("err").toFile());
    environment(builder, Map.of("ASSIZE_ARCHIVE", "no"));
    assertThat(builder.start().waitFor()).isEqualTo(plain.exit());
    assertThat(temp.resolve("out")).hasContent(plain.out());
    assertThat(temp.resolve("err")).hasContent(plain.err());
  }

  @Test
  void aTerminalIsToldOnceThatTheFirstStartTakesLonger() throws Exception {
    assumeTrue(isThere(List.of("script")) || CI);
    Path moved = copy("moved");
    Recorder java = new Recorder();
    List<String> command =
        words("script", "-qec", "'" + moved + "/bin/assize' date 1934-05", "/dev/null");
    Launched first = launch(java.environment(), command);
    assertThat(first.out().lines())
        .containsExactly(
            "assize: preparing faster starts with this Java; this takes some seconds, once",
            "1934-05: May 1934");
    assertThat(java.rehearsals()).isEqualTo(1);
    Launched second = launch(java.environment(), command);
    assertThat(second.out().lines()).containsExactly("1934-05: May 1934");
  }

  @Test
  void anArchiveIsItsOwnersAloneAndWhatAssizeWritesIsNot() throws Exception {
    Path moved = copy("moved");
    Files.writeString(moved.resolve("archive"), "");
    Recorder java = new Recorder();
    Path cache = temp.resolve("cache");
    Launched said =
        launch(
            java.environment("XDG_CACHE_HOME", cache.toString()),
            words(
                "sh",
                "-c",
                "umask 022; exec \"$@\"",
                "sh",
                moved + "/bin/assize",
                "schema",
                temp + "/schemas"));
    assertThat(said.exit()).isZero();
    assertThat(mode(temp.resolve("schemas/assize-record.json"))).isEqualTo("rw-r--r--");
    try (Stream<Path> made = Files.walk(cache)) {
      assertThat(made).hasSizeGreaterThan(3).allMatch(it -> mode(it).endsWith("------"));
    }
  }

  /**
   * What others could do to a cache: in which folder or file, and whether it takes another user.
   */
  enum Shared {
    FOLDER_OF_ANOTHER(true, (folder, archive) -> own(folder)),
    FOLDER_FOR_ALL(false, (folder, archive) -> mode(folder, "rwxrwxrwx")),
    FOLDER_FOR_A_GROUP(false, (folder, archive) -> mode(folder, "rwxrwx---")),
    FOLDER_ABOVE_OF_ANOTHER(true, (folder, archive) -> own(folder.getParent())),
    FOLDER_ABOVE_FOR_ALL(false, (folder, archive) -> mode(folder.getParent(), "rwxrwxrwx"));

    private final boolean asRoot;
    private final Change change;

    Shared(boolean asRoot, Change change) {
      this.asRoot = asRoot;
      this.change = change;
    }

    private interface Change {
      void to(Path folder, Path archive) throws IOException;
    }
  }

  @ParameterizedTest
  @EnumSource(Shared.class)
  void anArchiveInAFolderThatOthersCanChangeIsNotUsed(Shared shared) throws Exception {
    assumeTrue(!shared.asRoot || isRoot());
    Path moved = copy("moved");
    Files.writeString(moved.resolve("archive"), "");
    Recorder java = new Recorder();
    Map<String, String> cached = java.environment("XDG_CACHE_HOME", temp + "/cache");
    assertThat(run(moved, cached, ASKED)).isEqualTo(plain);
    Path folder = Path.of(temp + "/cache/assize" + moved);
    Path archive = archives(folder).get(0);
    assertThat(run(moved, cached, ASKED)).isEqualTo(plain);
    assertThat(java.lastArguments()).contains(archive.toString());
    shared.change.to(folder, archive);
    assertThat(run(moved, cached, ASKED)).isEqualTo(plain);
    assertThat(java.lastArguments()).doesNotContain("jsa");
    assertThat(java.rehearsals()).isEqualTo(1);
  }

  @Test
  void aFolderBesideItThatOthersCanChangeIsNotUsed() throws Exception {
    Path moved = copy("moved");
    Recorder java = new Recorder();
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    mode(moved.resolve("archive"), "rwxrwxrwx");
    Map<String, String> cached = java.environment("XDG_CACHE_HOME", temp + "/cache");
    assertThat(run(moved, cached, ASKED)).isEqualTo(plain);
    assertThat(java.lastArguments()).contains(temp + "/cache/assize" + moved);
  }

  /** What others could have done to the files of a folder before it was closed to them. */
  @ParameterizedTest
  @ValueSource(strings = {"owner", "owner of the text", "for all", "link"})
  void anArchiveThatIsAnothersIsMadeAnew(String fault) throws Exception {
    assumeTrue(!fault.startsWith("owner") || isRoot());
    Path moved = copy("moved");
    Recorder java = new Recorder();
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    Path archive = archives(moved.resolve("archive")).get(0);
    Path text = Path.of(archive.toString().replaceFirst("jsa$", "txt"));
    switch (fault) {
      case "owner" -> own(archive);
      case "owner of the text" -> own(text);
      case "for all" -> mode(archive, "rw-rw-rw-");
      default -> {
        Path elsewhere = Files.move(archive, temp.resolve("elsewhere"));
        Files.createSymbolicLink(archive, elsewhere);
        Files.setLastModifiedTime(text, FileTime.fromMillis(System.currentTimeMillis() + 60_000));
      }
    }
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    assertThat(java.rehearsals()).isEqualTo(2);
    assertThat(archive).isRegularFile();
    assertThat(Files.isSymbolicLink(archive)).isFalse();
    for (Path file : List.of(archive, text)) {
      assertThat(Files.getAttribute(file, "unix:uid"))
          .isEqualTo(Files.getAttribute(temp, "unix:uid"));
      assertThat(mode(file)).endsWith("------");
    }
  }

  @Test
  void theArchiveOfAnAdministratorIsUsedByOthers() throws Exception {
    assumeTrue(isRoot());
    Path moved = copy("moved");
    Recorder java = new Recorder();
    assertThat(java.run(moved, ASKED)).isEqualTo(plain);
    try (Stream<Path> all = Files.walk(temp)) {
      for (Path one : all.toList()) {
        mode(one, "rwxr-xr-x");
      }
    }
    for (String noted : List.of("arguments", "rehearsals")) {
      mode(java.home.resolve(noted), "rw-rw-rw-");
    }
    List<String> command =
        words("setpriv", "--reuid=65534", "--clear-groups", moved + "/bin/assize", ASKED);
    assertThat(launch(java.environment(), command)).isEqualTo(plain);
    assertThat(java.lastArguments()).contains(archives(moved.resolve("archive")).get(0) + "");
    // Whereas a third user's is not.
    own(archives(moved.resolve("archive")).get(0), 65533);
    assertThat(launch(java.environment(), command)).isEqualTo(plain);
    assertThat(java.lastArguments()).doesNotContain("jsa");
    assertThat(java.rehearsals()).isEqualTo(1);
  }

  /** Tests of files of other users take the administrator; the tests' own machine is one. */
  private static boolean isRoot() throws IOException {
    Path own = Files.createTempFile("own", "");
    boolean root = Files.getAttribute(own, "unix:uid").equals(0);
    Files.delete(own);
    return root || CI;
  }

  private static void own(Path file) throws IOException {
    own(file, 65534);
  }

  private static void own(Path file, int user) throws IOException {
    Files.setAttribute(file, "unix:uid", user);
  }

  private static void mode(Path file, String mode) throws IOException {
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
  }

  private static String mode(Path file) {
    try {
      return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A Java that notes what it was given; what it keeps of a training run is no archive. */
  private final class Recorder {
    private final Path home;

    Recorder() throws IOException {
      home = Files.createTempDirectory(temp.toRealPath(), "java");
      Files.createDirectory(home.resolve("bin"));
      Files.copy(JAVA.resolve("release"), home.resolve("release"));
      String aside =
          """
          case $* in
            *CdsTrainingRun*)
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
