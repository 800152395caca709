package assize.date;

import assize.text.Parsed;
import java.time.LocalDate;
import java.time.Period;
import java.time.Year;
import java.util.List;
import java.util.TreeSet;

/**
 * How long before the vehicle a part must have been made, as in {@code P6M..P0D}: between six
 * months before and the same day.
 *
 * @param earliest the longest time that may lie between, zero or more
 * @param latest the shortest, zero or more
 */
public record LeadTime(Period earliest, Period latest) {
  private static final int MARGIN_YEARS = 1_000_000;

  /** What a part's making says against the day on which the vehicle was built. */
  public enum Timing {
    /** Made within the window, on one of the days it can have been made on. */
    ALLOWED,
    /** Made before the window: old for this vehicle. */
    TOO_EARLY,
    /** Made after the window: it cannot have left with this vehicle. */
    TOO_LATE
  }

  public LeadTime {
    if (earliest.isNegative() || latest.isNegative()) {
      throw new IllegalArgumentException("a lead time is not negative");
    }
  }

  /** Reads two ISO 8601 durations of years, months, weeks and days with {@code ..} between. */
  public static Parsed<LeadTime> parse(String text) {
    return LeadTimeReader.read(text);
  }

  /** Returns the days on which a part of a vehicle built on this day may have been made. */
  public DateRange window(LocalDate built) {
    LocalDate last = before(built, latest);
    LocalDate first = before(built, earliest);
    return DateRange.of(first.isAfter(last) ? last : first, last);
  }

  /** Says how a part made on some day of {@code made} stands to a vehicle built on this day. */
  public Timing timing(DateRange made, LocalDate built) {
    if (tooLate(made, built)) {
      return Timing.TOO_LATE;
    }
    return tooEarly(made, built) ? Timing.TOO_EARLY : Timing.ALLOWED;
  }

  /** Says whether the part was made, on some day of {@code made}, within the window. */
  public boolean allows(DateRange made, LocalDate built) {
    return timing(made, built) == Timing.ALLOWED;
  }

  /** Says whether any of the days a part can have been made on lies within the window. */
  public boolean allows(DateRangeSet made, LocalDate built) {
    return made.overlaps(window(built));
  }

  /**
   * Returns the build days whose timing differs from that of the day before, earliest first.
   *
   * <p>Months have unequal lengths, so these are searched for, not reckoned.
   */
  public List<LocalDate> cuts(DateRange made) {
    TreeSet<LocalDate> cuts = new TreeSet<>();
    if (!made.openStart() && !made.openEnd()) {
      cuts.add(firstNotTooLate(made));
      cuts.add(firstTooEarly(made));
    } else if (!made.openStart()) {
      cuts.add(firstNotTooLate(made));
    } else if (!made.openEnd()) {
      cuts.add(firstTooEarly(made));
    }
    return List.copyOf(cuts);
  }

  /** Returns the cuts of each span; between two of them the answer for the set stays the same. */
  public List<LocalDate> cuts(DateRangeSet made) {
    TreeSet<LocalDate> cuts = new TreeSet<>();
    made.spans().forEach(span -> cuts.addAll(cuts(span)));
    return List.copyOf(cuts);
  }

  private boolean tooLate(DateRange made, LocalDate built) {
    return made.first().isAfter(window(built).last());
  }

  private boolean tooEarly(DateRange made, LocalDate built) {
    return made.last().isBefore(window(built).first());
  }

  private LocalDate firstNotTooLate(DateRange made) {
    LocalDate built = after(made.first(), latest);
    while (!tooLate(made, built)) {
      built = built.minusDays(1);
    }
    while (tooLate(made, built)) {
      built = built.plusDays(1);
    }
    return built;
  }

  private LocalDate firstTooEarly(DateRange made) {
    LocalDate built = after(made.last(), earliest);
    while (tooEarly(made, built)) {
      built = built.minusDays(1);
    }
    while (!tooEarly(made, built)) {
      built = built.plusDays(1);
    }
    return built;
  }

  private static LocalDate before(LocalDate day, Period period) {
    return atTheEnd(day) ? day : day.minus(period);
  }

  private static LocalDate after(LocalDate day, Period period) {
    return atTheEnd(day) ? day : day.plus(period);
  }

  /** The calendar's own ends stand for "open", and a lead time stays clear of them. */
  private static boolean atTheEnd(LocalDate day) {
    return Math.abs(day.getYear()) > Year.MAX_VALUE - MARGIN_YEARS;
  }
}
