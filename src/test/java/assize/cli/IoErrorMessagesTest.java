package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A mistake of the program itself reaches a person as a message, not as a trace. */
class IoErrorMessagesTest {
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();
  private CommandBench bench = new CommandBench(Path.of(""));

  @BeforeEach
  void lay(@TempDir Path folder) {
    bench = CommandBench.in(folder);
  }

  static List<Supplier<Throwable>> mistakes() {
    return List.of(
        () -> new IllegalStateException("a cog is missing\nand a wheel"),
        NullPointerException::new,
        () -> new AssertionError("a cog is missing"),
        () -> new NoClassDefFoundError("assize/Cog"),
        StackOverflowError::new);
  }

  @SuppressWarnings("unchecked")
  private static <E extends Throwable> void sneak(Throwable problem) throws E {
    throw (E) problem;
  }

  /** Returns a stream into which nothing can be printed without the program failing. */
  private static PrintStream broken(Supplier<Throwable> mistake) {
    return new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8) {
      @Override
      public void print(String text) {
        IoErrorMessagesTest.<RuntimeException>sneak(mistake.get());
      }
    };
  }

  private PrintStream err() {
    return new PrintStream(said, true, StandardCharsets.UTF_8);
  }

  private String said() {
    return said.toString(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void isSaidWithWhatTheCommandLineNames(Supplier<Throwable> mistake) {
    Terminal terminal = new Terminal(broken(mistake), err(), false);
    assertThat(Main.run(terminal, "date", "1934-05")).isEqualTo(Exit.FAILED);
    assertThat(said())
        .startsWith("error: date 1934-05: ")
        .contains("ASSIZE_TRACE=1", "Nothing more was written.")
        .doesNotContain("\tat ", "and a wheel");
  }

  /** Of several records the one that was worked on is named. */
  @Test
  void namesTheFileThatWasWorkedOn() {
    Path out = failingAt(bench.at("out"), "two.html");
    ReportWriter.ReportOptions wanted =
        new ReportWriter.ReportOptions(out, Optional.empty(), false, false, false);
    Terminal terminal = new Terminal(err(), err(), false);
    InputLoader inputs = new InputLoader(terminal);
    Map<String, String> before = bench.content();
    List<Path> records = List.of(bench.at("one.yaml"), bench.at("two.yaml"));
    int exit = Exit.DONE;
    try {
      new ReportWriter(terminal)
          .write(inputs.judge(records, Optional.empty(), Optional.empty()).orElseThrow(), wanted);
    } catch (Bug e) {
      exit = IoErrorMessages.say(terminal, e, List.of());
    }
    assertThat(exit).isEqualTo(Exit.FAILED);
    assertThat(said())
        .startsWith(
            "error: "
                + bench.at("two.yaml")
                + ": Assize failed, and not by your mistake: "
                + "IllegalStateException: a cog is missing\n")
        .doesNotContain("\tat ");
    assertThat(bench.content()).isEqualTo(before);
  }

  /** Returns a folder of which one file can't be named without the program failing. */
  private static Path failingAt(Path folder, String name) {
    return (Path)
        Proxy.newProxyInstance(
            Path.class.getClassLoader(),
            new Class<?>[] {Path.class},
            (proxy, method, words) -> {
              if (method.getName().equals("resolve") && words[0].equals(name)) {
                throw new IllegalStateException("a cog is missing");
              }
              try {
                return method.invoke(folder, words);
              } catch (InvocationTargetException e) {
                throw e.getCause();
              }
            });
  }

  private int results(boolean leaveOut) throws IOException {
    Path out = failingAt(bench.at("out"), "two.html");
    Terminal terminal = new Terminal(err(), err(), false);
    return new ResultsWriter(
            terminal,
            new ResultsWriter.ResultsOptions(
                bench.at("vehicles"),
                new ReportWriter.ReportOptions(out, Optional.empty(), false, false, false),
                Optional.empty(),
                Optional.empty(),
                leaveOut,
                false))
        .make();
  }

  private void layVehicles() throws IOException {
    Files.createDirectories(bench.at("vehicles"));
    for (String file : List.of("rules.yaml", "one.yaml", "two.yaml")) {
      Files.copy(bench.at(file), bench.at("vehicles").resolve(file));
    }
  }

  @Test
  void resultsLeaveOutTheVehicleAtWhichTheProgramFails() throws IOException {
    layVehicles();
    assertThat(results(true)).isEqualTo(Exit.DONE);
    assertThat(said())
        .contains("two.yaml: Assize failed, and not by your mistake: ", "a cog is missing")
        .contains("1 record has errors and is left out")
        .doesNotContain("\tat ");
    assertThat(CommandBench.content(bench.at("out")))
        .containsOnlyKeys("", "one.html", "results.html");
    assertThat(Files.readString(bench.at("out/results.html")))
        .contains("<li><span>two.yaml</span><span class=\"points\">1 problem</span>");
  }

  @Test
  void resultsThatLeaveNothingOutWriteNothing() throws IOException {
    layVehicles();
    Map<String, String> before = bench.content();
    assertThat(results(false)).isEqualTo(Exit.FAILED);
    assertThat(said()).contains("two.yaml: Assize failed", "Nothing was written");
    assertThat(bench.content()).isEqualTo(before);
  }
}
