package assize.measure;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Reads the small tables that travel with the program; {@code #} begins a remark. */
final class ResourceTable {
  private ResourceTable() {}

  /** Returns the cells of each row, the heading left out. */
  static List<List<String>> rows(String name) {
    try (InputStream in = ResourceTable.class.getResourceAsStream(name)) {
      byte[] bytes = Objects.requireNonNull(in, name).readAllBytes();
      return new String(bytes, StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .skip(1)
          .map(line -> List.of(line.split(",", -1)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
