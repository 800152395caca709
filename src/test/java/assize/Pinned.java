package assize;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Compares what the program writes today with expected texts that are kept in the project.
 *
 * <p>A test that calls this class has the tag {@code pinned}. {@code mvn -Pupdate-expected test}
 * runs these tests alone and writes each text that differs to its file. A test whose text differed
 * still fails, so that somebody looks at the difference before committing it.
 */
public final class Pinned {
  private static final String UPDATE = "assize.updateExpected";

  private Pinned() {}

  /**
   * Compares a text with the file that keeps it. A missing file counts as an empty text, and an
   * empty text is kept as no file.
   *
   * @param file where the text is kept, relative to the project's folder
   * @param text what the program writes today
   */
  public static void equal(Path file, String text) {
    equal(Map.of(file, text));
  }

  /** Compares several texts, and updates all that differ before the test fails. */
  public static void equal(Map<Path, String> texts) {
    List<Path> updated = new ArrayList<>();
    try {
      for (Map.Entry<Path, String> one : new TreeMap<>(texts).entrySet()) {
        Path file = one.getKey();
        String expected = Files.exists(file) ? Files.readString(file) : "";
        if (Boolean.getBoolean(UPDATE) && !one.getValue().equals(expected)) {
          write(file, one.getValue());
          updated.add(file);
        } else {
          assertThat(one.getValue())
              .as(file + " (mvn -Pupdate-expected test updates it)")
              .isEqualTo(expected);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (!updated.isEmpty()) {
      throw new AssertionError("updated " + updated + ": look at the difference (git diff)");
    }
  }

  private static void write(Path file, String text) throws IOException {
    if (text.isEmpty()) {
      Files.delete(file);
      return;
    }
    Path folder = file.getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Files.writeString(file, text);
  }
}
