package assize.measure;

import static assize.measure.SizeReadingTest.ok;
import static assize.measure.SizeReadingTest.reason;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units, gauges and threads against the published tables that lie beside. */
class UnitTest {
  private static final String TABLES = "/published/measure/";

  private static Unit unit(String symbol) {
    return Arrays.stream(Unit.values())
        .filter(u -> u.symbol().equals(symbol))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvFileSource(resources = TABLES + "units.csv", useHeadersInDisplayName = true)
  void isTheExactSize(String from, String to, String value) {
    BigFraction got = ok(MeasuredSize.parse(from)).in(unit(to)).value();
    double published = Double.parseDouble(value);
    boolean cutOff = value.length() > 16;
    if (cutOff) {
      assertThat(got.doubleValue()).isCloseTo(published, within(published * 1e-15));
    } else {
      assertThat(got).isEqualTo(Cursor.decimal(value));
    }
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void goesRoundExactlyAndIsReadBack(Unit unit) {
    Random random = new Random(unit.ordinal());
    for (Unit other : Unit.values()) {
      if (other.dimension() == unit.dimension()) {
        BigFraction value = BigFraction.of(random.nextInt(100_000), 1 + random.nextInt(640));
        Quantity quantity = new Quantity(value, unit);
        assertThat(quantity.in(other).in(unit)).isEqualTo(quantity);
      }
    }
    assertThat(ok(ToleranceLimits.parse("3 " + unit.symbol())).unit()).isEqualTo(unit);
    for (String name : unit.names()) {
      assertThat(ok(MeasuredSize.parse("3 " + name)).unit()).as(name).isEqualTo(unit);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "3/32, IN, 3/32 in", "3/2, IN, 1 1/2 in", "-3/2, IN, -1 1/2 in", "1/256, IN, 0.003906 in~",
    "1/3, IN, ≈0.3333 in", "12/5, MM, 2.4 mm", "27/1, DEG, 27°", "2/3, MM, ≈0.6667 mm",
    "1/1000000, MM, 0.000001 mm", "1000/1, MM, 1000 mm", "0/1, IN, 0 in"
  })
  void printsAsAJudgeWrites(String value, Unit unit, String text) {
    String printed = new Quantity(BigFraction.parse(value), unit).text();
    // 1/256 has eight places: it is rounded, to four digits.
    assertThat(printed).isEqualTo(text.endsWith("~") ? "≈0.003906 in" : text);
  }

  @ParameterizedTest
  @CsvFileSource(resources = TABLES + "swg.csv", useHeadersInDisplayName = true)
  void isTheImperialGauge(String gauge, String mm) {
    ToleranceLimits read = ok(ToleranceLimits.parse(gauge + " SWG"));
    assertThat(read.lower()).contains(Cursor.decimal(mm)).isEqualTo(read.upper());
  }

  @ParameterizedTest
  @CsvFileSource(resources = TABLES + "usg.csv", useHeadersInDisplayName = true)
  void isTheStatutoryGauge(String gauge, String mm, String ounces) {
    BigFraction inches = ok(Gauge.parse(gauge + " USG")).inches();
    assertThat(inches.multiply(Unit.IN.factor())).isEqualTo(Cursor.decimal(mm));
    assertThat(inches.multiply(640)).isEqualTo(Cursor.decimal(ounces));
  }

  @ParameterizedTest
  @CsvFileSource(resources = TABLES + "awg.csv", useHeadersInDisplayName = true)
  void isTheAmericanGauge(String gauge, double inch) {
    assertThat(ok(Gauge.parse(gauge + " AWG")).inches().doubleValue())
        .isCloseTo(inch, within(5.1e-7));
  }

  @ParameterizedTest
  @CsvFileSource(resources = TABLES + "threads.csv", useHeadersInDisplayName = true)
  void isTheThread(String series, String size, double major, double pitch) {
    ThreadDesignation thread =
        ok(ThreadDesignation.parse(series.equals("BA") ? size : size + " " + series));
    assertThat(thread.majorMm().doubleValue()).isCloseTo(major, within(1e-9));
    assertThat(thread.pitchMm().doubleValue()).isCloseTo(pitch, within(5.1e-7));
    assertThat(ok(ThreadDesignation.parse(thread.text()))).isEqualTo(thread);
  }

  @ParameterizedTest
  @CsvSource({
    "1/4-26 BSF, 1/4-20 UNC, '26 threads to the inch, not 20; BSF, not UNC'",
    "1/4 in x 26 tpi, 1/4-20 UNC, '26 threads to the inch, not 20'",
    "1/4 in x 20 tpi, 1/4 UNC, ''",
    "1/4-20 UNC, 1/4 BSW, 'UNC, not BSW'",
    "#10-32 UNF, #10-32, ''",
    "5/16-22 BSF, 1/4-26 BSF, '5/16 in across, not 1/4 in; 22 threads to the inch, not 26'",
    "M6, M6x0.75, 'pitch 1 mm, not 0.75 mm'",
    "M6x1, M6, ''",
    "M6, 2 BA, '6 mm across, not 4.7 mm; pitch 1 mm, not 0.81 mm; M, not BA'",
  })
  void saysHowThreadsDiffer(String found, String right, String difference) {
    ThreadDesignation one = ok(ThreadDesignation.parse(found));
    ThreadDesignation other = ok(ThreadDesignation.parse(right));
    assertThat(one.difference(other)).isEqualTo(difference);
    assertThat(one.sameAs(other)).isEqualTo(difference.isEmpty());
  }

  /** BS 93, from memory: pitch 0.9 to the power of the number, major diameter 6 p^1.2. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void associationThreadsFollowTheirLaw(int number) {
    ThreadDesignation thread = ok(ThreadDesignation.parse(number + " BA"));
    double pitch = Math.pow(0.9, number);
    double places = number < 16 ? 0.05 : 0.005;
    assertThat(thread.pitchMm().doubleValue()).isCloseTo(pitch, within(0.005));
    assertThat(thread.majorMm().doubleValue()).isCloseTo(6 * Math.pow(pitch, 1.2), within(places));
  }

  /** ASME B1.1, BS 84 and ISO 261, from memory. */
  @ParameterizedTest
  @CsvSource({
    "10-32 UNF, #10-32 UNF",
    "No. 10-32 UNF, #10-32 UNF",
    "No 8 UNC, #8-32 UNC",
    "10 UNF, #10-32 UNF",
    "1-72 UNF, #1-72 UNF",
    "1-12 UNF, 1-12 UNF",
    "2-56 UNC, #2-56 UNC",
    "2-4.5 UNC, 2-4.5 UNC",
    "1 UNC, 1-8 UNC",
    "10-32, #10 x 32 tpi",
    "8 x 32 tpi, #8 x 32 tpi",
    "0-80, #0 x 80 tpi",
    "1-8, 1 in x 8 tpi",
    "10 in x 32 tpi, 10 in x 32 tpi",
    "1/4 in. Whit., 1/4-20 BSW",
    "1/16 BSW, 1/16-60 BSW",
    "3/32 BSW, 3/32-48 BSW",
    "5/32 BSW, 5/32-32 BSW",
    "11/16 BSW, 11/16-11 BSW",
    "1 1/2 BSW, 1 1/2-6 BSW",
    "11/16 BSF, 11/16-14 BSF",
    "1 1/8 BSF, 1 1/8-9 BSF",
    "1 1/2 BSF, 1 1/2-8 BSF",
    "1 1/16 UNEF, 1 1/16-18 UNEF",
    "3-4 UNC, 3-4 UNC",
    "M7x1, M7",
    "M3.5x0.6, M3.5",
    "M42x4.5, M42"
  })
  void readsThreadsAsTheyAreCalled(String written, String thread) {
    assertThat(ok(ThreadDesignation.parse(written)).text()).isEqualTo(thread);
  }

  @Test
  void saysWhyAThreadIsNone() {
    assertThat(reason(ThreadDesignation.parse("1/4-26 UNC")))
        .isEqualTo("1/4 UNC has 20 threads to the inch");
    assertThat(reason(ThreadDesignation.parse("1/4-20 UNX"))).contains("\"UNX\"", "BSF");
    assertThat(reason(ThreadDesignation.parse("1/5 BSF")))
        .contains("BSF has no size 0.2: it has 3/16");
    assertThat(reason(ThreadDesignation.parse("1/4"))).contains("threads to the inch");
  }
}
