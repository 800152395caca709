package assize.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A group of names that are all known.
 *
 * @param owner what they belong to, as messages say it: "a model"
 * @param keys in the order in which messages list them
 * @param rules what the names have to do with each other
 */
public record Block(String owner, List<Key> keys, List<Rule> rules) {
  public Block {
    keys = List.copyOf(keys);
    rules = List.copyOf(rules);
    Map<String, Key> byName =
        keys.stream().collect(Collectors.toMap(Key::name, Function.identity()));
    if (!rules.stream().map(Rule::names).allMatch(byName.keySet()::containsAll)) {
      throw new IllegalArgumentException("a rule of " + owner + " has a name that is none");
    }
  }

  static Block of(String owner, Key... keys) {
    return new Block(owner, List.of(keys), List.of());
  }

  /** Returns the same group with more names behind its own. */
  Block and(Collection<Key> more) {
    List<Key> all = new ArrayList<>(keys);
    all.addAll(more);
    return new Block(owner, all, rules);
  }

  Block and(Key... more) {
    return and(Arrays.asList(more));
  }

  /** Returns the same group with rules. */
  Block with(Rule... more) {
    return new Block(owner, keys, List.of(more));
  }

  /** Returns what is known of a name, if it is one of these. */
  public Optional<Key> key(String name) {
    return keys.stream().filter(key -> key.name().equals(name)).findFirst();
  }

  /** Returns the names in their order. */
  public List<String> names() {
    return keys.stream().map(Key::name).toList();
  }
}
