package assize.report.redacted;

import assize.redaction.Hidden;
import assize.redaction.RedactedJudgment;
import assize.report.view.NumberFormatter;
import assize.ruleset.NumberTable;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says of masked numbers how well they are hidden. */
final class MaskedWords {
  private MaskedWords() {}

  /** Returns what a page without a list of its masked numbers says of them. */
  static String of(RedactedJudgment copy) {
    Stream<String> numbers =
        copy.masking().numbers().stream()
            .map(it -> name(copy, it) + " " + it.masked() + ": " + of(it));
    return Stream.concat(
            Stream.of("The copy for others. Numbers are masked, and what is private is left out."),
            numbers)
        .collect(Collectors.joining(" "));
  }

  static String name(RedactedJudgment copy, Hidden number) {
    return Optional.ofNullable(copy.judgment().rules().numberTables().get(number.table()))
        .map(NumberTable::name)
        .orElse(number.table());
  }

  static String of(Hidden number) {
    if (number.count().isEmpty()) {
      return "The standard does not date it. Nothing in this copy follows from it.";
    }
    int count = number.count().getAsInt();
    return number.oneOf().isEmpty()
        ? "Only " + numbers(count) + " of the standard fit. Nothing in this copy follows from it."
        : "It is one of at least " + numbers(count) + " that give the same copy.";
  }

  private static String numbers(int count) {
    return NumberFormatter.count(count, "number", "numbers");
  }
}
