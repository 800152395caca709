package assize.date;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Recognizes common ways to write dates that are not EDTF, to say how EDTF writes them. */
final class OtherDates {
  private static final int LONGEST = 40;

  private static final Map<String, String> SEASONS =
      Map.of("spring", "21", "summer", "22", "autumn", "23", "fall", "23", "winter", "24");

  /** Words and numbers of a short text, and the signs between them. */
  private record Pieces(List<String> words, List<String> numbers, String signs) {
    static Pieces of(String text) {
      List<String> words = new ArrayList<>();
      List<String> numbers = new ArrayList<>();
      StringBuilder signs = new StringBuilder();
      int at = 0;
      while (at < text.length()) {
        int end = at;
        while (end < text.length() && kind(text.charAt(end)) == kind(text.charAt(at))) {
          end++;
        }
        String piece = text.substring(at, end);
        switch (kind(text.charAt(at))) {
          case 0 -> words.add(piece.toLowerCase(Locale.ROOT));
          case 1 -> numbers.add(piece);
          default -> signs.append(piece);
        }
        at = end;
      }
      return new Pieces(words, numbers, signs.toString());
    }

    private static int kind(char c) {
      if (c >= '0' && c <= '9') {
        return 1;
      }
      return Character.isLetter(c) ? 0 : 2;
    }

    Optional<String> year() {
      return numbers.stream().filter(number -> number.length() == 4).findFirst();
    }
  }

  private OtherDates() {}

  /** Returns what to write instead, if the text is a date in another way. */
  static Optional<String> edtf(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    Pieces pieces = Pieces.of(text);
    return pieces.words().isEmpty() ? numbers(text, pieces) : words(text, pieces);
  }

  private static Optional<String> numbers(String text, Pieces pieces) {
    List<String> numbers = pieces.numbers();
    boolean startsAndEnds = digit(text.charAt(0)) && digit(text.charAt(text.length() - 1));
    if (!startsAndEnds) {
      return Optional.empty();
    }
    if (numbers.size() == 1 && text.length() == 8) {
      return date(text.substring(0, 4), text.substring(4, 6), text.substring(6))
          .map(OtherDates::yearMonthDay);
    }
    String signs = pieces.signs();
    if (numbers.size() == 2 && signs.equals("/") && short2(numbers.get(1))) {
      return month(numbers.get(0), numbers.get(1))
          .map(month -> "write a month as in " + month + "; a slash stands between two dates");
    }
    if (numbers.size() != 3 || signs.length() != 2 || signs.charAt(0) != signs.charAt(1)) {
      return Optional.empty();
    }
    String a = numbers.get(0);
    String b = numbers.get(1);
    String c = numbers.get(2);
    if (short2(b) && short2(c)) {
      boolean right = signs.equals("--") && b.length() == 2 && c.length() == 2;
      return right ? Optional.empty() : date(a, b, c).map(OtherDates::yearMonthDay);
    }
    if (!short2(a) || !short2(b)) {
      return Optional.empty();
    }
    Optional<String> dayFirst = date(c, b, a);
    Optional<String> monthFirst = date(c, a, b);
    return dayFirst.isPresent() && monthFirst.isPresent() && !dayFirst.equals(monthFirst)
        ? Optional.of(yearMonthDay(dayFirst.get() + " or " + monthFirst.get()))
        : dayFirst.or(() -> monthFirst).map(OtherDates::yearMonthDay);
  }

  private static String yearMonthDay(String date) {
    return "write year-month-day: " + date;
  }

  private static Optional<String> words(String text, Pieces pieces) {
    Optional<String> year = pieces.year();
    if (year.isEmpty()) {
      return pieces.words().equals(List.of("unknown"))
          ? Optional.of("write XXXX for a date of which nothing is known")
          : Optional.empty();
    }
    int others = pieces.numbers().size() - 1;
    for (String word : pieces.words()) {
      Optional<Integer> month = monthOf(word);
      Optional<String> better = Optional.empty();
      if (month.isPresent() && others == 1) {
        better =
            pieces.numbers().stream()
                .filter(number -> short2(number))
                .findFirst()
                .flatMap(day -> date(year.get(), month.get().toString(), day));
      } else if (month.isPresent() && others == 0) {
        better = month(year.get(), month.get().toString());
      } else if (others == 0) {
        better = inWords(text, word, year.get());
      }
      if (better.isPresent()) {
        return better.map(date -> "write " + date);
      }
    }
    return Optional.empty();
  }

  private static Optional<String> inWords(String text, String word, String year) {
    if (text.startsWith(year + "/") && (word.equals("open") || word.equals("now"))) {
      return Optional.of(year + "/..");
    }
    return switch (word) {
      case "spring", "summer", "autumn", "fall", "winter" ->
          Optional.of(year + "-" + SEASONS.getOrDefault(word, ""));
      case "c", "ca", "circa", "about" -> Optional.of(year + "~");
      case "before", "until" -> Optional.of("../" + year);
      case "after", "from", "since" -> Optional.of(year + "/..");
      case "s" ->
          year.endsWith("0") && text.equals(year + "s")
              ? Optional.of(
                  year.substring(0, year.endsWith("00") ? 2 : 3)
                      + "XX".substring(year.endsWith("00") ? 0 : 1))
              : Optional.empty();
      default -> Optional.empty();
    };
  }

  /** Finds a month by its English name or the beginning of it, three letters or more. */
  private static Optional<Integer> monthOf(String word) {
    return word.length() < 3
        ? Optional.empty()
        : IntStream.rangeClosed(1, 12)
            .filter(m -> DayWords.month(m).toLowerCase(Locale.ROOT).startsWith(word))
            .boxed()
            .findFirst();
  }

  private static Optional<String> month(String year, String month) {
    return date(year, month, "1").map(date -> date.substring(0, 7));
  }

  private static Optional<String> date(String year, String month, String day) {
    if (year.length() != 4) {
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

  private static boolean short2(String number) {
    return number.length() <= 2;
  }

  private static boolean digit(char c) {
    return c >= '0' && c <= '9';
  }
}
