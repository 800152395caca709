package assize.schema;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;

/**
 * One of the facts in a {@link Table}: its keys in the file, how it is read, when two files say the
 * same of it, and what becomes of it in merging and in copies. Code that handles any kind of facts
 * asks the field.
 *
 * @param <C> what reading it needs
 * @param <T> what it is
 */
public final class Field<C extends Reading, T> {
  private final String name;
  private final List<PropertySchema> keys;
  private final T none;
  private final BiFunction<MappingReader, C, Optional<T>> reader;
  private final BiPredicate<T, T> alike;
  private final BiFunction<T, Rewording, T> reworded;
  private final boolean counts;
  private final Merging merging;
  private final boolean places;

  /** Where it stands in its table; set once, when the table is made. */
  private int place = -1;

  /** What becomes of it where a friend's record says it too. */
  public enum Merging {
    /** It is taken over in a way of its own, or never. */
    NOT,
    /** It is said once, and can be taken from another. */
    SAID,
    /** It tells who looked, and when. */
    WITNESS
  }

  private Field(
      String name,
      List<PropertySchema> keys,
      T none,
      BiFunction<MappingReader, C, Optional<T>> reader,
      BiPredicate<T, T> alike,
      BiFunction<T, Rewording, T> reworded) {
    this(name, keys, none, reader, alike, reworded, true, Merging.NOT, false);
  }

  private Field(
      String name,
      List<PropertySchema> keys,
      T none,
      BiFunction<MappingReader, C, Optional<T>> reader,
      BiPredicate<T, T> alike,
      BiFunction<T, Rewording, T> reworded,
      boolean counts,
      Merging merging,
      boolean places) {
    this.name = name;
    this.keys = keys;
    this.none = none;
    this.reader = reader;
    this.alike = alike;
    this.reworded = reworded;
    this.counts = counts;
    this.merging = merging;
    this.places = places;
  }

  /** One without which there are no facts. */
  public static <C extends Reading, T> Field<C, T> need(
      String name, T none, Type<? super C, T> type, String about) {
    return new Field<>(
        name,
        List.of(PropertySchema.need(name, type.value(), about)),
        none,
        (fields, in) -> type.reader().apply(fields.get(name), in),
        type.alike(),
        type.reworded());
  }

  /** One that may be left out. */
  public static <C extends Reading, T> Field<C, Optional<T>> may(
      String name, Type<? super C, T> type, String about) {
    return new Field<>(
        name,
        List.of(PropertySchema.may(name, type.value(), about)),
        Optional.empty(),
        (fields, in) -> Optional.of(type.reader().apply(fields.get(name), in)),
        (one, other) ->
            one.isEmpty() && other.isEmpty()
                || one.isPresent()
                    && other.isPresent()
                    && type.alike().test(one.get(), other.get()),
        (one, rewording) -> one.map(it -> type.reworded().apply(it, rewording)));
  }

  /** One that is nothing where it is left out. */
  public static <C extends Reading, T> Field<C, T> orNone(
      String name, T none, Type<? super C, T> type, String about) {
    return new Field<>(
        name,
        List.of(PropertySchema.may(name, type.value(), about)),
        none,
        (fields, in) -> type.reader().apply(fields.get(name), in).or(() -> Optional.of(none)),
        type.alike(),
        type.reworded());
  }

  /** One without which there are no facts, with a reader of its own and one key or several. */
  public static <C extends Reading, T> Field<C, T> need(
      T none, BiFunction<MappingReader, C, Optional<T>> reader, PropertySchema... keys) {
    return new Field<>(
        keys[0].name(), List.of(keys), none, reader, Object::equals, (one, rewording) -> one);
  }

  /** One with a reader of its own. */
  public static <C extends Reading, T> Field<C, T> of(
      T none, BiFunction<MappingReader, C, T> reader, PropertySchema... keys) {
    return of(keys[0].name(), List.of(keys), none, reader);
  }

  private static <C extends Reading, T> Field<C, T> of(
      String name, List<PropertySchema> keys, T none, BiFunction<MappingReader, C, T> reader) {
    return new Field<>(
        name,
        keys,
        none,
        (fields, in) -> Optional.of(reader.apply(fields, in)),
        Object::equals,
        (one, rewording) -> one);
  }

  /** One that is not written but given. */
  public static <C extends Reading, T> Field<C, T> given(String name, T none, Function<C, T> from) {
    return of(name, List.of(), none, (fields, in) -> from.apply(in));
  }

  /** Returns the same with another way of telling what says the same. */
  public Field<C, T> alike(BiPredicate<T, T> other) {
    return new Field<>(name, keys, none, reader, other, reworded, counts, merging, places);
  }

  /** Returns the same with what becomes of its texts where they are changed. */
  public Field<C, T> reworded(BiFunction<T, Rewording, T> other) {
    return new Field<>(name, keys, none, reader, alike, other, counts, merging, places);
  }

  /** Returns the same field, left out when facts are compared. */
  public Field<C, T> apart() {
    return new Field<>(name, keys, none, reader, alike, reworded, false, merging, places);
  }

  /** Returns the same with what becomes of it where a friend's record says it too. */
  public Field<C, T> merging(Merging how) {
    return new Field<>(name, keys, none, reader, alike, reworded, counts, how, places);
  }

  /** Returns the same field; messages about the whole group point to where it is written. */
  public Field<C, T> placing() {
    return new Field<>(name, keys, none, reader, alike, reworded, counts, merging, true);
  }

  public Merging merging() {
    return merging;
  }

  /** Returns the names that say it; none where it is given. */
  public List<PropertySchema> keys() {
    return keys;
  }

  /** Returns the name that says it, or the first of them. */
  public String name() {
    return name;
  }

  /** Returns what it is where nothing is written. */
  public T none() {
    return none;
  }

  /** Says whether something is written of it in some facts. */
  public boolean isSaid(Facts facts) {
    return !facts.get(this).equals(none);
  }

  /** Says whether two facts say the same of it, however they write it. */
  public boolean isAlike(Facts one, Facts other) {
    return alike.test(one.get(this), other.get(this));
  }

  T reworded(Facts facts, Rewording rewording) {
    return reworded.apply(facts.get(this), rewording);
  }

  boolean places() {
    return places;
  }

  boolean counts() {
    return counts;
  }

  Optional<T> read(MappingReader fields, C in) {
    return reader.apply(fields, in);
  }

  int place() {
    return place;
  }

  void place(int at) {
    if (place >= 0) {
      throw new IllegalStateException(name() + " is in two tables");
    }
    place = at;
  }
}
