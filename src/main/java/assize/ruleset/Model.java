package assize.ruleset;

import assize.date.DaySpan;

/**
 * A model of the maker.
 *
 * @param built the days of its production
 */
public record Model(String id, String name, DaySpan built) {}
