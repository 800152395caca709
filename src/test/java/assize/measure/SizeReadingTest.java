package assize.measure;

import static org.assertj.core.api.Assertions.assertThat;

import assize.text.Parsed;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sizes as people write them. */
class SizeReadingTest {
  private static final List<String> VALID =
      List.of(
          "3/32 in ± 1/64 in",
          "3/32 in +1/64 in -0 in",
          "2 to 3 mm",
          "1-1/2 in ± 1/16",
          "at least 5 mm",
          "18 SWG ± 0.05 mm",
          "12 V ± 5 %",
          "5 ft 6½ in",
          "1° 30' ± 15 arcmin",
          "2.38 mm ± 0.02 mm (k=1)",
          "2.4 mm, to 0.1 mm",
          "1 1/8-7 UNC",
          "#10-32 UNF",
          "M6x0.75",
          "2 BA",
          "1/4 in x 20 tpi",
          "semi-gloss",
          "40 ± 5",
          "52.1,-8.4,3.0",
          "0000 AWG");

  private static final List<Function<String, Parsed<?>>> READERS =
      List.of(
          ToleranceLimits::parse,
          MeasuredSize::parse,
          Gauge::parse,
          ThreadDesignation::parse,
          GlossRange::parse,
          GlossReading::parse,
          CieLab::parse);

  static <T> T ok(Parsed<T> parsed) {
    return parsed.match(
        value -> value,
        bad -> {
          throw new AssertionError(bad.reason());
        });
  }

  static String reason(Parsed<?> parsed) {
    return parsed.match(value -> "read as " + value, Parsed.Bad::reason);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3/32 in ± 1/64 in      | 5/64 in to 7/64 in",
        "3/32 in +/- 1/64 in    | 5/64 in to 7/64 in",
        "3/32in+-1/64in         | 5/64 in to 7/64 in",
        "3/32 in +1/64 in -0 in | 3/32 in to 7/64 in",
        "3/32 +1/64 -1/32 in    | 1/16 in to 7/64 in",
        "2.4 mm ± 0.1           | 2.3 mm to 2.5 mm",
        "2 mm to 3 mm           | 2 mm to 3 mm",
        "2 to 3 mm              | 2 mm to 3 mm",
        "1 1/2 in ± 1/16        | 1 7/16 in to 1 9/16 in",
        "1-1/2 in               | 1 1/2 in",
        "1½ in                  | 1 1/2 in",
        "⅜″                     | 3/8 in",
        "at least 5 mm          | at least 5 mm",
        "at most 12 LB          | at most 12 lb",
        "18 SWG                 | 0.048 in",
        "16 USG                 | 1/16 in",
        "18 SWG to 16 SWG       | 0.048 in to 0.064 in",
        "18 SWG +0.002 in -0    | 0.048 in to 0.05 in",
        "12 V ± 5 %             | 11.4 V to 12.6 V",
        "5 ft 6 in              | 66 in",
        "5'-6\"                  | 66 in",
        "5′-6½″                 | 66 1/2 in",
        "5 ft-6 1/2 in ± 1/4    | 66 1/4 in to 66 3/4 in",
        "27° ± 1°               | 26° to 28°",
        "1° 30'                 | 90 arcmin",
        "-1 mm to 2 mm          | -1 mm to 2 mm",
        "5/16 in ± 0.254 mm     | 0.3025 in to 0.3225 in",
      })
  void readsLimits(String text, String limits) {
    ToleranceLimits read = ok(ToleranceLimits.parse(text));
    assertThat(read.textIn(read.unit())).isEqualTo(limits);
  }

  /** Values by the names of the characters in the Unicode standard, from memory. */
  @ParameterizedTest
  @CsvSource({
    "½, 1/2", "⅓, 1/3", "⅔, 2/3", "¼, 1/4", "¾, 3/4", "⅕, 1/5", "⅖, 2/5", "⅗, 3/5", "⅘, 4/5",
    "⅙, 1/6", "⅚, 5/6", "⅐, 1/7", "⅛, 1/8", "⅜, 3/8", "⅝, 5/8", "⅞, 7/8", "⅑, 1/9", "⅒, 1/10",
    "2⅚, 17/6", "2 ⅒, 21/10"
  })
  void readsEachFractionThatIsOneCharacter(String written, String value) {
    assertThat(ok(ToleranceLimits.parse(written + " mm")).lower())
        .contains(BigFraction.parse(value));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2,4 mm          | 0 | 3 | write a point, not a comma: 2.4",
        "1,000 mm        | 0 | 5 | the comma may mean a point or thousands: write 1.000 or 1000",
        "2 gal           | 2 | 3 | \"gal\" may be imperial or US: write imp gal or US gal",
        "18 gauge        | 3 | 5 | there are several gauges: write SWG, USG or AWG",
        "2 mmm           | 2 | 3 | no unit is called \"mmm\": did you mean mm?",
        "3/0 in          | 0 | 3 | nothing can be divided by zero",
        "3 mm to 2 mm    | 0 | 12 | the larger comes last: 2 mm to 3 mm",
        "3 mm ± 1 lb     | 7 | 4 | lb measures a mass, mm a length",
        "3 mm +1         | 7 | 0 | say the other side too: 3/32 in +1/64 in -0 in",
        "2-3 mm          | 1 | 1 | write \"to\" between two sizes: 2 mm to 3 mm",
        "5' - 6\"         | 3 | 1 | write \"to\" between two sizes: 2 mm to 3 mm",
        "5'-6'           | 2 | 1 | write \"to\" between two sizes: 2 mm to 3 mm",
        "4               | 1 | 0 | a unit is missing here: write one such as mm, in or °",
        "-4 kg           | 0 | 5 | a mass is never below zero",
        "60 SWG          | 0 | 6 | SWG has no 60: it goes from 7/0 to 50",
        "18 SWG to 16    | 10 | 2 | write a unit after each number: 18 SWG to 16 SWG, 18 SWG ± 0.002 in",
        "18 to 16 SWG    | 0 | 2 | write a unit after each number: 18 SWG to 16 SWG, 18 SWG ± 0.002 in",
        "18 SWG ± 1      | 9 | 1 | write a unit after each number: 18 SWG to 16 SWG, 18 SWG ± 0.002 in",
        "2 mm wide       | 5 | 4 | \"wide\" was not understood",
      })
  void saysKindlyWhatIsWrong(String text, int at, int length, String why) {
    assertThat(ToleranceLimits.parse(text)).isEqualTo(Parsed.bad(why, at, length));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5/64 in                   | 1.984375 | 0",
        "2 3/32 in                 | 53.18125 | 0",
        "2.38 mm ± 0.02 mm         | 2.38     | 0.01",
        "2.38 mm ± 0.02            | 2.38     | 0.01",
        "2.38 ± 0.02 mm            | 2.38     | 0.01",
        "2.38 ± 0.02 mm (k=1)      | 2.38     | 0.02",
        "3/32 ± 1/64 in            | 2.38125  | 0.1984375",
        "2.38 mm ± 0.02 mm (k=1)   | 2.38     | 0.02",
        "2.4 mm, to 0.1 mm         | 2.4      | 0.028867513459481287",
        "1 in ± 1/64 in (k = 2)    | 25.4     | 0.1984375",
      })
  void readsMeasuredSizes(String text, double mm, double u) {
    MeasuredSize read = ok(MeasuredSize.parse(text));
    assertThat(read.value().doubleValue()).isEqualTo(mm);
    assertThat(read.u()).isCloseTo(u, org.assertj.core.api.Assertions.within(1e-16));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 mm to 3 mm         | 5 | 2 | write one size; how finely it was read comes after a comma: 2.4 mm, to 0.1 mm",
        "2.4 mm,              | 6 | 1 | say how finely it was read after the comma: 2.4 mm, to 0.1 mm",
        "2 mm ± 0.1 mm (k=0)  | 14 | 5 | k is above zero: write (k=2)",
      })
  void refusesWhatIsNoMeasuredSize(String text, int at, int length, String why) {
    assertThat(MeasuredSize.parse(text)).isEqualTo(Parsed.bad(why, at, length));
  }

  // Common practice, no source: a stripe of 3/32 inch may be a sixty-fourth out either way.
  @Test
  void stripeOnTheLimitConforms() {
    ToleranceLimits limits = ok(ToleranceLimits.parse("3/32 in ± 1/64 in"));
    assertThat(Conformity.judge(ok(MeasuredSize.parse("5/64 in")), limits))
        .isEqualTo(new Conformity(1, true));
    assertThat(Conformity.judge(ok(MeasuredSize.parse("1.984375 mm")), limits).meets()).isTrue();
    assertThat(Conformity.judge(ok(MeasuredSize.parse("1.984374 mm")), limits).departs()).isTrue();
    Conformity open = Conformity.judge(ok(MeasuredSize.parse("5/64 in ± 1/64 in")), limits);
    assertThat(open.meets() || open.departs()).isFalse();
  }

  @Test
  void noPrefixAndNoSlipOfAValidTextThrows() {
    Random random = new Random(1934);
    String signs = " 0/.,-+±½'\"°xMk(=)%İıſ\u0000\uD83D";
    for (String text : VALID) {
      for (int end = 0; end <= text.length(); end++) {
        for (Function<String, Parsed<?>> reader : READERS) {
          checkPlace(text.substring(0, end), reader);
          int at = random.nextInt(text.length());
          char other = signs.charAt(random.nextInt(signs.length()));
          checkPlace(text.substring(0, at) + other + text.substring(at), reader);
          checkPlace(text.substring(0, at) + other + text.substring(at + 1), reader);
        }
      }
    }
  }

  private static void checkPlace(String text, Function<String, Parsed<?>> reader) {
    int end = reader.apply(text).match(value -> 0, bad -> bad.at() + bad.length());
    assertThat(end).as(text).isBetween(0, text.length());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/4-20 UNC", "20 SWG", "2 IN", "SATIN", "1/4 WHIT", "1 inch"})
  void readsTheSameInTurkish(String text) {
    Locale before = Locale.getDefault();
    List<String> plain = READERS.stream().map(r -> r.apply(text).toString()).toList();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(READERS.stream().map(r -> r.apply(text).toString()).toList()).isEqualTo(plain);
      assertThat(new Quantity(BigFraction.of(24, 10), Unit.MM).text()).isEqualTo("2.4 mm");
    } finally {
      Locale.setDefault(before);
    }
    assertThat(plain).anyMatch(said -> said.startsWith("Ok"));
  }
}
