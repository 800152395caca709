package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares of points, against Java's own decimals: {@link RoundingMode#HALF_EVEN}. */
class ExactMathTest {
  private static long wanted(long points, BigInteger numerator, BigInteger denominator) {
    return new BigDecimal(BigInteger.valueOf(points).multiply(numerator))
        .divide(new BigDecimal(denominator), 0, RoundingMode.HALF_EVEN)
        .longValueExact();
  }

  private static long wanted(long points, long numerator, long denominator) {
    return wanted(points, BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  /** Halves go to the even neighbor, by hand. */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 2, 0",
    "3, 1, 2, 2",
    "5, 1, 2, 2",
    "1, 3, 4, 1",
    "1, 1, 4, 0",
    "10, 1, 3, 3",
    "10, 2, 3, 7",
    "-1, 1, 2, 0",
    "-3, 1, 2, -2",
    "3, -1, 2, -2",
    "-10, 2, 3, -7",
    "0, 1, 2, 0",
    "7, 0, 2, 0"
  })
  void roundsAShare(long points, long numerator, long denominator, long part) {
    assertThat(wanted(points, numerator, denominator)).isEqualTo(part);
    assertThat(ExactMath.part(points, numerator, denominator)).isEqualTo(part);
    assertThat(ExactMath.part(points, ExactMath.of(numerator, denominator))).isEqualTo(part);
  }

  /** The product is beyond a long, beyond half of one, or just within. */
  @ParameterizedTest
  @CsvSource({
    "9223372036854775807, 1, 2",
    "9223372036854775807, 9223372036854775806, 9223372036854775807",
    "9223372036854775806, 3, 4",
    "4611686018427387904, 2, 3",
    "4611686018427387904, 3, 4",
    "4611686018427387905, 2, 5",
    "3037000500, 3037000500, 3037000501",
    "3037000499, 3037000499, 9223372036854775807",
    "-9223372036854775807, 1, 2",
    "9223372036854775807, -1, 2",
    "1, 9223372036854775806, 9223372036854775807",
    "1, 4611686018427387904, 9223372036854775807",
    "1, 4611686018427387903, 9223372036854775807"
  })
  void largeFiguresAreNoLessExact(long points, long numerator, long denominator) {
    long wanted = wanted(points, numerator, denominator);
    assertThat(ExactMath.part(points, numerator, denominator)).isEqualTo(wanted);
    assertThat(ExactMath.part(points, ExactMath.of(numerator, denominator))).isEqualTo(wanted);
  }

  @Test
  void aCreditBeyondALongIsNoLessExact() {
    BigInteger large = BigInteger.ONE.shiftLeft(70);
    BigInteger odd = BigInteger.TEN.pow(30).add(BigInteger.ONE);
    assertThat(ExactMath.part(1_000, BigFraction.of(large, odd)))
        .isEqualTo(wanted(1_000, large, odd));
    assertThat(ExactMath.part(1_000, BigFraction.of(BigInteger.ONE, odd))).isZero();
    assertThat(ExactMath.part(3, BigFraction.of(large.add(BigInteger.ONE), BigInteger.TWO.pow(69))))
        .isEqualTo(6);
    // 2^63 and −2^63 thirds: one bit more than a long's figures, and just a long's
    BigInteger edge = BigInteger.ONE.shiftLeft(63);
    for (BigInteger numerator :
        new BigInteger[] {edge, edge.negate(), edge.negate().subtract(BigInteger.ONE)}) {
      BigInteger denominator = BigInteger.valueOf(3_000_000_007L);
      assertThat(ExactMath.part(5, BigFraction.of(numerator, denominator)))
          .isEqualTo(wanted(5, numerator, denominator));
    }
  }

  @Test
  void anyShareIsAsJavaRoundsIt() {
    Random random = new Random(11);
    for (int i = 0; i < 20_000; i++) {
      long points = random.nextLong() >> random.nextInt(64);
      long denominator = 1 + (random.nextLong() >>> 1 >> random.nextInt(62));
      long numerator = random.nextLong(denominator + 1);
      assertThat(ExactMath.part(points, numerator, Math.max(1, denominator)))
          .isEqualTo(wanted(points, numerator, Math.max(1, denominator)));
    }
  }

  @Test
  void theGreaterAndTheLess() {
    BigFraction third = BigFraction.of(1, 3);
    BigFraction half = BigFraction.of(1, 2);
    assertThat(ExactMath.max(third, half)).isEqualTo(half);
    assertThat(ExactMath.max(half, third)).isEqualTo(half);
    assertThat(ExactMath.min(third, half)).isEqualTo(third);
    assertThat(ExactMath.min(half, third)).isEqualTo(third);
  }
}
