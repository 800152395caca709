package assize.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;

/** How long files are. */
final class FileSize {
  private FileSize() {}

  static long of(Path file) {
    try {
      return Files.size(file);
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(file, e);
    }
  }

  /** Words a length: kilobytes of 1000 bytes, rounded up, or megabytes to one place. */
  static String words(long bytes) {
    return bytes < 1_000_000
        ? (bytes + 999) / 1000 + " KB"
        : BigDecimal.valueOf(bytes, 6).setScale(1, RoundingMode.HALF_EVEN) + " MB";
  }
}
