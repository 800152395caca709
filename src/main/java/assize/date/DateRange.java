package assize.date;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Days that follow one another.
 *
 * @param first the first of them, {@link LocalDate#MIN} where nobody says when it begins
 * @param last the last of them, included, {@link LocalDate#MAX} where nobody says when it ends
 */
public record DateRange(LocalDate first, LocalDate last) {
  /** Every day. */
  public static final DateRange ALL = new DateRange(LocalDate.MIN, LocalDate.MAX);

  public DateRange {
    if (last.isBefore(first)) {
      throw new IllegalArgumentException("a span cannot end on " + last + " before " + first);
    }
  }

  /** Returns the days from {@code first} to {@code last}, both included. */
  public static DateRange of(LocalDate first, LocalDate last) {
    return new DateRange(first, last);
  }

  /** Returns one day. */
  public static DateRange day(LocalDate day) {
    return new DateRange(day, day);
  }

  /** Says whether the span has no first day. */
  public boolean openStart() {
    return first.equals(LocalDate.MIN);
  }

  /** Says whether the span has no last day. */
  public boolean openEnd() {
    return last.equals(LocalDate.MAX);
  }

  /** Says whether the day is one of these. */
  public boolean contains(LocalDate day) {
    return !day.isBefore(first) && !day.isAfter(last);
  }

  /** Says whether every day of the other span is one of these. */
  public boolean contains(DateRange other) {
    return contains(other.first) && contains(other.last);
  }

  /** Says whether the two have a day in common. */
  public boolean overlaps(DateRange other) {
    return !other.last.isBefore(first) && !other.first.isAfter(last);
  }

  /** Returns the days that are in both, if there are any. */
  public Optional<DateRange> intersect(DateRange other) {
    return overlaps(other)
        ? Optional.of(new DateRange(later(first, other.first), earlier(last, other.last)))
        : Optional.empty();
  }

  /** Returns the shortest span that holds both. */
  public DateRange hull(DateRange other) {
    return new DateRange(earlier(first, other.first), later(last, other.last));
  }

  /**
   * Counts the days, one or more.
   *
   * @throws IllegalStateException if the span is open on either side
   */
  public long days() {
    if (openStart() || openEnd()) {
      throw new IllegalStateException("an open span has no number of days");
    }
    return ChronoUnit.DAYS.between(first, last) + 1;
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }
}
