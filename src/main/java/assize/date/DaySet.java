package assize.date;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Any days: spans in order, with at least one day between each and the next. */
public final class DaySet {
  /** No day at all. */
  public static final DaySet EMPTY = new DaySet(List.of());

  private final List<DaySpan> spans;

  private DaySet(List<DaySpan> spans) {
    this.spans = List.copyOf(spans);
  }

  /** Returns the days of all these spans, which may overlap and come in any order. */
  public static DaySet of(Collection<DaySpan> spans) {
    List<DaySpan> sorted = new ArrayList<>(spans);
    sorted.sort(Comparator.comparing(DaySpan::first));
    List<DaySpan> merged = new ArrayList<>();
    for (DaySpan span : sorted) {
      int end = merged.size() - 1;
      if (end >= 0 && touches(merged.get(end), span)) {
        merged.set(end, merged.get(end).hull(span));
      } else {
        merged.add(span);
      }
    }
    return new DaySet(merged);
  }

  /** Returns the days of one span. */
  public static DaySet of(DaySpan span) {
    return new DaySet(List.of(span));
  }

  private static boolean touches(DaySpan earlier, DaySpan later) {
    return earlier.openEnd() || !later.first().isAfter(earlier.last().plusDays(1));
  }

  /** Returns the spans, earliest first. */
  public List<DaySpan> spans() {
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
  public DaySpan hull() {
    if (spans.isEmpty()) {
      throw new IllegalStateException("no day has neither a first nor a last");
    }
    return new DaySpan(spans.get(0).first(), spans.get(spans.size() - 1).last());
  }

  /** Says whether the day is one of these. */
  public boolean contains(LocalDate day) {
    return overlaps(DaySpan.day(day));
  }

  /** Says whether any day of the span is one of these. */
  public boolean overlaps(DaySpan span) {
    int at = firstEndingOnOrAfter(span.first());
    return at < spans.size() && spans.get(at).overlaps(span);
  }

  /** Returns the days that are in both. */
  public DaySet intersect(DaySet other) {
    List<DaySpan> common = new ArrayList<>();
    int mine = 0;
    int theirs = 0;
    while (mine < spans.size() && theirs < other.spans.size()) {
      DaySpan a = spans.get(mine);
      DaySpan b = other.spans.get(theirs);
      a.intersect(b).ifPresent(common::add);
      if (a.last().isBefore(b.last())) {
        mine++;
      } else {
        theirs++;
      }
    }
    return new DaySet(common);
  }

  /** Returns the days that are in either. */
  public DaySet union(DaySet other) {
    List<DaySpan> all = new ArrayList<>(spans);
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
    return other instanceof DaySet set && spans.equals(set.spans);
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
