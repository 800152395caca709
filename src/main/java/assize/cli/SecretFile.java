package assize.cli;

import assize.share.Secret;
import assize.text.Parsed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The file beside a record that keeps its secret. It is made once and never written again. */
final class SecretFile {
  private static final String ENDING = ".secret";
  private static final int LONGEST = 100_000;

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

  /** Takes away what a run left that was killed while it made a secret. */
  static void clear(Path file) {
    try {
      PartName.clearStale(OutputFile.folderOf(file));
    } catch (IOException e) {
      return;
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
    try {
      NewFile.write(file, secret.file(name(record)), PartName.forOwnerAlone(file));
    } catch (FileAlreadyExistsException e) {
      throw new OutputFile.CannotWrite(file, "another run has just made it; run this again", e);
    } catch (IOException e) {
      throw OutputFile.cannotWrite(file, e);
    }
  }
}
