package assize.evidence;

import assize.diagnostic.Code;
import assize.schema.FixedWords;

/** How far a source is trusted, A the most. */
public enum Grade {
  A,
  B,
  C,
  D;

  /** How rule sets and records write it. */
  public static final FixedWords<Grade> WORDS =
      FixedWords.of("a grade", Code.UNKNOWN_WORD, values(), Grade::name);
}
