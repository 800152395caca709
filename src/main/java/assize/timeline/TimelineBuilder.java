package assize.timeline;

import assize.date.DateRange;
import assize.evidence.Scope;
import assize.production.AttributeValue;
import assize.production.Production;
import assize.production.VehicleAttribute;
import assize.production.VehicleKind;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** Something told of every kind of vehicle and every day of production, what is alike together. */
final class TimelineBuilder {
  /** A day like any other, where no date is asked for. */
  private static final LocalDate ANY = LocalDate.EPOCH;

  private TimelineBuilder() {}

  /** What is told of some days. */
  record DatedValue<T>(DateRange days, T what) {}

  /**
   * Vehicles of which the same is told over the production of their models.
   *
   * @param told in the order of days; days of which nothing is told are left out
   */
  record Group<T>(List<VehicleGroup> vehicles, DateRange window, List<DatedValue<T>> told) {}

  /**
   * Lays it out.
   *
   * @param editions the last of them names the kinds of vehicles; all say when models were built
   * @param scopes what may tell vehicles and days apart
   * @param tells what is told of a vehicle built on some day, if anything
   * @return nothing where there are too many kinds
   */
  static <T> Optional<List<Group<T>>> of(
      List<RuleSet> editions, Collection<Scope> scopes, Function<Scope.Facts, Optional<T>> tells) {
    RuleSet rules = editions.get(editions.size() - 1);
    Production production = Production.of(rules, scopes);
    List<VehicleAttribute> attributes = production.attributes();
    List<DateRange> stretches = stretches(editions, scopes);
    return production
        .kinds()
        .map(
            kinds -> {
              Map<List<Optional<T>>, List<VehicleKind>> alike = new LinkedHashMap<>();
              for (VehicleKind kind : kinds) {
                List<Optional<T>> told =
                    stretches.stream().map(days -> tells.apply(kind.builtOn(day(days)))).toList();
                alike.computeIfAbsent(told, it -> new ArrayList<>()).add(kind);
              }
              List<Map<VehicleAttribute, AttributeValue>> all = values(attributes, kinds);
              List<Group<T>> groups = new ArrayList<>();
              alike.forEach(
                  (told, some) -> {
                    DateRange window = window(editions, some);
                    List<DatedValue<T>> within = within(stretches, told, window);
                    if (!within.isEmpty()) {
                      groups.add(
                          new Group<>(joined(values(attributes, some), all), window, within));
                    }
                  });
              return groups;
            });
  }

  private static List<Map<VehicleAttribute, AttributeValue>> values(
      List<VehicleAttribute> attributes, List<VehicleKind> kinds) {
    return kinds.stream().map(kind -> kind.values(attributes)).toList();
  }

  private static LocalDate day(DateRange days) {
    return days.openStart() ? days.openEnd() ? ANY : days.last() : days.first();
  }

  /** Returns days that no scope tells apart, one stretch after another. */
  private static List<DateRange> stretches(List<RuleSet> editions, Collection<Scope> scopes) {
    return Production.days(
        Stream.concat(
            scopes.stream().flatMap(Scope::buildDays),
            editions.stream()
                .flatMap(rules -> rules.models().values().stream())
                .map(Model::production)));
  }

  private static DateRange window(List<RuleSet> editions, List<VehicleKind> kinds) {
    return kinds.stream()
        .flatMap(kind -> kind.model().stream())
        .flatMap(
            id -> editions.stream().flatMap(rules -> Stream.ofNullable(rules.models().get(id))))
        .map(Model::production)
        .reduce(DateRange::hull)
        .orElse(DateRange.ALL);
  }

  private static <T> List<DatedValue<T>> within(
      List<DateRange> stretches, List<Optional<T>> told, DateRange window) {
    List<DatedValue<T>> within = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      Optional<DateRange> days = stretches.get(i).intersect(window);
      Optional<T> what = told.get(i);
      if (days.isEmpty() || what.isEmpty()) {
        continue;
      }
      int end = within.size() - 1;
      boolean goesOn =
          end >= 0
              && within.get(end).what().equals(what.get())
              && within.get(end).days().last().plusDays(1).equals(days.get().first());
      if (goesOn) {
        within.set(end, new DatedValue<>(within.get(end).days().hull(days.get()), what.get()));
      } else {
        within.add(new DatedValue<>(days.get(), what.get()));
      }
    }
    return within;
  }

  /** Joins kinds into as few descriptions as one attribute at a time allows. */
  private static List<VehicleGroup> joined(
      List<Map<VehicleAttribute, AttributeValue>> some,
      List<Map<VehicleAttribute, AttributeValue>> all) {
    List<VehicleGroup> each =
        some.stream()
            .map(
                kind -> {
                  Map<VehicleAttribute, Set<AttributeValue>> values = new LinkedHashMap<>();
                  kind.forEach((attribute, value) -> values.put(attribute, Set.of(value)));
                  return new VehicleGroup(values);
                })
            .toList();
    return Joining.of(each).stream().map(one -> one.shortened(all)).toList();
  }
}
