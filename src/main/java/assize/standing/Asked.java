package assize.standing;

import assize.date.DaySet;
import assize.evidence.Kleene;
import assize.evidence.Scope;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Writes down what scopes ask for; answers that nothing is known, so that all of it is asked. */
final class Asked implements Scope.Facts {
  private final Set<Question> questions = new LinkedHashSet<>();
  private final Map<String, Set<Scope.Numbers>> numbers = new LinkedHashMap<>();

  /** Asks all of some scopes. */
  static Asked by(Collection<Scope> scopes) {
    Asked asked = new Asked();
    scopes.forEach(scope -> scope.holds(asked));
    return asked;
  }

  Set<Question> questions() {
    return questions;
  }

  Set<Scope.Numbers> numbers(String table) {
    return numbers.getOrDefault(table, Set.of());
  }

  private Kleene unknown(Question question) {
    questions.add(question);
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene isModel(Set<String> models) {
    return unknown(new Question.OfModel());
  }

  @Override
  public Kleene isBuilt(DaySet days) {
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene hasNumber(String table, String from, String to) {
    numbers
        .computeIfAbsent(table, it -> new LinkedHashSet<>())
        .add(new Scope.Numbers(table, from, to));
    return unknown(new Question.OfNumber(table));
  }

  @Override
  public Kleene hasEquipment(String equipment) {
    return unknown(new Question.OfEquipment(equipment));
  }

  @Override
  public Kleene isForMarket(Set<String> markets) {
    return unknown(new Question.OfMarket());
  }

  @Override
  public Kleene isFromPlant(Set<String> plants) {
    return unknown(new Question.OfPlant());
  }
}
