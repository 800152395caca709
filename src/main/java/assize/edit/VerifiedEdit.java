package assize.edit;

import assize.text.SourceFile;
import assize.yaml.Node;
import assize.yaml.YamlTreeBuilder;
import assize.yaml.YamlValue;
import java.util.List;
import java.util.Optional;

/**
 * Changes a text by its spans. The changed text is read again, and is given only if it says exactly
 * what was meant: as a tree of names, and to whoever knows what the names mean.
 */
public final class VerifiedEdit {
  private VerifiedEdit() {}

  /** Reads a changed text as what it is, and says whether it means what it was meant to. */
  @FunctionalInterface
  public interface Check {
    /**
     * Says whether a text is right.
     *
     * @param changed the text after its changes
     * @param meant what it was meant to say, and does say as a tree
     */
    boolean isRight(SourceFile changed, YamlValue.Group meant);
  }

  /**
   * Makes a text say what is wanted.
   *
   * @param wanted everything that the text is to say: what it says, some of it changed, and more
   *     behind it
   * @return empty if the changed text does not say exactly that, or is not right by the check
   */
  public static Optional<EditResult> edit(
      SourceFile file, YamlValue.Group wanted, Style style, Check check) {
    Optional<Node.Mapping> root = tree(file);
    Optional<YamlValue.Group> old = root.map(YamlValue::of).flatMap(YamlValue::asGroup);
    if (root.isEmpty() || old.filter(it -> EditPlanner.goesOn(wanted, it)).isEmpty()) {
      return Optional.empty();
    }
    EditPlanner editor = new EditPlanner(file, style);
    YamlValue.Group meant = editor.edit(root.get(), wanted);
    String text = changed(file, editor.pieces());
    SourceFile after = new SourceFile(file.path(), text);
    return says(after, meant) && check.isRight(after, meant)
        ? Optional.of(new EditResult(text, editor.pieces(), editor.byHand(), meant))
        : Optional.empty();
  }

  private static Optional<Node.Mapping> tree(SourceFile file) {
    return YamlTreeBuilder.read(file)
        .value()
        .filter(Node.Mapping.class::isInstance)
        .map(Node.Mapping.class::cast);
  }

  private static String changed(SourceFile file, List<TextEdit> pieces) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    for (TextEdit piece : pieces) {
      out.append(file.text(), at, piece.at().start()).append(piece.text());
      at = piece.at().end();
    }
    return out.append(file.text().substring(at)).toString();
  }

  private static boolean says(SourceFile text, YamlValue.Group meant) {
    return YamlTreeBuilder.read(text).value().map(YamlValue::of).filter(meant::equals).isPresent();
  }
}
