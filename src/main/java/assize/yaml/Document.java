package assize.yaml;

import assize.diagnostic.Result;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * A file of names and values: its text and where everything in it stands.
 *
 * @param text without the mark that may stand before it
 * @param marked whether the file begins with a byte order mark
 * @param root the names at its top, with their places in the text
 */
public record Document(String text, boolean marked, Node.Mapping root) {
  private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  /** Reads the text of a file; {@code shown} is how messages name it. */
  public static Result<Document> read(Path file, String shown) {
    DiagnosticCollector problems = new DiagnosticCollector();
    Optional<Document> read =
        BoundedFileReader.load(file, shown, shown, problems)
            .flatMap(it -> of(it.file(), it.marked(), problems));
    return new Result<>(read.filter(it -> !problems.hasErrors()), problems.all());
  }

  /** Reads a text that is held. */
  public static Result<Document> parse(SourceFile text) {
    DiagnosticCollector problems = new DiagnosticCollector();
    Optional<Document> read = of(text, false, problems);
    return new Result<>(read.filter(it -> !problems.hasErrors()), problems.all());
  }

  private static Optional<Document> of(
      SourceFile file, boolean marked, DiagnosticCollector problems) {
    return YamlTreeBuilder.parse(file, problems)
        .filter(Node.Mapping.class::isInstance)
        .map(it -> new Document(file.text(), marked, (Node.Mapping) it));
  }

  /** Says whether a file of such bytes begins with a byte order mark. */
  public static boolean isMarked(byte[] bytes) {
    return bytes.length >= MARK.length
        && Arrays.equals(bytes, 0, MARK.length, MARK, 0, MARK.length);
  }
}
