package assize.edit;

import assize.text.SourceFile;
import assize.yaml.Content;
import assize.yaml.Node;
import assize.yaml.YamlTree;
import java.util.List;
import java.util.Optional;

/**
 * Changes a text by its spans. The changed text is read again, and is given only if it says exactly
 * what was meant: as a tree of names, and to whoever knows what the names mean.
 */
public final class Editing {
  private Editing() {}

  /** Reads a changed text as what it is, and says whether it means what it was meant to. */
  @FunctionalInterface
  public interface Check {
    /**
     * Says whether a text is right.
     *
     * @param changed the text after its changes
     * @param meant what it was meant to say, and does say as a tree
     */
    boolean isRight(SourceFile changed, Content.Group meant);
  }

  /**
   * Makes a text say what is wanted.
   *
   * @param wanted everything that the text is to say: what it says, some of it changed, and more
   *     behind it
   * @return empty if the changed text does not say exactly that, or is not right by the check
   */
  public static Optional<Edited> edit(
      SourceFile file, Content.Group wanted, Style style, Check check) {
    Optional<Node.Mapping> root = tree(file);
    Optional<Content.Group> old = root.map(Content::of).flatMap(Content::asGroup);
    if (root.isEmpty() || old.filter(it -> Editor.goesOn(wanted, it)).isEmpty()) {
      return Optional.empty();
    }
    Editor editor = new Editor(file, style);
    Content.Group meant = editor.edit(root.get(), wanted);
    String text = changed(file, editor.pieces());
    SourceFile after = new SourceFile(file.path(), text);
    return says(after, meant) && check.isRight(after, meant)
        ? Optional.of(new Edited(text, editor.pieces(), editor.byHand(), meant))
        : Optional.empty();
  }

  private static Optional<Node.Mapping> tree(SourceFile file) {
    return YamlTree.read(file)
        .value()
        .filter(Node.Mapping.class::isInstance)
        .map(Node.Mapping.class::cast);
  }

  private static String changed(SourceFile file, List<Piece> pieces) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    for (Piece piece : pieces) {
      out.append(file.text(), at, piece.at().start()).append(piece.text());
      at = piece.at().end();
    }
    return out.append(file.text().substring(at)).toString();
  }

  private static boolean says(SourceFile text, Content.Group meant) {
    return YamlTree.read(text).value().map(Content::of).filter(meant::equals).isPresent();
  }
}
