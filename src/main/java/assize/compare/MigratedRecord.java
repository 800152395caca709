package assize.compare;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.aspect.Place;
import assize.record.Named;
import assize.record.Observation;
import assize.record.PhysicalTrace;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A record as another edition can judge it.
 *
 * @param left what the other edition has no place for, in the order of the record
 */
public record MigratedRecord(VehicleRecord vehicle, List<DroppedEntry> left) {
  public MigratedRecord {
    left = List.copyOf(left);
  }

  /**
   * Something of a record that an edition has no place for.
   *
   * @param where the item, or what kind of fact it is
   * @param what the word or aspect; empty for all of an item
   */
  public record DroppedEntry(String where, String what) {}

  /** Returns the record without what an edition does not know. */
  public static MigratedRecord over(VehicleRecord vehicle, RuleSet rules) {
    List<DroppedEntry> left = new ArrayList<>();
    Map<String, Item> items = new LinkedHashMap<>();
    rules.items().forEach(item -> items.put(item.id(), item));
    Known known = new Known(rules);
    Map<String, Observation> observations = new LinkedHashMap<>();
    vehicle
        .observations()
        .forEach(
            (id, observation) -> {
              Item item = items.get(id);
              if (item == null) {
                left.add(new DroppedEntry(id, ""));
              } else {
                observations.put(id, known.observation(item, observation, left));
              }
            });
    List<PhysicalTrace> traces = new ArrayList<>();
    for (PhysicalTrace trace : vehicle.traces()) {
      Item item = items.get(trace.item());
      if (item == null || !known.knows(item, trace)) {
        left.add(new DroppedEntry(trace.item(), "trace"));
      } else {
        traces.add(trace);
      }
    }
    VehicleRecord carried =
        vehicle
            .with(VehicleRecord.EDITION, Optional.empty())
            .with(Named.MODEL, kept("model", vehicle.model(), rules.models().keySet(), left))
            .with(
                VehicleRecord.NUMBERS,
                kept("number table", vehicle.numbers(), rules.numberTables().keySet(), left))
            .with(
                VehicleRecord.PLANT, kept("plant", vehicle.plant(), rules.plants().keySet(), left))
            .with(
                VehicleRecord.MARKET,
                kept("market", vehicle.market(), rules.markets().keySet(), left))
            .with(
                VehicleRecord.EQUIPMENT,
                kept("equipment", vehicle.equipment(), rules.equipment().keySet(), left))
            .with(VehicleRecord.OBSERVATIONS, observations)
            .with(VehicleRecord.TRACES, traces);
    return new MigratedRecord(carried, left);
  }

  private static Optional<String> kept(
      String what, Optional<String> word, Set<String> known, List<DroppedEntry> left) {
    word.filter(it -> !known.contains(it)).ifPresent(it -> left.add(new DroppedEntry(what, it)));
    return word.filter(known::contains);
  }

  private static <T> Map<String, T> kept(
      String what, Map<String, T> words, Set<String> known, List<DroppedEntry> left) {
    Map<String, T> kept = new LinkedHashMap<>();
    words.forEach(
        (word, value) -> {
          if (known.contains(word)) {
            kept.put(word, value);
          } else {
            left.add(new DroppedEntry(what, word));
          }
        });
    return kept;
  }

  /** What an edition knows of its items. */
  private record Known(RuleSet rules) {
    Observation observation(Item item, Observation one, List<DroppedEntry> left) {
      Observation carried = one;
      for (Map.Entry<Aspect, Finding> found : one.findings().entrySet()) {
        Aspect aspect = found.getKey();
        if (!asks(item, aspect) || !found.getValue().isKnown(at(item, aspect))) {
          carried = carried.with(Observation.of(aspect), Optional.empty());
          left.add(new DroppedEntry(item.id(), aspect.spoken()));
        }
      }
      return carried;
    }

    private static boolean asks(Item item, Aspect aspect) {
      return item.aspects().stream().anyMatch(rule -> rule.aspect() == aspect);
    }

    private Place at(Item item, Aspect aspect) {
      return new Place(rules, item.id(), aspect);
    }

    private boolean knows(Item item, PhysicalTrace trace) {
      return trace.values().entrySet().stream()
          .allMatch(
              one ->
                  asks(item, one.getKey())
                      && one.getValue().stream()
                          .allMatch(value -> value.isKnown(at(item, one.getKey()))));
    }
  }
}
