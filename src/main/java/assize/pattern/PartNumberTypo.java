package assize.pattern;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Explains by what single slip a number fails to fit: two places changed, one wrong, one missing or
 * one too many.
 */
final class PartNumberTypo {
  /** The longest number that is looked at. */
  private static final int LONGEST = 40;

  private static final String SIGNS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  private PartNumberTypo() {}

  /**
   * Returns what differs.
   *
   * @param folded a number that does not fit
   * @param fits whether a number fits
   */
  static Optional<String> explain(String folded, Predicate<String> fits) {
    if (folded.isEmpty() || folded.length() > LONGEST) {
      return Optional.empty();
    }
    return swapped(folded, fits)
        .or(() -> replaced(folded, fits))
        .or(() -> missing(folded, fits))
        .or(() -> extra(folded, fits));
  }

  private static Optional<String> swapped(String number, Predicate<String> fits) {
    for (int i = 0; i + 1 < number.length(); i++) {
      char a = number.charAt(i);
      char b = number.charAt(i + 1);
      String other = number.substring(0, i) + b + a + number.substring(i + 2);
      if (a != b && fits.test(other)) {
        boolean digits = Character.isDigit(a) && Character.isDigit(b);
        return Optional.of(
            number
                + " for "
                + other
                + ": two "
                + (digits ? "digits" : "places")
                + " changed places");
      }
    }
    return Optional.empty();
  }

  private static Optional<String> replaced(String number, Predicate<String> fits) {
    for (int i = 0; i < number.length(); i++) {
      Set<String> found = new LinkedHashSet<>();
      for (char sign : SIGNS.toCharArray()) {
        String other = number.substring(0, i) + sign + number.substring(i + 1);
        if (fits.test(other)) {
          found.add(other);
        }
      }
      if (found.size() == 1) {
        return Optional.of(
            number
                + " for "
                + found.iterator().next()
                + ": "
                + number.charAt(i)
                + " stands where "
                + found.iterator().next().charAt(i)
                + " is expected");
      }
      if (!found.isEmpty()) {
        return Optional.of(
            "place "
                + (i + 1)
                + " of "
                + number
                + " is "
                + number.charAt(i)
                + ", which does not fit");
      }
    }
    return Optional.empty();
  }

  private static Optional<String> missing(String number, Predicate<String> fits) {
    for (int i = 0; i <= number.length(); i++) {
      for (char sign : SIGNS.toCharArray()) {
        String other = number.substring(0, i) + sign + number.substring(i);
        if (fits.test(other)) {
          return Optional.of("one sign is missing: " + number + " is one short");
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<String> extra(String number, Predicate<String> fits) {
    for (int i = 0; i < number.length(); i++) {
      String other = number.substring(0, i) + number.substring(i + 1);
      if (fits.test(other)) {
        return Optional.of(number + " for " + other + ": one " + number.charAt(i) + " too many");
      }
    }
    return Optional.empty();
  }
}
