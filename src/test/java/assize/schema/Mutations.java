package assize.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Changes a file in one place at a time: a name, or what is written under it. */
final class Mutations {
  /** What is written in place of anything, as YAML. */
  private static final List<String> INSTEAD =
      List.of("x", "12", "yes", "~", "\" \"", "\"\\u3164\"", "[x]", "[]", "{x: y}", "{}");

  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9 ./%~-]*[^ ])?");

  /** A changed file, and what was done. */
  record Mutation(String what, String yaml) {}

  /** YAML as it is to be written. */
  private record Raw(String yaml) {}

  private Mutations() {}

  static List<Mutation> of(Object tree) {
    List<Mutation> all = new ArrayList<>();
    change(tree, "", changed -> changed, all);
    return all;
  }

  private interface Around {
    Object put(Object changed);
  }

  private static void change(Object node, String path, Around around, List<Mutation> all) {
    if (node instanceof Map<?, ?> map) {
      List<Map.Entry<?, ?>> entries = new ArrayList<>(map.entrySet());
      add(path + " + a name", around.put(with(entries, entries.size(), "zzz", "1")), all);
      for (int i = 0; i < entries.size(); i++) {
        String name = entries.get(i).getKey().toString();
        Object value = entries.get(i).getValue();
        int at = i;
        String here = path + "/" + name;
        add(here + " left out", around.put(without(entries, at)), all);
        add(here + " renamed", around.put(with(entries, at, name + "x", value)), all);
        Around deeper = changed -> around.put(with(entries, at, name, changed));
        INSTEAD.forEach(it -> add(here + " = " + it, deeper.put(new Raw(it)), all));
        change(value, here, deeper, all);
      }
    } else if (node instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        int at = i;
        String here = path + "/" + i;
        Around deeper =
            changed -> {
              List<Object> changedList = new ArrayList<>(list);
              changedList.set(at, changed);
              return around.put(changedList);
            };
        INSTEAD.forEach(it -> add(here + " = " + it, deeper.put(new Raw(it)), all));
        change(list.get(i), here, deeper, all);
      }
    }
  }

  private static void add(String what, Object tree, List<Mutation> all) {
    all.add(new Mutation(what, yaml(tree)));
  }

  private static Map<String, Object> with(
      List<Map.Entry<?, ?>> entries, int at, String name, Object value) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < entries.size(); i++) {
      if (i != at) {
        map.put(entries.get(i).getKey().toString(), entries.get(i).getValue());
      } else {
        map.put(name, value);
      }
    }
    if (at == entries.size()) {
      map.put(name, value);
    }
    return map;
  }

  private static Map<String, Object> without(List<Map.Entry<?, ?>> entries, int at) {
    String name = entries.get(at).getKey().toString();
    Map<String, Object> map = with(entries, at, name, "");
    map.remove(name);
    return map;
  }

  /** Writes a tree in braces and brackets. */
  static String yaml(Object node) {
    if (node instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(it -> text(it.getKey().toString()) + ": " + yaml(it.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof List<?> list) {
      return list.stream().map(Mutations::yaml).collect(Collectors.joining(", ", "[", "]"));
    }
    return node instanceof Raw raw ? raw.yaml() : text(node.toString());
  }

  private static String text(String text) {
    return PLAIN.matcher(text).matches()
        ? text
        : "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
  }
}
