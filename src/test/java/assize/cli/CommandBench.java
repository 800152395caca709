package assize.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A folder with the small standard, its records, and things that are no records. */
record CommandBench(Path folder) {
  private static final Path SMALL = Path.of("src/test/resources/assize/cli/small");

  /** Lays everything out in a folder. */
  static CommandBench in(Path folder) {
    CommandBench bench = new CommandBench(folder);
    copy(SMALL, folder);
    try {
      Files.createDirectory(bench.at("folder"));
      Files.createFile(bench.at("empty.yaml"));
      Files.writeString(bench.at("plain"), "A plain text.\n");
      Files.write(bench.at("binary.yaml"), new byte[] {0, 1, (byte) 0xff, (byte) 0xfe, 'a', 0});
      Files.writeString(bench.at("unfinished.yaml"), "record: \"one\nrules: [\n");
      return bench;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Path at(String name) {
    return folder.resolve(name);
  }

  /** Copies a folder and all below it. */
  static void copy(Path from, Path to) {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.toList()) {
        Path target = to.resolve(from.relativize(one).toString());
        if (Files.isDirectory(one)) {
          Files.createDirectories(target);
        } else {
          Files.copy(one, target);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns every file and folder below, each file with its bytes as letters. */
  Map<String, String> content() {
    return content(folder);
  }

  static Map<String, String> content(Path folder) {
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path one : all.toList()) {
        content.put(
            folder.relativize(one).toString(),
            Files.isDirectory(one) ? "" : Files.readString(one, StandardCharsets.ISO_8859_1));
      }
      return content;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
