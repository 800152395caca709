package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import assize.evidence.DisputeState;
import assize.evidence.Grade;
import assize.evidence.SimpleSupport;
import assize.evidence.WeighingResult;
import assize.ruleset.Scale;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The table of who settles whom in docs/weighing-sources.md, worked out by the program. */
class SettlingTableTest {
  private static List<SimpleSupport> sources(String grades, long says) {
    return Arrays.stream(grades.split(", "))
        .map(it -> Scale.usual().grades().getOrDefault(Grade.valueOf(it), 0))
        .map(weight -> new SimpleSupport(weight, says))
        .toList();
  }

  @Test
  void saysWhatIsWorkedOut() throws IOException {
    List<List<String>> rows =
        Files.readAllLines(Path.of("docs/weighing-sources.md")).stream()
            .filter(line -> line.matches("\\| ([A-D](, [A-D])*|for .*) \\|.*"))
            .map(line -> List.of(line.substring(2, line.length() - 2).split(" \\| ")))
            .filter(row -> row.size() == 7)
            .toList();
    List<String> against = rows.get(0);
    assertThat(rows).hasSize(6);
    for (List<String> row : rows.subList(1, rows.size())) {
      for (int i = 1; i < row.size(); i++) {
        List<SimpleSupport> all = new ArrayList<>(sources(row.get(0), 0b01));
        all.addAll(sources(against.get(i), 0b10));
        WeighingResult result = WeighingResult.of(2, all, Scale.usual().settledAt(), Scale.LIVE_AT);
        boolean settled = result.state() == DisputeState.SETTLED;
        BigDecimal belief =
            BigDecimal.valueOf(result.weighing().belief(0)).setScale(3, RoundingMode.HALF_EVEN);
        assertThat(belief + (settled && belief.doubleValue() > 0.5 ? "*" : ""))
            .as(row.get(0) + " against " + against.get(i))
            .isEqualTo(row.get(i));
      }
    }
  }
}
