package assize.cli;

import assize.share.Secret;
import assize.text.Parsed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/** The file beside a record that keeps its secret. It is made once and never written again. */
final class SecretFile {
  private static final String ENDING = ".secret";
  private static final int LONGEST = 100_000;

  /** Of no other part file of this run. */
  private static final long LAST = 999_999_999;

  private SecretFile() {}

  /** Returns where the secret of a record lies: beside it, with its name. */
  static Path of(Path record) {
    String name = name(record);
    return record.resolveSibling(
        (Arguments.isYaml(name) ? name.substring(0, name.lastIndexOf('.')) : name) + ENDING);
  }

  private static String name(Path file) {
    Path last = file.getFileName();
    return last == null ? "record" : last.toString();
  }

  /** Reads a secret; empty where there is none yet. */
  static Optional<Parsed<Secret>> read(Path file) {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try {
      if (!Files.isRegularFile(file) || Files.size(file) > LONGEST) {
        return Optional.of(Parsed.bad("it is no file that this program wrote", 0, 0));
      }
      return Optional.of(
          Secret.read(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)));
    } catch (IOException e) {
      return Optional.of(Parsed.bad("it can't be read", 0, 0));
    }
  }

  /** Says what to do about a secret that can't be read. */
  static String damaged(Path file, String reason) {
    return file
        + ": this secret is damaged: "
        + reason
        + "; put it back from where you keep another, or move it away to begin a new one, by which"
        + " no earlier copy can be vouched for";
  }

  /**
   * Writes a new secret, for the owner's eyes alone where the disk knows owners.
   *
   * @throws OutputFile.CannotWrite if another run made one in the meantime, which stays
   */
  static void keep(Path file, Path record, Secret secret) {
    Path part = file.resolveSibling(PartName.next(LAST));
    try {
      create(part);
      try {
        Files.writeString(part, secret.file(name(record)), StandardOpenOption.WRITE);
        place(part, file);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (FileAlreadyExistsException e) {
      throw new OutputFile.CannotWrite(file, "another run has just made it; run this again", e);
    } catch (IOException e) {
      throw OutputFile.cannotWrite(file, e);
    }
  }

  private static void create(Path part) throws IOException {
    try {
      Files.createFile(
          part, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    } catch (UnsupportedOperationException e) {
      Files.createFile(part);
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
