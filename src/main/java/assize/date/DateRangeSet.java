package assize.date;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Any days: spans in order, with at least one day between each and the next. */
public final class DateRangeSet {
  /** No day at all. */
  public static final DateRangeSet EMPTY = new DateRangeSet(List.of());

  private final List<DateRange> spans;

  private DateRangeSet(List<DateRange> spans) {
    this.spans = List.copyOf(spans);
  }

  /** Returns the days of all these spans, which may overlap and come in any order. */
  public static DateRangeSet of(Collection<DateRange> spans) {
    List<DateRange> sorted = new ArrayList<>(spans);
    sorted.sort(Comparator.comparing(DateRange::first));
    List<DateRange> merged = new ArrayList<>();
    for (DateRange span : sorted) {
      int end = merged.size() - 1;
      if (end >= 0 && touches(merged.get(end), span)) {
        merged.set(end, merged.get(end).hull(span));
      } else {
        merged.add(span);
      }
    }
    return new DateRangeSet(merged);
  }

  /** Returns the days of one span. */
  public static DateRangeSet of(DateRange span) {
    return new DateRangeSet(List.of(span));
  }

  private static boolean touches(DateRange earlier, DateRange later) {
    return earlier.openEnd() || !later.first().isAfter(earlier.last().plusDays(1));
  }

  /** Returns the spans, earliest first. */
  public List<DateRange> spans() {
    return spans;
  }

  /** Says whether there is no day in it. */
  public boolean isEmpty() {
    return spans.isEmpty();
  }

  /**
   * Returns the span from the first day to the last.
   *
   * @throws IllegalStateException if there is no day
   */
  public DateRange hull() {
    if (spans.isEmpty()) {
      throw new IllegalStateException("no day has neither a first nor a last");
    }
    return new DateRange(spans.get(0).first(), spans.get(spans.size() - 1).last());
  }

  /** Says whether the day is one of these. */
  public boolean contains(LocalDate day) {
    return overlaps(DateRange.day(day));
  }

  /** Says whether any day of the span is one of these. */
  public boolean overlaps(DateRange span) {
    int at = firstEndingOnOrAfter(span.first());
    return at < spans.size() && spans.get(at).overlaps(span);
  }

  /** Returns the days that are in both. */
  public DateRangeSet intersect(DateRangeSet other) {
    List<DateRange> common = new ArrayList<>();
    int mine = 0;
    int theirs = 0;
    while (mine < spans.size() && theirs < other.spans.size()) {
      DateRange a = spans.get(mine);
      DateRange b = other.spans.get(theirs);
      a.intersect(b).ifPresent(common::add);
      if (a.last().isBefore(b.last())) {
        mine++;
      } else {
        theirs++;
      }
    }
    return new DateRangeSet(common);
  }

  /** Returns the days that are in either. */
  public DateRangeSet union(DateRangeSet other) {
    List<DateRange> all = new ArrayList<>(spans);
    all.addAll(other.spans);
    return of(all);
  }

  private int firstEndingOnOrAfter(LocalDate day) {
    int low = 0;
    int high = spans.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (spans.get(middle).last().isBefore(day)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DateRangeSet set && spans.equals(set.spans);
  }

  @Override
  public int hashCode() {
    return spans.hashCode();
  }

  @Override
  public String toString() {
    return spans.toString();
  }
}
