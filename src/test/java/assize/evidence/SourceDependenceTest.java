package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Five sources of which two copy a third: counting heads goes wrong where witnesses do not.
 *
 * <p>Dong, Berti-Equille and Srivastava, PVLDB 2(1), 2009, table 1, recalled.
 */
class SourceDependenceTest {
  private static final Map<String, Set<String>> COPIES =
      Map.of("S4", Set.of("S3"), "S5", Set.of("S3"));

  static List<List<String>> questions() {
    return Rows.of("source-dependence.csv");
  }

  @ParameterizedTest
  @MethodSource("questions")
  void witnessesNeverBelieveTheWrongAnswerMost(List<String> row) {
    List<String> values = row.subList(1, 6).stream().distinct().toList();
    Map<String, Long> stands = stands(row, values);
    Set<String> witnesses = SourceIndependence.of(COPIES).witnesses(stands, Map.of());
    int truth = values.indexOf(row.get(6));

    DempsterCombination weighing = weigh(values, stands, witnesses);
    for (int i = 0; i < values.size(); i++) {
      assertThat(weighing.belief(i)).isLessThanOrEqualTo(weighing.belief(truth));
    }
  }

  @ParameterizedTest
  @MethodSource("questions")
  void countingCopiesBelievesWhatTheVoteSays(List<String> row) {
    List<String> values = row.subList(1, 6).stream().distinct().toList();
    Map<String, Long> stands = stands(row, values);
    Map<String, Integer> votes = new TreeMap<>();
    row.subList(1, 6).forEach(value -> votes.merge(value, 1, Integer::sum));
    int vote = values.indexOf(row.get(7));

    DempsterCombination weighing = weigh(values, stands, stands.keySet());
    for (int i = 0; i < values.size(); i++) {
      if (i != vote) {
        assertThat(votes.get(values.get(i))).isLessThan(votes.get(row.get(7)));
        assertThat(weighing.belief(i)).isLessThan(weighing.belief(vote));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("questions")
  void aCopyThatChangedItsValueIsAWitness(List<String> row) {
    Set<String> witnesses = SourceIndependence.of(COPIES).witnesses(stands(row, row), Map.of());

    assertThat(witnesses).contains("S1", "S2", "S3").doesNotContain("S4");
    assertThat(witnesses.contains("S5")).isEqualTo(!row.get(5).equals(row.get(3)));
  }

  private static Map<String, Long> stands(List<String> row, List<String> values) {
    Map<String, Long> stands = new LinkedHashMap<>();
    for (int source = 1; source <= 5; source++) {
      stands.put("S" + source, 1L << values.indexOf(row.get(source)));
    }
    return stands;
  }

  private static DempsterCombination weigh(
      List<String> values, Map<String, Long> stands, Set<String> count) {
    List<SimpleSupport> testimonies =
        count.stream()
            .map(source -> new SimpleSupport(500, stands.getOrDefault(source, 0L)))
            .toList();
    return DempsterCombination.of(values.size(), testimonies);
  }
}
