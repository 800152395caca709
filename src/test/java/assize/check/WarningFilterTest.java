package assize.check;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.AcceptedWarning;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WarningFilterTest {
  private static final SourceFile FILE = new SourceFile("rules.yaml", "x".repeat(200_000));

  private static Diagnostic warning(DiagnosticCode code, int at, String... about) {
    return Diagnostic.of(code, FILE.span(at, at), "warning " + at).subjects(about);
  }

  private static AcceptedWarning accepted(DiagnosticCode code, int at, String... of) {
    return new AcceptedWarning(code, List.of(of), "because", FILE.span(at, at));
  }

  /**
   * Each warning is accepted by the first entry that covers it, as {@link AcceptedWarning} says.
   */
  @Test
  void acceptsByTheFirstEntryThatCoversADoubt() {
    Random random = new Random(5);
    DiagnosticCode[] codes = {DiagnosticCode.NO_SOURCE, DiagnosticCode.DUPLICATE_TITLE};
    for (int run = 0; run < 300; run++) {
      List<Diagnostic> found = new ArrayList<>();
      List<AcceptedWarning> all = new ArrayList<>();
      for (int i = 0; i < random.nextInt(8); i++) {
        found.add(warning(codes[random.nextInt(2)], i, names(random)));
      }
      for (int i = 0; i < random.nextInt(8); i++) {
        all.add(accepted(codes[random.nextInt(2)], 100 + i, names(random)));
      }
      WarningFilter accepting = WarningFilter.of(found, all);
      for (Diagnostic one : found) {
        Optional<AcceptedWarning> first = all.stream().filter(it -> it.covers(one)).findFirst();
        assertThat(Optional.ofNullable(accepting.accepted().get(one))).isEqualTo(first);
        assertThat(accepting.open().contains(one)).isEqualTo(first.isEmpty());
      }
      List<Integer> idle =
          all.stream()
              .filter(
                  it ->
                      accepting.accepted().keySet().stream().noneMatch(it::covers)
                          || it.of().stream()
                              .anyMatch(
                                  name ->
                                      accepting.accepted().keySet().stream()
                                          .filter(it::covers)
                                          .noneMatch(one -> one.subjects().contains(name))))
              .map(it -> it.at().start())
              .toList();
      assertThat(accepting.open())
          .filteredOn(it -> it.code() == DiagnosticCode.UNUSED_ACCEPTANCE)
          .extracting(it -> it.at().start())
          .isEqualTo(idle);
    }
  }

  private static String[] names(Random random) {
    return random.ints(random.nextInt(3), 0, 4).mapToObj(i -> "n" + i).toArray(String[]::new);
  }

  /** Each with each would be 2,500 million comparisons. */
  @Test
  void acceptsFiftyThousandDoubtsByFiftyThousandEntries() {
    List<Diagnostic> found =
        IntStream.range(0, 50_000)
            .mapToObj(i -> warning(DiagnosticCode.NO_SOURCE, i, "n" + i))
            .toList();
    List<AcceptedWarning> all =
        IntStream.range(0, 50_000)
            .mapToObj(i -> accepted(DiagnosticCode.NO_SOURCE, i, "n" + (49_999 - i)))
            .toList();
    WarningFilter accepting = WarningFilter.of(found, all);
    assertThat(accepting.open()).isEmpty();
    assertThat(Map.copyOf(accepting.accepted())).hasSize(50_000);
  }
}
