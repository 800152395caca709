package assize.yaml;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.text.FileChecksum;
import assize.text.Sha256;
import assize.text.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads files of text within bounds; for rule sets and records nothing else opens a file. */
public final class BoundedFileReader {
  static final int LARGEST = 4 * 1024 * 1024;
  private static final int LARGEST_TOGETHER = 2 * LARGEST;
  private static final int MOST_FILES = 1000;
  private static final int DEEPEST_FOLDER = 16;
  private static final String HEAD = "rules.yaml";

  private BoundedFileReader() {}

  /**
   * A file as it was read, and what tells whether it is still the same.
   *
   * @param marked whether it begins with a byte order mark, which the text leaves out
   */
  public record Loaded(SourceFile file, FileChecksum checksum, boolean marked) {
    public static Loaded of(SourceFile file) {
      byte[] bytes = file.text().getBytes(StandardCharsets.UTF_8);
      return new Loaded(file, new FileChecksum(file.path(), Sha256.of(bytes), bytes.length), false);
    }
  }

  /**
   * Reads one file.
   *
   * @param shown how messages name it
   * @param name how its checksum names it
   */
  public static Optional<Loaded> load(
      Path path, String shown, String name, DiagnosticCollector problems) {
    if (!Files.exists(path)) {
      return refuse(DiagnosticCode.FILE_NOT_FOUND, shown, "there is no such file", problems);
    }
    if (!Files.isRegularFile(path)) {
      return refuse(DiagnosticCode.CANNOT_OPEN_FILE, shown, "this is not a file", problems);
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(LARGEST + 1);
    } catch (IOException e) {
      return refuse(DiagnosticCode.CANNOT_OPEN_FILE, shown, "this file can't be opened", problems);
    }
    if (bytes.length > LARGEST) {
      return refuse(
          DiagnosticCode.FILE_TOO_LARGE,
          shown,
          "a file may have at most 4 MiB; this one has more",
          problems);
    }
    return Utf8.decode(bytes, shown, problems)
        .map(
            it ->
                new Loaded(
                    it,
                    new FileChecksum(name, Sha256.of(bytes), bytes.length),
                    Document.isMarked(bytes)));
  }

  /** Reads the one file of a rule set, or all files of its folder, {@code rules.yaml} first. */
  public static List<Loaded> ruleSet(Path path, String shown, DiagnosticCollector problems) {
    if (!Files.isDirectory(path)) {
      String name = Optional.ofNullable(path.getFileName()).map(Path::toString).orElse(shown);
      return load(path, shown, name, problems).stream().toList();
    }
    List<Loaded> files = new ArrayList<>();
    long bytes = 0;
    for (Path one : inFolder(path, shown, problems)) {
      String name = path.relativize(one).toString().replace('\\', '/');
      Optional<Loaded> loaded = load(one, shown + "/" + name, name, problems);
      loaded.ifPresent(files::add);
      bytes += loaded.map(it -> it.checksum().bytes()).orElse(0L);
      if (bytes > LARGEST_TOGETHER) {
        refuse(
            DiagnosticCode.FILE_TOO_LARGE,
            shown + "/" + name,
            "the files of a rule set may have at most 8 MiB together; with this one they have more",
            problems);
        return List.of();
      }
    }
    return files;
  }

  private static List<Path> inFolder(Path folder, String shown, DiagnosticCollector problems) {
    Path head = folder.resolve(HEAD);
    if (!Files.isRegularFile(head)) {
      refuse(
          DiagnosticCode.FILE_NOT_FOUND,
          shown,
          "this folder has no " + HEAD + ", which a rule set begins with",
          problems);
      return List.of();
    }
    try (Stream<Path> walk = Files.walk(folder, DEEPEST_FOLDER)) {
      Path root = folder.toRealPath();
      List<Path> found =
          walk.filter(it -> it.getFileName().toString().endsWith(".yaml"))
              .filter(it -> !it.getFileName().toString().startsWith("."))
              .filter(it -> !it.equals(head) && !Files.isDirectory(it))
              .sorted()
              .limit(MOST_FILES + 1L)
              .toList();
      if (found.size() > MOST_FILES) {
        refuse(
            DiagnosticCode.TOO_MANY_ENTRIES,
            shown,
            "a rule set may have at most " + MOST_FILES + " files; this folder has more",
            problems);
      }
      List<Path> inside = new ArrayList<>();
      for (Path one : Stream.concat(Stream.of(head), found.stream()).toList()) {
        if (one.toRealPath().startsWith(root)) {
          inside.add(one);
        } else {
          String name = folder.relativize(one).toString().replace('\\', '/');
          refuse(
              DiagnosticCode.PATH_OUTSIDE,
              shown + "/" + name,
              "this is a link that leads out of the rule set's folder",
              problems);
        }
      }
      return inside;
    } catch (IOException | UncheckedIOException e) {
      refuse(DiagnosticCode.CANNOT_OPEN_FILE, shown, "this folder can't be read", problems);
      return List.of();
    }
  }

  /**
   * Returns what tells whether a file is still the same.
   *
   * @param name how it names the file
   */
  public static FileChecksum checksum(Path path, String name) throws IOException {
    try (InputStream in = Files.newInputStream(path);
        DigestInputStream digesting = new DigestInputStream(in, Sha256.digest())) {
      long length = digesting.transferTo(OutputStream.nullOutputStream());
      String hex = HexFormat.of().formatHex(digesting.getMessageDigest().digest());
      return new FileChecksum(name, hex, length);
    }
  }

  /** Returns a path as messages name it. */
  public static String shown(Path path) {
    return path.toString().replace('\\', '/');
  }

  private static <T> Optional<T> refuse(
      DiagnosticCode code, String shown, String message, DiagnosticCollector problems) {
    problems.add(Diagnostic.of(code, new SourceFile(shown, "").span(0, 0), message));
    return Optional.empty();
  }
}
