package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import assize.date.DateRangeSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TernaryTest {
  static List<List<String>> tables() {
    return Rows.of("three-valued.csv");
  }

  @ParameterizedTest
  @MethodSource("tables")
  void followsTheTable(List<String> row) {
    Ternary first = answer(row.get(2));
    Ternary result =
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
    assertThat(new Scope.All(List.of()).holds(FACTS)).isEqualTo(Ternary.YES);
    assertThat(new Scope.Any(List.of()).holds(FACTS)).isEqualTo(Ternary.NO);
  }

  @Test
  void oneAnswerCanOverruleWhatIsUnknown() {
    List<Scope> each = List.of(part("unknown"), part("yes"), part("no"), part("unknown"));

    assertThat(new Scope.All(each).holds(FACTS)).isEqualTo(Ternary.NO);
    assertThat(new Scope.Any(each).holds(FACTS)).isEqualTo(Ternary.YES);
    assertThat(new Scope.All(each.subList(0, 2)).holds(FACTS)).isEqualTo(Ternary.UNKNOWN);
    assertThat(new Scope.Any(each.subList(2, 4)).holds(FACTS)).isEqualTo(Ternary.UNKNOWN);
  }

  private static Scope part(String answer) {
    return new Scope.Equipment(answer);
  }

  /** Facts of which the name of a piece of equipment says what is known of it. */
  private static final Scope.Facts FACTS =
      new Scope.Facts() {
        @Override
        public Ternary isModel(Set<String> models) {
          return Ternary.UNKNOWN;
        }

        @Override
        public Ternary isBuilt(DateRangeSet days) {
          return Ternary.UNKNOWN;
        }

        @Override
        public Ternary hasNumber(String table, String from, String to) {
          return Ternary.UNKNOWN;
        }

        @Override
        public Ternary hasEquipment(String equipment) {
          return answer(equipment);
        }

        @Override
        public Ternary isForMarket(Set<String> markets) {
          return Ternary.UNKNOWN;
        }

        @Override
        public Ternary isFromPlant(Set<String> plants) {
          return Ternary.UNKNOWN;
        }
      };

  @Test
  void whatIsKnownIsYesOrNo() {
    assertThat(Ternary.of(true)).isEqualTo(Ternary.YES);
    assertThat(Ternary.of(false)).isEqualTo(Ternary.NO);
  }

  private static Ternary answer(String word) {
    return Ternary.valueOf(word.toUpperCase(Locale.ROOT));
  }
}
