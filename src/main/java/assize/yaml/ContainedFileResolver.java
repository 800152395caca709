package assize.yaml;

import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.NameSuggestions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds files that a record or a rule set names: in its own folder or below, and nowhere else.
 *
 * @param owner whose folder it is, as in "the record's folder"
 */
public record ContainedFileResolver(Path folder, String owner) {
  public static final String OF_RECORD = "the record's folder";
  public static final String OF_RULE_SET = "the rule set's folder";

  private static final int LISTED = 1000;

  /** Returns the path that a text names, and reports one that leads outside or to nothing. */
  public Optional<Path> find(Node.Scalar text, DiagnosticCollector problems) {
    Optional<String> fault = PortablePathCheck.of(text.text(), owner);
    if (fault.isPresent()) {
      problems.add(
          DiagnosticCode.PATH_OUTSIDE,
          text.at(),
          fault.get(),
          "files lie in " + owner + " or below it, as in photos/lamp.png");
      return Optional.empty();
    }
    try {
      Path path = folder.resolve(text.text());
      if (!Files.exists(path)) {
        problems.add(
            DiagnosticCode.FILE_NOT_FOUND,
            text.at(),
            "no such file: " + MessageParts.brief(text.text()),
            problems.areMany() ? Optional.empty() : near(path));
        return Optional.empty();
      }
      if (!path.toRealPath().startsWith(folder.toRealPath())) {
        problems.add(
            DiagnosticCode.PATH_OUTSIDE, text.at(), "this is a link that leads out of " + owner);
        return Optional.empty();
      }
      return Optional.of(path);
    } catch (InvalidPathException e) {
      problems.add(DiagnosticCode.PATH_OUTSIDE, text.at(), "a file can't have this name");
      return Optional.empty();
    } catch (IOException e) {
      problems.add(DiagnosticCode.CANNOT_OPEN_FILE, text.at(), "this file can't be opened");
      return Optional.empty();
    }
  }

  private Optional<String> near(Path missing) throws IOException {
    Path parent = missing.getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      return Optional.empty();
    }
    try (Stream<Path> siblings = Files.list(parent)) {
      List<String> names =
          siblings.limit(LISTED).map(it -> it.getFileName().toString()).sorted().toList();
      String name = missing.getFileName().toString();
      if (names.stream().anyMatch(it -> looksLike(it, name))) {
        return Optional.of(
            "a file whose name looks the same is there, written in other letters: rename it");
      }
      return names.stream()
          .filter(it -> it.startsWith(name + "."))
          .findFirst()
          .or(() -> NameSuggestions.nearest(name, names))
          .map(it -> NameSuggestions.question(name, it));
    }
  }

  /** An accent may be one letter with what is below it, or one of its own. */
  private static boolean looksLike(String one, String other) {
    return Normalizer.normalize(one, Normalizer.Form.NFC)
        .equals(Normalizer.normalize(other, Normalizer.Form.NFC));
  }
}
