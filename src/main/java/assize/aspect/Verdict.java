package assize.aspect;

import java.util.Locale;

/** What judging says of an item or of one of its aspects. */
public enum Verdict {
  CORRECT,
  PARTLY_CORRECT,
  INCORRECT,
  /** It depends on a dispute, or on a measurement too coarse to decide. */
  UNDECIDED,
  NOT_ASSESSED,
  NOT_APPLICABLE,
  /** The build day or the equipment is too uncertain to say. */
  MAY_APPLY;

  /** Returns the words that reports use. */
  public String word() {
    return id().replace('-', ' ');
  }

  /** Returns the name that other programs and style sheets use: the same with dashes. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
