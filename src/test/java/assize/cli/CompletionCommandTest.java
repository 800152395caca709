package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the shells themselves make of the completions. */
class CompletionCommandTest {
  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void fill() throws IOException {
    Files.createDirectory(folder.resolve("judge"));
    Files.createDirectory(folder.resolve("our papers"));
    for (String name : List.of("our truck.yaml", "our-old.yml", "our-photo.png")) {
      Files.writeString(folder.resolve(name), "");
    }
  }

  /** Runs a program and returns its lines; without it the test is skipped, except under CI. */
  private List<String> run(String program, String... rest) throws Exception {
    boolean isThere =
        Arrays.stream(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
            .anyMatch(it -> Files.isExecutable(Path.of(it).resolve(program)));
    Assumptions.assumeTrue(isThere || "true".equals(System.getenv("CI")), program);
    List<String> command = new ArrayList<>(List.of(program));
    command.addAll(List.of(rest));
    ProcessBuilder builder =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
    builder.environment().put("HOME", folder.resolve("judge").toString());
    builder.environment().put("TERM", "dumb");
    Process process = builder.start();
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as("%s: %s", command, said).isZero();
    return said.lines().toList();
  }

  private String script(String shell) throws IOException {
    CommandResult ran = CommandResult.of("completion", shell);
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    Path file = folder.resolve("judge").resolve("assize." + shell);
    Files.writeString(file, ran.out());
    return file.toString();
  }

  /** Completes the last of some words as bash does it, for which an equals sign is a word. */
  private List<String> bash(String... words) throws Exception {
    StringBuilder typed = new StringBuilder();
    Stream.of(words).forEach(it -> typed.append(" '").append(it).append("'"));
    return run(
        "bash",
        "--norc",
        "-c",
        "source \"$1\"; complete -p assize >/dev/null || exit 9; COMP_WORDS=("
            + typed
            + "); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); _assize;"
            + " ((${#COMPREPLY[@]} == 0)) || printf '%s\\n' \"${COMPREPLY[@]}\"",
        "bash",
        script("bash"));
  }

  @Tag("slow")
  @Test
  void bashCompletesCommandsOptionsWordsAndFiles() throws Exception {
    assertThat(bash("assize", "ju")).containsExactly("judge");
    assertThat(bash("assize", "")).contains("check", "schema", "--help");
    assertThat(bash("assize", "judge", "--ph")).containsExactly("--photos");
    assertThat(bash("assize", "judge", "--photos", "")).containsExactly("embed", "folder");
    assertThat(bash("assize", "judge", "--photos", "=")).containsExactly("embed", "folder");
    assertThat(bash("assize", "judge", "--photos", "=", "f")).containsExactly("folder");
    assertThat(bash("assize", "judge", "our"))
        .containsExactlyInAnyOrder("our truck.yaml", "our-old.yml", "our papers");
    assertThat(bash("assize", "judge", "x.yaml", "--out", "our")).containsExactly("our papers");
    assertThat(bash("assize", "handbook", "x.yaml", "--out", "our-p"))
        .containsExactly("our-photo.png");
    assertThat(bash("assize", "completion", "f")).containsExactly("fish");
    assertThat(bash("assize", "date", "our")).isEmpty();
  }

  /** Completes a line as fish does it. */
  private List<String> fish(String line) throws Exception {
    return run(
            "fish",
            "--no-config",
            "-c",
            "source $argv[1]; complete -C $argv[2]",
            script("fish"),
            line)
        .stream()
        .map(it -> it.replaceAll("\t.*", ""))
        .toList();
  }

  @Tag("slow")
  @Test
  void fishCompletesCommandsOptionsWordsAndFiles() throws Exception {
    assertThat(fish("assize ju")).containsExactly("judge");
    assertThat(fish("assize judge --ph")).containsExactly("--photos");
    assertThat(fish("assize judge --photos ")).containsExactlyInAnyOrder("embed", "folder");
    assertThat(fish("assize judge our")).contains("our truck.yaml", "our papers/");
    assertThat(fish("assize judge x.yaml --out our")).containsExactly("our papers/");
    assertThat(fish("assize date our")).isEmpty();
  }

  /** Zsh completes on a terminal only: here it has to take the script in and know the command. */
  @Tag("slow")
  @Test
  void zshTakesItIn() throws Exception {
    String file = script("zsh");
    assertThat(run("zsh", "-f", "-n", file)).isEmpty();
    assertThat(
            run(
                "zsh",
                "-f",
                "-c",
                "autoload -Uz compinit; compinit -u -D; source $1; print $_comps[assize]",
                "zsh",
                file))
        .containsExactly("_assize");
  }

  /** No PowerShell is at hand: what it would read is held to its quotes and names. */
  @Test
  void powershellIsTold() {
    String script = CommandResult.of("completion", "powershell").out();
    assertThat(script)
        .contains("Register-ArgumentCompleter -Native -CommandName assize")
        .contains("'judge' = 'Judges vehicles and writes a report for each.'")
        .contains("'judge --photos' = @('embed', 'folder')")
        .contains("'--skip-bad-photos' = ");
    assertThat(script.lines()).allMatch(it -> it.chars().filter(c -> c == '\'').count() % 2 == 0);
    assertThat(script.chars().filter(c -> c == '{').count())
        .isEqualTo(script.chars().filter(c -> c == '}').count());
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "fish", "powershell"})
  void everyCommandAndOptionIsInIt(String shell) {
    String script = CommandResult.of("completion", shell).out();
    for (String command : commands()) {
      assertThat(script).contains(command);
      CommandResult.of(command, "--help")
          .out()
          .lines()
          .flatMap(
              it ->
                  java.util.regex.Pattern.compile("^ *(?:-., )?--([a-z-]+)").matcher(it).results())
          .forEach(it -> assertThat(script).contains(it.group(1)));
    }
  }

  private static List<String> commands() {
    return CommandResult.of("--help")
        .out()
        .lines()
        .filter(it -> it.startsWith("  "))
        .flatMap(it -> Stream.of(it.strip().split(" {2,}")[0].split(", ")))
        .toList();
  }

  @Test
  void asksForAShell() {
    assertThat(commands()).contains("judge", "completion", "manual");
    assertThat(CommandResult.of("completion").exit()).isEqualTo(2);
    assertThat(CommandResult.of("completion").err()).contains("SHELL");
    assertThat(CommandResult.of("completion", "csh").exit()).isEqualTo(2);
  }

  /**
   * The page is that of man(7): groff, which most systems show pages with, has nothing to warn of.
   */
  @Tag("slow")
  @Test
  void theManualIsTakenWithoutAWarning() throws Exception {
    CommandResult ran = CommandResult.of("manual");
    assertThat(ran.exit()).isZero();
    Path page = folder.resolve("assize.1");
    Files.writeString(page, ran.out());
    assertThat(run("groff", "-man", "-ww", "-z", "-Tascii", page.toString())).isEmpty();
    List<String> shown = run("groff", "-man", "-ww", "-Tascii", "-P-cbou", page.toString());
    String text = String.join("\n", shown);
    for (String command : commands()) {
      assertThat(text).contains("assize " + command);
    }
    assertThat(text).contains("--photos embed|folder").contains("EXIT STATUS");
  }
}
