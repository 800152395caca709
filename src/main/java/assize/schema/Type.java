package assize.schema;

import assize.date.Edtf;
import assize.diagnostic.Code;
import assize.yaml.Node;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * What can be written under a name: how it looks, what it is read as, and when two say the same.
 *
 * @param <C> what reading it needs
 * @param <T> what it is read as
 */
public record Type<C extends Reading, T>(
    Value value,
    BiFunction<Optional<Node.Entry>, C, Optional<T>> reader,
    BiPredicate<T, T> alike,
    BiFunction<T, Rewording, T> reworded) {
  private static final Pattern SPACE = Pattern.compile("\\s+");

  /** Makes one that says the same only where it is equal. */
  public static <C extends Reading, T> Type<C, T> of(
      Value value, BiFunction<Optional<Node.Entry>, C, Optional<T>> reader) {
    return new Type<>(value, reader, Object::equals, (one, rewording) -> one);
  }

  /** Returns the same with another way of telling what says the same. */
  public Type<C, T> alike(BiPredicate<T, T> other) {
    return new Type<>(value, reader, other, reworded);
  }

  /** Returns the same with what becomes of its texts where they are changed. */
  public Type<C, T> reworded(BiFunction<T, Rewording, T> other) {
    return new Type<>(value, reader, alike, other);
  }

  /** A text; how it is spaced makes no difference. */
  public static <C extends Reading> Type<C, String> text(String... examples) {
    return spaced(
        of(Form.text(examples), (Optional<Node.Entry> entry, C in) -> in.values().text(entry)));
  }

  /** A text that has to show something: a name, a title, a reason. */
  public static <C extends Reading> Type<C, String> visible(String... examples) {
    return spaced(
        of(Form.visible(examples), (Optional<Node.Entry> entry, C in) -> in.values().name(entry)));
  }

  /** A word of the writer's own, which files compare letter by letter. */
  public static <C extends Reading> Type<C, String> word(String... examples) {
    return spaced(
            of(
                Form.visible(examples),
                (Optional<Node.Entry> entry, C in) -> in.values().word(entry)))
        .reworded((word, rewording) -> rewording.word(word));
  }

  private static <C extends Reading> Type<C, String> spaced(Type<C, String> type) {
    return type.alike(by(Type::spaced)).reworded((text, rewording) -> rewording.text(text));
  }

  /** Returns a text with single spaces. */
  public static String spaced(String text) {
    return SPACE.matcher(text.strip()).replaceAll(" ");
  }

  /** A date, a span or a set of them. */
  public static <C extends Reading> Type<C, Edtf> date(String... examples) {
    return of(
            Form.date(examples),
            (Optional<Node.Entry> entry, C in) ->
                in.values().parsed(entry, Code.BAD_DATE, "a date", Edtf::parse))
        .alike(by(date -> date.text().strip()));
  }

  /** Facts of their own. */
  public static <C extends Reading, S extends Facts> Type<C, S> group(Table<C, S> table) {
    return of(
            new Value.Group(table.block()),
            (Optional<Node.Entry> entry, C in) ->
                entry.flatMap(
                    one ->
                        in.values()
                            .fields(one, table.block())
                            .flatMap(it -> table.read(it, in, one.key().at()))))
        .alike(table::alike)
        .reworded(table::reworded);
  }

  private static <T> BiPredicate<T, T> by(Function<T, Object> what) {
    return (one, other) -> what.apply(one).equals(what.apply(other));
  }
}
