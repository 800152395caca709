package assize.date;

import assize.text.Parsed;
import java.time.LocalDate;

/** Short ways to write dates in tests. */
final class Dates {
  private Dates() {}

  static Edtf read(String text) {
    return ok(Edtf.parse(text), text);
  }

  static <T> T ok(Parsed<T> parsed, String text) {
    return parsed
        .toOptional()
        .orElseThrow(() -> new AssertionError("refused " + text + ": " + parsed));
  }

  static String reason(Parsed<?> parsed) {
    return parsed.match(value -> "accepted as " + value, bad -> bad.reason());
  }

  static LocalDate day(String iso) {
    return LocalDate.parse(iso);
  }

  /** Reads {@code first/last}, {@code ..} for open. */
  static DateRange span(String text) {
    String[] ends = text.split("/", -1);
    return DateRange.of(
        ends[0].equals("..") ? LocalDate.MIN : day(ends[0]),
        ends[1].equals("..") ? LocalDate.MAX : day(ends[1]));
  }
}
