package assize.ruleset;

import assize.schema.Field;
import assize.text.Span;
import java.util.Map;
import java.util.Optional;

/**
 * Where a rule set defines its words, for what does not know its own place.
 *
 * @param places by the name of the section and the word, as in {@code finishes/nickel}
 */
public record DefinitionLocations(Map<String, Span> places) {
  /** Nowhere: of a rule set that was not read from files. */
  public static final DefinitionLocations NOWHERE = new DefinitionLocations(Map.of());

  public DefinitionLocations {
    places = Map.copyOf(places);
  }

  /** Returns where a word of a section is defined. */
  public Optional<Span> at(Field<?, ?> section, String word) {
    return Optional.ofNullable(places.get(section.name() + "/" + word));
  }
}
