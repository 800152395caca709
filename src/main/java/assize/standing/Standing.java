package assize.standing;

import assize.date.DaySpan;
import assize.evidence.Claim;
import assize.evidence.Kleene;
import assize.evidence.Scope;
import assize.judge.WithoutVehicle;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What the sources on one aspect of one item come to, for every vehicle that the rule set knows.
 *
 * @param courses one for each kind of vehicle that fares differently, in the order of the models
 * @param tooMany whether the sources ask for so many facts together that nothing is laid out
 */
public record Standing(AspectRule rule, List<Course> courses, boolean tooMany) {
  private static final Question MODEL = new Question.OfModel();

  /** A day like any other, where no date is asked for. */
  private static final LocalDate ANY = LocalDate.EPOCH;

  public Standing {
    courses = List.copyOf(courses);
  }

  /** Lays out what is held of one aspect. */
  public static Standing of(RuleSet rules, Item item, AspectRule rule) {
    List<Scope> scopes =
        Stream.concat(Stream.of(item.scope()), rule.claims().stream().map(Claim::scope)).toList();
    Optional<List<Map<Question, String>>> kinds = Kinds.of(rules, Asked.by(scopes));
    return kinds
        .map(all -> new Laying(rules, item, rule, scopes).laidOut(all))
        .orElseGet(() -> new Standing(rule, List.of(), true));
  }

  /** One aspect while it is laid out. */
  private record Laying(RuleSet rules, Item item, AspectRule rule, List<Scope> scopes) {
    Standing laidOut(List<Map<Question, String>> kinds) {
      List<DaySpan> stretches = stretches();
      Map<List<Optional<List<Claim>>>, List<Map<Question, String>>> alike = new LinkedHashMap<>();
      for (Map<Question, String> kind : kinds) {
        List<Optional<List<Claim>>> told =
            stretches.stream().map(days -> speaking(kind, days)).toList();
        alike.computeIfAbsent(told, it -> new ArrayList<>()).add(kind);
      }
      List<Course> courses = new ArrayList<>();
      alike.forEach(
          (told, some) -> {
            DaySpan window = window(some);
            List<Stand> stands = stands(stretches, told, window);
            if (!stands.isEmpty()) {
              courses.add(new Course(joined(some, kinds), window, stands));
            }
          });
      return new Standing(rule, courses, false);
    }

    /** Returns the claims that speak of such a vehicle; nothing where the item does not apply. */
    private Optional<List<Claim>> speaking(Map<Question, String> kind, DaySpan days) {
      LocalDate day = days.openStart() ? days.openEnd() ? ANY : days.last() : days.first();
      Case facts = new Case(kind, day);
      return item.scope().holds(facts) == Kleene.YES
          ? Optional.of(
              rule.claims().stream()
                  .filter(claim -> claim.scope().holds(facts) == Kleene.YES)
                  .toList())
          : Optional.empty();
    }

    /** Returns days that no scope tells apart, one stretch after another. */
    private List<DaySpan> stretches() {
      TreeSet<LocalDate> starts = new TreeSet<>(Set.of(LocalDate.MIN));
      Stream.concat(
              scopes.stream().flatMap(Scope::buildDays),
              rules.models().values().stream().map(Model::built))
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

    private DaySpan window(List<Map<Question, String>> kinds) {
      return kinds.stream()
          .flatMap(kind -> Optional.ofNullable(kind.get(MODEL)).stream())
          .flatMap(id -> Optional.ofNullable(rules.models().get(id)).stream())
          .map(Model::built)
          .reduce(DaySpan::hull)
          .orElse(DaySpan.ALL);
    }

    private List<Stand> stands(
        List<DaySpan> stretches, List<Optional<List<Claim>>> told, DaySpan window) {
      List<Stand> stands = new ArrayList<>();
      for (int i = 0; i < stretches.size(); i++) {
        Optional<DaySpan> days = stretches.get(i).intersect(window);
        Optional<List<Claim>> speaking = told.get(i);
        if (days.isEmpty() || speaking.isEmpty()) {
          continue;
        }
        int end = stands.size() - 1;
        boolean goesOn =
            end >= 0
                && stands.get(end).speaking().equals(speaking.get())
                && stands.get(end).days().last().plusDays(1).equals(days.get().first());
        if (goesOn) {
          Stand before = stands.remove(end);
          stands.add(
              new Stand(before.days().hull(days.get()), before.speaking(), before.outcome()));
        } else {
          stands.add(
              new Stand(
                  days.get(),
                  speaking.get(),
                  WithoutVehicle.weigh(rules, item.id(), rule, speaking.get())));
        }
      }
      return stands;
    }

    /** Joins kinds into as few descriptions as one fact at a time allows. */
    private static List<Vehicles> joined(
        List<Map<Question, String>> some, List<Map<Question, String>> all) {
      List<Vehicles> joined = new ArrayList<>();
      for (Map<Question, String> kind : some) {
        Map<Question, Set<String>> answers = new LinkedHashMap<>();
        kind.forEach((question, answer) -> answers.put(question, Set.of(answer)));
        joined.add(new Vehicles(answers));
      }
      boolean again = true;
      while (again) {
        again = false;
        for (int i = 0; i < joined.size() && !again; i++) {
          for (int j = i + 1; j < joined.size() && !again; j++) {
            Optional<Vehicles> both = joined.get(i).joined(joined.get(j));
            if (both.isPresent()) {
              joined.set(i, both.get());
              joined.remove(j);
              again = true;
            }
          }
        }
      }
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
}
