package assize.standing;

import assize.date.DaySet;
import assize.date.DaySpan;
import assize.evidence.Kleene;
import assize.evidence.Scope;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One kind of vehicle, every fact known that sources ask for, built on some day. */
record Case(Map<Question, String> answers, LocalDate day) implements Scope.Facts {
  /** Writes a range of numbers as an answer has it. */
  static String range(String from, String to) {
    return from + ".." + to;
  }

  private Kleene among(Question question, Set<String> asked) {
    String answer = answers.get(question);
    return answer == null ? Kleene.NO : Kleene.of(asked.contains(answer));
  }

  @Override
  public Kleene isModel(Set<String> models) {
    return among(new Question.OfModel(), models);
  }

  @Override
  public Kleene isBuilt(DaySet days) {
    return Kleene.of(days.overlaps(DaySpan.day(day)));
  }

  @Override
  public Kleene hasNumber(String table, String from, String to) {
    String answer = answers.getOrDefault(new Question.OfNumber(table), "");
    return Kleene.of(List.of(answer.split(",", -1)).contains(range(from, to)));
  }

  @Override
  public Kleene hasEquipment(String equipment) {
    return among(new Question.OfEquipment(equipment), Set.of("yes"));
  }

  @Override
  public Kleene isForMarket(Set<String> markets) {
    return among(new Question.OfMarket(), markets);
  }

  @Override
  public Kleene isFromPlant(Set<String> plants) {
    return among(new Question.OfPlant(), plants);
  }
}
