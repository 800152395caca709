package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.RelatedLocation;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.ruleset.Vocabularies;
import assize.schema.DefinedNames;
import assize.schema.FixedVocabulary;
import assize.schema.ScalarReader;
import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.DiagnosticCollector;
import assize.yaml.FlowYamlWriter;
import assize.yaml.InvisibleCharacterCheck;
import assize.yaml.Node;
import assize.yaml.ReferencedFiles;
import assize.yaml.YamlTreeBuilder;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what was found from the cells of a table, by the same rules and in the same words as from a
 * record. A cell is a span of its table.
 */
public final class CellFindingReader {
  private static final FixedVocabulary<Aspect> ASPECTS =
      FixedVocabulary.of("an aspect", DiagnosticCode.UNKNOWN_WORD, Aspect.values(), Aspect::word);

  private static final Pattern NAME = Pattern.compile("[^,;\\s]+");

  private final DefinedNames evidence =
      new DefinedNames("evidence", "the record", DiagnosticCode.UNKNOWN_EVIDENCE, true);
  private final DiagnosticCollector problems = new DiagnosticCollector();
  private final RecordReading in;

  /**
   * Begins to read.
   *
   * @param rules the rule set whose words are used
   * @param shown the names of the record's evidence
   */
  public CellFindingReader(RuleSet rules, Collection<String> shown) {
    evidence.define(shown);
    in =
        new RecordReading(
            rules,
            Vocabularies.of(rules),
            evidence,
            new ReferencedFiles(Optional.empty(), problems),
            RecordReading.items(rules),
            new ScalarReader(problems));
  }

  /** What a cell says: what was found, and how a record says it on one line. */
  public record Value(Finding finding, String yaml) {}

  /** Reports each character of a table that can't be seen. */
  public void checkCharacters(SourceFile table) {
    InvisibleCharacterCheck.check(table, problems);
  }

  /** Finds the item that a cell names. */
  public Optional<Item> item(Span cell) {
    return in.item(text(cell));
  }

  /** Finds the aspect that a cell names, as rule sets write it or as it is spoken. */
  public Optional<Aspect> aspect(Span cell) {
    String word = cell.text().strip().toLowerCase(Locale.ROOT).replace(' ', '_');
    return ASPECTS.find(new Node.Scalar(word, Node.Scalar.Style.QUOTED, cell), problems);
  }

  /**
   * Reads what was found of an aspect of an item.
   *
   * @param aspectAt the cell that names the aspect
   * @param cell the cell that says what was found: as it stands, or in double quotes, or for a
   *     color a group in braces as in a record
   */
  public Optional<Value> finding(Item item, Aspect aspect, Span aspectAt, Span cell) {
    Optional<Node> value = value(aspect, cell);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Node.Scalar key = new Node.Scalar(aspect.word(), Node.Scalar.Style.QUOTED, aspectAt);
    Node.Entry entry = new Node.Entry(key, value.get());
    return in.isAsked(item, aspect, entry)
        ? aspect
            .kind()
            .seen(entry, in.aspects(item))
            .map(it -> new Value(it, FlowYamlWriter.of(value.get())))
        : Optional.empty();
  }

  /** Reads names of evidence, with commas, semicolons or spaces between them. */
  public List<String> evidence(Span cell) {
    Set<String> cited = new LinkedHashSet<>();
    Matcher matcher = NAME.matcher(cell.text());
    while (matcher.find()) {
      evidence
          .find(text(cell.part(matcher.start(), matcher.end() - matcher.start())), problems)
          .ifPresent(cited::add);
    }
    return List.copyOf(cited);
  }

  /** Returns a text as a record says it on one line. */
  public static String line(String text) {
    return FlowYamlWriter.text(text, false);
  }

  /**
   * Returns a text as a cell has it: as it stands, in double quotes where something would be lost.
   */
  public static String inCell(String text) {
    boolean plain =
        !text.isEmpty()
            && text.equals(text.strip())
            && !(text.startsWith("\"") && text.endsWith("\""))
            && text.chars().noneMatch(c -> c < 0x20 || Character.isSpaceChar(c) && c != ' ');
    return plain ? text : FlowYamlWriter.doubleQuoted(text);
  }

  /** Returns a list of names as a record says it on one line. */
  public static String line(Collection<String> names) {
    List<String> shown = names.stream().map(it -> FlowYamlWriter.text(it, true)).toList();
    return "[" + String.join(", ", shown) + "]";
  }

  /** Adds something that is wrong with the table. */
  public void add(Diagnostic diagnostic) {
    problems.add(diagnostic);
  }

  /** Returns everything that is wrong. */
  public List<Diagnostic> diagnostics() {
    return problems.all().stream().distinct().toList();
  }

  private Optional<Node> value(Aspect aspect, Span cell) {
    String text = cell.text();
    boolean group = aspect.kind().mayBeGroup() && text.startsWith("{");
    boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
    if (!group && !quoted) {
      return Optional.of(text(cell));
    }
    DiagnosticCollector inside = new DiagnosticCollector();
    Optional<Node> node =
        YamlTreeBuilder.parse(new SourceFile(cell.file().path(), text), inside)
            .map(it -> moved(it, at -> span(cell, at)));
    boolean unreadable = inside.all().stream().anyMatch(it -> it.code() == DiagnosticCode.SYNTAX);
    if (quoted && unreadable) {
      return Optional.of(text(cell));
    }
    inside.all().forEach(it -> problems.add(moved(it, at -> span(cell, at))));
    return inside.hasErrors() ? Optional.empty() : node;
  }

  private static Node.Scalar text(Span cell) {
    return new Node.Scalar(cell.text(), Node.Scalar.Style.QUOTED, cell);
  }

  private static Span span(Span cell, Span inside) {
    return cell.part(inside.start(), inside.end() - inside.start());
  }

  private static Diagnostic moved(Diagnostic it, UnaryOperator<Span> to) {
    List<RelatedLocation> labels =
        it.related().stream()
            .map(label -> new RelatedLocation(to.apply(label.at()), label.words()))
            .toList();
    return new Diagnostic(
        it.code(), to.apply(it.at()), it.message(), it.hint(), labels, it.subjects());
  }

  private static Node moved(Node node, UnaryOperator<Span> to) {
    return node.match(
        mapping ->
            new Node.Mapping(
                mapping.entries().stream()
                    .map(it -> new Node.Entry(moved(it.key(), to), moved(it.value(), to)))
                    .toList(),
                to.apply(mapping.at())),
        list ->
            new Node.Sequence(
                list.nodes().stream().map(it -> moved(it, to)).toList(), to.apply(list.at())),
        scalar -> moved(scalar, to));
  }

  private static Node.Scalar moved(Node.Scalar scalar, UnaryOperator<Span> to) {
    return new Node.Scalar(scalar.text(), scalar.style(), to.apply(scalar.at()));
  }
}
