package assize.schema;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** What is written under a name. */
public sealed interface ValueSchema {
  <R> R match(Cases<R> cases);

  /** A text that has to look like something, or any text. */
  record Scalar(ScalarFormat form) implements ValueSchema {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.scalar(this);
    }
  }

  /** Nothing behind the colon: not looked at yet. */
  record Blank() implements ValueSchema {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.blank(this);
    }
  }

  /** One of a few words that no rule set can add to. */
  record Word(List<String> words) implements ValueSchema {
    public Word {
      words = List.copyOf(words);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.word(this);
    }
  }

  /** A group of names that are all known. */
  record Group(ObjectSchema block) implements ValueSchema {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.group(this);
    }
  }

  /** Names of the writer's own, each with the same kind of thing under it. */
  record Named(ValueSchema name, ValueSchema each) implements ValueSchema {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.named(this);
    }
  }

  /**
   * A list.
   *
   * @param most how many it may have, if that is bounded
   */
  record Many(ValueSchema each, OptionalInt most) implements ValueSchema {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.many(this);
    }
  }

  /** A list of so many, each of its own kind. */
  record Row(List<ValueSchema> each) implements ValueSchema {
    public Row {
      each = List.copyOf(each);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.row(this);
    }
  }

  /** Any of several ways of writing. */
  record Either(List<ValueSchema> ways) implements ValueSchema {
    public Either {
      ways = List.copyOf(ways);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.either(this);
    }
  }

  /**
   * What {@link FileSchema#shared} holds under a name: it may hold itself, or stands in many
   * places.
   */
  record Shared(String name) implements ValueSchema {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.shared(this);
    }
  }

  /** Says whether a number, a date or a yes or no may be meant as such. */
  default boolean isMeant() {
    return this instanceof Scalar scalar
            && scalar.form.types().size() < ScalarFormat.Type.values().length - 1
        || this instanceof Row row && row.each.stream().anyMatch(ValueSchema::isMeant)
        || this instanceof Many many && many.each.isMeant()
        || this instanceof Either either && either.ways.stream().anyMatch(ValueSchema::isMeant);
  }

  /** Says whether it is one text, and any. */
  default boolean isAnyText() {
    return this instanceof Scalar scalar
        && !isMeant()
        && scalar.form.pattern().isEmpty()
        && scalar.form.bounds().isEmpty();
  }

  /** Returns the groups that may stand here, or below names of the writer's own. */
  default Stream<ObjectSchema> groups() {
    if (this instanceof Group group) {
      return Stream.of(group.block);
    }
    if (this instanceof Named named) {
      return named.each.groups();
    }
    if (this instanceof Many many) {
      return many.each.groups();
    }
    return this instanceof Either either
        ? either.ways.stream().flatMap(ValueSchema::groups)
        : Stream.empty();
  }

  /** An answer for each kind of value. */
  interface Cases<R> {
    R blank(Blank blank);

    R scalar(Scalar scalar);

    R word(Word word);

    R group(Group group);

    R named(Named named);

    R many(Many many);

    R row(Row row);

    R either(Either either);

    R shared(Shared shared);
  }

  static ValueSchema word(List<String> words) {
    return new Word(words);
  }

  static ValueSchema list(ValueSchema each) {
    return new Many(each, OptionalInt.empty());
  }

  static ValueSchema either(ValueSchema... ways) {
    return new Either(Arrays.asList(ways));
  }

  /** One thing, or a list of them. */
  static ValueSchema oneOrMore(ValueSchema each) {
    return either(each, list(each));
  }
}
