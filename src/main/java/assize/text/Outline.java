package assize.text;

import java.util.List;
import java.util.function.Function;

/**
 * What stands where in a file of names and values, for those that change values and keep every
 * other character. Offsets are those of spans.
 */
public sealed interface Outline {

  /** Answers for each kind. */
  <R> R match(
      Function<? super Text, ? extends R> text,
      Function<? super Nothing, ? extends R> nothing,
      Function<? super Group, ? extends R> group,
      Function<? super Several, ? extends R> several);

  /**
   * A text.
   *
   * @param value as typed, or as its quotes and folds mean it
   * @param start its first UTF-16 unit, a quote too
   * @param end the unit after its last
   */
  record Text(String value, int start, int end) implements Outline {
    @Override
    public <R> R match(
        Function<? super Text, ? extends R> text,
        Function<? super Nothing, ? extends R> nothing,
        Function<? super Group, ? extends R> group,
        Function<? super Several, ? extends R> several) {
      return text.apply(this);
    }
  }

  /**
   * A name with nothing behind it.
   *
   * @param end where something would stand: behind the colon
   */
  record Nothing(int end) implements Outline {
    @Override
    public <R> R match(
        Function<? super Text, ? extends R> text,
        Function<? super Nothing, ? extends R> nothing,
        Function<? super Group, ? extends R> group,
        Function<? super Several, ? extends R> several) {
      return nothing.apply(this);
    }
  }

  /**
   * Names with what belongs to each.
   *
   * @param braces whether it stands within braces, not in lines
   */
  record Group(List<Part> parts, int start, int end, boolean braces) implements Outline {
    public Group {
      parts = List.copyOf(parts);
    }

    @Override
    public <R> R match(
        Function<? super Text, ? extends R> text,
        Function<? super Nothing, ? extends R> nothing,
        Function<? super Group, ? extends R> group,
        Function<? super Several, ? extends R> several) {
      return group.apply(this);
    }
  }

  /**
   * A list.
   *
   * @param brackets whether it stands within brackets, not in lines
   */
  record Several(List<Outline> parts, int start, int end, boolean brackets) implements Outline {
    public Several {
      parts = List.copyOf(parts);
    }

    @Override
    public <R> R match(
        Function<? super Text, ? extends R> text,
        Function<? super Nothing, ? extends R> nothing,
        Function<? super Group, ? extends R> group,
        Function<? super Several, ? extends R> several) {
      return several.apply(this);
    }
  }

  /**
   * A name and what belongs to it.
   *
   * @param at where the name begins
   * @param colon where its colon stands; -1 where it has none
   */
  record Part(String name, int at, int colon, Outline value) {}
}
