package assize.aspect;

import assize.schema.DefinedNames;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.schema.Type;
import java.util.function.Function;

/**
 * What reading something that a rule set defines needs.
 *
 * @param id the name by which it is defined
 */
public record Definition(String id, Vocabulary names, ScalarReader values) implements Reading {

  /** A word of the rule set. */
  public static Type<Definition, String> word(Function<Vocabulary, DefinedNames> known) {
    return Type.of(
        ScalarFormat.name(),
        (entry, in) -> entry.flatMap(it -> known.apply(in.names()).find(it, in.values())));
  }
}
