package assize.edit;

import assize.record.Observation;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import assize.yaml.Node;
import assize.yaml.YamlTree;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Changes the text of a record. The changed text is read again, and a text is given only if it says
 * exactly what was meant, in the record's words and in the tree of its names.
 */
public final class Editing {
  private static final String OBSERVATIONS = VehicleRecord.OBSERVATIONS.name();
  private static final Layout AS_JSON = new Layout(0, true);

  private static final Layout IN_LINE = new Layout(2, false);

  private Editing() {}

  /**
   * Makes a record say what is wanted.
   *
   * @param wanted everything that the record is to say: what it says, some of it changed, and more
   *     behind it
   * @return empty if the changed text does not say exactly that, or is no record by these rules
   */
  public static Optional<Edited> edit(SourceFile file, RuleSet rules, Content.Group wanted) {
    Optional<Node.Mapping> root = tree(file);
    Optional<Content.Group> old = root.map(Content::of).flatMap(Content::asGroup);
    if (root.isEmpty() || old.filter(wanted::goesOn).isEmpty()) {
      return Optional.empty();
    }
    Editor editor = new Editor(file);
    Content.Group meant = editor.edit(root.get(), wanted);
    String text = changed(file, editor.pieces());
    return says(new SourceFile(file.path(), text), meant, rules)
        ? Optional.of(new Edited(text, editor.pieces(), editor.byHand(), meant))
        : Optional.empty();
  }

  /** Returns how something is written on one line behind its name. */
  public static String written(String name, Content content) {
    return IN_LINE.inline(name, content, false);
  }

  /** Returns something as JSON, which YAML reads as well. */
  public static String json(Content content) {
    return AS_JSON.inline("", content, true);
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

  /** Returns the same without aspects that are left blank, which say nothing. */
  private static Content said(Content record) {
    return record
        .asGroup()
        .flatMap(
            whole ->
                whole
                    .get(OBSERVATIONS)
                    .flatMap(Content::asGroup)
                    .<Content>map(it -> whole.with(OBSERVATIONS, each(it, Editing::saidOfItem))))
        .orElse(record);
  }

  private static Content saidOfItem(Content item) {
    return item.asGroup()
        .<Content>map(
            group ->
                new Content.Group(
                    group.fields().stream()
                        .filter(
                            it ->
                                !it.value().isBlank()
                                    || !Observation.TABLE.block().mayBeBlank(it.name()))
                        .toList()))
        .orElse(item);
  }

  private static Content.Group each(Content.Group group, UnaryOperator<Content> change) {
    return new Content.Group(
        group.fields().stream()
            .map(it -> new Content.Field(it.name(), change.apply(it.value())))
            .toList());
  }

  /**
   * Reads a text, and what it is meant to say written in the simplest way, and compares the two.
   */
  private static boolean says(SourceFile text, Content meant, RuleSet rules) {
    Optional<Content> said = YamlTree.read(text).value().map(Content::of);
    SourceFile simple = new SourceFile(text.path(), json(said(meant)));
    Optional<VehicleRecord> read = RecordReader.parse(text, rules).value();
    Optional<VehicleRecord> expected = RecordReader.parse(simple, rules).value();
    return said.filter(meant::equals).isPresent() && read.isPresent() && expected.equals(read);
  }
}
