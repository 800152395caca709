package assize.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Writes a file whole or not at all: whoever looks sees the old one or the new one. */
final class OutputFile {
  private OutputFile() {}

  /** An output could not be written. */
  static final class CannotWrite extends UncheckedIOException {
    private static final long serialVersionUID = 1L;

    CannotWrite(Path path, String reason, IOException cause) {
      super("can't write " + path + ": " + reason, cause);
    }
  }

  /** Refuses outputs that can't be written, before the first of them is. */
  static void check(Iterable<Path> outputs) {
    for (Path output : outputs) {
      blocked(output)
          .ifPresent(
              reason -> {
                throw new CannotWrite(output, reason, new IOException(reason));
              });
    }
  }

  /** Returns what stands where a file is to be written, if something does. */
  static Optional<String> blocked(Path output) {
    if (Files.isDirectory(output)) {
      return Optional.of("a folder stands there");
    }
    for (Path above = folderOf(output); above != null; above = above.getParent()) {
      if (Files.exists(above)) {
        return Files.isDirectory(above)
            ? Optional.empty()
            : Optional.of("a file stands where a folder is needed");
      }
    }
    return Optional.empty();
  }

  /** Returns what to throw when writing a file failed. */
  static CannotWrite cannotWrite(Path path, IOException cause) {
    return new CannotWrite(path, reason(path, cause), cause);
  }

  private static String reason(Path path, IOException cause) {
    if (cause instanceof AccessDeniedException) {
      return "permission denied";
    }
    String reason = cause instanceof FileSystemException system ? system.getReason() : null;
    return blocked(path)
        .or(() -> Optional.ofNullable(reason))
        .orElse("the folder or the disk does not allow it");
  }

  static void write(Path path, String text) {
    write(path, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Returns the folder that a file stands in. */
  static Path folderOf(Path file) {
    Path whole = file.toAbsolutePath();
    Path parent = whole.getParent();
    return parent == null ? whole : parent;
  }

  static void write(Path path, byte[] bytes) {
    try (Outputs outputs = new Outputs()) {
      outputs.stage(path, bytes);
      outputs.place();
    }
  }
}
