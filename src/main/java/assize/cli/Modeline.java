package assize.cli;

import assize.schema.FileSchema;
import assize.schema.JsonSchemaWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The line at the top of a YAML file that leads an editor to the file's schema. */
final class Modeline {
  static final String RECORD = "assize-record.json";
  static final String RULE_SET = "assize-rule-set.json";

  private static final int HIGHEST = 8;
  private static final String BEFORE = "# yaml-language-server: $schema=";

  private Modeline() {}

  /** Returns the line for a schema that lies at a path relative to the file. */
  static String of(String schema) {
    return BEFORE + schema;
  }

  /** Returns the line for a file, if its schema lies in its folder or in one above. */
  static Optional<String> of(Path file, String schema) {
    StringBuilder way = new StringBuilder();
    Path folder = AtomicFileWriter.folderOf(file).normalize();
    for (int i = 0; i < HIGHEST && folder != null; i++) {
      if (Files.isRegularFile(folder.resolve(schema))) {
        return Optional.of(of(way + schema));
      }
      way.append("../");
      folder = folder.getParent();
    }
    return Optional.empty();
  }

  /** Says whether a schema may be written at a path: nothing else stands there. */
  static boolean isFree(Path path, FileSchema schema) {
    try {
      return !Files.exists(path)
          || Files.isRegularFile(path) && JsonSchemaWriter.isOne(schema, Files.readString(path));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
