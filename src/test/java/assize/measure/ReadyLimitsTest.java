package assize.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Limits that were made ready decide as the exact comparison does. */
class ReadyLimitsTest {
  private static final List<String> LIMITS =
      List.of(
          "3/32 in ± 1/64 in",
          "2.4 mm ± 0.1 mm",
          "at least 5 mm",
          "at most 0.1 mm",
          "18 SWG",
          "12 mm",
          "1000000 mm ± 0.0000001 mm",
          "0.000002 mm ± 0.000001 mm");

  static IntStream seeds() {
    return IntStream.range(0, 300);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void decidesAlike(int seed) {
    Random random = new Random(seed);
    Limits limits = Limits.parse(LIMITS.get(seed % LIMITS.size())).toOptional().orElseThrow();
    ReadyLimits ready = new ReadyLimits(limits);
    double around =
        limits.upper().or(limits::lower).orElseThrow().divide(Unit.MM.factor()).doubleValue();
    for (int i = 0; i < 50; i++) {
      double off = (random.nextInt(41) - 20) / Math.pow(10, 1 + random.nextInt(9));
      double value = around * Math.abs(1 + off);
      String text =
          new BigDecimal(value).setScale(9, RoundingMode.HALF_EVEN).toPlainString() + " mm";
      String unsure =
          switch (random.nextInt(3)) {
            case 0 -> " ± 0.1 mm";
            case 1 -> " ± 0.0000001 mm";
            default -> "";
          };
      Measured measured = Measured.parse(text + unsure).toOptional().orElseThrow();
      assertSame(ready, measured, limits);
    }
  }

  @Test
  void theLimitsThemselvesAreWithin() {
    Limits limits = Limits.parse("3/32 in ± 1/64 in").toOptional().orElseThrow();
    ReadyLimits ready = new ReadyLimits(limits);
    for (String text : List.of("5/64 in", "7/64 in", "1.984375 mm", "2.778125 mm")) {
      assertThat(ready.probability(Measured.parse(text).toOptional().orElseThrow()))
          .as(text)
          .isEqualTo(1);
    }
    Measured beside = Measured.parse("2.7781250000000001 mm").toOptional().orElseThrow();
    assertThat(ready.probability(beside)).isZero();
  }

  private static void assertSame(ReadyLimits ready, Measured measured, Limits limits) {
    double probability = ready.probability(measured);
    Conformity exact = Conformity.judge(measured, limits);
    assertThat(probability >= Conformity.MEETS).as(measured.text()).isEqualTo(exact.meets());
    assertThat(probability <= Conformity.DEPARTS).as(measured.text()).isEqualTo(exact.departs());
  }
}
