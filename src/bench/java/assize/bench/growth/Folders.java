package assize.bench.growth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Takes folders away again. */
final class Folders {
  private Folders() {}

  static void delete(Path folder) throws IOException {
    List<Path> all;
    try (Stream<Path> below = Files.walk(folder)) {
      all = below.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path one : all) {
      Files.delete(one);
    }
  }
}
