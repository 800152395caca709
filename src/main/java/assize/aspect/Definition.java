package assize.aspect;

import assize.schema.Form;
import assize.schema.Names;
import assize.schema.Reading;
import assize.schema.Type;
import assize.schema.Values;
import java.util.function.Function;

/**
 * What reading something that a rule set defines needs.
 *
 * @param id the name by which it is defined
 */
public record Definition(String id, Vocabulary names, Values values) implements Reading {

  /** A word of the rule set. */
  public static Type<Definition, String> word(Function<Vocabulary, Names> known) {
    return Type.of(
        Form.name(),
        (entry, in) -> entry.flatMap(it -> known.apply(in.names()).find(it, in.values())));
  }
}
