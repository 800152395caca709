package assize.redaction;

/** Letters and digits that are looked for in texts, and which of them are masked. */
final class MaskPattern {
  private final int[] letters;
  private final boolean[] masked;
  private final NormalizedText.Gap widest;
  private final Stands stands;
  private final boolean hidesLength;
  private final int owner;

  /**
   * Takes what is looked for.
   *
   * @param letters as {@link NormalizedText} has them
   * @param masked which of them become x
   * @param widest what may stand between them
   * @param hidesLength whether what is masked becomes the same however long it is
   * @param owner the number or word that it is of, counted from 0
   */
  MaskPattern(
      int[] letters,
      boolean[] masked,
      NormalizedText.Gap widest,
      Stands stands,
      boolean hidesLength,
      int owner) {
    this.letters = letters.clone();
    this.masked = masked.clone();
    this.widest = widest;
    this.stands = stands;
    this.hidesLength = hidesLength;
    this.owner = owner;
  }

  /** Where it is found. */
  enum Stands {
    /** Within other letters and digits too. */
    ANYWHERE,
    /** Where it begins and ends with a word or number. */
    WHOLE,
    /** Where a text has nothing else. */
    ALONE
  }

  int length() {
    return letters.length;
  }

  int letter(int index) {
    return letters[index];
  }

  boolean isMasked(int index) {
    return masked[index];
  }

  boolean hidesLength() {
    return hidesLength;
  }

  int owner() {
    return owner;
  }

  /** Says whether it stands at a place of a text where its letters and digits are. */
  boolean isAt(NormalizedText text, int start) {
    int end = start + letters.length;
    if (text.isParted(start, end, widest)) {
      return false;
    }
    return switch (stands) {
      case ANYWHERE -> true;
      case WHOLE -> text.isEdge(start) && text.isEdge(end);
      case ALONE -> start == 0 && end == text.length();
    };
  }
}
