package assize.standing;

import assize.date.DaySpan;
import assize.evidence.Scope;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** Something told of every kind of vehicle and every day of production, what is alike together. */
final class Layout {
  private static final Question MODEL = new Question.OfModel();

  /** A day like any other, where no date is asked for. */
  private static final LocalDate ANY = LocalDate.EPOCH;

  private Layout() {}

  /** What is told of some days. */
  record Told<T>(DaySpan days, T what) {}

  /**
   * Vehicles of which the same is told over the production of their models.
   *
   * @param told in the order of days; days of which nothing is told are left out
   */
  record Group<T>(List<Vehicles> vehicles, DaySpan window, List<Told<T>> told) {}

  /**
   * Lays it out.
   *
   * @param editions the last of them names the kinds of vehicles; all say when models were built
   * @param scopes what may tell vehicles and days apart
   * @param tells what is told of a vehicle built on some day, if anything
   * @return nothing where there are too many kinds
   */
  static <T> Optional<List<Group<T>>> of(
      List<RuleSet> editions, Collection<Scope> scopes, Function<Case, Optional<T>> tells) {
    RuleSet rules = editions.get(editions.size() - 1);
    List<DaySpan> stretches = stretches(editions, scopes);
    return Kinds.of(rules, Asked.by(scopes))
        .map(
            kinds -> {
              Map<List<Optional<T>>, List<Map<Question, String>>> alike = new LinkedHashMap<>();
              for (Map<Question, String> kind : kinds) {
                List<Optional<T>> told =
                    stretches.stream().map(days -> tells.apply(new Case(kind, day(days)))).toList();
                alike.computeIfAbsent(told, it -> new ArrayList<>()).add(kind);
              }
              List<Group<T>> groups = new ArrayList<>();
              alike.forEach(
                  (told, some) -> {
                    DaySpan window = window(editions, some);
                    List<Told<T>> within = within(stretches, told, window);
                    if (!within.isEmpty()) {
                      groups.add(new Group<>(joined(some, kinds), window, within));
                    }
                  });
              return groups;
            });
  }

  private static LocalDate day(DaySpan days) {
    return days.openStart() ? days.openEnd() ? ANY : days.last() : days.first();
  }

  /** Returns days that no scope tells apart, one stretch after another. */
  private static List<DaySpan> stretches(List<RuleSet> editions, Collection<Scope> scopes) {
    TreeSet<LocalDate> starts = new TreeSet<>(Set.of(LocalDate.MIN));
    Stream.concat(
            scopes.stream().flatMap(Scope::buildDays),
            editions.stream().flatMap(rules -> rules.models().values().stream()).map(Model::built))
        .forEach(
            span -> {
              starts.add(span.first());
              if (!span.openEnd()) {
                starts.add(span.last().plusDays(1));
              }
            });
    List<DaySpan> stretches = new ArrayList<>();
    for (LocalDate from : starts) {
      LocalDate next = starts.higher(from);
      stretches.add(new DaySpan(from, next == null ? LocalDate.MAX : next.minusDays(1)));
    }
    return stretches;
  }

  private static DaySpan window(List<RuleSet> editions, List<Map<Question, String>> kinds) {
    return kinds.stream()
        .flatMap(kind -> Stream.ofNullable(kind.get(MODEL)))
        .flatMap(
            id -> editions.stream().flatMap(rules -> Stream.ofNullable(rules.models().get(id))))
        .map(Model::built)
        .reduce(DaySpan::hull)
        .orElse(DaySpan.ALL);
  }

  private static <T> List<Told<T>> within(
      List<DaySpan> stretches, List<Optional<T>> told, DaySpan window) {
    List<Told<T>> within = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      Optional<DaySpan> days = stretches.get(i).intersect(window);
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
        within.set(end, new Told<>(within.get(end).days().hull(days.get()), what.get()));
      } else {
        within.add(new Told<>(days.get(), what.get()));
      }
    }
    return within;
  }

  /** Joins kinds into as few descriptions as one fact at a time allows. */
  private static List<Vehicles> joined(
      List<Map<Question, String>> some, List<Map<Question, String>> all) {
    List<Vehicles> joined =
        Joining.of(
            some.stream()
                .map(
                    kind -> {
                      Map<Question, Set<String>> answers = new LinkedHashMap<>();
                      kind.forEach((question, answer) -> answers.put(question, Set.of(answer)));
                      return new Vehicles(answers);
                    })
                .toList());
    return joined.stream().map(one -> one.without(possible(one, all))).toList();
  }

  /** Returns what vehicles of the same models may answer to each question. */
  private static Map<Question, Set<String>> possible(
      Vehicles vehicles, List<Map<Question, String>> all) {
    Map<Question, Set<String>> possible = new HashMap<>();
    Set<String> models = vehicles.answers().getOrDefault(MODEL, Set.of());
    for (Map<Question, String> kind : all) {
      String model = kind.get(MODEL);
      kind.forEach(
          (question, answer) -> {
            if (question.equals(MODEL) || model == null || models.contains(model)) {
              possible.computeIfAbsent(question, it -> new LinkedHashSet<>()).add(answer);
            }
          });
    }
    return possible;
  }
}
