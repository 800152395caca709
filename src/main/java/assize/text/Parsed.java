package assize.text;

import java.util.Optional;
import java.util.function.Function;

/**
 * What reading one short text (a date, a size, a pattern) gave: its value, or why there is none.
 *
 * @param <T> what the text stands for
 */
public sealed interface Parsed<T> {

  /** The text stood for {@code value}. */
  record Ok<T>(T value) implements Parsed<T> {
    @Override
    public <R> R match(
        Function<? super T, ? extends R> ok, Function<? super Bad<T>, ? extends R> bad) {
      return ok.apply(value);
    }
  }

  /**
   * The text stood for nothing.
   *
   * @param reason what is wrong, in the reader's words, no full stop
   * @param at where in the text, in UTF-16 units from its beginning
   * @param length how much of the text is at fault, zero for "something is missing here"
   */
  record Bad<T>(String reason, int at, int length) implements Parsed<T> {
    @Override
    public <R> R match(
        Function<? super T, ? extends R> ok, Function<? super Bad<T>, ? extends R> bad) {
      return bad.apply(this);
    }

    /** Returns the same refusal of a text that was to stand for something else. */
    public <R> Parsed<R> as() {
      return new Bad<>(reason, at, length);
    }

    /** Returns the same refusal, of a part that begins {@code offset} later in a longer text. */
    public <R> Parsed<R> within(int offset) {
      return new Bad<>(reason, at + offset, length);
    }
  }

  /** Returns the value read. */
  static <T> Parsed<T> ok(T value) {
    return new Ok<>(value);
  }

  /** Returns a refusal of the part of the text that begins at {@code at}. */
  static <T> Parsed<T> bad(String reason, int at, int length) {
    return new Bad<>(reason, at, length);
  }

  /** Answers for each of the two cases. */
  <R> R match(Function<? super T, ? extends R> ok, Function<? super Bad<T>, ? extends R> bad);

  /** Returns the value, if the text stood for one. */
  default Optional<T> toOptional() {
    return match(Optional::of, bad -> Optional.empty());
  }

  /** Changes the value by a function that cannot fail. */
  default <R> Parsed<R> map(Function<? super T, ? extends R> change) {
    return match(value -> Parsed.<R>ok(change.apply(value)), bad -> bad.<R>as());
  }

  /** Changes the value by a function that may refuse it. */
  default <R> Parsed<R> then(Function<? super T, Parsed<R>> change) {
    return match(change, bad -> bad.<R>as());
  }
}
