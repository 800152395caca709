package assize.evidence;

import assize.diagnostic.DiagnosticCode;
import assize.schema.FixedVocabulary;

/** How far a source is trusted, A the most. */
public enum Grade {
  A,
  B,
  C,
  D;

  /** How rule sets and records write it. */
  public static final FixedVocabulary<Grade> WORDS =
      FixedVocabulary.of("a grade", DiagnosticCode.UNKNOWN_WORD, values(), Grade::name);
}
