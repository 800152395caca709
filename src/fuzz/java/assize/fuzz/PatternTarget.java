package assize.fuzz;

import assize.date.DateCodeTables;
import assize.date.DateRange;
import assize.date.LeadTime;
import assize.pattern.DateCodePattern;
import assize.pattern.NumberPattern;
import java.time.LocalDate;
import java.util.Map;

/** Patterns of numbers and of date codes, and what is stamped: parted by a line end. */
public final class PatternTarget {
  private static final LeadTime MADE = LeadTime.parse("P6M..P0D").toOptional().orElseThrow();
  private static final DateRange DAYS =
      new DateRange(LocalDate.of(1930, 1, 1), LocalDate.of(1939, 12, 31));

  private PatternTarget() {}

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) {
    String[] parts = Checks.text(data).split("\n", 2);
    String pattern = parts[0];
    String stamped = parts.length > 1 ? parts[1] : "E4";
    Checks.parsed(pattern, NumberPattern.compile(pattern), NumberPattern.compile(pattern))
        .toOptional()
        .ifPresent(
            it -> {
              it.fitsNothing();
              it.nearMiss(stamped);
              Checks.demand(it.fits(stamped) == it.fits(stamped + " - "), "spaces count");
            });
    DateCodeTables tables = new DateCodeTables(Map.of("A", 1932), Map.of("E", 5), false);
    DateCodePattern.compile(pattern, tables, MADE)
        .toOptional()
        .ifPresent(
            it -> {
              it.fitsNothing();
              it.canMean(DAYS);
              it.days(stamped, DAYS);
            });
  }
}
