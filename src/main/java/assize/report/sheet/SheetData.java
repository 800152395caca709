package assize.report.sheet;

import assize.aspect.Control;
import assize.text.Json;
import assize.yaml.Node;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the script of an inspection sheet reads. */
final class SheetData {
  private final SheetView sheet;
  private final Map<List<Control.Choice>, Integer> lists = new LinkedHashMap<>();

  SheetData(SheetView sheet) {
    this.sheet = sheet;
  }

  String json() {
    Json items = Json.object();
    sheet.walk().areas().stream()
        .flatMap(area -> area.items().stream())
        .forEach(item -> items.object(item.id(), aspects(item)));
    Json fields = Json.object();
    sheet.fields().forEach(it -> fields.texts(it.word(), field(it)));
    return Json.object()
        .text("key", sheet.key())
        .text("record", sheet.walk().record())
        .text("file", sheet.file())
        .text("text", sheet.text())
        .flag("marked", sheet.marked())
        .value("tree", tree(sheet.tree()))
        .texts("reasons", sheet.reasons())
        .texts("bands", sheet.bands())
        .value("mostGloss", sheet.mostGloss())
        .object("fields", fields)
        .object("names", names(sheet.names()))
        .texts("order", sheet.order())
        .object("items", items)
        .value("lists", lists.keySet().stream().map(SheetData::choices).toList())
        .inPage();
  }

  /** Returns what kind of answer a field has, and what it and several words for it are called. */
  private static List<String> field(SheetView.SheetField field) {
    String kind = field.control().map(Control.Kind::name).orElse("TEXT");
    return List.of(kind, field.spoken(), field.many());
  }

  /** Returns names as a group, names of the writer's own as an asterisk, in their order. */
  private static Json names(List<SheetView.RecordName> names) {
    Json json = Json.object();
    names.forEach(it -> json.value(it.name().isEmpty() ? "*" : it.name(), name(it)));
    return json;
  }

  private static Object name(SheetView.RecordName name) {
    return name.below().isEmpty()
        ? name.bounds().stream()
            .map(it -> List.of(new BigDecimal(it.least()), new BigDecimal(it.most())))
            .toList()
        : names(name.below());
  }

  private Json aspects(InspectionView.InspectedItem item) {
    Json aspects = Json.object();
    item.aspects().forEach(it -> aspects.object(it.word(), aspect(item, it)));
    return aspects;
  }

  private Json aspect(InspectionView.InspectedItem item, InspectionView.InspectedAspect aspect) {
    Json json = Json.object().text("kind", aspect.control().kind().name());
    List<Control.Choice> choices = aspect.control().choices();
    if (!choices.isEmpty()) {
      json.whole("list", lists.computeIfAbsent(choices, it -> lists.size()));
    }
    List<String> named =
        choices.stream()
            .map(Control.Choice::id)
            .filter(sheet.spokenOf(item, aspect)::contains)
            .toList();
    return named.isEmpty() ? json : json.texts("named", named);
  }

  private static List<List<String>> choices(List<Control.Choice> choices) {
    return choices.stream().map(it -> List.of(it.id(), it.name(), it.swatch())).toList();
  }

  /**
   * Returns places in a short form: a text as its bounds, with its value where that is not what
   * stands there; nothing, a group and a list as objects.
   */
  private static Object tree(Node node) {
    List<Object> bounds = List.of(node.at().start(), node.at().end());
    return node.match(
        group ->
            Json.object()
                .value("at", bounds)
                .value("g", group.entries().stream().map(SheetData::entry).toList()),
        list ->
            Json.object()
                .value("at", bounds)
                .value("l", list.nodes().stream().map(SheetData::tree).toList()),
        text ->
            text.isEmptyPlace()
                ? nothing(text.at().end())
                : text.at().text().equals(text.text())
                    ? bounds
                    : List.of(text.at().start(), text.at().end(), text.text()));
  }

  private static Json nothing(int at) {
    return Json.object().whole("n", at);
  }

  private static List<Object> entry(Node.Entry entry) {
    boolean isEmpty = entry.value() instanceof Node.Scalar value && value.isEmptyPlace();
    return List.of(
        entry.name(),
        entry.key().at().start(),
        entry.colon(),
        isEmpty ? nothing(entry.behind()) : tree(entry.value()));
  }
}
