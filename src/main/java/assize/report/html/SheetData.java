package assize.report.html;

import assize.aspect.Control;
import assize.report.view.SheetView;
import assize.report.view.WalkView;
import assize.yaml.Node;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the script of a walk-round sheet reads, as JSON (RFC 8259) in ASCII and without what markup
 * begins with, so that no browser changes it.
 */
final class SheetData {
  private final SheetView sheet;
  private final Map<List<Control.Choice>, Integer> lists = new LinkedHashMap<>();

  SheetData(SheetView sheet) {
    this.sheet = sheet;
  }

  String json() {
    String items =
        sheet.walk().areas().stream()
            .flatMap(area -> area.items().stream())
            .map(item -> text(item.id()) + ":" + aspects(item))
            .collect(Collectors.joining(",", "{", "}"));
    return "{\"key\":"
        + text(sheet.key())
        + ",\"record\":"
        + text(sheet.walk().record())
        + ",\"file\":"
        + text(sheet.file())
        + ",\"text\":"
        + text(sheet.text())
        + ",\"marked\":"
        + sheet.marked()
        + ",\"tree\":"
        + tree(sheet.tree())
        + ",\"reasons\":"
        + list(sheet.reasons(), SheetData::text)
        + ",\"bands\":"
        + list(sheet.bands(), SheetData::text)
        + ",\"mostGloss\":"
        + sheet.mostGloss()
        + ",\"fields\":"
        + sheet.fields().stream()
            .map(it -> text(it.word()) + ":" + field(it))
            .collect(Collectors.joining(",", "{", "}"))
        + ",\"names\":"
        + names(sheet.names())
        + ",\"order\":"
        + list(sheet.order(), SheetData::text)
        + ",\"items\":"
        + items
        + ",\"lists\":"
        + list(lists.keySet(), SheetData::choices)
        + "}";
  }

  /** Returns what kind of answer a field has, and what it and several words for it are called. */
  private static String field(SheetView.SheetField field) {
    String kind = field.control().map(Control.Kind::name).orElse("TEXT");
    return list(List.of(kind, field.spoken(), field.many()), SheetData::text);
  }

  /** Returns names as a group, names of the writer's own as an asterisk, in their order. */
  private static String names(List<SheetView.RecordName> names) {
    return names.stream()
        .map(it -> text(it.name().isEmpty() ? "*" : it.name()) + ":" + name(it))
        .collect(Collectors.joining(",", "{", "}"));
  }

  private static String name(SheetView.RecordName name) {
    return name.below().isEmpty()
        ? list(name.bounds(), it -> "[" + it.least() + "," + it.most() + "]")
        : names(name.below());
  }

  private String aspects(WalkView.WalkItem item) {
    return item.aspects().stream()
        .map(it -> text(it.word()) + ":" + aspect(item, it))
        .collect(Collectors.joining(",", "{", "}"));
  }

  private String aspect(WalkView.WalkItem item, WalkView.WalkAspect aspect) {
    List<Control.Choice> choices = aspect.control().choices();
    String words =
        choices.isEmpty() ? "" : ",\"list\":" + lists.computeIfAbsent(choices, it -> lists.size());
    List<String> named =
        choices.stream()
            .map(Control.Choice::id)
            .filter(sheet.spokenOf(item, aspect)::contains)
            .toList();
    return "{\"kind\":"
        + text(aspect.control().kind().name())
        + words
        + (named.isEmpty() ? "" : ",\"named\":" + list(named, SheetData::text))
        + "}";
  }

  private static String choices(List<Control.Choice> choices) {
    return list(choices, it -> list(List.of(it.id(), it.name(), it.swatch()), SheetData::text));
  }

  /**
   * Returns places in a short form: a text as its bounds, with its value where that is not what
   * stands there; nothing, a group and a list as objects.
   */
  private String tree(Node node) {
    return node.match(
        group -> "{\"at\":" + bounds(node) + "],\"g\":" + list(group.entries(), this::entry) + "}",
        list -> "{\"at\":" + bounds(node) + "],\"l\":" + list(list.nodes(), this::tree) + "}",
        text ->
            text.isEmptyPlace()
                ? nothing(text.at().end())
                : text.at().text().equals(text.text())
                    ? bounds(text) + "]"
                    : bounds(text) + "," + text(text.text()) + "]");
  }

  private static String bounds(Node node) {
    return "[" + node.at().start() + "," + node.at().end();
  }

  private static String nothing(int at) {
    return "{\"n\":" + at + "}";
  }

  private String entry(Node.Entry entry) {
    boolean isEmpty = entry.value() instanceof Node.Scalar value && value.isEmptyPlace();
    return "["
        + text(entry.name())
        + ","
        + entry.key().at().start()
        + ","
        + entry.colon()
        + ","
        + (isEmpty ? nothing(entry.behind()) : tree(entry.value()))
        + "]";
  }

  private static <T> String list(Collection<T> values, Function<? super T, String> each) {
    return values.stream().map(each).collect(Collectors.joining(",", "[", "]"));
  }

  /** Returns a text in quotes; whatever is not plain ASCII, or begins markup, is escaped. */
  private static String text(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~' || "\"\\<>&".indexOf(c) >= 0) {
        quoted.append("\\u").append(Integer.toHexString(0x10000 | c), 1, 5);
      } else {
        quoted.append(c);
      }
    }
    return quoted.append('"').toString();
  }
}
