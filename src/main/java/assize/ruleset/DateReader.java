package assize.ruleset;

import assize.date.DateRange;
import assize.date.DateRangeSet;
import assize.date.Edtf;
import assize.text.Parsed;

/** Dates as days. */
final class DateReader {
  private DateReader() {}

  /** The most separate spans of days that a condition may have. */
  static final int MOST_SPANS = 100;

  /** Reads the days that a date, a span or a set covers. */
  static Parsed<DateRangeSet> days(String text) {
    return Edtf.parse(text)
        .then(
            date ->
                date.days().spans().size() > MOST_SPANS
                    ? Parsed.bad(
                        "this covers "
                            + date.days().spans().size()
                            + " separate spans of days; a condition has at most "
                            + MOST_SPANS,
                        0,
                        text.length())
                    : Parsed.ok(date.days()));
  }

  /** Reads days that begin and end, of which the writer is sure. */
  static Parsed<DateRange> sureSpan(String text) {
    return Edtf.parse(text)
        .then(
            date ->
                date.approximate() || date.uncertain()
                    ? Parsed.bad(
                        "a number table is as sure as its dates: write this one without ~ ? %",
                        0, text.length())
                    : closedSpan(text));
  }

  /** Reads the days from the first that a date covers to the last. */
  static Parsed<DateRange> span(String text) {
    return Edtf.parse(text).map(Edtf::span);
  }

  /** Reads days that begin and end. */
  static Parsed<DateRange> closedSpan(String text) {
    return span(text)
        .then(
            span ->
                span.openStart() || span.openEnd()
                    ? Parsed.bad("this date has to begin and to end", 0, text.length())
                    : Parsed.ok(span));
  }
}
