package assize.ruleset;

import assize.evidence.Scope;
import assize.text.Span;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A detail to judge.
 *
 * @param area the area it stands in
 * @param points in thousandths of a point
 * @param look what to look at, and where
 * @param cause items of one area that share a cause lose only what the dearest of them loses
 * @param scope the vehicles it applies to
 * @param aspects at least one, their possible points adding up to {@code points}
 * @param choices the words of the aspect choice, with what they mean
 */
public record Item(
    String id,
    String area,
    String title,
    long points,
    Optional<String> look,
    Optional<String> notes,
    List<Caution> cautions,
    Optional<String> cause,
    Scope scope,
    List<AspectRule> aspects,
    Map<String, String> choices,
    Span at) {
  public Item {
    cautions = List.copyOf(cautions);
    aspects = List.copyOf(aspects);
    choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
    long sum = aspects.stream().mapToLong(AspectRule::possible).sum();
    if (aspects.isEmpty() || sum != points) {
      throw new IllegalArgumentException(id + " shares out " + sum + " of " + points);
    }
  }
}
