package assize.edit;

import assize.yaml.FlowYamlWriter;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays out what is put into a file, as the text around it is laid out.
 *
 * @param step how many spaces each level is indented by
 * @param flow writes what stands on one line
 */
record YamlStyle(int step, FlowYamlWriter flow, Style style) {
  /** Longer lines are written in several. */
  private static final int WIDEST = 96;

  /**
   * Writes a name and what is under it in lines.
   *
   * @param indent spaces before the name
   * @param depth how many names deep it stands, 1 for those of the file itself
   * @param brackets whether a group goes into brackets wherever it fits, as its neighbors do
   */
  List<String> lines(int indent, int depth, YamlValue.Field field, boolean brackets) {
    String head = " ".repeat(indent) + flow.name(field.name()) + ":";
    String line = head + " " + flow.of(field.name(), field.value(), false);
    boolean fits = line.length() <= WIDEST && isOneLine(field.value());
    return field
        .value()
        .match(
            text ->
                block(text.text())
                    .map(it -> under(head + " |-", it, indent + step))
                    .orElse(List.of(line)),
            items ->
                fits && items.all().stream().noneMatch(it -> it.asGroup().isPresent())
                    ? List.of(line)
                    : list(head, indent + step, depth, field.name(), items),
            group -> {
              boolean small =
                  depth >= style.smallFrom()
                      && group.fields().stream().noneMatch(YamlStyle::isDeep);
              if (fits && (brackets || small) || group.fields().isEmpty()) {
                return List.of(line);
              }
              List<String> lines = new ArrayList<>(List.of(head));
              group
                  .fields()
                  .forEach(it -> lines.addAll(lines(indent + step, depth + 1, it, false)));
              return lines;
            });
  }

  private static boolean isDeep(YamlValue.Field field) {
    return field.value().asGroup().isPresent();
  }

  private List<String> list(
      String head, int indent, int depth, String name, YamlValue.Items items) {
    List<String> lines = new ArrayList<>(List.of(head));
    items.all().forEach(it -> lines.addAll(item(indent, depth, name, it)));
    return lines;
  }

  /** Writes one entry of a list in lines. */
  List<String> item(int indent, int depth, String name, YamlValue content) {
    String line = " ".repeat(indent) + "- " + flow.of(name, content, false);
    Optional<YamlValue.Group> group = content.asGroup().filter(it -> !it.fields().isEmpty());
    boolean small = style.brief().contains(name) && line.length() <= WIDEST;
    if (group.isEmpty() || small) {
      return List.of(line);
    }
    List<String> lines = new ArrayList<>();
    group
        .get()
        .fields()
        .forEach(it -> lines.addAll(lines(indent + 2, style.smallFrom(), it, false)));
    lines.set(0, " ".repeat(indent) + "- " + lines.get(0).substring(indent + 2));
    return lines;
  }

  private boolean isOneLine(YamlValue content) {
    return content.match(
        text -> text.text().indexOf('\n') < 0,
        items -> items.all().stream().allMatch(this::isOneLine),
        group -> group.fields().stream().allMatch(it -> isOneLine(it.value())));
  }

  /** Returns the lines of a text of several, if each can stand as it is. */
  private Optional<List<String>> block(String text) {
    boolean safe =
        !flow.isJson()
            && text.indexOf('\n') > 0
            && !text.endsWith("\n")
            && !text.startsWith(" ")
            && text.codePoints().allMatch(c -> c == '\n' || FlowYamlWriter.isSeen(c));
    return safe ? Optional.of(List.of(text.split("\n", -1))) : Optional.empty();
  }

  private static List<String> under(String head, List<String> below, int indent) {
    List<String> lines = new ArrayList<>(List.of(head));
    below.forEach(it -> lines.add(it.isEmpty() ? "" : " ".repeat(indent) + it));
    return lines;
  }
}
