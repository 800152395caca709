package assize.merge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the owner takes from friends where they say something else.
 *
 * @param parts for each the friend whose word is taken; empty where there is but one
 */
public record TakeChoices(Map<RecordField, Optional<String>> parts) {
  public TakeChoices {
    parts = Map.copyOf(new LinkedHashMap<>(parts));
  }

  /** Says whether it is a named friend's word that is taken. */
  boolean names(IncomingValue offer) {
    return parts
        .getOrDefault(offer.part(), Optional.empty())
        .filter(offer.from().name()::equals)
        .isPresent();
  }

  /** Returns which side is taken, if one is and it can be told which. */
  Optional<Side> of(RecordField part, List<Side> different) {
    Optional<String> from = parts.getOrDefault(part, Optional.empty());
    if (!parts.containsKey(part)) {
      return Optional.empty();
    }
    return from.isEmpty() && different.size() == 1
        ? Optional.of(different.get(0))
        : different.stream().filter(it -> from.filter(it.from()::equals).isPresent()).findFirst();
  }
}
