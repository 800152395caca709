package assize.cli;

import assize.redaction.OwnerSecret;
import assize.text.Parsed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The file beside a record that keeps its secret, and those that keep earlier ones. Each is made
 * once and never written again.
 */
final class SecretFile {
  private static final String ENDING = ".secret";
  private static final String EARLIER = ".old-";
  private static final int LONGEST = 100_000;

  private SecretFile() {}

  /** Returns where the secret of a record lies: beside it, with its name. */
  static Path of(Path record) {
    return record.resolveSibling(stem(record) + ENDING);
  }

  /** Returns where a record's secret is kept when there is a newer one. */
  static Path earlier(Path record, OwnerSecret secret) {
    return record.resolveSibling(stem(record) + EARLIER + secret.mark() + ENDING);
  }

  /** Returns the files that keep earlier secrets of a record, in the order of their names. */
  static List<Path> earlier(Path record) {
    String start = stem(record) + EARLIER;
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> all =
        Files.newDirectoryStream(
            AtomicFileWriter.folderOf(record),
            path -> name(path).startsWith(start) && name(path).endsWith(ENDING))) {
      all.forEach(path -> found.add(record.resolveSibling(name(path))));
    } catch (DirectoryIteratorException | IOException e) {
      return List.of();
    }
    return found.stream().sorted().toList();
  }

  private static String stem(Path record) {
    String name = name(record);
    return ArgumentNormalizer.isYaml(name) ? name.substring(0, name.lastIndexOf('.')) : name;
  }

  private static String name(Path file) {
    Path last = file.getFileName();
    return last == null ? "record" : last.toString();
  }

  /** Makes a new secret for a record of a name, today. */
  static OwnerSecret begin(String id) {
    return OwnerSecret.random(id, LocalDate.now(ZoneId.systemDefault()));
  }

  /** Reads a secret, or says what to do about it; empty where there is none yet. */
  static Optional<Parsed<OwnerSecret>> read(Path file) {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try {
      if (!Files.exists(file)) {
        return bad(
            "this is a link to "
                + target(file)
                + ", and no file is there; put the secret back there, or delete the link to begin a"
                + " new one, by which no earlier copy can be verified");
      }
      if (Files.isDirectory(file)) {
        return bad("a folder stands where the secret belongs; move the folder away");
      }
      if (!Files.isRegularFile(file) || Files.size(file) > LONGEST) {
        return bad(damaged("it is no file that this program wrote"));
      }
      String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
      return OwnerSecret.read(text)
          .match(secret -> Optional.of(Parsed.ok(secret)), bad -> bad(damaged(bad.reason())));
    } catch (IOException e) {
      return bad(
          "this secret can't be read: "
              + AtomicFileWriter.said(e).orElse("the folder or the disk does not allow it"));
    }
  }

  private static Optional<Parsed<OwnerSecret>> bad(String reason) {
    return Optional.of(Parsed.bad(reason, 0, 0));
  }

  private static String damaged(String reason) {
    return "this secret is damaged: "
        + reason
        + "; put it back from where you keep another, or move it away to begin a new one, by which"
        + " no earlier copy can be verified";
  }

  private static Path target(Path link) throws IOException {
    Path folder = AtomicFileWriter.folderOf(link);
    return folder.resolve(Files.readSymbolicLink(link)).normalize();
  }

  /** Takes away what a run left that was killed while it made a secret. */
  static void clear(Path file) {
    try {
      TempFileName.clearStale(AtomicFileWriter.folderOf(file));
    } catch (IOException e) {
      return;
    }
  }

  /** Names a secret so that it can be told from another: where it lies, since when, its mark. */
  static String words(Path file, OwnerSecret secret) {
    String made =
        secret.made().map(day -> "made " + day).orElse("it does not say when it was made");
    return file + " (" + link(file) + made + ", mark " + secret.mark() + ")";
  }

  private static String link(Path file) {
    try {
      return Files.isSymbolicLink(file) ? "a link to " + target(file) + ", " : "";
    } catch (IOException e) {
      return "";
    }
  }

  /** Says what a record's owner has to know of a secret that was there before. */
  static List<String> notes(Path record, String id, OwnerSecret secret) {
    Path file = of(record);
    List<String> notes = new ArrayList<>();
    notes.add(
        "note: "
            + words(file, secret)
            + " masks the numbers: whoever has had this file can find them out; if others have, make"
            + " a new one: assize prove "
            + record
            + " --new-secret");
    name(file, record, id, secret).ifPresent(notes::add);
    return notes;
  }

  /** Says that a secret was made for a record of another name, or for which is not known. */
  static Optional<String> name(Path file, Path record, String id, OwnerSecret secret) {
    if (secret.record().isEmpty()) {
      return Optional.of(
          "note: "
              + file
              + " does not say for which record it was made; add the line `record: "
              + id
              + "` to it, or the name that the record had before; without it no copy can be verified"
              + " once the record's name changes");
    }
    return secret
        .record()
        .filter(name -> !name.equals(id))
        .map(
            name ->
                "note: "
                    + file
                    + " was made for the record \""
                    + name
                    + "\", and this one is \""
                    + id
                    + "\"; copies made before the name changed can still be verified; if this is"
                    + " another vehicle, make a new secret: assize prove "
                    + record
                    + " --new-secret");
  }

  /**
   * Writes a new secret, for the owner's eyes alone where the disk knows owners.
   *
   * @throws AtomicFileWriter.CannotWrite if another run made one in the meantime, which stays
   */
  static void keep(Path file, Path record, OwnerSecret secret) {
    try {
      NewFileWriter.write(file, secret.file(name(record)), TempFileName.forOwnerAlone(file));
    } catch (FileAlreadyExistsException e) {
      throw new AtomicFileWriter.CannotWrite(
          file, "another run has just made it; run this again", e);
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(file, e);
    }
  }

  /**
   * Puts a new secret into the place of one, which is kept under another name.
   *
   * @throws AtomicFileWriter.CannotWrite if one of the two can't be written; the one before is
   *     there
   */
  static void replace(Path record, OwnerSecret before, OwnerSecret now) {
    Path file = of(record);
    Path kept = earlier(record, before);
    try {
      Files.move(file, kept);
    } catch (FileAlreadyExistsException e) {
      throw new AtomicFileWriter.CannotWrite(kept, "a file stands there already; move it away", e);
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(kept, e);
    }
    try {
      keep(file, record, now);
    } catch (AtomicFileWriter.CannotWrite e) {
      restore(kept, file);
      throw e;
    }
  }

  private static void restore(Path kept, Path file) {
    try {
      Files.move(kept, file);
    } catch (IOException e) {
      return;
    }
  }
}
