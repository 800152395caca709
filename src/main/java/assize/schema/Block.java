package assize.schema;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** A group of names that are all known. */
public final class Block {
  private final String owner;
  private final List<Key> keys;
  private final List<Rule> rules;
  private final List<String> names;
  private final Function<String, Optional<String>> elsewhere;
  private final Map<String, Integer> places = new HashMap<>();

  public Block(String owner, List<Key> keys, List<Rule> rules) {
    this(owner, keys, rules, name -> Optional.empty());
  }

  private Block(
      String owner,
      List<Key> keys,
      List<Rule> rules,
      Function<String, Optional<String>> elsewhere) {
    this.elsewhere = elsewhere;
    this.owner = owner;
    this.keys = List.copyOf(keys);
    this.rules = List.copyOf(rules);
    this.names = keys.stream().map(Key::name).toList();
    for (String name : names) {
      if (places.put(name, places.size()) != null) {
        throw new IllegalArgumentException(owner + " has " + name + " twice");
      }
    }
    if (!rules.stream().map(Rule::names).allMatch(names::containsAll)) {
      throw new IllegalArgumentException("a rule of " + owner + " has a name that is none");
    }
  }

  public static Block of(String owner, Key... keys) {
    return new Block(owner, List.of(keys), List.of());
  }

  /** Returns the same group with more names behind its own. */
  public Block and(Collection<Key> more) {
    List<Key> all = new ArrayList<>(keys);
    all.addAll(more);
    return new Block(owner, all, rules, elsewhere);
  }

  public Block and(Key... more) {
    return and(Arrays.asList(more));
  }

  /** Returns the same group with rules. */
  public Block with(Rule... more) {
    return new Block(owner, keys, List.of(more), elsewhere);
  }

  /** Returns the same group with where a name belongs that is none of these. */
  public Block elsewhere(Function<String, Optional<String>> where) {
    return new Block(owner, keys, rules, where);
  }

  /** Returns where a name belongs that is none of these, if that is known. */
  public Optional<String> elsewhere(String name) {
    return elsewhere.apply(name);
  }

  /** Says whether nothing may stand behind a name: not looked at yet. */
  public boolean mayBeBlank(String name) {
    return key(name)
        .filter(
            it ->
                it.value() instanceof Value.Either either
                    && either.ways().stream().anyMatch(Value.Blank.class::isInstance))
        .isPresent();
  }

  /** Returns the names, here and in groups below, under which no mere text is written. */
  public Stream<String> meant() {
    return keys.stream()
        .flatMap(
            key ->
                Stream.concat(
                    key.value().isMeant() ? Stream.of(key.name()) : Stream.empty(),
                    key.value().groups().flatMap(Block::meant)));
  }

  /** Returns what the names belong to, as messages say it: "a model". */
  public String owner() {
    return owner;
  }

  /** Returns what is known of each name, in the order in which messages list them. */
  public List<Key> keys() {
    return keys;
  }

  /** Returns what the names have to do with each other. */
  public List<Rule> rules() {
    return rules;
  }

  /** Returns what is known of a name, if it is one of these. */
  public Optional<Key> key(String name) {
    return Optional.ofNullable(places.get(name)).map(keys::get);
  }

  /** Returns the place of a name among the others, from 0; below zero if it is none of them. */
  public int place(String name) {
    return places.getOrDefault(name, -1);
  }

  /** Returns the names in their order. */
  public List<String> names() {
    return names;
  }
}
