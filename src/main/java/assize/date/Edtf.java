package assize.date;

import assize.text.Parsed;

/**
 * A date as a source or an owner knows it, in the Extended Date/Time Format.
 *
 * <p>ISO 8601-2:2019, as the Library of Congress specification of 4 February 2019 words it: levels
 * 0, 1 and 2. Three things are our own convention, since the specification leaves them open.
 *
 * <ul>
 *   <li>{@code ~} and {@code %} widen by one unit of the stated precision on each side: a day, a
 *       month, a year, a decade for {@code 193X~}, a season's own length; {@code ?} widens nothing.
 *   <li>Seasons 21 to 24 are March to May, June to August, September to November, and December to
 *       the end of February of the next year; 25 to 28 are the same, 29 to 32 half a year away.
 *   <li>A date with a time is the day as written, whatever its time zone.
 * </ul>
 *
 * @param text as it was written
 * @param days the days it can mean, widened; where unspecified digits would give more than 10,000
 *     spans, one span from the first to the last
 * @param span from the first of those days to the last
 * @param stated the same without any widening
 * @param uncertain whether any part is marked {@code ?} or {@code %}
 * @param approximate whether any part is marked {@code ~} or {@code %}
 * @param unknownStart whether it is an interval of unknown start, as in {@code /1985}; the span is
 *     open there, as for {@code ../1985}
 * @param unknownEnd the same of its end, as in {@code 1985/}
 */
public record Edtf(
    String text,
    DateRangeSet days,
    DateRange span,
    DateRange stated,
    boolean uncertain,
    boolean approximate,
    boolean unknownStart,
    boolean unknownEnd) {

  /** Reads a date, an interval or a set, or says what is wrong with it. */
  public static Parsed<Edtf> parse(String text) {
    return EdtfReader.read(text);
  }

  /** Says whether it has no first day. */
  public boolean openStart() {
    return span.openStart();
  }

  /** Says whether it has no last day. */
  public boolean openEnd() {
    return span.openEnd();
  }
}
