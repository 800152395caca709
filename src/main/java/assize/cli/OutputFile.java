package assize.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all: whoever looks sees the old one or the new one. */
final class OutputFile {
  private OutputFile() {}

  /** An output could not be written. */
  static final class CannotWrite extends UncheckedIOException {
    private static final long serialVersionUID = 1L;

    CannotWrite(Path path, IOException cause) {
      super("can't write " + path + ": " + reason(cause), cause);
    }

    private static String reason(IOException cause) {
      if (cause instanceof java.nio.file.AccessDeniedException) {
        return "permission denied";
      }
      if (cause instanceof java.nio.file.FileAlreadyExistsException) {
        return "a file stands where a folder is needed";
      }
      String message = cause.getMessage();
      return message == null ? cause.getClass().getSimpleName() : message;
    }
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
    Path folder = folderOf(path);
    try {
      Files.createDirectories(folder);
      Path beside =
          folder.resolve("." + path.getFileName() + "." + ProcessHandle.current().pid() + ".part");
      try {
        Files.write(beside, bytes);
        move(beside, path);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      throw new CannotWrite(path, e);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
