package assize.edit;

import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.FlowYamlWriter;
import assize.yaml.Node;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds the pieces of text that make one text say what another says. What stands in the text stays:
 * names are put behind those that are there, entries behind those of their list.
 */
final class EditPlanner {
  private static final String ODD_LINE = "something else stands in this line";
  private static final String REMARKS = "remarks stand in between";

  private final LineScanner lines;
  private final SourceFile file;
  private final Style style;
  private final List<TextEdit> pieces = new ArrayList<>();
  private final List<ManualEdit> byHand = new ArrayList<>();

  /** By the group that stands in the text, whatever others say the same. */
  private final Map<Node.Mapping, YamlStyle> layouts = new IdentityHashMap<>();

  EditPlanner(SourceFile file, Style style) {
    this.file = file;
    this.style = style;
    this.lines = new LineScanner(file);
  }

  /** Returns the pieces, in the order of the text; those of one place, the innermost first. */
  List<TextEdit> pieces() {
    return pieces.stream().sorted(Comparator.comparingInt(it -> it.at().start())).toList();
  }

  List<ManualEdit> byHand() {
    return byHand;
  }

  /** Gathers what makes {@code old} say {@code wanted}; returns what it will say. */
  YamlValue.Group edit(Node.Mapping old, YamlValue.Group wanted) {
    return mapping(old, wanted, List.of());
  }

  /** Says whether a group has the names of another in their order, and perhaps more behind. */
  static boolean goesOn(YamlValue.Group group, YamlValue.Group other) {
    return group.fields().size() >= other.fields().size()
        && IntStream.range(0, other.fields().size())
            .allMatch(i -> group.fields().get(i).name().equals(other.fields().get(i).name()));
  }

  /** Says whether a list begins as another does, and perhaps goes on. */
  private static boolean goesOn(YamlValue.Items list, YamlValue.Items other) {
    int size = other.all().size();
    return list.all().size() >= size && list.all().subList(0, size).equals(other.all());
  }

  private YamlValue.Group mapping(Node.Mapping old, YamlValue.Group wanted, List<String> path) {
    List<YamlValue.Field> achieved = new ArrayList<>();
    for (int i = 0; i < old.entries().size(); i++) {
      Node.Entry entry = old.entries().get(i);
      YamlValue value = value(entry, wanted.fields().get(i).value(), and(path, entry.name()), old);
      achieved.add(new YamlValue.Field(entry.name(), value));
    }
    List<YamlValue.Field> added = wanted.fields().subList(achieved.size(), wanted.fields().size());
    if (!added.isEmpty() && add(old, added, path)) {
      achieved.addAll(added);
    }
    return new YamlValue.Group(achieved);
  }

  private YamlValue value(
      Node.Entry entry, YamlValue wanted, List<String> path, Node.Mapping around) {
    YamlValue old = YamlValue.of(entry.value());
    if (old.equals(wanted)) {
      return old;
    }
    if (entry.value() instanceof Node.Mapping mapping
        && wanted instanceof YamlValue.Group group
        && old.asGroup().filter(it -> goesOn(group, it)).isPresent()) {
      return mapping(mapping, group, path);
    }
    if (entry.value() instanceof Node.Sequence list
        && wanted instanceof YamlValue.Items items
        && old.asItems().filter(it -> goesOn(items, it)).isPresent()) {
      List<YamlValue> more = items.all().subList(list.nodes().size(), items.all().size());
      return append(list, more, path) ? wanted : old;
    }
    return replace(entry, wanted, path, around) ? wanted : old;
  }

  private boolean replace(
      Node.Entry entry, YamlValue wanted, List<String> path, Node.Mapping around) {
    Node old = entry.value();
    int start = old.at().start();
    int end = end(old);
    YamlStyle layout = layout(around);
    String inline = layout.flow().of(entry.name(), wanted, around.isInBrackets());
    if (old instanceof Node.Scalar nothing && nothing.isNothing()) {
      int colon = end(entry);
      if (nothing.text().isEmpty() && !around.isInBrackets() && lines.isLast(colon)) {
        return put(colon, Stream.of(" " + inline));
      }
      return refuse(path, entry.key().at(), entry.name() + ": " + inline, "nothing stands here");
    }
    boolean block = old instanceof Node.Scalar text && text.style() == Node.Scalar.Style.BLOCK;
    boolean inLines = !(old instanceof Node.Scalar) && !lines.isOneLine(start, end);
    String head = file.text().substring(start, Math.min(lines.end(start), end));
    String whole = file.text().substring(start, end);
    if (block && head.contains("#") || inLines && whole.contains("#")) {
      return refuse(path, entry.key().at(), entry.name() + ": " + inline, REMARKS);
    }
    Optional<Integer> indent = lines.indent(start);
    if (inLines && !old.isInBrackets() && indent.isPresent()) {
      String lineEnd = lines.lineEnd(start);
      Optional<YamlValue.Group> group = wanted.asGroup();
      String text =
          group
              .map(it -> below(layout, indent.get(), path.size() + 1, it.fields()))
              .map(it -> String.join(lineEnd, it).substring(indent.get()))
              .orElse(inline);
      return put(start, end, text);
    }
    return put(start, end, inline);
  }

  private boolean add(Node.Mapping old, List<YamlValue.Field> added, List<String> path) {
    return old.isInBrackets() ? addInBrackets(old, added, path) : addInLines(old, added, path);
  }

  private boolean addInLines(Node.Mapping old, List<YamlValue.Field> added, List<String> path) {
    Node.Entry last = old.entries().get(old.entries().size() - 1);
    int first = old.entries().get(0).key().at().start();
    int end = end(last);
    YamlStyle layout = layout(old);
    Optional<Integer> indent = lines.indentInList(first);
    int depth = path.size() + 1;
    boolean brackets = depth > 1 && last.value() instanceof Node.Mapping it && it.isInBrackets();
    boolean isApart = isApart(old);
    List<String> written = new ArrayList<>();
    for (YamlValue.Field one : added) {
      if (isApart) {
        written.add("");
      }
      written.addAll(layout.lines(indent.orElse(0), depth, one, brackets));
    }
    if (indent.isEmpty() || !lines.isLast(end)) {
      Span at = indent.isEmpty() ? old.entries().get(0).key().at() : last.key().at();
      return refuse(path, at, String.join("\n", written), ODD_LINE);
    }
    String lineEnd = lines.lineEnd(end);
    return put(lines.end(end), written.stream().map(it -> lineEnd + it));
  }

  private boolean addInBrackets(Node.Mapping old, List<YamlValue.Field> added, List<String> path) {
    YamlStyle layout = layout(old);
    List<String> written =
        added.stream()
            .map(
                it ->
                    layout.flow().name(it.name())
                        + ": "
                        + layout.flow().of(it.name(), it.value(), true))
            .toList();
    if (old.entries().isEmpty()) {
      return put(old.at().start() + 1, Stream.of(String.join(", ", written)));
    }
    Node.Entry last = old.entries().get(old.entries().size() - 1);
    return behind(last.key().at().start(), end(last), old.at(), written, path);
  }

  private boolean append(Node.Sequence old, List<YamlValue> more, List<String> path) {
    String name = path.get(path.size() - 1);
    YamlStyle layout = new YamlStyle(2, style.flow(), style);
    boolean brackets = old.isInBrackets();
    List<String> inline = more.stream().map(it -> layout.flow().of(name, it, brackets)).toList();
    if (old.nodes().isEmpty()) {
      return put(old.at().start() + 1, Stream.of(String.join(", ", inline)));
    }
    Node last = old.nodes().get(old.nodes().size() - 1);
    if (brackets) {
      return behind(last.at().start(), end(last), old.at(), inline, path);
    }
    int first = old.nodes().get(0).at().start();
    String before = file.text().substring(lines.start(first), first);
    int end = end(last);
    List<String> written = new ArrayList<>();
    int dash = before.indexOf('-');
    more.forEach(it -> written.addAll(layout.item(Math.max(0, dash), path.size(), name, it)));
    if (!before.matches(" *- +") || !lines.isLast(end)) {
      return refuse(path, last.at().part(0, 1), String.join("\n", written), ODD_LINE);
    }
    String lineEnd = lines.lineEnd(end);
    return put(lines.end(end), written.stream().map(it -> lineEnd + it));
  }

  /** Puts entries behind the last one in brackets: in its line, or each in a line of its own. */
  private boolean behind(
      int lastStart, int lastEnd, Span brackets, List<String> written, List<String> path) {
    int comma = lines.afterBlanks(lastEnd);
    boolean ends = lines.has(comma, ',');
    int from = ends ? comma + 1 : lastEnd;
    Optional<Integer> indent = lines.indent(lastStart);
    int close = brackets.end() - 1;
    if (indent.isPresent() && !lines.isOneLine(from, close) && lines.isLast(from)) {
      String lineEnd = lines.lineEnd(from) + " ".repeat(indent.get());
      if (!ends) {
        put(from, Stream.of(","));
      }
      String text = String.join("," + lineEnd, written) + (ends ? "," : "");
      return put(lines.end(from), Stream.of(lineEnd + text));
    }
    String between = file.text().substring(from, close);
    if (!between.isBlank()) {
      return refuse(path, brackets.part(0, 1), String.join(", ", written), REMARKS);
    }
    return put(from, Stream.of((ends ? " " : ", ") + String.join(", ", written)));
  }

  private boolean refuse(List<String> path, Span at, String write, String why) {
    byHand.add(new ManualEdit(path, at, write, why));
    return false;
  }

  private boolean put(int at, Stream<String> text) {
    return put(at, at, text.collect(Collectors.joining()));
  }

  private boolean put(int start, int end, String text) {
    return pieces.add(new TextEdit(file.span(start, end), text));
  }

  private static List<String> below(
      YamlStyle layout, int indent, int depth, List<YamlValue.Field> fields) {
    return fields.stream().flatMap(it -> layout.lines(indent, depth, it, false).stream()).toList();
  }

  /** Returns how what is written into a group is laid out, as its entries are. */
  private YamlStyle layout(Node.Mapping group) {
    return layouts.computeIfAbsent(group, this::laidOut);
  }

  private YamlStyle laidOut(Node.Mapping group) {
    boolean quoted =
        group.isInBrackets()
            && group.entries().stream().findFirst().filter(it -> isQuoted(it.key())).isPresent();
    return new YamlStyle(step(group), quoted ? FlowYamlWriter.JSON : style.flow(), style);
  }

  private int step(Node.Mapping group) {
    for (Node.Entry entry : group.entries()) {
      if (entry.value() instanceof Node.Mapping below && !below.isInBrackets()) {
        Optional<Integer> inner = lines.indent(below.entries().get(0).key().at().start());
        Optional<Integer> outer = lines.indent(entry.key().at().start());
        if (inner.isPresent() && outer.isPresent() && inner.get() > outer.get()) {
          return inner.get() - outer.get();
        }
      }
    }
    return 2;
  }

  private static boolean isQuoted(Node.Scalar key) {
    return key.at().text().startsWith("\"");
  }

  /** Says whether entries are parted by empty lines. */
  private boolean isApart(Node.Mapping group) {
    int count = group.entries().size();
    return count > 1
        && lines.isApart(
            end(group.entries().get(count - 2)), group.entries().get(count - 1).key().at().start());
  }

  private int end(Node.Entry entry) {
    if (!(entry.value() instanceof Node.Scalar nothing) || !nothing.isNothing()) {
      return end(entry.value());
    }
    int colon = lines.afterBlanks(entry.key().at().end());
    int behind = lines.has(colon, ':') ? colon + 1 : entry.key().at().end();
    return Math.max(behind, nothing.at().end());
  }

  private int end(Node node) {
    if (node.isInBrackets()) {
      return node.at().end();
    }
    return node.match(
        mapping -> end(mapping.entries().get(mapping.entries().size() - 1)),
        list -> end(list.nodes().get(list.nodes().size() - 1)),
        text -> text.at().end());
  }

  private static List<String> and(List<String> path, String name) {
    return Stream.concat(path.stream(), Stream.of(name)).toList();
  }
}
