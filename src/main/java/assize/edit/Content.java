package assize.edit;

import assize.yaml.Node;
import java.util.ArrayList;
import java.util.List;
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
  record Group(List<Field> fields) implements Content {
    public Group {
      fields = List.copyOf(fields);
    }

    /** Returns what is written under a name. */
    public Optional<Content> get(String name) {
      return fields.stream().filter(it -> it.name().equals(name)).map(Field::value).findFirst();
    }

    /** Returns the same with one name's content changed, or put behind the others. */
    public Group with(String name, Content value) {
      List<Field> changed = new ArrayList<>(fields);
      Field field = new Field(name, value);
      IntStream.range(0, fields.size())
          .filter(i -> fields.get(i).name().equals(name))
          .findFirst()
          .ifPresentOrElse(i -> changed.set(i, field), () -> changed.add(field));
      return new Group(changed);
    }

    /**
     * Returns the same with the content of a place below changed; groups on the way to it that are
     * missing are made.
     *
     * @param path names, the outermost first; at least one
     */
    public Group with(List<String> path, Content value) {
      if (path.size() == 1) {
        return with(path.get(0), value);
      }
      Group below = get(path.get(0)).flatMap(Content::asGroup).orElse(new Group(List.of()));
      return with(path.get(0), below.with(path.subList(1, path.size()), value));
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
