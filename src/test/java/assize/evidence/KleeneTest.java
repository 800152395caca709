package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import assize.date.DaySet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KleeneTest {
  static List<List<String>> tables() {
    return Rows.of("three-valued.csv");
  }

  @ParameterizedTest
  @MethodSource("tables")
  void followsTheTable(List<String> row) {
    Kleene first = answer(row.get(2));
    Kleene result =
        switch (row.get(1)) {
          case "and" -> first.and(answer(row.get(3)));
          case "or" -> first.or(answer(row.get(3)));
          case "not" -> first.not();
          default -> throw new IllegalArgumentException(row.get(1));
        };

    assertThat(result).isEqualTo(answer(row.get(4)));
  }

  @Test
  void bothTablesAreWhole() {
    assertThat(tables()).hasSize(2 * (9 + 9 + 3));
  }

  @Test
  void allAndAnyOfNoneAreTheNeutralAnswers() {
    assertThat(new Scope.All(List.of()).holds(FACTS)).isEqualTo(Kleene.YES);
    assertThat(new Scope.Any(List.of()).holds(FACTS)).isEqualTo(Kleene.NO);
  }

  @Test
  void oneAnswerCanOverruleWhatIsUnknown() {
    List<Scope> each = List.of(part("unknown"), part("yes"), part("no"), part("unknown"));

    assertThat(new Scope.All(each).holds(FACTS)).isEqualTo(Kleene.NO);
    assertThat(new Scope.Any(each).holds(FACTS)).isEqualTo(Kleene.YES);
    assertThat(new Scope.All(each.subList(0, 2)).holds(FACTS)).isEqualTo(Kleene.UNKNOWN);
    assertThat(new Scope.Any(each.subList(2, 4)).holds(FACTS)).isEqualTo(Kleene.UNKNOWN);
  }

  private static Scope part(String answer) {
    return new Scope.Equipment(answer);
  }

  /** Facts of which the name of a piece of equipment says what is known of it. */
  private static final Scope.Facts FACTS =
      new Scope.Facts() {
        @Override
        public Kleene isModel(Set<String> models) {
          return Kleene.UNKNOWN;
        }

        @Override
        public Kleene isBuilt(DaySet days) {
          return Kleene.UNKNOWN;
        }

        @Override
        public Kleene hasNumber(String table, String from, String to) {
          return Kleene.UNKNOWN;
        }

        @Override
        public Kleene hasEquipment(String equipment) {
          return answer(equipment);
        }

        @Override
        public Kleene isForMarket(Set<String> markets) {
          return Kleene.UNKNOWN;
        }

        @Override
        public Kleene isFromPlant(Set<String> plants) {
          return Kleene.UNKNOWN;
        }
      };

  @Test
  void whatIsKnownIsYesOrNo() {
    assertThat(Kleene.of(true)).isEqualTo(Kleene.YES);
    assertThat(Kleene.of(false)).isEqualTo(Kleene.NO);
  }

  private static Kleene answer(String word) {
    return Kleene.valueOf(word.toUpperCase(Locale.ROOT));
  }
}
