package assize.yaml;

import assize.diagnostic.Result;
import assize.text.Outline;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The text of a record and where everything in it stands.
 *
 * @param text without the mark that may stand before it
 * @param marked whether the file begins with a byte order mark
 */
public record RecordText(String text, boolean marked, Outline.Group outline) {
  private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  /** Reads the text of a file; {@code shown} is how messages name it. */
  public static Result<RecordText> read(Path file, String shown) {
    Problems problems = new Problems();
    Optional<RecordText> read =
        InputFiles.load(file, shown, shown, problems)
            .flatMap(it -> of(it.file(), it.marked(), problems));
    return new Result<>(read.filter(it -> !problems.hasErrors()), problems.all());
  }

  /** Reads a text that is held. */
  public static Result<RecordText> parse(SourceFile text) {
    Problems problems = new Problems();
    Optional<RecordText> read = of(text, false, problems);
    return new Result<>(read.filter(it -> !problems.hasErrors()), problems.all());
  }

  private static Optional<RecordText> of(SourceFile file, boolean marked, Problems problems) {
    return YamlTree.parse(file, problems)
        .map(RecordText::outline)
        .flatMap(
            it ->
                it instanceof Outline.Group root
                    ? Optional.of(new RecordText(file.text(), marked, root))
                    : Optional.empty());
  }

  /** Says whether a file of such bytes begins with a byte order mark. */
  public static boolean isMarked(byte[] bytes) {
    return bytes.length >= MARK.length
        && Arrays.equals(bytes, 0, MARK.length, MARK, 0, MARK.length);
  }

  private static Outline outline(Node node) {
    return node.match(
        mapping ->
            new Outline.Group(
                mapping.entries().stream().map(RecordText::part).toList(),
                mapping.at().start(),
                mapping.at().end(),
                begins(mapping, '{')),
        list ->
            new Outline.Several(
                list.nodes().stream().map(RecordText::outline).toList(),
                list.at().start(),
                list.at().end(),
                begins(list, '[')),
        text ->
            text.isNothing() && text.at().start() == text.at().end()
                ? new Outline.Nothing(text.at().end())
                : new Outline.Text(text.text(), text.at().start(), text.at().end()));
  }

  private static boolean begins(Node node, char bracket) {
    String text = node.at().file().text();
    return node.at().start() < text.length() && text.charAt(node.at().start()) == bracket;
  }

  private static Outline.Part part(Node.Entry entry) {
    int colon = entry.isBare() ? -1 : colon(entry.key());
    Outline value = outline(entry.value());
    Outline placed =
        value instanceof Outline.Nothing
            ? new Outline.Nothing(colon < 0 ? entry.key().at().end() : colon + 1)
            : value;
    return new Outline.Part(entry.name(), entry.key().at().start(), colon, placed);
  }

  private static int colon(Node.Scalar key) {
    return key.at().file().text().indexOf(':', key.at().end());
  }
}
