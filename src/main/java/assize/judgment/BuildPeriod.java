package assize.judgment;

import assize.date.DateRange;

/**
 * Build days for which everything is judged alike.
 *
 * @param days both ends closed
 * @param score allowances included
 * @param withoutAllowances without allowances
 */
public record BuildPeriod(DateRange days, ScoreRange score, ScoreRange withoutAllowances) {}
