package assize.standing;

import assize.evidence.Scope;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Every kind of vehicle that some scopes tell apart. */
final class Kinds {
  /** The most kinds that are laid out for one aspect. */
  static final int MOST = 1000;

  /** The most kinds that are laid out where each item has so many. */
  private static final int MOST_OF_ALL = 200_000;

  private static final Question MODEL = new Question.OfModel();

  private final RuleSet rules;
  private final Asked asked;
  private final int most;

  private Kinds(RuleSet rules, Asked asked) {
    this.rules = rules;
    this.asked = asked;
    int items = rules.areas().stream().mapToInt(area -> area.items().size()).sum();
    this.most = Math.min(MOST, MOST_OF_ALL / Math.max(1, items));
  }

  /** Returns them; nothing where they are too many. */
  static Optional<List<Map<Question, String>>> of(RuleSet rules, Asked asked) {
    return new Kinds(rules, asked).kinds();
  }

  private Optional<List<Map<Question, String>>> kinds() {
    List<Map<Question, String>> kinds = new ArrayList<>();
    kinds.add(new LinkedHashMap<>());
    List<Question> questions = new ArrayList<>(asked.questions());
    // The model is always among them: it says when a vehicle can have been built.
    questions.remove(MODEL);
    if (!rules.models().isEmpty()) {
      questions.add(0, MODEL);
    }
    for (Question question : questions) {
      List<Map<Question, String>> more = new ArrayList<>();
      for (Map<Question, String> kind : kinds) {
        for (String answer : answers(question, kind)) {
          Map<Question, String> one = new LinkedHashMap<>(kind);
          one.put(question, answer);
          more.add(one);
        }
      }
      if (more.size() > most) {
        return Optional.empty();
      }
      kinds = more;
    }
    return Optional.of(kinds);
  }

  /** Returns the answers that such a vehicle may give; at least one. */
  private Set<String> answers(Question question, Map<Question, String> kind) {
    return question.match(
        new Question.Cases<Set<String>>() {
          @Override
          public Set<String> ofModel(Question.OfModel it) {
            return some(rules.models().keySet());
          }

          @Override
          public Set<String> ofMarket(Question.OfMarket it) {
            return some(rules.markets().keySet());
          }

          @Override
          public Set<String> ofPlant(Question.OfPlant it) {
            return some(rules.plants().keySet());
          }

          @Override
          public Set<String> ofEquipment(Question.OfEquipment it) {
            return new LinkedHashSet<>(List.of("yes", "no"));
          }

          @Override
          public Set<String> ofNumber(Question.OfNumber it) {
            return ranges(it.table(), Optional.ofNullable(kind.get(MODEL)));
          }
        });
  }

  private static Set<String> some(Set<String> names) {
    return names.isEmpty() ? Set.of("") : names;
  }

  /** Returns which ranges can hold one number together, of the series that such a model has. */
  private Set<String> ranges(String name, Optional<String> model) {
    Set<Scope.Numbers> all = asked.numbers(name);
    Set<String> found = new LinkedHashSet<>();
    NumberTable table = rules.numbers().get(name);
    for (Series series : table == null ? List.<Series>of() : table.series()) {
      boolean has =
          series.models().isEmpty() || model.isEmpty() || series.models().contains(model.get());
      if (!has || series.first().isEmpty()) {
        continue;
      }
      long least = series.first().get(0).number();
      TreeSet<Long> tried = new TreeSet<>(Set.of(least));
      long most = series.last().map(it -> it.number()).orElse(Long.MAX_VALUE);
      for (Scope.Numbers range : all) {
        series.numberOf(range.from()).ifPresent(tried::add);
        series.numberOf(range.to()).ifPresent(to -> tried.add(to + 1));
      }
      for (long number : tried) {
        if (number >= least && number <= most) {
          found.add(
              all.stream()
                  .filter(range -> holds(series, range, number))
                  .map(range -> Case.range(range.from(), range.to()))
                  .collect(Collectors.joining(",")));
        }
      }
    }
    return found.isEmpty() ? Set.of("") : found;
  }

  private static boolean holds(Series series, Scope.Numbers range, long number) {
    OptionalLong from = series.numberOf(range.from());
    OptionalLong to = series.numberOf(range.to());
    return from.isPresent()
        && to.isPresent()
        && from.getAsLong() <= number
        && number <= to.getAsLong();
  }
}
