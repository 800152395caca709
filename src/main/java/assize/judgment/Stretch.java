package assize.judgment;

import assize.date.DaySpan;

/**
 * Build days for which everything is judged alike.
 *
 * @param days both ends closed
 * @param score allowances included
 * @param strict without allowances
 */
public record Stretch(DaySpan days, ScoreRange score, ScoreRange strict) {}
