package assize.yaml;

import assize.date.DaySet;
import assize.date.DaySpan;
import assize.date.Edtf;
import assize.text.Parsed;

/** Dates as days. */
final class Dates {
  private Dates() {}

  /** Reads the days that a date, a span or a set covers. */
  static Parsed<DaySet> days(String text) {
    return Edtf.parse(text).map(Edtf::days);
  }

  /** Reads the days from the first that a date covers to the last. */
  static Parsed<DaySpan> span(String text) {
    return Edtf.parse(text).map(Edtf::span);
  }

  /** Reads days that begin and end. */
  static Parsed<DaySpan> closedSpan(String text) {
    return span(text)
        .then(
            span ->
                span.openStart() || span.openEnd()
                    ? Parsed.bad("this date has to begin and to end", 0, text.length())
                    : Parsed.ok(span));
  }
}
