package assize.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;

/**
 * Writes what a person is going to keep: whole or not at all, never in the place of another file,
 * and on the disk itself before it has its name.
 */
final class NewFileWriter {
  /** Of no other part file of this run. */
  private static final long LAST = 999_999_999;

  private NewFileWriter() {}

  /**
   * Writes a file that is not there yet.
   *
   * @throws FileAlreadyExistsException if something has come to stand there in the meantime, which
   *     stays
   */
  static void write(Path file, String text, FileAttribute<?>... attributes) throws IOException {
    Path folder = AtomicFileWriter.folderOf(file);
    Path part = folder.resolve(TempFileName.next(LAST));
    TempFileName.clearStale(folder);
    Files.createFile(part, attributes);
    try {
      try (OutputStream out =
          Files.newOutputStream(part, StandardOpenOption.WRITE, StandardOpenOption.SYNC)) {
        out.write(text.getBytes(StandardCharsets.UTF_8));
      }
      place(part, file);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** A second name is made whole or not at all, and never in the place of another. */
  private static void place(Path part, Path file) throws IOException {
    try {
      Files.createLink(file, part);
    } catch (UnsupportedOperationException e) {
      Files.move(part, file);
    } catch (FileSystemException e) {
      if (e instanceof FileAlreadyExistsException) {
        throw e;
      }
      Files.move(part, file);
    }
  }
}
