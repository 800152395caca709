package assize.date;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Recognizes common ways to write dates that are not EDTF, to say how EDTF writes them. */
final class NonEdtfDateHints {
  private static final int LONGEST = 40;

  private NonEdtfDateHints() {}

  /** Returns what to do instead, if the text is a date in another way. */
  static Optional<String> edtf(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    Optional<String> openEnd = openEnd(text);
    if (openEnd.isPresent()) {
      return openEnd.map(better -> "write " + better);
    }
    if (text.chars().anyMatch(Character::isLetter)) {
      return SpelledOutDate.edtf(text).map(better -> "write " + better);
    }
    if (!text.chars().allMatch(c -> digit((char) c) || " -/.\u2013\u2014".indexOf(c) >= 0)
        || !digit(text.charAt(0))
        || !digit(text.charAt(text.length() - 1))) {
      return Optional.empty();
    }
    List<String> numbers = List.of(text.split("[^0-9]+"));
    String signs = text.replaceAll("[0-9 ]+", "");
    return switch (numbers.size()) {
      case 1 -> compact(text);
      case 2 -> two(numbers.get(0), numbers.get(1), signs);
      case 3 -> three(numbers.get(0), numbers.get(1), numbers.get(2), signs, text);
      default -> Optional.empty();
    };
  }

  private static Optional<String> openEnd(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) {
      return Optional.empty();
    }
    String start = text.substring(0, slash);
    String end = text.substring(slash + 1);
    String better = sign(start) + "/" + sign(end);
    return better.equals(text) ? Optional.empty() : Optional.of(better);
  }

  private static String sign(String end) {
    return switch (end) {
      case "open", "now", "present" -> "..";
      case "unknown" -> "";
      default -> end;
    };
  }

  private static Optional<String> compact(String text) {
    return text.length() == 8
        ? date(text.substring(0, 4), text.substring(4, 6), text.substring(6))
            .map(NonEdtfDateHints::yearMonthDay)
        : Optional.empty();
  }

  private static Optional<String> two(String a, String b, String signs) {
    boolean interval = a.length() == 4 && b.length() == 4 && !signs.equals("/") && !signs.isEmpty();
    if (interval) {
      return Optional.of("write a slash between two dates: " + a + "/" + b);
    }
    if (b.length() == 4 && a.length() <= 2) {
      return date(b, a, "1").map(date -> "write " + date.substring(0, 7));
    }
    return a.length() == 4 && b.length() <= 2 && signs.equals("/")
        ? date(a, b, "1")
            .map(
                date ->
                    "write a month as in "
                        + date.substring(0, 7)
                        + "; a slash stands between two dates")
        : Optional.empty();
  }

  private static Optional<String> three(String a, String b, String c, String signs, String text) {
    if (signs.length() != 2 || signs.charAt(0) != signs.charAt(1) || b.length() > 2) {
      return Optional.empty();
    }
    if (a.length() == 4) {
      Optional<String> date = date(a, b, c);
      return date.equals(Optional.of(text))
          ? Optional.empty()
          : date.map(NonEdtfDateHints::yearMonthDay);
    }
    if (a.length() > 2) {
      return Optional.empty();
    }
    if (c.length() <= 2) {
      return Optional.of("write year-month-day, the year with four digits");
    }
    Optional<String> dayFirst = date(c, b, a);
    Optional<String> monthFirst = date(c, a, b);
    return dayFirst.isPresent() && monthFirst.isPresent() && !dayFirst.equals(monthFirst)
        ? Optional.of(yearMonthDay(dayFirst.get() + " or " + monthFirst.get()))
        : dayFirst.or(() -> monthFirst).map(NonEdtfDateHints::yearMonthDay);
  }

  private static String yearMonthDay(String date) {
    return "write year-month-day: " + date;
  }

  /** Returns the day as EDTF writes it, if there is such a day in a year of four digits. */
  static Optional<String> date(String year, String month, String day) {
    if (year.length() != 4 || month.length() > 2 || day.length() > 2) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day))
              .toString());
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static boolean digit(char c) {
    return c >= '0' && c <= '9';
  }
}
