package assize.aspect;

import assize.date.DateCodeTables;
import assize.date.LeadTime;
import assize.measure.Figures;
import assize.pattern.DateCodePattern;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A date code in words: what it gives, and when the part may have been made. */
public final class DateCodeFormatter {
  private static final Pattern GROUP = Pattern.compile("\\(\\?P?<(year|month|week|day)>");

  private DateCodeFormatter() {}

  /** Returns as in "a date code of month and year, made at most 6 months before the vehicle". */
  public static String of(DateCodePattern code) {
    List<String> groups = new ArrayList<>();
    Matcher matcher = GROUP.matcher(code.text());
    while (matcher.find()) {
      groups.add(matcher.group(1));
    }
    return "a date code of " + String.join(" and ", groups) + ", made " + window(code.made());
  }

  private static String window(LeadTime made) {
    String most = "at most " + words(made.earliest());
    return made.latest().isZero()
        ? most + " before the vehicle"
        : most + " and at least " + words(made.latest()) + " before the vehicle";
  }

  private static String words(Period period) {
    List<String> parts = new ArrayList<>();
    add(parts, period.getYears(), "year");
    add(parts, period.getMonths(), "month");
    add(parts, period.getDays(), "day");
    return parts.isEmpty() ? "0 days" : String.join(" and ", parts);
  }

  private static void add(List<String> parts, int count, String unit) {
    if (count != 0) {
      parts.add(Figures.count(count, unit, unit + "s"));
    }
  }

  /** Returns the same, and what its letters mean. */
  public static String whole(DateCodePattern code) {
    return of(code) + letters(code.tables());
  }

  /** Returns what the maker's letters mean; nothing where there are none. */
  public static String letters(DateCodeTables tables) {
    return meant("; years: ", tables.years())
        + meant("; months: ", tables.months())
        + (tables.weeksFromJanuaryFirst() ? "; week 1 begins on 1 January" : "");
  }

  private static String meant(String head, Map<String, Integer> letters) {
    return letters.isEmpty()
        ? ""
        : letters.entrySet().stream()
            .sorted(
                Map.Entry.<String, Integer>comparingByValue()
                    .thenComparing(Map.Entry.comparingByKey()))
            .map(one -> one.getKey() + " is " + one.getValue())
            .collect(Collectors.joining(", ", head, ""));
  }
}
