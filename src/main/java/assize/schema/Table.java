package assize.schema;

import assize.text.Span;
import assize.yaml.Node;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Every fact of one kind, in the order in which they are written and read: from it come the reader,
 * the schema, copies with something changed, and what counts as the same.
 *
 * @param <C> what reading them needs
 * @param <S> what they are
 */
public final class Table<C extends Reading, S extends Facts> {
  private final Function<Facts.Drawn, S> make;
  private final List<Field<? super C, ?>> fields;
  private final ObjectSchema block;
  private final Facts.Drawn blank;

  private Table(
      String owner,
      Function<Facts.Drawn, S> make,
      List<Field<? super C, ?>> fields,
      List<PropertyConstraint> rules,
      Function<String, Optional<String>> elsewhere) {
    this.make = make;
    this.fields = List.copyOf(fields);
    this.block =
        new ObjectSchema(owner, fields.stream().flatMap(it -> it.keys().stream()).toList(), rules)
            .elsewhere(elsewhere);
    for (int i = 0; i < fields.size(); i++) {
      fields.get(i).place(i);
    }
    this.blank = Facts.Drawn.blank(fields);
  }

  /** Makes a table; the names belong to what {@code owner} says. */
  public static <C extends Reading, S extends Facts> Table<C, S> of(
      String owner,
      Function<Facts.Drawn, S> make,
      List<Field<? super C, ?>> fields,
      PropertyConstraint... rules) {
    return new Table<C, S>(owner, make, fields, List.of(rules), name -> Optional.empty());
  }

  /** Makes a table that knows where names belong that are none of its own. */
  public static <C extends Reading, S extends Facts> Table<C, S> of(
      String owner,
      Function<Facts.Drawn, S> make,
      List<Field<? super C, ?>> fields,
      List<PropertyConstraint> rules,
      Function<String, Optional<String>> elsewhere) {
    return new Table<C, S>(owner, make, fields, rules, elsewhere);
  }

  /** Returns which names there may be. */
  public ObjectSchema block() {
    return block;
  }

  public List<Field<? super C, ?>> fields() {
    return fields;
  }

  /** Returns the names that say a fact of which this becomes where a friend says it too. */
  public Stream<String> keys(Field.Merging how) {
    return fields.stream().filter(it -> it.merging() == how).map(Field::name);
  }

  /** Returns the fact that a name says, or begins to say. */
  public Optional<Field<? super C, ?>> field(String name) {
    return fields.stream().filter(it -> !it.keys().isEmpty() && it.name().equals(name)).findFirst();
  }

  /** Reads facts; there are none where one that is needed is missing or wrong. */
  public Optional<S> read(MappingReader written, C in, Span at) {
    Object[] values = new Object[fields.size()];
    boolean whole = true;
    for (int i = 0; i < values.length; i++) {
      Optional<?> value = fields.get(i).read(written, in);
      whole &= value.isPresent();
      values[i] = value.isPresent() ? value.get() : fields.get(i).none();
    }
    written.done();
    return whole
        ? Optional.of(make.apply(new Facts.Drawn(fields, values, place(written, at))))
        : Optional.empty();
  }

  private Span place(MappingReader written, Span at) {
    return fields.stream()
        .filter(Field::places)
        .flatMap(it -> written.peek(it.name()).stream())
        .map(Node.Entry::at)
        .findFirst()
        .orElse(at);
  }

  /** Returns facts of which nothing is said. */
  public S blank() {
    return make.apply(blank);
  }

  /** Returns the same facts, one of them changed. */
  public <T> S with(S one, Field<?, T> field, T value) {
    return make.apply(one.drawn().with(field, value));
  }

  /** Returns the same facts, written elsewhere. */
  public S at(S one, Span place) {
    return make.apply(one.drawn().at(place));
  }

  /** Returns the same facts, their texts changed. */
  public S reworded(S one, Rewording rewording) {
    Object[] values = fields.stream().<Object>map(it -> it.reworded(one, rewording)).toArray();
    return make.apply(new Facts.Drawn(fields, values, one.at()));
  }

  /** Says whether two say the same, however they write it. */
  public boolean alike(S one, S other) {
    return fields.stream().allMatch(it -> !it.counts() || it.isAlike(one, other));
  }
}
