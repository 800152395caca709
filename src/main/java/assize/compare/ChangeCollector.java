package assize.compare;

import assize.compare.Change.Kind;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** The changes of one named thing, or of all things of one part, while they are gathered. */
final class ChangeCollector {
  private final List<Change> changes;
  private final RuleSetPart part;
  private final Effect effect;
  private final boolean ordered;

  ChangeCollector(List<Change> changes, RuleSetPart part) {
    this(changes, part, Effect.ANY);
  }

  /** Begins; {@code effect} says what those changes have that alter anything. */
  ChangeCollector(List<Change> changes, RuleSetPart part, Effect effect) {
    this(changes, part, effect, true);
  }

  private ChangeCollector(List<Change> changes, RuleSetPart part, Effect effect, boolean ordered) {
    this.changes = changes;
    this.part = part;
    this.effect = effect;
    this.ordered = ordered;
  }

  /** Returns the same for things of which another order is no change. */
  ChangeCollector unordered() {
    return new ChangeCollector(changes, part, effect, false);
  }

  /** A named thing that both editions have. */
  final class Of {
    private final String id;
    private final String name;
    private final Supplier<Set<String>> items;

    private Of(String id, String name, Supplier<Set<String>> items) {
      this.id = id;
      this.name = name;
      this.items = items;
    }

    /** Notes a property that differs. */
    void check(
        String what,
        boolean alters,
        Optional<? extends ChangedValue> before,
        Optional<? extends ChangedValue> after) {
      if (!before.equals(after)) {
        note(Kind.CHANGED, what, alters, before, after);
      }
    }

    void note(
        Kind kind,
        String what,
        boolean alters,
        Optional<? extends ChangedValue> before,
        Optional<? extends ChangedValue> after) {
      changes.add(
          new Change(
              part,
              kind,
              id,
              name,
              what,
              before.map(it -> it),
              after.map(it -> it),
              alters ? effect : Effect.NONE,
              items.get()));
    }

    void words(String what, boolean alters, Optional<String> before, Optional<String> after) {
      check(what, alters, before.map(ChangedValue.Words::new), after.map(ChangedValue.Words::new));
    }

    void words(String what, boolean alters, String before, String after) {
      words(what, alters, Optional.of(before), Optional.of(after));
    }
  }

  Of of(String id, String name, Set<String> items) {
    return new Of(id, name, () -> items);
  }

  /**
   * Compares things by name: notes those that only one edition has, and hands on those of both.
   *
   * @param name what a thing is called
   * @param items what a thing bears on
   */
  <K, T> void each(
      Map<K, T> before,
      Map<K, T> after,
      Function<K, String> id,
      Function<T, String> name,
      Function<K, Set<String>> items,
      BiConsumer<Of, Both<T>> compare) {
    Set<K> kept = new LinkedHashSet<>();
    after.forEach(
        (key, thing) -> {
          T old = before.get(key);
          Of of = new Of(id.apply(key), name.apply(thing), () -> items.apply(key));
          if (old == null) {
            of.note(
                Kind.ADDED,
                "",
                true,
                Optional.empty(),
                Optional.of(new ChangedValue.Words(name.apply(thing))));
          } else {
            kept.add(key);
            compare.accept(of, new Both<>(old, thing));
          }
        });
    before.forEach(
        (key, thing) -> {
          if (!after.containsKey(key)) {
            new Of(id.apply(key), name.apply(thing), () -> items.apply(key))
                .note(
                    Kind.REMOVED,
                    "",
                    true,
                    Optional.of(new ChangedValue.Words(name.apply(thing))),
                    Optional.empty());
          }
        });
    List<K> order = before.keySet().stream().filter(kept::contains).toList();
    if (ordered && !order.equals(List.copyOf(kept))) {
      of("", "All of them", Set.of())
          .note(Kind.CHANGED, "order", false, Optional.empty(), Optional.empty());
    }
  }

  /** One thing in both editions. */
  record Both<T>(T before, T after) {}
}
