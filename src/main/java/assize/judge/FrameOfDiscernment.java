package assize.judge;

import assize.aspect.Expectation;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.Grade;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What sources hold of one aspect within one stretch: the positions, and which of them each source
 * leaves standing.
 *
 * @param positions each a list of values that are right, in the order first named
 * @param compatiblePositions for each source that speaks: bit i for position i, the bit after the
 *     last for a value that nobody mentions
 * @param sayers for each position, the sources that say just it
 */
record FrameOfDiscernment(
    List<List<Expectation>> positions,
    Map<String, Long> compatiblePositions,
    List<List<String>> sayers) {

  /**
   * One source's sayings.
   *
   * @param source empty for a rule that names no source
   * @param grade of a trace, whose source stands in no rule set
   */
  record SourceStatement(
      Optional<String> source, Optional<Grade> grade, ClaimKind manner, List<Expectation> values) {
    static SourceStatement of(Claim claim) {
      return new SourceStatement(claim.source(), Optional.empty(), claim.manner(), claim.values());
    }
  }

  /** A position's place, and what it holds to be right. */
  private record Place(List<Expectation> values, Set<String> right) {
    static Place of(List<Expectation> values) {
      return new Place(values, FrameOfDiscernment.right(values));
    }
  }

  /** Lays out the positions of the voices that speak. */
  static FrameOfDiscernment of(List<SourceStatement> voices) {
    Map<String, List<SourceStatement>> bySource = new TreeMap<>();
    Map<String, List<Expectation>> saidBy = new LinkedHashMap<>();
    Map<Set<Expectation>, List<Expectation>> positions = new LinkedHashMap<>();
    for (SourceStatement voice : voices) {
      voice
          .source()
          .ifPresent(it -> bySource.computeIfAbsent(it, key -> new ArrayList<>()).add(voice));
      if (voice.manner() == ClaimKind.SAYS) {
        if (voice.source().isPresent()) {
          saidBy.merge(voice.source().get(), voice.values(), FrameOfDiscernment::joined);
        } else {
          addPosition(positions, joined(voice.values(), List.of()));
        }
      }
    }
    saidBy.replaceAll((source, values) -> joined(values, List.of()));
    saidBy.values().forEach(values -> addPosition(positions, values));
    List<Place> places = new ArrayList<>(positions.values().stream().map(Place::of).toList());
    addLeftOpen(voices, places);
    Map<Set<Expectation>, Integer> numbers = new HashMap<>();
    for (int i = 0; i < places.size(); i++) {
      numbers.putIfAbsent(Set.copyOf(places.get(i).values()), i);
    }
    List<List<String>> sayers = new ArrayList<>();
    places.forEach(place -> sayers.add(new ArrayList<>()));
    Map<String, Integer> said = new HashMap<>();
    saidBy.forEach(
        (source, values) -> {
          Integer number = numbers.get(Set.copyOf(values));
          if (number == null) {
            throw new IllegalStateException("no position for what " + source + " says");
          }
          said.put(source, number);
          sayers.get(number).add(source);
        });
    Map<String, Long> stands = new TreeMap<>();
    bySource.forEach(
        (source, own) -> {
          Integer number = said.get(source);
          stands.put(source, number == null ? standing(own, places) : Long.valueOf(1L << number));
        });
    return new FrameOfDiscernment(places.stream().map(Place::values).toList(), stands, sayers);
  }

  private static void addPosition(
      Map<Set<Expectation>, List<Expectation>> positions, List<Expectation> values) {
    positions.putIfAbsent(Set.copyOf(values), values);
  }

  /** Makes a position of each value that is left open and that no other holds to be right. */
  private static void addLeftOpen(List<SourceStatement> voices, List<Place> places) {
    Set<String> held = new HashSet<>();
    places.forEach(place -> held.addAll(place.right()));
    for (SourceStatement voice : voices) {
      if (voice.manner() == ClaimKind.LEAVES_OPEN) {
        for (Expectation value : voice.values()) {
          if (held.add(value.key())) {
            places.add(Place.of(List.of(value)));
          }
        }
      }
    }
  }

  /** Joins two lists of values: each value once, with its greatest credit. */
  private static List<Expectation> joined(List<Expectation> one, List<Expectation> other) {
    Map<String, Expectation> byKey = new LinkedHashMap<>();
    for (List<Expectation> list : List.of(one, other)) {
      for (Expectation value : list) {
        byKey.merge(value.key(), value, (a, b) -> a.credit().compareTo(b.credit()) >= 0 ? a : b);
      }
    }
    return List.copyOf(byKey.values());
  }

  /** Returns the values that earn the most credit: what the position holds to be right. */
  private static Set<String> right(List<Expectation> position) {
    BigFraction most =
        position.stream()
            .map(Expectation::credit)
            .max(Comparator.naturalOrder())
            .orElse(BigFraction.ONE);
    return position.stream()
        .filter(value -> value.credit().compareTo(most) == 0)
        .map(Expectation::key)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Returns what a source that says nothing outright leaves standing. */
  private static long standing(List<SourceStatement> voices, List<Place> places) {
    long standing = (1L << places.size() + 1) - 1;
    for (SourceStatement voice : voices) {
      Set<String> named = voice.values().stream().map(Expectation::key).collect(Collectors.toSet());
      standing &=
          switch (voice.manner()) {
            case LEAVES_OPEN -> bits(places, named::containsAll);
            case RULES_OUT -> ~bits(places, right -> right.stream().anyMatch(named::contains));
            case SAYS -> throw new IllegalStateException("what it says alone stands");
          };
    }
    return standing;
  }

  private static long bits(List<Place> places, Predicate<Set<String>> of) {
    long bits = 0;
    for (int i = 0; i < places.size(); i++) {
      if (of.test(places.get(i).right())) {
        bits |= 1L << i;
      }
    }
    return bits;
  }
}
