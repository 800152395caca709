package assize.redaction;

import java.util.List;
import java.util.OptionalInt;

/**
 * How much of a number a mask shows.
 *
 * @param number as its owner writes it
 * @param letters how many of its first letters and digits are shown, the rest masked as {@code xxx}
 *     however long it is; empty: all but its last three are shown, each of these as {@code x}
 */
public record Showing(String number, OptionalInt letters) {
  /** Shows all but its ending. */
  public static Showing most(String number) {
    return new Showing(number, OptionalInt.empty());
  }

  /** Shows no more than its beginning, and not how long it is. */
  public static Showing beginning(String number, int letters) {
    return new Showing(number, OptionalInt.of(letters));
  }

  /** Returns the number as a copy shows it. */
  public String masked() {
    return TextMasker.showing(List.of(this), List.of()).text(number);
  }
}
