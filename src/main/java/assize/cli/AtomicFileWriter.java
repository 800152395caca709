package assize.cli;

import assize.report.html.PageValidator;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/** Writes a file whole or not at all: whoever looks sees the old one or the new one. */
final class AtomicFileWriter {
  private AtomicFileWriter() {}

  /** An output could not be written. */
  static final class CannotWrite extends UncheckedIOException {
    private static final long serialVersionUID = 1L;

    CannotWrite(Path path, String reason, IOException cause) {
      super("can't write " + path + ": " + reason, cause);
    }
  }

  /**
   * Refuses to write JSON over what is none, such as a person's own text or photo.
   *
   * @throws CannotWrite if something else stands there
   */
  static void checkJson(Path output) {
    check(Set.of(output));
    if (!Files.exists(output)) {
      return;
    }
    try (InputStream in = Files.newInputStream(output)) {
      int first = in.read();
      if (first >= 0 && first != '{') {
        throw cannotWrite(
            output, "what stands there is no JSON, and stays as it is; name a new file");
      }
    } catch (IOException e) {
      throw cannotWrite(output, e);
    }
  }

  /**
   * Refuses to write a page over anything but a page of this program.
   *
   * @throws CannotWrite if something else stands there
   */
  static void checkPages(Iterable<Path> outputs) {
    check(outputs);
    for (Path output : outputs) {
      if (Files.exists(output) && !isEmptyOrPage(output)) {
        throw cannotWrite(
            output,
            "what stands there is no page of Assize, and stays as it is; move it away, or name"
                + " another place");
      }
    }
  }

  private static boolean isEmptyOrPage(Path file) {
    try {
      return Files.size(file) == 0 || isPage(file);
    } catch (IOException e) {
      throw cannotWrite(file, e);
    }
  }

  /** Says whether a file is a page of this program, of this version or an earlier one. */
  static boolean isPage(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return PageValidator.isOne(in);
    }
  }

  /**
   * Returns the folder for pages where nobody typed one. In a folder from somebody else, a link
   * there would be theirs.
   *
   * @throws CannotWrite if it is a link
   */
  static Path reports() {
    Path usual = Path.of("reports");
    if (isLink(usual)) {
      throw cannotWrite(
          usual, "it is a link to another place; delete the link, or name a folder with --out");
    }
    return usual;
  }

  /** Says whether a folder's name leads out of the folder that it stands in. */
  static boolean isLink(Path folder) {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try {
      // Windows has links that do not say that they are any.
      return Files.isSymbolicLink(folder)
          || !folderOf(folder).toRealPath().equals(folder.toRealPath().getParent());
    } catch (IOException e) {
      throw cannotWrite(folder, e);
    }
  }

  /** Refuses outputs that can't be written, before the first of them is. */
  static void check(Iterable<Path> outputs) {
    for (Path output : outputs) {
      blocked(output)
          .ifPresent(
              reason -> {
                throw cannotWrite(output, reason);
              });
    }
  }

  /** Returns what stands where a file is to be written, if something does. */
  static Optional<String> blocked(Path output) {
    if (Files.isDirectory(output)) {
      return Optional.of("a folder stands there");
    }
    if (Files.exists(output) && !Files.isRegularFile(output)) {
      return Optional.of("what stands there is no ordinary file");
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

  /** Returns what to throw where a file must not be written. */
  static CannotWrite cannotWrite(Path path, String reason) {
    return new CannotWrite(path, reason, new IOException(reason));
  }

  /** Returns what to throw when writing a file failed. */
  static CannotWrite cannotWrite(Path path, IOException cause) {
    return new CannotWrite(path, reason(path, cause), cause);
  }

  private static String reason(Path path, IOException cause) {
    Optional<String> said = said(cause);
    return cause instanceof AccessDeniedException
        ? said.orElseThrow()
        : blocked(path).or(() -> said).orElse("the folder or the disk does not allow it");
  }

  /** Returns what the system says, which for a disk that is full is no more than its message. */
  static Optional<String> said(IOException cause) {
    if (cause instanceof AccessDeniedException) {
      return Optional.of("permission denied");
    }
    return Optional.ofNullable(
        cause instanceof FileSystemException system ? system.getReason() : cause.getMessage());
  }

  /**
   * Writes a page.
   *
   * @throws CannotWrite if anything but a page of this program stands there
   */
  static void writePage(Path path, String html) {
    checkPages(Set.of(path));
    write(path, html.getBytes(StandardCharsets.UTF_8));
  }

  /** Returns the folder that a file stands in. */
  static Path folderOf(Path file) {
    Path whole = file.toAbsolutePath();
    Path parent = whole.getParent();
    return parent == null ? whole : parent;
  }

  static void write(Path path, byte[] bytes) {
    try (OutputTransaction outputs = new OutputTransaction()) {
      outputs.stage(path, bytes);
      outputs.commit();
    }
  }
}
