package assize.report.view;

import assize.date.DayWords;
import assize.evidence.Scope;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import assize.standing.Question;
import assize.standing.Vehicles;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** For which vehicles, in short words: a book lists the whole names. */
final class VehicleWords {
  private final RuleSet rules;

  VehicleWords(RuleSet rules) {
    this.rules = rules;
  }

  /** Returns as in "L41 and L45, built until 30 September 1934"; empty for every vehicle. */
  String of(Scope scope) {
    return scope.equals(Scope.EVERY) ? "" : scope.match(new Words());
  }

  /** Returns vehicles in words; empty for every vehicle. */
  String of(List<Vehicles> vehicles) {
    List<String> each = vehicles.stream().map(this::of).toList();
    return each.contains("") ? "" : String.join("; or ", each);
  }

  private String of(Vehicles vehicles) {
    List<String> parts = new ArrayList<>();
    vehicles.answers().forEach((question, answers) -> parts.add(answered(question, answers)));
    return String.join(", ", parts);
  }

  private String answered(Question question, Set<String> answers) {
    return question.match(
        new Question.Cases<String>() {
          @Override
          public String ofModel(Question.OfModel it) {
            return models(answers);
          }

          @Override
          public String ofMarket(Question.OfMarket it) {
            return markets(answers);
          }

          @Override
          public String ofPlant(Question.OfPlant it) {
            return plants(answers);
          }

          @Override
          public String ofEquipment(Question.OfEquipment it) {
            return equipment(it.equipment(), answers.contains("yes"));
          }

          @Override
          public String ofNumber(Question.OfNumber it) {
            return answers.stream()
                .map(answer -> numbers(it.table(), answer))
                .collect(Collectors.joining(" or "));
          }
        });
  }

  private String models(Collection<String> some) {
    return list(inOrder(rules.models().keySet(), some), "and");
  }

  private String markets(Collection<String> some) {
    return "for " + list(brief(rules.markets(), some), "or");
  }

  private String plants(Collection<String> some) {
    return "from " + list(brief(rules.plants(), some), "or");
  }

  private String equipment(String id, boolean fitted) {
    return (fitted ? "with " : "without ") + brief(rules.equipment(), List.of(id)).get(0);
  }

  private String table(String id) {
    return Optional.ofNullable(rules.numbers().get(id)).map(NumberTable::name).orElse(id);
  }

  private String numbers(String table, String answer) {
    return answer.isEmpty()
        ? table(table) + " outside of those ranges"
        : table(table) + " " + answer.replace("..", " to ").replace(",", ", within ");
  }

  /** Returns names up to their first comma, where that leaves them apart. */
  private static List<String> brief(Map<String, String> names, Collection<String> some) {
    long heads = names.values().stream().map(VehicleWords::head).distinct().count();
    return inOrder(names.keySet(), some).stream()
        .map(id -> names.getOrDefault(id, id))
        .map(name -> heads == names.size() ? head(name) : name)
        .map(name -> "“" + name + "”")
        .toList();
  }

  private static String head(String name) {
    int comma = name.indexOf(',');
    return comma > 0 ? name.substring(0, comma) : name;
  }

  private static List<String> inOrder(Collection<String> order, Collection<String> some) {
    List<String> known = order.stream().filter(some::contains).toList();
    List<String> all = new ArrayList<>(known);
    some.stream().filter(one -> !known.contains(one)).sorted().forEach(all::add);
    return all;
  }

  private static String list(List<String> words, String and) {
    int last = words.size() - 1;
    return last <= 0
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " " + and + " " + words.get(last);
  }

  private final class Words implements Scope.Cases<String> {
    @Override
    public String all(Scope.All scope) {
      return scope.parts().stream().map(part -> part.match(this)).collect(Collectors.joining(", "));
    }

    @Override
    public String any(Scope.Any scope) {
      return scope.parts().stream()
          .map(part -> part.equals(Scope.EVERY) ? "any vehicle" : part.match(this))
          .collect(Collectors.joining("; or "));
    }

    @Override
    public String not(Scope.Not scope) {
      return scope.part() instanceof Scope.Equipment one
          ? equipment(one.equipment(), false)
          : "but not " + scope.part().match(this);
    }

    @Override
    public String models(Scope.Models scope) {
      return VehicleWords.this.models(scope.models());
    }

    @Override
    public String built(Scope.Built scope) {
      return "built " + DayWords.of(scope.days());
    }

    @Override
    public String numbers(Scope.Numbers scope) {
      return table(scope.table()) + " " + scope.from() + " to " + scope.to();
    }

    @Override
    public String equipment(Scope.Equipment scope) {
      return VehicleWords.this.equipment(scope.equipment(), true);
    }

    @Override
    public String markets(Scope.Markets scope) {
      return VehicleWords.this.markets(scope.markets());
    }

    @Override
    public String plants(Scope.Plants scope) {
      return VehicleWords.this.plants(scope.plants());
    }

    private String equipment(String id, boolean fitted) {
      return VehicleWords.this.equipment(id, fitted);
    }
  }
}
