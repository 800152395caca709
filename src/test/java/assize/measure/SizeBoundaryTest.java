package assize.measure;

import static assize.measure.SizeReadingTest.ok;
import static assize.measure.SizeReadingTest.reason;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import assize.text.Parsed;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The last that is still right, and the first that is not, by the four decimals that are printed;
 * and what is said of a finding.
 */
class SizeBoundaryTest {
  @ParameterizedTest
  @CsvSource({
    "0.95, true, false",
    "0.94996, true, false",
    "0.94994, false, false",
    "0.05, false, true",
    "0.05004, false, true",
    "0.05006, false, false"
  })
  void ninetyFiveInAHundredMeetsAndFiveDeparts(double p, boolean meets, boolean departs) {
    Conformity conformity = new Conformity(p, false);
    assertThat(conformity.meets()).isEqualTo(meets);
    assertThat(conformity.departs()).isEqualTo(departs);
  }

  /** Without an uncertainty it is a plain comparison, limits included. */
  @ParameterizedTest
  @CsvSource({"2, 1", "1.9999, 0", "3, 1", "3.0001, 0", "2.5, 1"})
  void limitsBelongToWhatIsRight(double y, double p) {
    assertThat(Conformity.probability(y, 0, OptionalDouble.of(2), OptionalDouble.of(3)))
        .isEqualTo(p);
    ToleranceLimits limits = ok(ToleranceLimits.parse("2 mm to 3 mm"));
    assertThat(limits.contains(BigFraction.from(y, 1e-9, 1000))).isEqualTo(p == 1);
  }

  @Test
  void limitsTheWrongWayRoundAreAFault() {
    assertThatThrownBy(
            () -> Conformity.probability(1, 0, OptionalDouble.of(3), OptionalDouble.of(2)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(Conformity.probability(3, 0, OptionalDouble.of(3), OptionalDouble.of(3)))
        .isEqualTo(1);
    assertThat(reason(ToleranceLimits.parse("3 mm to 2 mm"))).contains("larger");
    assertThat(ok(ToleranceLimits.parse("3 mm to 3 mm")).contains(BigFraction.of(3))).isTrue();
  }

  @Test
  void aFractionBehindAWholeNumberIsLessThanOne() {
    assertThat(ok(MeasuredSize.parse("1 1/2 in")).value()).isEqualTo(BigFraction.of(381, 10));
    assertThat(MeasuredSize.parse("1 127/128 in").toOptional()).isPresent();
    assertThat(reason(MeasuredSize.parse("1 2/2 in"))).contains("is one or more");
    assertThat(reason(MeasuredSize.parse("1 3/2 in"))).contains("is one or more");
  }

  private static Quantity inches(int numerator, int denominator) {
    return new Quantity(BigFraction.of(numerator, denominator), Unit.IN);
  }

  /** What a sheet or a table gives in parts is what a record says in one text. */
  @Test
  void aSizeOfPartsIsTheSizeAsItIsWritten() {
    MeasuredSize plain = MeasuredSize.of(inches(3, 32), Optional.empty(), Optional.empty());
    assertThat(plain).isEqualTo(ok(MeasuredSize.parse("3/32 in")));
    MeasuredSize sure =
        MeasuredSize.of(inches(3, 32), Optional.of(inches(1, 64)), Optional.of(inches(1, 10)));
    assertThat(sure.u()).isEqualTo(ok(MeasuredSize.parse("3/32 in ± 1/64 in")).u()).isPositive();
    assertThat(sure.text()).isEqualTo("3/32 in ± 1/64 in");
    MeasuredSize stepped =
        MeasuredSize.of(inches(3, 32), Optional.empty(), Optional.of(inches(1, 64)));
    assertThat(stepped.u())
        .isEqualTo(ok(MeasuredSize.parse("3/32 in, to 1/64 in")).u())
        .isCloseTo(25.4 / 64 / Math.sqrt(12), within(1e-12));
    assertThat(stepped.text()).isEqualTo("3/32 in, to 1/64 in");
    assertThat(stepped.value()).isEqualTo(BigFraction.of(127 * 3, 5 * 32));
  }

  /** Sixty minutes are a degree, sixty seconds a minute. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5° 30'      | 5.5°",
        "5° 30′      | 5.5°",
        "5° 30’      | 5.5°",
        "5° 30' 36\" | 5.51°",
        "5° 30′ 36″  | 5.51°"
      })
  void anglesAreReadInTheirParts(String parts, String whole) {
    assertThat(ok(MeasuredSize.parse(parts)).value())
        .isEqualTo(ok(MeasuredSize.parse(whole)).value());
  }

  @ParameterizedTest
  @CsvSource({
    "18 SWG, 18 SWG = 0.048 in",
    "7/0 SWG, 7/0 SWG = 0.5 in",
    "000 SWG, 3/0 SWG = 0.372 in",
    "16 USG, 16 USG = 1/16 in"
  })
  void aGaugeIsSaidWithItsThickness(String written, String said) {
    assertThat(ok(Gauge.parse(written)).text()).isEqualTo(said);
  }

  @Test
  void eachSeriesEndsWhereItsTableEnds() {
    assertThat(ok(Gauge.parse("10 AWG")).text()).startsWith("10 AWG").contains("0.1019");
    assertThat(reason(Gauge.parse("51 SWG"))).isEqualTo("SWG has no 51: it goes from 7/0 to 50");
    assertThat(reason(Gauge.parse("39 USG"))).contains("7/0 to 38");
    assertThat(reason(Gauge.parse("41 AWG"))).contains("4/0 to 40");
    assertThat(Gauge.parse("40 AWG").toOptional()).isPresent();
    assertThat(Gauge.parse("4/0 AWG").toOptional()).isPresent();
    assertThat(Gauge.parse("5/0 AWG").toOptional()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "41, 41 gloss units",
    "41 GU, 41 GU",
    "41 units, 41 units",
    "41 ± 2, 41 ± 2 gloss units",
    "satin, satin"
  })
  void glossIsSaidWithItsUnits(String written, String said) {
    assertThat(ok(GlossReading.parse(written)).spoken()).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "0 to 2000, true",
    "0 to 2001, false",
    "40 to 40, true",
    "41 to 40, false",
    "satin to satin, true",
    "gloss to satin, false",
    "40 GU to 50 GU, true",
    "40 units to 50 units, true"
  })
  void glossGoesFromFlatToPolishedMetal(String text, boolean right) {
    assertThat(GlossRange.parse(text).toOptional().isPresent())
        .as(reason(GlossRange.parse(text)))
        .isEqualTo(right);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0,0,0        | true",
        "100,200,-200 | true",
        "100,-200,200 | true",
        "100.1,0,0    | false",
        "-0.1,0,0     | false",
        "50,200.1,0   | false",
        "50,0,-200.1  | false"
      })
  void colorsHaveTheirBounds(String text, boolean right) {
    assertThat(CieLab.parse(text).toOptional().isPresent()).isEqualTo(right);
  }

  /** What is wrong is shown where it stands. */
  @Test
  void theNumberThatIsWrongIsShown() {
    assertThat(place("50,x,3")).isEqualTo(3);
    assertThat(place("50,2,x")).isEqualTo(5);
  }

  private static int place(String color) {
    return CieLab.parse(color).<Integer>match(good -> -1, Parsed.Bad::at);
  }

  /**
   * Near black, lightness is in proportion to light, by 903.3 (CIE 15), and so is a channel, by
   * 12.92 (IEC 61966-2-1): both from memory.
   */
  @ParameterizedTest
  @CsvSource({"1, #040404", "2, #070707", "5, #111111", "8, #181818"})
  void nearBlackIsShownDark(double lightness, String hex) {
    assertThat(Swatch.of(new CieLab(lightness, 0, 0))).isEqualTo(new Swatch(hex, false));
  }

  /** From a hue of 350 to one of 10 degrees it is 20 degrees on, not 340 back. */
  @Test
  void hueGoesTheShortWayRound() {
    double on = Ciede2000.of(hue(350), hue(10)).dH();
    assertThat(on).isPositive().isCloseTo(2 * 40 * Math.sin(Math.toRadians(10)), within(1.5));
    assertThat(Ciede2000.of(hue(10), hue(350)).dH()).isCloseTo(-on, within(1e-12));
    assertThat(Ciede2000.of(hue(170), hue(190)).dH()).isPositive();
    assertThat(Ciede2000.of(hue(190), hue(170)).dH()).isNegative();
    assertThat(Ciede2000.of(hue(20), hue(100)).dH()).isPositive();
    assertThat(Ciede2000.of(hue(300), hue(60)).dH()).isPositive();
    assertThat(Ciede2000.of(hue(60), hue(300)).dH()).isNegative();
  }

  private static CieLab hue(double degrees) {
    double radians = Math.toRadians(degrees);
    return new CieLab(50, 40 * Math.cos(radians), 40 * Math.sin(radians));
  }

  /** One letter more, less or other, or two that changed places, is a slip; two of them are not. */
  @ParameterizedTest
  @CsvSource({
    "inch, inhc, true",
    "inch, icnh, true",
    "inch, nich, true",
    "inch, inck, true",
    "inch, kinch, true",
    "inch, inchk, true",
    "inch, inh, true",
    "inch, nch, true",
    "inch, inc, true",
    "inch, hcni, false",
    "inch, inkk, false",
    "inch, ixxch, false",
    "inch, in, false",
    "inch, inchkk, false",
    "inch, knick, false",
    "inch, cnih, false"
  })
  void aSlipIsOne(String right, String written, boolean slip) {
    assertThat(UnitNames.oneSlip(right, written)).isEqualTo(slip);
    assertThat(UnitNames.oneSlip(written, right)).isEqualTo(slip);
  }
}
