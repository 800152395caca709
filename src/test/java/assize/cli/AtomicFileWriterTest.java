package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileWriterTest {
  @TempDir private Path folder = Path.of("");

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(it -> it.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void writesWhereNoFolderIsYetAndLeavesNothingBeside() throws IOException {
    AtomicFileWriter.write(folder.resolve("a/b/report.html"), new byte[] {-61, -92, 10});
    assertThat(folder.resolve("a/b")).isDirectoryContaining(it -> it.endsWith("report.html"));
    assertThat(folder.resolve("a/b/report.html")).hasBinaryContent(new byte[] {-61, -92, 10});
    try (Stream<Path> all = Files.list(folder.resolve("a/b"))) {
      assertThat(all).hasSize(1);
    }
  }

  @Test
  void takesItsPartAwayWhenItCannotBeMoved() throws IOException {
    Path target = folder.resolve("taken");
    Files.createDirectories(target.resolve("inside"));
    assertThatThrownBy(() -> AtomicFileWriter.write(target, new byte[1]))
        .isInstanceOf(AtomicFileWriter.CannotWrite.class)
        .hasMessage("can't write " + target + ": a folder stands there");
    assertThat(names()).containsExactly("taken");
  }

  @Test
  void saysWhatStandsInTheWay() throws IOException {
    Files.createFile(folder.resolve("file"));
    Path below = folder.resolve("file/x/y.html");
    assertThatThrownBy(() -> AtomicFileWriter.check(List.of(folder.resolve("fine"), below)))
        .hasMessage("can't write " + below + ": a file stands where a folder is needed");
    assertThat(names()).containsExactly("file");
  }

  /** Whoever opens the file while it is written anew finds all of the old one or all of the new. */
  @Test
  void showsTheOldFileOrTheNewOneWhole() throws Exception {
    Path target = folder.resolve("report.html");
    byte[] old = new byte[1 << 20];
    byte[] young = new byte[1 << 20];
    Arrays.fill(young, (byte) 1);
    AtomicFileWriter.write(target, old);
    AtomicBoolean done = new AtomicBoolean();
    Thread writer =
        new Thread(
            () -> {
              for (int i = 0; i < 50; i++) {
                AtomicFileWriter.write(target, i % 2 == 0 ? young : old);
              }
              done.set(true);
            });
    writer.start();
    int torn = 0;
    do {
      byte[] seen = Files.readAllBytes(target);
      torn += Arrays.equals(seen, old) || Arrays.equals(seen, young) ? 0 : 1;
    } while (writer.isAlive());
    writer.join();
    assertThat(done).isTrue();
    assertThat(torn).isZero();
    assertThat(names()).containsExactly("report.html");
  }
}
