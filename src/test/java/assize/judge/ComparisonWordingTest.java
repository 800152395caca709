package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Verdict;
import assize.judgment.Judgment;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The values compared, in the words that a report says them in. */
class ComparisonWordingTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      models: {B1: {name: Bench one, production: 1934-01/1934-12}}
      colors:
        green: {name: Field green, lab: [50, 2.6772, -79.7751], tolerance: 2.1}
        leaf: {name: Leaf green, lab: [50, 0, -82.7485]}
        brown: {name: Bark brown, lab: [60, 20, 20]}
        black: {name: Lamp black}
      finishes:
        nickel: {name: nickel plate}
        bright-nickel: {name: bright nickel plate, kind_of: nickel}
        chrome: {name: chromium plate}
      materials: {ash: seasoned ash, beech: steamed beech}
      conditions: {sound: 1, worn: 0.6}
      areas:
        all:
          name: All
          items:
            other-thing: {title: Other thing, points: 1, expect: {color: green}}
            third-thing: {title: Third, points: 1, choices: {left: above}, expect: {choice: left}}
            thing:
              title: Thing
              points: 1
              choices: {left: on the left, right: on the right}
              expect: {%s}
      """;

  private static final String RECORD =
      """
      record: one
      rules: bench
      vehicle: {name: One, model: B1}
      built: 1934-06-15
      observations:
        %s
        thing: {%s}
      """;

  private static final String CODE =
      "date_code: {pattern: '(?P<month>[A-L])(?P<year>[0-9])',"
          + " months: {A: 1, B: 2, C: 3, D: 4, E: 5, F: 6}, lead_time: %s}";

  private static void assertSaid(
      String expected, String other, String found, Verdict verdict, String words) {
    Judgment judgment = Judging.judge(RULES.formatted(expected), RECORD.formatted(other, found));
    assertThat(Judging.comparison(judgment, "thing").words()).isEqualTo(words);
    assertThat(Judging.comparison(judgment, "thing").verdict()).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "finish: nickel | finish: nickel | CORRECT | found: nickel plate",
        "finish: nickel | finish: bright-nickel | CORRECT"
            + " | found: bright nickel plate, a kind of nickel plate",
        "finish: nickel | finish: chrome | INCORRECT | found: chromium plate",
        "finish: nickel | finish: other | INCORRECT | found: something else",
        "material: ash | material: beech | INCORRECT | found: steamed beech",
        "material: ash | material: other | INCORRECT | found: something else",
        "choice: left | choice: left | CORRECT | found: on the left",
        "choice: left | choice: right | INCORRECT | found: on the right",
        "condition: graded | condition: worn | PARTLY_CORRECT | found: worn",
        "present: yes | present: yes | CORRECT | found: present",
        "present: yes | present: no | INCORRECT | found: not present",
        "works: no | works: yes | INCORRECT | found: works",
        "works: yes | works: no | INCORRECT | found: does not work",
        "count: 6 | count: 6 | CORRECT | counted 6",
        "count: 6 | count: 5 | INCORRECT | counted 5, 1 off",
        "count: 6 to 8 | count: 11 | INCORRECT | counted 11, 3 off",
        "part_number: [A-4120] | part_number: a 4120 | CORRECT | stamped a 4120",
        "part_number: [A-4120] | part_number: Z-9 | INCORRECT | stamped Z-9",
        "size: 1/4-20 UNC | size: 1/4-20 UNC | CORRECT | found: 1/4-20 UNC",
      })
  void whatWasFound(String expected, String found, Verdict verdict, String words) {
    assertSaid(expected, "", found, verdict, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "size: 10 mm ± 0.5 mm | size: 10.2 mm | CORRECT | measured 10.2 mm",
        "size: 10 mm ± 0.5 mm | size: 12 mm | INCORRECT | measured 12 mm",
        "size: 10 mm ± 0.5 mm | size: 1 in | INCORRECT"
            + " | measured 1 in, expected ≈0.374 in to ≈0.4134 in",
        "size: 10 mm ± 0.5 mm | size: 1 in ± 0.01 in | INCORRECT"
            + " | measured 1 in ± 0.01 in, expected ≈0.374 in to ≈0.4134 in,"
            + " standard uncertainty 0.005 in, right with probability below 0.0001",
        "size: 6 mm | size: 1/4-20 UNC | NOT_ASSESSED"
            + " | what was found can't be compared with what is expected",
        "size: 1/4-20 UNC | size: 1/4-26 BSF | INCORRECT"
            + " | found: 1/4-26 BSF; 26 threads to the inch, not 20; BSF, not UNC",
        "size: at most 2 mm | size: 1 kg | NOT_ASSESSED | 1 kg is not a size of this kind",
        "size: at most 2 mm | size: 2 mm ± 0.1 mm | UNDECIDED"
            + " | measured 2 mm ± 0.1 mm, standard uncertainty 0.05 mm, right with probability 0.5",
        "size: at most 2 mm | size: 1 mm ± 0.1 mm | CORRECT"
            + " | measured 1 mm ± 0.1 mm, standard uncertainty 0.05 mm,"
            + " right with probability above 0.9999",
        "size: at most 2 mm | size: 3 mm ± 0.1 mm | INCORRECT"
            + " | measured 3 mm ± 0.1 mm, standard uncertainty 0.05 mm,"
            + " right with probability below 0.0001",
        "gloss: 30 to 50 | gloss: 41 | CORRECT | found: 41 gloss units",
        "gloss: 30 to 50 | gloss: 29 | INCORRECT | found: 29 gloss units, too dull",
        "gloss: 30 to 50 | gloss: 51 | INCORRECT | found: 51 gloss units, too glossy: over-restored",
        "gloss: 30 to 50 | gloss: 40 ± 20 | UNDECIDED"
            + " | found: 40 ± 20 gloss units, standard uncertainty 10, right with probability 0.6827",
        "gloss: 30 to 50 | gloss: 50 ± 6 | UNDECIDED"
            + " | found: 50 ± 6 gloss units, may be too glossy, standard uncertainty 3,"
            + " right with probability 0.5",
        "gloss: 30 to 50 | gloss: 30 ± 6 | UNDECIDED"
            + " | found: 30 ± 6 gloss units, may be too dull, standard uncertainty 3,"
            + " right with probability 0.5",
      })
  void whatWasMeasured(String expected, String found, Verdict verdict, String words) {
    assertSaid(expected, "", found, verdict, words);
  }

  /**
   * ΔE00 2.0425 is pair 1 of Sharma, Wu and Dalal 2005, table 1; 44.4347 was worked out from their
   * formulas apart from the program.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "color: green | color: green | CORRECT | by eye: Field green",
        "color: [black, green] | color: {lab: [60, 20, 20]} | INCORRECT"
            + " | by instrument: L* 60 a* 20 b* 20 against L* 50 a* 2.6772 b* −79.7751,"
            + " ΔE00 44.43, 2.1 allowed",
        "color: green | color: leaf | CORRECT | by eye: Leaf green, ΔE00 2.04, 2.1 allowed",
        "color: green | color: brown | INCORRECT | by eye: Bark brown, ΔE00 44.43, 2.1 allowed",
        "color: green | color: black | INCORRECT | by eye: Lamp black",
        "color: black | color: green | INCORRECT | by eye: Field green",
        "color: green | color: other | INCORRECT | by eye: none of the rule set's colors",
        "color: black | color: {lab: [20, 0, 0]} | NOT_ASSESSED"
            + " | Lamp black has no reading in the rule set, so it must be matched by eye",
        "color: green | color: {lab: [50, 0, -82.7485]} | CORRECT"
            + " | by instrument: L* 50 a* 0 b* −82.7485 against L* 50 a* 2.6772 b* −79.7751,"
            + " ΔE00 2.04, 2.1 allowed",
        "color: green | color: {chip: leaf, lab: [50, 0, -82.7485]} | CORRECT"
            + " | by instrument: L* 50 a* 0 b* −82.7485 against L* 50 a* 2.6772 b* −79.7751,"
            + " ΔE00 2.04, 2.1 allowed; by eye Leaf green",
      })
  void colors(String expected, String found, Verdict verdict, String words) {
    assertSaid(expected, "", found, verdict, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        " | color: green | NOT_ASSESSED | the color of Other thing was not assessed",
        "other-thing: {color: black} | color: black | CORRECT | by eye the same as Other thing",
        "other-thing: {color: green} | color: green | CORRECT | by eye the same as Other thing",
        "other-thing: {color: black} | color: {chip: black, lab: [20, 0, 0]} | CORRECT"
            + " | by eye the same as Other thing",
        "other-thing: {color: black} | color: green | INCORRECT | by eye not the same as Other thing",
        "other-thing: {color: other} | color: green | INCORRECT | by eye not the same as Other thing",
        "other-thing: {color: other} | color: other | NOT_ASSESSED"
            + " | what was found of it and of Other thing does not tell whether they are the same",
        "'other-thing: {color: {lab: [20, 0, 0]}}' | color: black | NOT_ASSESSED"
            + " | what was found of it and of Other thing does not tell whether they are the same",
        "other-thing: {color: leaf} | color: green | CORRECT"
            + " | against Other thing, L* 50 a* 2.6772 b* −79.7751 against L* 50 a* 0 b* −82.7485:"
            + " ΔE00 2.04, 3 allowed",
        "'other-thing: {color: {lab: [50, 0, -82.7485]}}' | color: green | CORRECT"
            + " | against Other thing, L* 50 a* 2.6772 b* −79.7751 against L* 50 a* 0 b* −82.7485:"
            + " ΔE00 2.04, 3 allowed",
        "'other-thing: {color: {chip: green, lab: [50, 0, -82.7485]}}' | color: green | CORRECT"
            + " | against Other thing, L* 50 a* 2.6772 b* −79.7751 against L* 50 a* 0 b* −82.7485:"
            + " ΔE00 2.04, 3 allowed",
        "other-thing: {color: brown} | color: green | INCORRECT"
            + " | against Other thing, L* 50 a* 2.6772 b* −79.7751 against L* 60 a* 20 b* 20:"
            + " ΔE00 44.43, 3 allowed",
      })
  void theColorOfAnother(String other, String found, Verdict verdict, String words) {
    String of = other == null ? "" : other.replace("'", "");
    assertSaid("color: {same_as: other-thing}", of, found, verdict, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "P6M..P0D | D4 | CORRECT | D4 is April 1934; the code repeats, it could be another decade's",
        "P6M..P0D | Q4 | INCORRECT | Q4 is not a code of this form",
        "P6M..P0D | L4 | INCORRECT"
            + " | L4 means no day: month L: not listed, and no number from 1 to 12",
        "P6M..P3M | E4 | INCORRECT"
            + " | E4 is May 1934, too late to have been fitted; the code repeats,"
            + " it could be another decade's",
        "P3M..P0D | A4 | PARTLY_CORRECT"
            + " | A4 is January 1934, earlier than the window from 15 March 1934 to 15 June 1934:"
            + " a doubt; the code repeats, it could be another decade's",
      })
  void dateCodes(String made, String found, Verdict verdict, String words) {
    assertSaid(CODE.formatted(made), "", "date_code: " + found, verdict, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "1934 | CORRECT | 1934 is 1934",
        "1990 | INCORRECT | 1990 means no day near the build day",
      })
  void aCodeWithAWholeYearDoesNotRepeat(String found, Verdict verdict, String words) {
    assertSaid(
        "date_code: {pattern: '(?P<year>[0-9]{4})', lead_time: P1Y..P0D}",
        "", "date_code: " + found, verdict, words);
  }
}
