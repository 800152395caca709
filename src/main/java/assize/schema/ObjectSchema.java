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
public final class ObjectSchema {
  private final String owner;
  private final List<PropertySchema> keys;
  private final List<PropertyConstraint> rules;
  private final List<String> names;
  private final Function<String, Optional<String>> elsewhere;
  private final Map<String, Integer> places = new HashMap<>();

  public ObjectSchema(String owner, List<PropertySchema> keys, List<PropertyConstraint> rules) {
    this(owner, keys, rules, name -> Optional.empty());
  }

  private ObjectSchema(
      String owner,
      List<PropertySchema> keys,
      List<PropertyConstraint> rules,
      Function<String, Optional<String>> elsewhere) {
    this.elsewhere = elsewhere;
    this.owner = owner;
    this.keys = List.copyOf(keys);
    this.rules = List.copyOf(rules);
    this.names = keys.stream().map(PropertySchema::name).toList();
    for (String name : names) {
      if (places.put(name, places.size()) != null) {
        throw new IllegalArgumentException(owner + " has " + name + " twice");
      }
    }
    if (!rules.stream().map(PropertyConstraint::names).allMatch(names::containsAll)) {
      throw new IllegalArgumentException("a rule of " + owner + " has a name that is none");
    }
  }

  public static ObjectSchema of(String owner, PropertySchema... keys) {
    return new ObjectSchema(owner, List.of(keys), List.of());
  }

  /** Returns the same group with more names behind its own. */
  public ObjectSchema and(Collection<PropertySchema> more) {
    List<PropertySchema> all = new ArrayList<>(keys);
    all.addAll(more);
    return new ObjectSchema(owner, all, rules, elsewhere);
  }

  public ObjectSchema and(PropertySchema... more) {
    return and(Arrays.asList(more));
  }

  /** Returns the same group with rules. */
  public ObjectSchema with(PropertyConstraint... more) {
    return new ObjectSchema(owner, keys, List.of(more), elsewhere);
  }

  /** Returns the same group with where a name belongs that is none of these. */
  public ObjectSchema elsewhere(Function<String, Optional<String>> where) {
    return new ObjectSchema(owner, keys, rules, where);
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
                it.value() instanceof ValueSchema.Either either
                    && either.ways().stream().anyMatch(ValueSchema.Blank.class::isInstance))
        .isPresent();
  }

  /** Returns the names, here and in groups below, under which no mere text is written. */
  public Stream<String> meant() {
    return keys.stream()
        .flatMap(
            key ->
                Stream.concat(
                    key.value().isMeant() ? Stream.of(key.name()) : Stream.empty(),
                    key.value().groups().flatMap(ObjectSchema::meant)));
  }

  /** Returns what the names belong to, as messages say it: "a model". */
  public String owner() {
    return owner;
  }

  /** Returns what is known of each name, in the order in which messages list them. */
  public List<PropertySchema> keys() {
    return keys;
  }

  /** Returns what the names have to do with each other. */
  public List<PropertyConstraint> rules() {
    return rules;
  }

  /** Returns what is known of a name, if it is one of these. */
  public Optional<PropertySchema> key(String name) {
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
