package assize.schema;

import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.NameSuggestions;
import assize.yaml.DiagnosticCollector;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Words that no rule set can add to.
 *
 * @param what what they say, as in "a kind of source"
 * @param <T> what they stand for
 */
public record FixedVocabulary<T>(
    String what, DiagnosticCode unknown, List<T> all, Function<T, String> word) {
  public static <T> FixedVocabulary<T> of(
      String what, DiagnosticCode unknown, T[] all, Function<T, String> word) {
    return new FixedVocabulary<>(what, unknown, Arrays.asList(all), word);
  }

  /** Returns what is written. */
  public ValueSchema value() {
    return ValueSchema.word(all.stream().map(word).toList());
  }

  public Optional<T> read(Optional<Node.Entry> entry, ScalarReader values) {
    return entry.flatMap(it -> values.scalar(it, what)).flatMap(it -> find(it, values.problems()));
  }

  public Optional<T> find(Node.Scalar text, DiagnosticCollector problems) {
    for (T one : all) {
      if (word.apply(one).equals(text.text())) {
        return Optional.of(one);
      }
    }
    problems.add(
        unknown,
        text.at(),
        MessageParts.quoted(text.text()) + " is not " + what,
        problems.areMany()
            ? Optional.empty()
            : NameSuggestions.hint(text.text(), all.stream().map(word).toList()));
    return Optional.empty();
  }
}
