package assize.yaml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is written under a name, whatever the way of writing it and wherever it stands. A {@link
 * Node} always stands somewhere in a text; this is for what two texts both say, which is compared
 * without its places, and for what is still to be written, which has none.
 */
public sealed interface YamlValue {

  /** Returns what a person wrote. */
  static YamlValue of(Node node) {
    return node.match(
        mapping ->
            new Group(
                mapping.entries().stream()
                    .map(entry -> new Field(entry.name(), of(entry.value())))
                    .toList()),
        list -> new Items(list.nodes().stream().map(YamlValue::of).toList()),
        text -> new Text(text.isNothing() ? "" : text.text(), text.isNothing()));
  }

  /** Says whether nothing is written, not even an empty text in quotes. */
  default boolean isBlank() {
    return match(Text::isNothing, items -> false, group -> false);
  }

  /** Returns a text. */
  static YamlValue text(String text) {
    return new Text(text, false);
  }

  <R> R match(
      Function<? super Text, ? extends R> text,
      Function<? super Items, ? extends R> items,
      Function<? super Group, ? extends R> group);

  /**
   * A single text.
   *
   * @param isNothing whether nothing is written, not even an empty text in quotes
   */
  record Text(String text, boolean isNothing) implements YamlValue {
    @Override
    public <R> R match(
        Function<? super Text, ? extends R> text,
        Function<? super Items, ? extends R> items,
        Function<? super Group, ? extends R> group) {
      return text.apply(this);
    }
  }

  /** A list. */
  record Items(List<YamlValue> all) implements YamlValue {
    public Items {
      all = List.copyOf(all);
    }

    @Override
    public <R> R match(
        Function<? super Text, ? extends R> text,
        Function<? super Items, ? extends R> items,
        Function<? super Group, ? extends R> group) {
      return items.apply(this);
    }
  }

  /** Names with what is written under each, in the order written. */
  final class Group implements YamlValue {
    /** From so many names on they are looked up by a table. */
    private static final int MANY = 8;

    private final List<Field> fields;
    private final Map<String, Integer> places;

    public Group(List<Field> fields) {
      this.fields = List.copyOf(fields);
      this.places = fields.size() < MANY ? Map.of() : places(fields);
    }

    private static Map<String, Integer> places(List<Field> fields) {
      Map<String, Integer> places = new HashMap<>();
      for (Field field : fields) {
        places.putIfAbsent(field.name(), places.size());
      }
      return places;
    }

    public List<Field> fields() {
      return fields;
    }

    /** Returns what is written under a name. */
    public Optional<YamlValue> get(String name) {
      int place = place(name);
      return place < 0 ? Optional.empty() : Optional.of(fields.get(place).value());
    }

    private int place(String name) {
      if (fields.size() >= MANY) {
        return places.getOrDefault(name, -1);
      }
      for (int i = 0; i < fields.size(); i++) {
        if (fields.get(i).name().equals(name)) {
          return i;
        }
      }
      return -1;
    }

    /** Returns the same with what is under some names changed, or put behind the others. */
    public Group with(List<Field> changes) {
      List<Field> changed = new ArrayList<>(fields);
      for (Field one : changes) {
        int place = place(one.name());
        if (place < 0) {
          changed.add(one);
        } else {
          changed.set(place, one);
        }
      }
      return new Group(changed);
    }

    @Override
    public <R> R match(
        Function<? super Text, ? extends R> text,
        Function<? super Items, ? extends R> items,
        Function<? super Group, ? extends R> group) {
      return group.apply(this);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Group that && fields.equals(that.fields);
    }

    @Override
    public int hashCode() {
      return fields.hashCode();
    }

    @Override
    public String toString() {
      return "Group" + fields;
    }
  }

  /** A name and what is written under it. */
  record Field(String name, YamlValue value) {}

  /** Returns the same without white space behind its texts, which records never mean. */
  default YamlValue tidy() {
    return match(
        text -> new Text(text.text().stripTrailing(), text.isNothing()),
        items -> new Items(items.all().stream().map(YamlValue::tidy).toList()),
        group ->
            new Group(
                group.fields().stream()
                    .map(it -> new Field(it.name(), it.value().tidy()))
                    .toList()));
  }

  /** Returns it as a group, if it is one. */
  default Optional<Group> asGroup() {
    return match(text -> Optional.empty(), items -> Optional.empty(), Optional::of);
  }

  /** Returns it as a list, if it is one. */
  default Optional<Items> asItems() {
    return match(text -> Optional.empty(), Optional::of, group -> Optional.empty());
  }

  /** Returns what is written at a place below. */
  default Optional<YamlValue> at(List<String> path) {
    return path.isEmpty()
        ? Optional.of(this)
        : asGroup()
            .flatMap(it -> it.get(path.get(0)))
            .flatMap(it -> it.at(path.subList(1, path.size())));
  }
}
