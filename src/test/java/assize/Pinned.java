package assize;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts that are kept in the project and compared with what the program writes today.
 *
 * <p>With {@code -Dassize.rewrite=true} a text that differs is written to its place. The test still
 * fails, so that a person looks at the difference before it is committed.
 */
public final class Pinned {
  private static final String REWRITE = "assize.rewrite";

  private Pinned() {}

  /**
   * Compares a text with the file that keeps it. A file that isn't there counts as an empty text,
   * and an empty text is kept as no file.
   *
   * @param file where the text is kept, relative to the project's folder
   * @param text what the program writes today
   */
  public static void equal(Path file, String text) {
    try {
      String before = Files.exists(file) ? Files.readString(file) : "";
      if (Boolean.getBoolean(REWRITE) && !text.equals(before)) {
        write(file, text);
        throw new AssertionError(file + " was written again: look at the difference (git diff)");
      }
      assertThat(text).as(file.toString()).isEqualTo(before);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
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
