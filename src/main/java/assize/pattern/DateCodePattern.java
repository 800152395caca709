package assize.pattern;

import assize.date.DateCodeParts;
import assize.date.DateCodeResolver;
import assize.date.DateCodeTables;
import assize.date.DateRange;
import assize.date.DateRangeSet;
import assize.date.LeadTime;
import assize.text.Parsed;
import com.google.re2j.Matcher;
import com.google.re2j.Pattern;
import java.util.Map;
import java.util.Optional;

/**
 * A code, cast or stamped, that tells when a part was made: which group of it is the year, month,
 * week or day, and how long before the vehicle the part may have been made.
 */
public final class DateCodePattern {
  private final String text;
  private final Pattern pattern;
  private final DateCodeTables tables;
  private final LeadTime made;

  private DateCodePattern(String text, Pattern pattern, DateCodeTables tables, LeadTime made) {
    this.text = text;
    this.pattern = pattern;
    this.tables = tables;
    this.made = made;
  }

  /**
   * Reads a pattern in RE2 syntax with the named groups {@code year}, {@code month}, {@code week},
   * {@code day}; it must have a year, and no other named group.
   */
  public static Parsed<DateCodePattern> compile(String text, DateCodeTables tables, LeadTime made) {
    return Re2Patterns.compile(text)
        .then(
            pattern -> {
              Map<String, Integer> groups = pattern.namedGroups();
              for (String group : groups.keySet()) {
                if (!group.matches("year|month|week|day")) {
                  return Parsed.bad(
                      "the groups of a date code are year, month, week and day, not " + group,
                      Math.max(0, text.indexOf(group)),
                      group.length());
                }
              }
              if (!groups.containsKey("year")) {
                return Parsed.bad(
                    "a date code needs a group for the year: (?P<year>[0-9])", 0, text.length());
              }
              return Parsed.ok(new DateCodePattern(text, pattern, tables, made));
            });
  }

  /** Returns the pattern as it was written. */
  public String text() {
    return text;
  }

  /** Returns what the maker's letters mean, and how weeks are counted. */
  public DateCodeTables tables() {
    return tables;
  }

  /** Returns how long before the vehicle the part may have been made. */
  public LeadTime made() {
    return made;
  }

  /** Says whether there is no code of this form. */
  public boolean fitsNothing() {
    return PatternEmptiness.of(text, c -> true);
  }

  /** Says whether some code of this form, whichever, can mean a day of these. */
  public boolean canMean(DateRange days) {
    return new PossibleDateCodes(text, tables).canMean(days);
  }

  /**
   * Returns the days on which a part with this code may have been made.
   *
   * @param stamped the code as found
   * @param horizon the days that are looked at, since codes repeat
   * @return empty where the code does not fit the pattern; a refusal where it names no day
   */
  public Optional<Parsed<DateRangeSet>> days(String stamped, DateRange horizon) {
    String trimmed = stamped.strip();
    Matcher matcher = pattern.matcher(trimmed);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    DateCodeParts parts =
        new DateCodeParts(
            group(matcher, "year"),
            group(matcher, "month"),
            group(matcher, "week"),
            group(matcher, "day"));
    return Optional.of(DateCodeResolver.days(parts, tables, horizon));
  }

  private Optional<String> group(Matcher matcher, String name) {
    return pattern.namedGroups().containsKey(name)
        ? Optional.ofNullable(matcher.group(name))
        : Optional.empty();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DateCodePattern that
        && text.equals(that.text)
        && tables.equals(that.tables)
        && made.equals(that.made);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
