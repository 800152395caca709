package assize.date;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Recognizes dates that have words in them, to say how EDTF writes them.
 *
 * @param words the words, in small letters
 * @param years the numbers of four digits
 * @param days the numbers of one or two digits
 */
record SpelledOutDate(List<String> words, List<String> years, List<String> days) {
  private static final Map<String, Integer> SEASONS =
      Map.of("spring", 21, "summer", 22, "autumn", 23, "fall", 23, "winter", 24);

  /** Returns what to write instead, if the text is a date in words. */
  static Optional<String> edtf(String text) {
    List<String> words = new ArrayList<>();
    List<String> years = new ArrayList<>();
    List<String> days = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      int end = at;
      while (end < text.length() && kind(text.charAt(end)) == kind(text.charAt(at))) {
        end++;
      }
      String piece = text.substring(at, end);
      if (kind(text.charAt(at)) == 'a') {
        words.add(piece.toLowerCase(Locale.ROOT));
      } else if (kind(text.charAt(at)) == '0') {
        if (piece.length() != 4 && piece.length() > 2) {
          return Optional.empty();
        }
        (piece.length() == 4 ? years : days).add(piece);
      }
      at = end;
    }
    return new SpelledOutDate(words, years, days).better();
  }

  private static char kind(char c) {
    if (c >= '0' && c <= '9') {
      return '0';
    }
    return Character.isLetter(c) ? 'a' : '-';
  }

  private Optional<String> better() {
    if (words.equals(List.of("unknown")) && years.isEmpty()) {
      return Optional.of("XXXX for a date of which nothing is known");
    }
    List<Integer> months = words.stream().flatMap(word -> month(word).stream()).toList();
    if (years.size() == 1 && months.size() < 2) {
      return one(months);
    }
    boolean between = years.size() == 2 || (years.size() == 1 && months.size() == 2);
    boolean pairs = months.size() % 2 == 0 && (days.isEmpty() || days.size() == months.size());
    if (!between || !pairs || months.size() > 2 || (months.isEmpty() && !joined())) {
      return Optional.empty();
    }
    Optional<String> start = date(0, months);
    boolean either = words.contains("or");
    return start.flatMap(
        from -> date(1, months).map(to -> either ? "[" + from + "," + to + "]" : from + "/" + to));
  }

  private boolean joined() {
    return words.stream().anyMatch(List.of("to", "and", "until", "or", "through")::contains);
  }

  private Optional<String> date(int side, List<Integer> months) {
    String year = years.get(Math.min(side, years.size() - 1));
    return months.isEmpty()
        ? Optional.of(year)
        : dayOrMonth(
            year,
            months.get(side),
            days.isEmpty() ? Optional.empty() : Optional.of(days.get(side)));
  }

  private Optional<String> one(List<Integer> months) {
    String year = years.get(0);
    Optional<Integer> season =
        words.stream().flatMap(word -> Optional.ofNullable(SEASONS.get(word)).stream()).findFirst();
    boolean yearAlone = months.isEmpty() && season.isEmpty() && days.isEmpty();
    if (yearAlone) {
      return marked(words.contains("s") ? decade(year) : year)
          .filter(better -> !better.equals(year));
    }
    if (months.isEmpty()) {
      return season.filter(code -> days.isEmpty()).flatMap(code -> marked(year + "-" + code));
    }
    return days.size() > 1
        ? Optional.empty()
        : dayOrMonth(year, months.get(0), days.stream().findFirst()).flatMap(this::marked);
  }

  /** Adds what words such as "about" and "before" mean. */
  private Optional<String> marked(String date) {
    for (String word : words) {
      switch (word) {
        case "c", "ca", "circa", "about", "around" -> {
          return Optional.of(date + "~");
        }
        case "maybe", "perhaps", "possibly", "probably" -> {
          return Optional.of(date + "?");
        }
        case "before", "until" -> {
          return Optional.of("../" + date);
        }
        case "after", "from", "since" -> {
          return Optional.of(date + "/..");
        }
        default -> {
          // Weekdays and the like change nothing.
        }
      }
    }
    return Optional.of(date);
  }

  private static String decade(String year) {
    if (year.endsWith("00")) {
      return year.substring(0, 2) + "XX";
    }
    return year.endsWith("0") ? year.substring(0, 3) + "X" : year;
  }

  private static Optional<String> dayOrMonth(String year, int month, Optional<String> day) {
    return NonEdtfDateHints.date(year, Integer.toString(month), day.orElse("1"))
        .map(date -> day.isPresent() ? date : date.substring(0, 7));
  }

  /** Finds a month by its English name or the beginning of it, three letters or more. */
  private static Optional<Integer> month(String word) {
    return word.length() < 3
        ? Optional.empty()
        : IntStream.rangeClosed(1, 12)
            .filter(m -> DateRangeFormatter.month(m).toLowerCase(Locale.ROOT).startsWith(word))
            .boxed()
            .findFirst();
  }
}
