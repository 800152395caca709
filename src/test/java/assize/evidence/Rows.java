package assize.evidence;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Check values: one row a line, cells parted by semicolons, remarks behind a hash. */
final class Rows {
  private Rows() {}

  static List<List<String>> of(String file) {
    try (InputStream in = Rows.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("no such check values: " + file);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> List.of(line.split(";", -1)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
