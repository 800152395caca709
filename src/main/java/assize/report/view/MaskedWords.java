package assize.report.view;

import assize.share.Hidden;

/** Says of a masked number how well it is hidden. */
final class MaskedWords {
  private MaskedWords() {}

  static String of(Hidden number) {
    if (number.count().isEmpty()) {
      return "The standard does not date it. Nothing in this copy follows from it.";
    }
    int count = number.count().getAsInt();
    String numbers = Numbers.count(count, "number", "numbers");
    return number.oneOf().isEmpty()
        ? "Only " + numbers + " of the standard fit. Nothing in this copy follows from it."
        : "It is one of at least " + numbers + " that give the same copy.";
  }
}
