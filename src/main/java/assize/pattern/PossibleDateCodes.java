package assize.pattern;

import assize.date.DateCodeParts;
import assize.date.DateCodeResolver;
import assize.date.DateCodeTables;
import assize.date.DateRange;
import com.google.re2j.Matcher;
import com.google.re2j.Pattern;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The codes that a pattern lets through, as far as it takes to tell whether any means certain days.
 *
 * <p>Each group is looked at by itself, so more is taken to fit than does.
 */
final class PossibleDateCodes {
  private static final Pattern NAMED = Pattern.compile("\\(\\?P?<([a-z]+)>");
  private static final int WEEKS = 53;
  private static final int DAYS = 366;

  private final DateCodeTables tables;
  private final Map<String, String> groups = new HashMap<>();

  /** Whether a group may be left out: then little can be said. */
  private boolean hasChoices;

  PossibleDateCodes(String pattern, DateCodeTables tables) {
    this.tables = tables;
    readGroups(pattern);
  }

  /** Finds the named groups, and whether anything outside of them is a matter of choice. */
  private void readGroups(String pattern) {
    Deque<Integer> open = new ArrayDeque<>();
    boolean inClass = false;
    int named = 0;
    for (int i = 0; i < pattern.length(); i++) {
      char c = pattern.charAt(i);
      if (c == '\\') {
        i++;
      } else if (inClass) {
        inClass = c != ']';
      } else if (c == '[') {
        inClass = true;
        i += pattern.startsWith("[^]", i) ? 2 : pattern.startsWith("[]", i) ? 1 : 0;
      } else if (c == '(') {
        open.push(i);
        named += NAMED.matcher(pattern.substring(i)).lookingAt() ? 1 : 0;
      } else if (c == ')' && !open.isEmpty()) {
        int begin = open.pop();
        Matcher group = NAMED.matcher(pattern.substring(begin));
        if (group.lookingAt()) {
          named--;
          groups.put(group.group(1), pattern.substring(begin + group.end(), i));
        }
        hasChoices |=
            named == 0 && i + 1 < pattern.length() && "?*{".indexOf(pattern.charAt(i + 1)) >= 0;
      } else {
        hasChoices |= named == 0 && c == '|';
      }
    }
  }

  boolean canMean(DateRange days) {
    if (hasChoices) {
      return true;
    }
    Stream<String> fourDigits =
        IntStream.rangeClosed(days.first().getYear() - 1, days.last().getYear() + 1)
            .mapToObj(Integer::toString);
    List<Optional<String>> years =
        fitting("year", Stream.concat(fourDigits, written(99, tables.years().keySet().stream())));
    List<Optional<String>> months =
        fitting("month", written(12, tables.months().keySet().stream()));
    List<Optional<String>> weeks = fitting("week", written(WEEKS, Stream.empty()));
    List<Optional<String>> daysInIt = fitting("day", written(DAYS, Stream.empty()));
    return !daysInIt.isEmpty()
        && years.stream()
            .anyMatch(
                year ->
                    months.stream()
                        .anyMatch(
                            month ->
                                weeks.stream().anyMatch(week -> means(year, month, week, days))));
  }

  private boolean means(
      Optional<String> year, Optional<String> month, Optional<String> week, DateRange days) {
    return DateCodeResolver.days(
            new DateCodeParts(year, month, week, Optional.empty()), tables, days)
        .map(found -> !found.isEmpty())
        .toOptional()
        .orElse(false);
  }

  /** Returns plain numbers in one, two or three digits, and a maker's letters. */
  private static Stream<String> written(int most, Stream<String> letters) {
    Stream<String> numbers =
        IntStream.rangeClosed(0, most)
            .boxed()
            .flatMap(
                number ->
                    Stream.of("%d", "%02d", "%03d")
                        .map(form -> String.format(Locale.ROOT, form, number)));
    return Stream.concat(letters, numbers.distinct());
  }

  /** Returns those of some texts that a group lets through; where there is no group, nothing. */
  private List<Optional<String>> fitting(String group, Stream<String> texts) {
    Optional<Pattern> inside =
        Optional.ofNullable(groups.get(group)).flatMap(it -> Re2Patterns.compile(it).toOptional());
    return inside.isEmpty()
        ? List.of(Optional.empty())
        : texts.filter(inside.get()::matches).map(Optional::of).toList();
  }
}
