package assize.aspect;

/** Why what was found earns what it earns: facts, worded only when somebody reads them. */
public interface Reason {
  /** Returns one sentence without its full stop. */
  String words(Place at);

  /** Returns what of it is not said yet where the words for what was found stand beside it. */
  default String besides(Place at) {
    return words(at);
  }

  /** A sentence that says all. */
  record Said(String words) implements Reason {
    @Override
    public String words(Place at) {
      return words;
    }

    /** Returns nothing of words that only repeat what was found. */
    static String unlessPlain(String words) {
      return words.indexOf(',') < 0 && words.indexOf(';') < 0 ? "" : words;
    }
  }
}
