package assize.date;

import java.util.Optional;

/**
 * The parts of a date code as cast or stamped.
 *
 * @param year one, two or four digits, or a letter of the maker's table
 * @param month 1 to 12, or a letter of the maker's table
 * @param week 1 to 53
 * @param day of the month, of the week (1 to 7) where a week is given, else of the year (1 to 366)
 */
public record DateCodeParts(
    Optional<String> year, Optional<String> month, Optional<String> week, Optional<String> day) {}
