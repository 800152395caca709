package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputTransactionTest {
  @TempDir private Path folder = Path.of("");

  private Map<String, String> content() {
    return CommandBench.content(folder);
  }

  @Test
  void showsNothingBeforeAllIsPlaced() throws IOException {
    Files.writeString(folder.resolve("a.html"), "old");
    try (OutputTransaction outputs = new OutputTransaction()) {
      outputs.stage(folder.resolve("a.html"), "new");
      outputs.stage(folder.resolve("deep/er/b.html"), "b");
      assertThat(folder.resolve("a.html")).hasContent("old");
      assertThat(folder.resolve("deep/er/b.html")).doesNotExist();
      outputs.commit();
    }
    assertThat(content()).containsOnlyKeys("", "a.html", "deep", "deep/er", "deep/er/b.html");
    assertThat(folder.resolve("a.html")).hasContent("new");
  }

  @Test
  void takesPartsAndItsFoldersAwayWhenNothingIsPlaced() {
    Map<String, String> before = content();
    try (OutputTransaction outputs = new OutputTransaction()) {
      outputs.stage(folder.resolve("deep/er/a.html"), "a");
      outputs.stage(folder.resolve("b.html"), "b");
      assertThat(content()).hasSizeGreaterThan(4);
    }
    assertThat(content()).isEqualTo(before);
  }

  @Test
  void takesPartsAwayWhenWritingFails() {
    Map<String, String> before = content();
    assertThatThrownBy(
            () -> {
              try (OutputTransaction outputs = new OutputTransaction()) {
                outputs.stage(folder.resolve("a.html"), "a");
                outputs.stage(
                    folder.resolve("b.html"),
                    out -> {
                      out.write('b');
                      throw new IOException("no space left");
                    });
              }
            })
        .isInstanceOf(AtomicFileWriter.CannotWrite.class);
    assertThat(content()).isEqualTo(before);
  }

  @Test
  void saysBeforehandWhatStandsInTheWay() throws IOException {
    Files.createDirectory(folder.resolve("b.html"));
    Map<String, String> before = content();
    try (OutputTransaction outputs = new OutputTransaction()) {
      outputs.stage(folder.resolve("a.html"), "a");
      assertThatThrownBy(() -> outputs.stage(folder.resolve("b.html"), "b"))
          .hasMessage("can't write " + folder.resolve("b.html") + ": a folder stands there");
    }
    assertThat(content()).isEqualTo(before);
  }

  @Test
  void takesPagesFromSeveralThreads() {
    try (OutputTransaction outputs = new OutputTransaction()) {
      IntStream.range(0, 200)
          .parallel()
          .forEach(i -> outputs.stage(folder.resolve(i % 5 + "/" + i + ".html"), "page " + i));
      outputs.commit();
    }
    assertThat(content()).hasSize(1 + 5 + 200);
    assertThat(IntStream.range(0, 200))
        .allSatisfy(
            i -> assertThat(folder.resolve(i % 5 + "/" + i + ".html")).hasContent("page " + i));
  }

  @Test
  void refusesToWriteOneFileTwice() {
    try (OutputTransaction outputs = new OutputTransaction()) {
      outputs.stage(folder.resolve("a.html"), "a");
      assertThatThrownBy(() -> outputs.stage(folder.resolve("a.html"), "b"))
          .isInstanceOf(IllegalStateException.class);
    }
  }

  @Tag("slow")
  @Test
  void clearsOnlyPartsOfProcessesThatAreNoMore() throws Exception {
    Process gone = program("1").redirectInput(ProcessBuilder.Redirect.PIPE).start();
    long started = gone.info().startInstant().orElseThrow().toEpochMilli();
    gone.destroyForcibly().waitFor();
    long own = ProcessHandle.current().pid();
    String stale = ".assize-" + gone.pid() + "-" + started + "-0.part";
    String earlier = ".assize-" + own + "-1000-0.part";
    String running = TempFileName.next(7);
    String foreign = ".assize-" + gone.pid() + "-0.part";
    String other = ".other-" + gone.pid() + "-" + started + "-0.part";
    Path pages = Files.createDirectories(folder.resolve("pages"));
    for (String name : List.of(stale, earlier, running, foreign, other, "stale.part")) {
      Files.writeString(pages.resolve(name), "part");
    }
    Path linked = pages.resolve(".assize-" + gone.pid() + "-" + started + "-1.part");
    Files.createSymbolicLink(linked, pages.resolve("stale.part"));
    AtomicFileWriter.write(pages.resolve("a.html"), new byte[] {'a'});
    assertThat(CommandBench.content(pages))
        .containsOnlyKeys(
            "", "a.html", running, foreign, other, "stale.part", linked.getFileName().toString());
  }

  private ProcessBuilder program(String times) {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-Xshare:auto",
            "-cp",
            System.getProperty("java.class.path", ""),
            "assize.cli.StagingProgram",
            folder.toString(),
            times)
        .redirectError(ProcessBuilder.Redirect.INHERIT);
  }

  private static String lines(Process process, int count) throws IOException {
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    String last = "";
    for (int i = 0; i < count; i++) {
      last = out.readLine();
    }
    return last;
  }

  /** Killed at any point, a run leaves each page whole, and the next run clears its parts. */
  @Tag("slow")
  @ParameterizedTest
  @ValueSource(ints = {1, 17, 40, 41, 42, 43, 60, 82, 83, 84, 85, 100, 125, 126, 127, 140})
  void leavesEachPageOldOrNewWhenKilled(int after) throws Exception {
    AtomicFileWriter.write(folder.resolve("odd/begun.html"), new byte[0]);
    Process process = program("20").start();
    lines(process, after);
    process.destroyForcibly().waitFor();
    for (int i = 0; i < StagingProgram.PAGES; i++) {
      Path page = StagingProgram.page(folder, i);
      if (after >= 42 || Files.exists(page)) {
        String text = Files.readString(page);
        assertThat(text).hasSize(StagingProgram.LENGTH);
        assertThat(text.chars().distinct().count()).isEqualTo(1);
      }
    }
    try (OutputTransaction next = new OutputTransaction()) {
      for (int i = 0; i < StagingProgram.PAGES; i++) {
        next.stage(StagingProgram.page(folder, i), "next");
      }
      next.commit();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      assertThat(all.filter(Files::isRegularFile)).hasSize(StagingProgram.PAGES + 1);
    }
  }

  @Tag("slow")
  @Test
  void takesPartsAwayWhenItIsAskedToStop() throws Exception {
    Map<String, String> before = content();
    Process process = program("1").start();
    assertThat(lines(process, StagingProgram.PAGES)).isEqualTo("staged");
    process.destroy();
    process.waitFor();
    assertThat(content()).isEqualTo(before);
  }
}
