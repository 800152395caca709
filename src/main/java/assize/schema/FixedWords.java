package assize.schema;

import assize.diagnostic.Code;
import assize.diagnostic.NearNames;
import assize.yaml.Node;
import assize.yaml.Problems;
import assize.yaml.Words;
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
public record FixedWords<T>(String what, Code unknown, List<T> all, Function<T, String> word) {
  public static <T> FixedWords<T> of(String what, Code unknown, T[] all, Function<T, String> word) {
    return new FixedWords<>(what, unknown, Arrays.asList(all), word);
  }

  /** Returns what is written. */
  public Value value() {
    return Value.word(all.stream().map(word).toList());
  }

  public Optional<T> read(Optional<Node.Entry> entry, Values values) {
    return entry.flatMap(it -> values.scalar(it, what)).flatMap(it -> find(it, values.problems()));
  }

  public Optional<T> find(Node.Scalar text, Problems problems) {
    for (T one : all) {
      if (word.apply(one).equals(text.text())) {
        return Optional.of(one);
      }
    }
    problems.add(
        unknown,
        text.at(),
        Words.quoted(text.text()) + " is not " + what,
        problems.areMany()
            ? Optional.empty()
            : NearNames.hint(text.text(), all.stream().map(word).toList()));
    return Optional.empty();
  }
}
