package assize.measure;

import static assize.measure.SizeReadingTest.ok;
import static assize.measure.SizeReadingTest.reason;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Probability of conformity, color difference and gloss against published values. */
class MeasureComparisonTest {
  private static final String TABLES = "/published/measure/";

  @ParameterizedTest
  @CsvFileSource(resources = TABLES + "phi.csv", useHeadersInDisplayName = true)
  void isTheNormalDistribution(double z, double phi) {
    assertThat(NormalDistribution.phi(z)).isCloseTo(phi, within(phi * 1e-12));
  }

  @Test
  void bothTailsMakeOne() {
    Random random = new Random(106);
    for (int i = 0; i < 20_000; i++) {
      double z = random.nextDouble() * 20 - 10;
      assertThat(NormalDistribution.phi(z) + NormalDistribution.phi(-z))
          .isCloseTo(1, within(1e-15));
      assertThat(NormalDistribution.phi(z)).isLessThanOrEqualTo(NormalDistribution.phi(z + 0.01));
    }
  }

  private static OptionalDouble limit(Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  @ParameterizedTest
  @CsvFileSource(resources = TABLES + "conformity.csv", useHeadersInDisplayName = true)
  void isTheProbabilityOfConformity(
      double y, double u, Double lower, Double upper, double p, double tolerance) {
    assertThat(Conformity.probability(y, u, limit(lower), limit(upper)))
        .isCloseTo(p, within(tolerance));
  }

  @Test
  void farTailsKeepTheirDigits() {
    // Between 10 and 11 above, and as far below: the same small number, Φ(−10) − Φ(−11).
    double above = Conformity.probability(0, 1, OptionalDouble.of(10), OptionalDouble.of(11));
    double below = Conformity.probability(0, 1, OptionalDouble.of(-11), OptionalDouble.of(-10));
    assertThat(above).isEqualTo(below).isCloseTo(7.619661958203076e-24, within(1e-36));
  }

  @ParameterizedTest
  @CsvFileSource(resources = TABLES + "ciede2000.csv", useHeadersInDisplayName = true)
  void isThePublishedColorDifference(
      int pair, double l1, double a1, double b1, double l2, double a2, double b2, double de) {
    CieLab first = new CieLab(l1, a1, b1);
    CieLab second = new CieLab(l2, a2, b2);
    assertThat(Ciede2000.of(first, second).de00()).as("%d", pair).isCloseTo(de, within(5e-5));
    assertThat(Ciede2000.of(second, first).de00()).isCloseTo(de, within(5e-5));
  }

  @Test
  void differenceIsSymmetricAndZeroOnlyForTheSameColor() {
    Random random = new Random(2000);
    for (int i = 0; i < 5_000; i++) {
      CieLab one = any(random);
      CieLab other = any(random);
      ColorDifference there = Ciede2000.of(one, other);
      ColorDifference back = Ciede2000.of(other, one);
      assertThat(there.de00()).isCloseTo(back.de00(), within(1e-9)).isPositive();
      assertThat(there.dL()).isEqualTo(-back.dL());
      assertThat(there.dC()).isEqualTo(-back.dC());
      assertThat(Ciede2000.of(one, one).de00()).isZero();
      CieLab opposite = new CieLab(one.l(), -one.a(), -one.b());
      assertThat(Ciede2000.of(one, opposite).de00())
          .isCloseTo(Ciede2000.of(opposite, one).de00(), within(1e-9));
    }
  }

  private static CieLab any(Random random) {
    return new CieLab(
        random.nextDouble() * 100, random.nextInt(256) - 128, random.nextInt(256) - 128);
  }

  @Test
  void toleranceIsOneSidedAndIncludesItsLimit() {
    assertThat(ColorDifference.withinTolerance(3.0, 0, 3.0)).isEqualTo(1);
    assertThat(ColorDifference.withinTolerance(3.01, 0, 3.0)).isZero();
    assertThat(ColorDifference.withinTolerance(3.0, 0.4, 3.0)).isEqualTo(0.5);
    // Φ(2), from the table beside.
    assertThat(ColorDifference.withinTolerance(2.0, 0.5, 3.0))
        .isCloseTo(0.9772498680518208, within(1e-15));
  }

  @Test
  void readsColors() {
    assertThat(ok(CieLab.parse(" 52.1, -8.4,3"))).isEqualTo(new CieLab(52.1, -8.4, 3));
    assertThat(reason(CieLab.parse("101,0,0"))).isEqualTo("L goes from 0 to 100");
    assertThat(reason(CieLab.parse("50,NaN,0"))).startsWith("\"NaN\" is not a number");
    assertThat(reason(CieLab.parse("50,Infinity,0"))).contains("is not a number");
    assertThat(reason(CieLab.parse("50,0,-201"))).isEqualTo("b goes from -200 to 200");
    assertThat(reason(CieLab.parse("52,1,8,4,3,0"))).contains("points within");
    assertThat(CieLab.parse("50, x,0"))
        .isEqualTo(assize.text.Parsed.bad("\"x\" is not a number: write a as 52.1", 4, 1));
  }

  // White, black and sRGB red: L*a*b* of the primaries as in common tables, from memory.
  @ParameterizedTest
  @CsvSource({
    "100,0,0,#ffffff,false",
    "0,0,0,#000000,false",
    "53.2408,80.0925,67.2032,#ff0000,false",
    "53.585,0,0,#808080,false",
    "60,-120,60,,true"
  })
  void showsColors(double l, double a, double b, String hex, boolean clipped) {
    Swatch swatch = Swatch.of(new CieLab(l, a, b));
    assertThat(swatch.clipped()).isEqualTo(clipped);
    assertThat(swatch.hex()).isEqualTo(hex == null ? swatch.hex() : hex).hasSize(7);
  }

  @ParameterizedTest
  @CsvFileSource(resources = TABLES + "gloss.csv", useHeadersInDisplayName = true)
  void isTheGlossLevel(int level, double from, Double to) {
    GlossBand band = GlossBand.values()[level - 1];
    GlossRange range = ok(GlossRange.parse(band.spoken()));
    assertThat(range.from()).isEqualTo(from);
    assertThat(range.to()).isEqualTo(limit(to));
    assertThat(range.judge(ok(GlossReading.parse(band.spoken()))).probability()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    "30 to 50, 41, 1, glossy",
    "30 to 50, 40, 1, even",
    "30 to 50, 50, 1, glossy",
    "30 to 50, 50 ± 4, 0.49999, glossy",
    "30 to 50, 30 ± 4, 0.49999, dull",
    "30 to 50, 40 ± 20, 0.68268, even",
    "semi-gloss, 71, 0, glossy",
    "Semi Gloss, 35, 1, dull",
    "at most 35, 36, 0, glossy",
    "40 ± 5, 35, 1, dull",
    "40.1 ± 0.2, 40.3, 1, glossy",
    "flat, velvet, 0.5, glossy",
    "satin, semi-gloss, 0, glossy",
    "30 to 60, semi-gloss, 0.71429, glossy",
    "40 to 80, semi-gloss, 0.85714, dull",
    "satin to gloss, 85, 1, glossy",
    "70 to 92, high gloss, 0.46667, glossy",
    "at least 85, high gloss, 1, dull",
    "at least 90, high gloss, 0.66667, dull",
  })
  void judgesGloss(String range, String reading, double probability, String side) {
    GlossRange right = ok(GlossRange.parse(range));
    GlossReading found = ok(GlossReading.parse(reading));
    assertThat(right.judge(found).probability()).isCloseTo(probability, within(1.1e-5));
    assertThat(right.isTooGlossy(found)).isEqualTo(side.equals("glossy"));
    assertThat(right.isTooDull(found)).isEqualTo(side.equals("dull"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"30", "50 to 30", "2001 to 2002", "shiny", "gloss to flat", "satin to", ""})
  void refusesGlossThatIsNoRange(String text) {
    assertThat(GlossRange.parse(text).toOptional()).isEmpty();
  }
}
