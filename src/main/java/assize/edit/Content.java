package assize.edit;

import assize.yaml.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** What is written under a name, whatever the way of writing it. */
public sealed interface Content {

  /** Returns what a person wrote. */
  static Content of(Node node) {
    return node.match(
        mapping ->
            new Group(
                mapping.entries().stream()
                    .map(entry -> new Field(entry.name(), of(entry.value())))
                    .toList()),
        list -> new Items(list.nodes().stream().map(Content::of).toList()),
        text -> new Text(text.isNothing() ? "" : text.text(), text.isNothing()));
  }

  /** Says whether nothing is written, not even an empty text in quotes. */
  default boolean isBlank() {
    return match(Text::isNothing, items -> false, group -> false);
  }

  /** Returns a text. */
  static Content text(String text) {
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
  record Text(String text, boolean isNothing) implements Content {
    @Override
    public <R> R match(
        Function<? super Text, ? extends R> text,
        Function<? super Items, ? extends R> items,
        Function<? super Group, ? extends R> group) {
      return text.apply(this);
    }
  }

  /** A list. */
  record Items(List<Content> all) implements Content {
    public Items {
      all = List.copyOf(all);
    }

    /** Says whether it begins as another list does and goes on. */
    boolean goesOn(Items other) {
      return all.size() >= other.all.size() && all.subList(0, other.all.size()).equals(other.all);
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
  final class Group implements Content {
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
    public Optional<Content> get(String name) {
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

    /** Returns the same with one name's content changed, or put behind the others. */
    public Group with(String name, Content value) {
      return with(List.of(new Change(List.of(name), value)));
    }

    /**
     * Returns the same with the content of a place below changed; groups on the way to it that are
     * missing are made.
     *
     * @param path names, the outermost first; at least one
     */
    public Group with(List<String> path, Content value) {
      return with(List.of(new Change(path, value)));
    }

    /** Returns the same with the content of places below changed, one after another. */
    public Group with(List<Change> changes) {
      Map<String, List<Change>> byName = new LinkedHashMap<>();
      changes.forEach(
          it -> byName.computeIfAbsent(it.path().get(0), name -> new ArrayList<>()).add(it));
      List<Field> changed = new ArrayList<>(fields);
      byName.forEach(
          (name, all) -> {
            int place = place(name);
            Field field = new Field(name, changed(get(name), all));
            if (place < 0) {
              changed.add(field);
            } else {
              changed.set(place, field);
            }
          });
      return new Group(changed);
    }

    /** Returns what stands under a name after changes of it and of what is below it. */
    private static Content changed(Optional<Content> before, List<Change> changes) {
      Optional<Content> value = before;
      List<Content> more = new ArrayList<>();
      List<Change> below = new ArrayList<>();
      for (Change one : changes) {
        if (one.path().size() > 1) {
          below.add(one.below());
          continue;
        }
        below.clear();
        if (one.isMore()) {
          more.addAll(entries(one.value()));
        } else {
          more.clear();
          value = Optional.of(one.value());
        }
      }
      if (!more.isEmpty()) {
        more.addAll(0, value.filter(it -> !it.isBlank()).map(Group::entries).orElse(List.of()));
        value = Optional.of(new Items(more));
      }
      return below.isEmpty()
          ? value.orElseThrow()
          : value.flatMap(Content::asGroup).orElse(new Group(List.of())).with(below);
    }

    /** Returns what a list has; a single value stands for a list of it. */
    private static List<Content> entries(Content content) {
      return content.asItems().map(Items::all).orElse(List.of(content));
    }

    /** Says whether it has the names of another group in their order, and perhaps more behind. */
    boolean goesOn(Group other) {
      return fields.size() >= other.fields.size()
          && IntStream.range(0, other.fields.size())
              .allMatch(i -> fields.get(i).name().equals(other.fields.get(i).name()));
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

  /**
   * A place and what is to stand there.
   *
   * @param path names, the outermost first; at least one
   * @param isMore whether the value is a list that goes behind the entries that stand there
   */
  record Change(List<String> path, Content value, boolean isMore) {
    public Change(List<String> path, Content value) {
      this(path, value, false);
    }

    private Change below() {
      return new Change(path.subList(1, path.size()), value, isMore);
    }
  }

  /** A name and what is written under it. */
  record Field(String name, Content value) {}

  /** Returns the same without white space behind its texts, which records never mean. */
  default Content tidy() {
    return match(
        text -> new Text(text.text().stripTrailing(), text.isNothing()),
        items -> new Items(items.all().stream().map(Content::tidy).toList()),
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
  default Optional<Content> at(List<String> path) {
    return path.isEmpty()
        ? Optional.of(this)
        : asGroup()
            .flatMap(it -> it.get(path.get(0)))
            .flatMap(it -> it.at(path.subList(1, path.size())));
  }
}
