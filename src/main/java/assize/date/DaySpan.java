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
public record DaySpan(LocalDate first, LocalDate last) {
  /** Every day. */
  public static final DaySpan ALL = new DaySpan(LocalDate.MIN, LocalDate.MAX);

  public DaySpan {
    if (last.isBefore(first)) {
      throw new IllegalArgumentException("a span cannot end on " + last + " before " + first);
    }
  }

  /** Returns the days from {@code first} to {@code last}, both included. */
  public static DaySpan of(LocalDate first, LocalDate last) {
    return new DaySpan(first, last);
  }

  /** Returns one day. */
  public static DaySpan day(LocalDate day) {
    return new DaySpan(day, day);
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
  public boolean contains(DaySpan other) {
    return contains(other.first) && contains(other.last);
  }

  /** Says whether the two have a day in common. */
  public boolean overlaps(DaySpan other) {
    return !other.last.isBefore(first) && !other.first.isAfter(last);
  }

  /** Returns the days that are in both, if there are any. */
  public Optional<DaySpan> intersect(DaySpan other) {
    return overlaps(other)
        ? Optional.of(new DaySpan(later(first, other.first), earlier(last, other.last)))
        : Optional.empty();
  }

  /** Returns the shortest span that holds both. */
  public DaySpan hull(DaySpan other) {
    return new DaySpan(earlier(first, other.first), later(last, other.last));
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
