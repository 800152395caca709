package assize.evidence;

/** How far a source is trusted, A the most. */
public enum Grade {
  A,
  B,
  C,
  D
}
