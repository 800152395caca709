package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Verdict;
import assize.judge.Judging.Compared;
import assize.judgment.Judgment;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each aspect: what was found against what is expected. */
class FindingComparisonTest {
  private static final String HEAD =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      scale: {method: sum, out_of: 10, early_part_credit: 1/4}
      models: {B1: {name: Bench one, production: 1934-01/1934-12}}
      colors:
        green: {name: Green, lab: [50, 2.6772, -79.7751], tolerance: 2.1}
        far-green: {name: Far green, lab: [60, 20, 20]}
        black: {name: Black}
      finishes:
        nickel: {name: nickel plate}
        bright-nickel: {name: bright nickel plate, kind_of: nickel}
        chrome: {name: chromium plate}
      materials: {ash: ash, beech: beech}
      origins: {original: 1, reproduction: 0.7}
      conditions: {sound: 1, worn: 0.6}
      areas:
        all:
          name: All
          items:
            other-thing:
              title: Other thing
              points: 1
              expect: {color: green}
            thing:
              title: Thing
              points: 1
              choices: {left: left, right: right}
              expect: {%s}
      """;

  private static final String RECORD =
      """
      record: one
      rules: bench
      vehicle: {name: One, model: B1}
      built: %s
      observations:
        other-thing: {color: {lab: [50, 0, -82.7485]}}
        thing: {%s}
      """;

  private static Compared compare(String expected, String found, String built) {
    Judgment judgment = Judging.judge(HEAD.formatted(expected), RECORD.formatted(built, found));
    return Judging.comparison(judgment, "thing");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "finish: nickel | finish: nickel | correct | 1",
        "finish: nickel | finish: bright-nickel | correct | 1",
        "'finish: {nickel: 1, bright-nickel: 0.9}' | finish: bright-nickel | partly correct | 0.9",
        "finish: bright-nickel | finish: nickel | incorrect | 0",
        "finish: nickel | finish: other | incorrect | 0",
        "'finish: [nickel, chrome]' | finish: chrome | correct | 1",
        "'finish: {nickel: 1, chrome: 1/2}' | finish: chrome | partly correct | 0.5",
        "material: ash | material: beech | incorrect | 0",
        "'material: {ash: 1, beech: 0.8}' | material: beech | partly correct | 0.8",
        "choice: left | choice: left | correct | 1",
        "choice: left | choice: right | incorrect | 0",
        "present: yes | present: yes | correct | 1",
        "works: yes | works: no | incorrect | 0",
        "count: 6 | count: 6 | correct | 1",
        "count: 6 | count: 5 | incorrect | 0",
        "count: 6 to 8 | count: 8 | correct | 1",
        "'count: {of: 6, loss_per_piece: 1/6}' | count: 4 | partly correct | 0.666666667",
        "'count: {of: 6, loss_per_piece: 1/6}' | count: 7 | partly correct | 0.833333333",
        "'count: {of: 6, loss_per_piece: 1/2}' | count: 1 | incorrect | 0",
        "origin: graded | origin: reproduction | partly correct | 0.7",
        "origin: graded | origin: unknown | incorrect | 0",
        "'origin: {original: 1, reproduction: 0.9}' | origin: reproduction | partly correct | 0.9",
        "condition: graded | condition: worn | partly correct | 0.6",
        "part_number: 'A-4120[0-9]' | part_number: a 41207 | correct | 1",
        "part_number: [A-41207] | part_number: A-41270 | incorrect | 0",
        "'part_number: {A-41207: 1, S-41207: 0.8}' | part_number: S41207 | partly correct | 0.8",
        "gloss: 30 to 50 | gloss: 41 | correct | 1",
        "gloss: 30 to 50 | gloss: 70 | incorrect | 0",
        "size: 1/4-20 UNC | size: 1/4-20 UNC | correct | 1",
        "size: 1/4-20 UNC | size: 1/4-26 BSF | incorrect | 0",
      })
  void findsVerdictAndCredit(String expected, String found, String verdict, double credit) {
    Compared comparison = compare(unquoted(expected), unquoted(found), "1934-06");
    assertThat(comparison.verdict().word()).isEqualTo(verdict);
    assertThat(comparison.credit().doubleValue())
        .isCloseTo(credit, org.assertj.core.api.Assertions.within(1e-9));
  }

  private static String unquoted(String text) {
    return text.startsWith("'") ? text.substring(1, text.length() - 1) : text;
  }

  /** Common practice, no source: the limit belongs to what is allowed. */
  @Test
  void aPinstripeOnTheLimitMeets() {
    Compared comparison = compare("size: 3/32 in ± 1/64 in", "size: 5/64 in", "1934-06");
    assertThat(comparison.verdict()).isEqualTo(Verdict.CORRECT);
    assertThat(compare("size: 3/32 in ± 1/64 in", "size: 1.98 mm", "1934-06").verdict())
        .isEqualTo(Verdict.INCORRECT);
  }

  /** On the limit with an uncertainty: Φ(0) = one half; JCGM 106:2012, 7.4. */
  @Test
  void aMeasurementTooCoarseToDecideIsOpen() {
    Compared comparison = compare("size: at most 2 mm", "size: 2 mm ± 0.1 mm", "1934-06");
    assertThat(comparison.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(comparison.credit()).isEqualTo(BigFraction.of(1, 2));
    assertThat(comparison.words()).contains("probability 0.5");
  }

  @Test
  void tooGlossyIsOverRestored() {
    assertThat(compare("gloss: 30 to 50", "gloss: 70", "1934-06").words())
        .isEqualTo("found: 70 gloss units, too glossy: over-restored");
    assertThat(compare("gloss: 30 to 50", "gloss: 10", "1934-06").words())
        .isEqualTo("found: 10 gloss units, too dull");
  }

  /** Pair 1 of Sharma, Wu and Dalal 2005, table 1: ΔE00 2.0425. */
  @Test
  void aColorIsMeasuredAgainstItsChip() {
    Compared comparison = compare("color: green", "color: {lab: [50, 0, -82.7485]}", "1934-06");
    assertThat(comparison.verdict()).isEqualTo(Verdict.CORRECT);
    assertThat(comparison.words()).contains("ΔE00 2.04, 2.1 allowed");
    assertThat(
            compare(
                    "color: {any: [green], tolerance: 2}",
                    "color: {lab: [50, 0, -82.7485]}",
                    "1934")
                .verdict())
        .isEqualTo(Verdict.INCORRECT);
  }

  @Test
  void theInstrumentDecidesOverTheEye() {
    Compared comparison =
        compare("color: green", "color: {chip: far-green, lab: [50, 2.6772, -79.7751]}", "1934");
    assertThat(comparison.verdict()).isEqualTo(Verdict.CORRECT);
    assertThat(comparison.words()).contains("eye and instrument disagree");
  }

  @Test
  void byEyeTheChipItselfMeetsAndAnotherDoesNot() {
    assertThat(compare("color: green", "color: green", "1934").verdict())
        .isEqualTo(Verdict.CORRECT);
    assertThat(compare("color: green", "color: far-green", "1934").verdict())
        .isEqualTo(Verdict.INCORRECT);
    assertThat(compare("color: black", "color: other", "1934").verdict())
        .isEqualTo(Verdict.INCORRECT);
    assertThat(compare("color: black", "color: {lab: [20, 0, 0]}", "1934").verdict())
        .isEqualTo(Verdict.NOT_ASSESSED);
  }

  @Test
  void theSameColorAsAnotherItem() {
    Compared comparison =
        compare("color: {same_as: other-thing}", "color: {lab: [50, 2.6772, -79.7751]}", "1934-06");
    assertThat(comparison.verdict()).isEqualTo(Verdict.CORRECT);
    assertThat(comparison.words())
        .isEqualTo(
            "against Other thing, L* 50 a* 2.6772 b* −79.7751 against L* 50 a* 0 b* −82.7485:"
                + " ΔE00 2.04, 3 allowed");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "color: black | color: other | incorrect",
        "color: other | color: other | not assessed",
        "color: black | color: black | correct",
        "color: '{lab: [20, 0, 0]}' | color: black | not assessed",
        "color: black | color: '{lab: [20, 0, 0]}' | not assessed",
        "color: '{lab: [20, 0, 0]}' | color: other | not assessed"
      })
  void colorsThatCannotBeHeldAgainstEachOtherAreNotShown(
      String other, String found, String verdict) {
    Judgment judgment =
        Judging.judge(
            HEAD.formatted("color: {same_as: other-thing}"),
            """
            record: one
            rules: bench
            vehicle: {name: One, model: B1}
            observations:
              other-thing: {%s}
              thing: {%s}
            """
                .formatted(other.replace("'", ""), found.replace("'", "")));
    assertThat(Judging.comparison(judgment, "thing").verdict().word()).isEqualTo(verdict);
  }

  private static final String CODE =
      "date_code: {pattern: '(?P<month>[A-L])(?P<year>[0-9])',"
          + " months: {A: 1, B: 2, C: 3, D: 4, E: 5, F: 6}, lead_time: P6M..P0D}";

  @ParameterizedTest
  @CsvSource({
    "D4, 1934-06-15, correct, 1",
    "F4, 1934-06-15, correct, 1",
    "A4, 1934-06-15, correct, 1",
    "F3, 1934-06-15, partly correct, 0.25",
    "F4, 1934-03-01, incorrect, 0"
  })
  void aDateCodeFitsItsWindow(String code, String built, String verdict, double credit) {
    Compared comparison = compare(CODE, "date_code: " + code, built);
    assertThat(comparison.verdict().word()).isEqualTo(verdict);
    assertThat(comparison.credit().doubleValue()).isEqualTo(credit);
  }

  @Test
  void saysAnachronismAndThatCodesRepeat() {
    assertThat(compare(CODE, "date_code: F4", "1934-03-01").words())
        .isEqualTo(
            "F4 is June 1934, after the vehicle was built: an anachronism;"
                + " the code repeats, it could be another decade's");
  }

  @Test
  void saysWhatAPartNumberMisses() {
    assertThat(compare("part_number: [A-4120]", "part_number: A-4210", "1934").words())
        .isEqualTo("stamped A-4210; A4210 for A4120: two digits changed places");
  }
}
