package assize.aspect;

import assize.schema.DefinedNames;
import assize.schema.ScalarReader;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What reading an aspect needs.
 *
 * @param choices the words that the item lets one choose from
 */
public record Reader(Vocabulary names, DefinedNames choices, ScalarReader values) {

  /** Makes a value of what was read and its credit. */
  interface WithCredit<T> {
    Expectation of(T value, BigFraction credit);
  }

  /** Reads one single text or a list of them. */
  <T> List<Expectation> each(
      Node.Entry entry, Function<Node.Scalar, Optional<T>> reader, Function<T, Expectation> make) {
    List<Expectation> found = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(Optional.of(entry))) {
      values.scalar(one, "a single text").flatMap(reader).map(make).ifPresent(found::add);
    }
    return found;
  }

  /** Reads values, each with its credit. */
  <T> List<Expectation> credits(
      Node.Mapping mapping, Function<Node.Scalar, Optional<T>> reader, WithCredit<T> make) {
    List<Expectation> found = new ArrayList<>();
    for (Node.Entry one : mapping.entries()) {
      Optional<T> value = reader.apply(one.key());
      Optional<BigFraction> credit = values.credit(Optional.of(one));
      if (value.isPresent() && credit.isPresent()) {
        found.add(make.of(value.get(), credit.get()));
      }
    }
    return found;
  }

  /** Reads a word of the rule set, or the word for none of them. */
  Optional<String> orOther(Node.Scalar text, DefinedNames known) {
    return text.text().equals(Finding.OTHER)
        ? Optional.of(Finding.OTHER)
        : known.find(text, values.problems());
  }
}
