package assize.schema;

import assize.date.Edtf;
import assize.diagnostic.DiagnosticCode;
import assize.text.Parsed;
import assize.yaml.Node;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What can be written under a name: how it looks, what it is read as, and when two say the same.
 *
 * @param <C> what reading it needs
 * @param <T> what it is read as
 */
public record Type<C extends Reading, T>(
    ValueSchema value,
    BiFunction<Optional<Node.Entry>, C, Optional<T>> reader,
    BiPredicate<T, T> alike,
    BiFunction<T, Rewording, T> reworded) {
  private static final Pattern SPACE = Pattern.compile("\\s+");

  /** Makes one that says the same only where it is equal. */
  public static <C extends Reading, T> Type<C, T> of(
      ValueSchema value, BiFunction<Optional<Node.Entry>, C, Optional<T>> reader) {
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

  /** Returns what is read, made into something else. */
  public <U> Type<C, U> as(Function<? super T, U> make) {
    return of(value, (entry, in) -> reader.apply(entry, in).map(make));
  }

  /** A text; how it is spaced makes no difference. */
  public static <C extends Reading> Type<C, String> text(String... examples) {
    return spaced(
        of(
            ScalarFormat.text(examples),
            (Optional<Node.Entry> entry, C in) -> in.values().text(entry)));
  }

  /** A text that has to show something: a name, a title, a reason. */
  public static <C extends Reading> Type<C, String> visible(String... examples) {
    return spaced(
        of(
            ScalarFormat.visible(examples),
            (Optional<Node.Entry> entry, C in) -> in.values().name(entry)));
  }

  /** A word of the writer's own, which files compare letter by letter. */
  public static <C extends Reading> Type<C, String> word(String... examples) {
    return spaced(
            of(
                ScalarFormat.visible(examples),
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
    return Type.<C, Edtf>parsed(
            ScalarFormat.date(examples), DiagnosticCode.BAD_DATE, "a date", Edtf::parse)
        .alike(by(date -> date.text().strip()));
  }

  /** A short text with a reader of its own. */
  public static <C extends Reading, T> Type<C, T> parsed(
      ValueSchema value, DiagnosticCode code, String wanted, Function<String, Parsed<T>> reader) {
    return of(value, (entry, in) -> in.values().parsed(entry, code, wanted, reader));
  }

  /** Points, in thousandths. */
  public static <C extends Reading> Type<C, Long> points() {
    return of(ScalarFormat.points(), (entry, in) -> in.values().points(entry));
  }

  /** A share from 0 to 1. */
  public static <C extends Reading> Type<C, BigFraction> credit() {
    return of(ScalarFormat.credit(), (entry, in) -> in.values().credit(entry));
  }

  /** One of some words that no rule set can add to. */
  public static <C extends Reading, T> Type<C, T> oneOf(FixedVocabulary<T> words) {
    return of(words.value(), (entry, in) -> words.read(entry, in.values()));
  }

  /** One or a list of them; what can't be read is left out. */
  public static <C extends Reading, T> Type<C, List<T>> oneOrMore(Type<C, T> each) {
    return of(
        ValueSchema.oneOrMore(each.value),
        (entry, in) ->
            Optional.of(
                in.values().oneOrMore(entry).stream()
                    .flatMap(it -> each.reader.apply(Optional.of(it), in).stream())
                    .toList()));
  }

  /** Facts of their own. */
  public static <C extends Reading, S extends Facts> Type<C, S> group(Table<C, S> table) {
    return of(
            new ValueSchema.Group(table.block()),
            (Optional<Node.Entry> entry, C in) ->
                entry.flatMap(
                    one ->
                        in.values()
                            .fields(one, table.block())
                            .flatMap(it -> table.read(it, in, one.key().at()))))
        .alike(table::alike)
        .reworded(table::reworded);
  }

  /**
   * A list of facts of their own.
   *
   * @param all what the list is, for the message
   * @param one what stands in it
   */
  public static <C extends Reading, S extends Facts> Type<C, List<S>> list(
      Table<C, S> table, String all, String one) {
    return of(
        ValueSchema.list(new ValueSchema.Group(table.block())),
        (entry, in) ->
            Optional.of(
                in.values().list(entry, all).stream()
                    .flatMap(it -> in.values().mapping(it, one).stream())
                    .flatMap(
                        it ->
                            table
                                .read(
                                    in.values().fields(it, table.block(), it.at().part(0, 1)),
                                    in,
                                    it.at())
                                .stream())
                    .toList()));
  }

  private static <T> BiPredicate<T, T> by(Function<T, Object> what) {
    return (one, other) -> what.apply(one).equals(what.apply(other));
  }
}
