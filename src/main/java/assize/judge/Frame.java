package assize.judge;

import assize.aspect.Expectation;
import assize.evidence.Claim;
import assize.evidence.Grade;
import assize.evidence.Manner;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What sources hold of one aspect within one stretch: the positions, and which of them each source
 * leaves standing.
 *
 * @param positions each a list of values that are right, in the order first named
 * @param stands for each source that speaks: bit i for position i, the bit after the last for a
 *     value that nobody mentions
 * @param sayers for each position, the sources that say just it
 */
record Frame(
    List<List<Expectation>> positions, Map<String, Long> stands, List<List<String>> sayers) {

  /**
   * One source's sayings.
   *
   * @param source empty for a rule that names no source
   * @param grade of a trace, whose source stands in no rule set
   */
  record Voice(
      Optional<String> source, Optional<Grade> grade, Manner manner, List<Expectation> values) {
    static Voice of(Claim claim) {
      return new Voice(claim.source(), Optional.empty(), claim.manner(), claim.values());
    }
  }

  /** Lays out the positions of the voices that speak. */
  static Frame of(List<Voice> voices) {
    Map<String, List<Expectation>> saidBy = new LinkedHashMap<>();
    List<List<Expectation>> positions = new ArrayList<>();
    for (Voice voice : voices) {
      if (voice.manner() == Manner.SAYS) {
        if (voice.source().isPresent()) {
          saidBy.merge(voice.source().get(), voice.values(), Frame::joined);
        } else {
          addPosition(positions, joined(voice.values(), List.of()));
        }
      }
    }
    saidBy.values().forEach(values -> addPosition(positions, joined(values, List.of())));
    for (Voice voice : voices) {
      if (voice.manner() == Manner.LEAVES_OPEN) {
        for (Expectation value : voice.values()) {
          boolean held =
              positions.stream().anyMatch(position -> right(position).contains(value.key()));
          if (!held) {
            positions.add(List.of(value));
          }
        }
      }
    }
    Map<String, Long> stands = new TreeMap<>();
    for (Voice voice : voices) {
      voice.source().ifPresent(source -> stands.put(source, stands(source, voices, positions)));
    }
    List<List<String>> sayers = new ArrayList<>();
    for (List<Expectation> position : positions) {
      sayers.add(
          saidBy.entrySet().stream()
              .filter(said -> same(joined(said.getValue(), List.of()), position))
              .map(Map.Entry::getKey)
              .toList());
    }
    return new Frame(positions, stands, sayers);
  }

  private static void addPosition(List<List<Expectation>> positions, List<Expectation> values) {
    if (positions.stream().noneMatch(position -> same(position, values))) {
      positions.add(values);
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

  private static boolean same(List<Expectation> one, List<Expectation> other) {
    return Set.copyOf(one).equals(Set.copyOf(other));
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

  private static long stands(String source, List<Voice> voices, List<List<Expectation>> positions) {
    long all = (1L << positions.size() + 1) - 1;
    long standing = all;
    List<Expectation> said = List.of();
    for (Voice voice : voices) {
      if (!voice.source().equals(Optional.of(source))) {
        continue;
      }
      Set<String> named = voice.values().stream().map(Expectation::key).collect(Collectors.toSet());
      switch (voice.manner()) {
        case SAYS -> said = joined(said, voice.values());
        case LEAVES_OPEN -> standing &= within(positions, named);
        case RULES_OUT -> standing &= ~touching(positions, named);
      }
    }
    if (said.isEmpty()) {
      return standing;
    }
    for (int i = 0; i < positions.size(); i++) {
      if (same(positions.get(i), said)) {
        return 1L << i;
      }
    }
    throw new IllegalStateException("no position for what " + source + " says");
  }

  private static long within(List<List<Expectation>> positions, Set<String> named) {
    long bits = 0;
    for (int i = 0; i < positions.size(); i++) {
      if (named.containsAll(right(positions.get(i)))) {
        bits |= 1L << i;
      }
    }
    return bits;
  }

  private static long touching(List<List<Expectation>> positions, Set<String> named) {
    long bits = 0;
    for (int i = 0; i < positions.size(); i++) {
      if (right(positions.get(i)).stream().anyMatch(named::contains)) {
        bits |= 1L << i;
      }
    }
    return bits;
  }
}
