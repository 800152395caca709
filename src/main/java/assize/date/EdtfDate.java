package assize.date;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.function.Function;

/**
 * One date within an EDTF text.
 *
 * @param stated the days it can mean as written
 * @param widened the same with its approximate parts given room
 */
record EdtfDate(DateRangeSet stated, DateRangeSet widened, boolean uncertain, boolean approximate) {
  /** What stands for an end that is open or not known. */
  static final EdtfDate ANY =
      new EdtfDate(DateRangeSet.of(DateRange.ALL), DateRangeSet.of(DateRange.ALL), false, false);

  /** Gives a date the room that its approximate parts ask for, none for {@link Period#ZERO}. */
  static EdtfDate of(DateRangeSet stated, Period room, boolean uncertain, boolean approximate) {
    List<DateRange> spans = stated.spans().stream().map(span -> widen(span, room)).toList();
    return new EdtfDate(stated, DateRangeSet.of(spans), uncertain, approximate);
  }

  private static DateRange widen(DateRange span, Period room) {
    int years = (int) (room.toTotalMonths() / 12) + 1;
    boolean farPast = span.first().getYear() - LocalDate.MIN.getYear() <= years;
    boolean farFuture = LocalDate.MAX.getYear() - span.last().getYear() <= years;
    return room.isZero()
        ? span
        : DateRange.of(
            farPast ? LocalDate.MIN.plusDays(1) : span.first().minus(room),
            farFuture ? LocalDate.MAX.minusDays(1) : later(span, room));
  }

  /** Of whole months the day after moves, so that the end of June becomes the end of July. */
  private static LocalDate later(DateRange span, Period room) {
    LocalDate after = span.last().plusDays(1);
    boolean wholeMonths = span.first().getDayOfMonth() == 1 && after.getDayOfMonth() == 1;
    return wholeMonths ? after.plus(room).minusDays(1) : span.last().plus(room);
  }

  /** Returns the interval that begins with this date and ends with the other. */
  EdtfDate to(EdtfDate end) {
    return new EdtfDate(
        between(stated, end.stated),
        between(widened, end.widened),
        uncertain || end.uncertain,
        approximate || end.approximate);
  }

  private static DateRangeSet between(DateRangeSet start, DateRangeSet end) {
    return DateRangeSet.of(DateRange.of(start.hull().first(), end.hull().last()));
  }

  /** Returns the days of all of them, one or more. */
  static EdtfDate union(List<EdtfDate> dates) {
    return new EdtfDate(
        union(dates, EdtfDate::stated),
        union(dates, EdtfDate::widened),
        dates.stream().anyMatch(EdtfDate::uncertain),
        dates.stream().anyMatch(EdtfDate::approximate));
  }

  private static DateRangeSet union(List<EdtfDate> dates, Function<EdtfDate, DateRangeSet> days) {
    DateRangeSet all =
        DateRangeSet.of(dates.stream().flatMap(d -> days.apply(d).spans().stream()).toList());
    return all.spans().size() > EdtfDateResolver.MOST_SPANS ? DateRangeSet.of(all.hull()) : all;
  }
}
