package assize.date;

import java.util.Map;

/**
 * What a maker's letters mean, and how the maker counts weeks.
 *
 * @param years what a year's letter stands for: 0 to 9 for a year of each decade, 10 to 99 for a
 *     year of each century, else the year itself
 * @param months what a month's letter stands for, 1 to 12; plain numbers are understood besides
 * @param weeksFromJanuaryFirst true if week 1 is 1 to 7 January; else weeks are those of ISO 8601
 */
public record DateCodeTables(
    Map<String, Integer> years, Map<String, Integer> months, boolean weeksFromJanuaryFirst) {
  /** Plain numbers and the weeks of ISO 8601. */
  public static final DateCodeTables PLAIN = new DateCodeTables(Map.of(), Map.of(), false);

  public DateCodeTables {
    years = Map.copyOf(years);
    months = Map.copyOf(months);
  }
}
