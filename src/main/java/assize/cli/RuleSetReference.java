package assize.cli;

import assize.text.Parsed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/** How a new record names itself and its rule set. */
final class RuleSetReference {
  private static final Pattern NOT_IN_NAMES = Pattern.compile("[^A-Za-z0-9-]+");
  private static final int LONGEST = 64;

  private RuleSetReference() {}

  /** Returns a record's own name, made of that of its file. */
  static String id(Path record) {
    String file = Optional.ofNullable(record.getFileName()).map(Path::toString).orElse("");
    int dot = file.lastIndexOf('.');
    String id =
        NOT_IN_NAMES
            .matcher(dot > 0 ? file.substring(0, dot) : file)
            .replaceAll("-")
            .replaceFirst("^-+", "");
    String shorter = id.substring(0, Math.min(LONGEST, id.length())).replaceFirst("-+$", "");
    return shorter.isEmpty() ? "vehicle" : shorter;
  }

  /**
   * Returns the rule set's path from the record's folder, with {@code /} between folders.
   *
   * @return a refusal where the rule set lies neither in that folder nor below
   */
  static Parsed<String> from(Path record, Path rules) throws IOException {
    Path real = rules.toRealPath();
    Path folder = AtomicFileWriter.folderOf(record);
    if (Files.isDirectory(folder) && folder.toRealPath().startsWith(real)) {
      return Parsed.bad(
          record
              + " would lie in the rule set's own folder and be read as a part of it; name a file"
              + " beside that folder",
          0,
          0);
    }
    Path beside = AtomicFileWriter.folderOf(rules).resolve(record.getFileName()).normalize();
    return Files.isDirectory(folder) && real.startsWith(folder.toRealPath())
        ? Parsed.ok(folder.toRealPath().relativize(real).toString().replace('\\', '/'))
        : Parsed.bad(
            "a record finds its rule set in its own folder or below, and "
                + rules
                + " lies elsewhere; copy the rule set there, or write the record beside it: "
                + beside,
            0,
            0);
  }
}
