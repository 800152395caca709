package assize.ruleset;

import assize.aspect.NumberPattern;
import assize.date.DaySpan;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * What chassis or engine numbers date to.
 *
 * @param series in the order written
 */
public record NumberTable(String id, String name, List<Series> series) {
  public NumberTable {
    series = List.copyOf(series);
  }

  /**
   * Numbers that were given out one after the other.
   *
   * @param prefix what stands before the digits, as written
   * @param suffix what stands after them
   * @param models the models that bear them; empty: any
   * @param plant the works they were given out at
   * @param first the first number of a day, month or year, rising
   * @param last the last number given out
   * @param reserved blocks that were set aside
   */
  public record Series(
      String prefix,
      String suffix,
      Set<String> models,
      Optional<String> plant,
      List<Entry> first,
      Optional<Entry> last,
      List<Reserved> reserved) {
    public Series {
      models = Set.copyOf(models);
      first = List.copyOf(first);
      reserved = List.copyOf(reserved);
    }

    /** Returns the digits of a stamped number that has this prefix and suffix. */
    public OptionalLong numberOf(String stamped) {
      String folded = NumberPattern.fold(stamped);
      String before = NumberPattern.fold(prefix);
      String after = NumberPattern.fold(suffix);
      if (!folded.startsWith(before)
          || !folded.endsWith(after)
          || folded.length() <= before.length() + after.length()) {
        return OptionalLong.empty();
      }
      String digits = folded.substring(before.length(), folded.length() - after.length());
      boolean plain = digits.length() <= 18 && digits.chars().allMatch(c -> c >= '0' && c <= '9');
      return plain ? OptionalLong.of(Long.parseLong(digits)) : OptionalLong.empty();
    }
  }

  /** A number, and the days on which it may have been given out. */
  public record Entry(long number, DaySpan built) {}

  /**
   * A block of numbers set aside.
   *
   * @param from the first of it
   * @param to the last of it
   * @param purpose what for
   * @param built when they were used, where that is known
   */
  public record Reserved(long from, long to, String purpose, Optional<DaySpan> built) {}
}
