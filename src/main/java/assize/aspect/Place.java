package assize.aspect;

/** One aspect of one item of a rule set. */
public record Place(Lexicon words, String item, Aspect aspect) {
  /** Returns what a word of the rule set means here; itself where it has no such word. */
  String meaning(String word) {
    return aspect.kind().meanings(this).getOrDefault(word, word);
  }
}
