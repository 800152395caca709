package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
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
    assertThat(Kleene.all(List.of())).isEqualTo(Kleene.YES);
    assertThat(Kleene.any(List.of())).isEqualTo(Kleene.NO);
  }

  @Test
  void oneAnswerCanOverruleWhatIsUnknown() {
    List<Kleene> each = List.of(Kleene.UNKNOWN, Kleene.YES, Kleene.NO, Kleene.UNKNOWN);

    assertThat(Kleene.all(each)).isEqualTo(Kleene.NO);
    assertThat(Kleene.any(each)).isEqualTo(Kleene.YES);
    assertThat(Kleene.all(each.subList(0, 2))).isEqualTo(Kleene.UNKNOWN);
    assertThat(Kleene.any(each.subList(2, 4))).isEqualTo(Kleene.UNKNOWN);
  }

  @Test
  void whatIsKnownIsYesOrNo() {
    assertThat(Kleene.of(true)).isEqualTo(Kleene.YES);
    assertThat(Kleene.of(false)).isEqualTo(Kleene.NO);
  }

  private static Kleene answer(String word) {
    return Kleene.valueOf(word.toUpperCase(Locale.ROOT));
  }
}
