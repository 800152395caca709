package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.judge.NumberDating.Dated;
import assize.judgment.BuildDate.Basis;
import assize.judgment.Judgment;
import assize.judgment.Notice;
import assize.ruleset.NumberTable;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Number tables and what a vehicle's build days rest on. */
class BuildDateResolverTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      models:
        X1: {name: Dropside, production: 1932-03-01/1936-08-31}
        X2: {name: Box van, production: 1933-01-01/1936-08-31}
      plants: {north: North works, south: South works}
      number_tables:
        chassis:
          name: Chassis number
          series:
            - prefix: X-
              plant: north
              first_numbers: {1001: 1932-03-14, 2450: 1933-01, 4120: 1934-01-02}
              last: {number: 6875, built: 1936-08-28}
              reserved:
                - {numbers: 3000..3049, purpose: exhibition vehicles, built: 1933-10}
                - {numbers: 5000..5099, purpose: never issued}
            - prefix: XS-
              suffix: K
              models: [X1]
              plant: south
              first_numbers: {1: 1934-09, 900: 1935-06}
              last: {number: 1310, built: 1936-02}
      areas:
        all:
          name: All
          items:
            thing: {title: Thing, points: 1, expect: {present: yes}}
            north-thing: {title: North, points: 1, plant: [north], expect: {present: yes}}
            late-thing:
              title: Late
              points: 1
              numbers: {chassis: X-4500..X-6000}
              expect: {present: yes}
      """;

  private static List<Dated> dated(String number) {
    return dated(RULES, number);
  }

  private static List<Dated> dated(String rules, String number) {
    NumberTable table = Judging.rules(rules).numberTables().get("chassis");
    return table == null ? List.of() : NumberDating.of(table, number);
  }

  /** Worked by hand: the days between two entries, shared out by number. */
  @ParameterizedTest
  @CsvSource({
    "X-1001, 1932-03-14, 1932-03-14, 1932-03-14",
    // 14 March 1932 to 1 January 1933 is 293 days; 725 of 1449 numbers, 146.6 days
    "x1726, 1932-03-14, 1933-01-01, 1932-08-08",
    "X 2450, 1933-01-01, 1933-01-31, 1933-01-01",
    "X-2451, 1933-01-01, 1934-01-02, 1933-01-01",
    // the last number was given out on the last day
    "X-6875, 1936-08-28, 1936-08-28, 1936-08-28",
    "X-6874, 1934-01-02, 1936-08-28, 1936-08-28",
    "XS-1-K, 1934-09-01, 1934-09-30, 1934-09-01",
    "XS 1310 k, 1936-02-01, 1936-02-29, 1936-02-29"
  })
  void aNumberIsDatedByItsNeighbors(String number, String first, String last, String likely) {
    assertThat(dated(number)).hasSize(1);
    Dated one = dated(number).get(0);
    assertThat(one.days().map(DateRange::first).map(DateRangeFormatter::iso)).contains(first);
    assertThat(one.days().map(DateRange::last).map(DateRangeFormatter::iso)).contains(last);
    assertThat(one.likely().map(DateRangeFormatter::iso)).contains(likely);
  }

  @Test
  void aNumberNamedForAYearIsNoLaterThanTheNextEntry() {
    String years = RULES.replace("2450: 1933-01,", "2450: 1933, 3100: 1933-04,");
    assertThat(dated(years, "X-2450").get(0).days())
        .contains(DateRange.of(LocalDate.of(1933, 1, 1), LocalDate.of(1933, 4, 1)));
  }

  @Test
  void reservedBlocksStandApart() {
    assertThat(dated("X-3010").get(0).days().map(DateRangeFormatter::of)).contains("October 1933");
    assertThat(dated("X-5010").get(0).days()).isEmpty();
    assertThat(dated("X-5010").get(0).reserved().map(block -> block.purpose()))
        .contains("never issued");
  }

  @ParameterizedTest
  @CsvSource({"Y-1001", "X-", "X-12A", "XS-5", "''"})
  void whatFitsNoSeriesIsNotDated(String number) {
    assertThat(dated(number)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"X-1000", "X-6876"})
  void whatLiesOutsideHasNoDays(String number) {
    assertThat(dated(number).get(0).days()).isEmpty();
  }

  private static Judgment judge(String record) {
    return Judging.judge(RULES, "record: one\nrules: bench\n" + record);
  }

  @Test
  void theRecordComesFirstThenTheNumberThenTheModel() {
    String number = "vehicle: {name: One, model: X1}\nnumbers: {chassis: X-4388}\n";
    Judgment byRecord = judge(number + "built: {date: 1934-05, basis: plate}\n");
    assertThat(byRecord.build().basis()).isEqualTo(Basis.RECORD);
    assertThat(DateRangeFormatter.of(byRecord.build().days())).isEqualTo("May 1934");
    Judgment byNumber = judge(number);
    assertThat(byNumber.build().basis()).isEqualTo(Basis.NUMBER);
    // 268 of 2755 numbers in the 969 days from 2 January 1934: 94.3 days
    assertThat(byNumber.build().likely().map(DateRangeFormatter::iso)).contains("1934-04-06");
    Judgment byModel = judge("vehicle: {name: One, model: X2}\n");
    assertThat(byModel.build().basis()).isEqualTo(Basis.MODEL);
    assertThat(byModel.build().days().first()).isEqualTo("1933-01-01");
  }

  @Test
  void aContradictionIsSaidAndTheFirstFollowed() {
    Judgment judgment =
        judge("vehicle: {name: One, model: X1}\nnumbers: {chassis: X-1500}\nbuilt: 1935-02\n");
    assertThat(DateRangeFormatter.of(judgment.build().days())).isEqualTo("February 1935");
    assertThat(judgment.notices()).extracting(Notice::kind).containsExactly(Notice.Kind.BUILD_DAYS);
    assertThat(judgment.notices().get(0).words())
        .contains("the record says February 1935", "Chassis number X-1500 says");
  }

  @Test
  void anOpenEndIsClosedByTheModelsProduction() {
    Judgment judgment = judge("vehicle: {name: One, model: X1}\nbuilt: 1936-02/..\n");
    assertThat(judgment.build().days())
        .isEqualTo(
            DateRange.of(java.time.LocalDate.of(1936, 2, 1), java.time.LocalDate.of(1936, 8, 31)));
  }

  @Test
  void theSeriesOfANumberTellsThePlant() {
    Judgment judgment = judge("vehicle: {name: One, model: X1}\nnumbers: {chassis: XS-5K}\n");
    assertThat(Judging.item(judgment, "north-thing").verdict().word()).isEqualTo("not applicable");
    assertThat(Judging.item(judgment, "late-thing").verdict().word()).isEqualTo("not applicable");
    Judgment unknown = judge("vehicle: {name: One, model: X1}\n");
    assertThat(Judging.item(unknown, "north-thing").verdict().word()).isEqualTo("may apply");
    assertThat(Judging.item(unknown, "late-thing").verdict().word()).isEqualTo("may apply");
  }

  @ParameterizedTest
  @CsvSource({
    "X-4499, not applicable",
    "X-4500, not assessed",
    "X-6000, not assessed",
    "X-6001, not applicable"
  })
  void aRangeOfNumbersIncludesItsEnds(String number, String verdict) {
    Judgment judgment =
        judge("vehicle: {name: One, model: X1}\nnumbers: {chassis: " + number + "}\n");
    assertThat(Judging.item(judgment, "late-thing").verdict().word()).isEqualTo(verdict);
  }

  @Test
  void aNumberOfAnotherModelsSeriesIsSaid() {
    Judgment judgment = judge("vehicle: {name: One, model: X2}\nnumbers: {chassis: XS-5K}\n");
    assertThat(judgment.notices()).extracting(Notice::kind).contains(Notice.Kind.NUMBER);
  }

  @Test
  void whereNoModelIsNamedNothingIsContradicted() {
    String rules =
        """
        rule_set: bench
        name: Bench
        edition: "1"
        areas: {all: {name: All, items: {thing: {title: Thing, points: 1, expect: {present: yes}}}}}
        """;
    Judgment judgment =
        Judging.judge(rules, "record: one\nrules: bench\nvehicle: {name: One}\nbuilt: 1893\n");
    assertThat(judgment.notices()).isEmpty();
    assertThat(
            Judging.judge(rules, "record: one\nrules: bench\nvehicle: {name: One}\n")
                .score()
                .high())
        .isEqualTo(100_000);
  }

  private static List<String> remarks(String record) {
    return judge(record).notices().stream().map(Notice::words).toList();
  }

  @Test
  void whatANumberSaysOfItselfIsRemarked() {
    String x1 = "vehicle: {name: One, model: X1}\nnumbers: {chassis: %s}\n";
    assertThat(remarks(x1.formatted("Y-1")))
        .containsExactly("Chassis number Y-1 fits no series of this rule set's table.");
    assertThat(remarks(x1.formatted("X-1000")))
        .containsExactly("Chassis number X-1000 lies outside the numbers that the table covers.");
    assertThat(remarks(x1.formatted("X-3010")))
        .containsExactly(
            "Chassis number X-3010 stands in a block that was set aside: exhibition vehicles.");
    assertThat(remarks(x1.formatted("X-5010")))
        .containsExactly(
            "Chassis number X-5010 stands in a block that was set aside: never issued.");
    assertThat(remarks(x1.formatted("X-4388"))).isEmpty();
    assertThat(remarks("vehicle: {name: One, model: X2}\nnumbers: {chassis: XS-5K}\n"))
        .containsExactly("Chassis number XS-5K belongs to a series of another model or works.");
  }

  @Test
  void aSeriesOfOtherWorksIsRemarked() {
    String plant = "vehicle: {name: One, model: X1}\nplant: %s\nnumbers: {chassis: X-4388}\n";
    assertThat(remarks(plant.formatted("north"))).isEmpty();
    assertThat(remarks(plant.formatted("south")))
        .containsExactly("Chassis number X-4388 belongs to a series of another model or works.");
    assertThat(
            Judging.judge(
                    RULES.replaceFirst(" *plant: north\n", ""),
                    "record: one\nrules: bench\n" + plant.formatted("south"))
                .notices())
        .isEmpty();
  }

  /** The block of a number is the whole of it, from its first to its last. */
  @ParameterizedTest
  @CsvSource({"X-2999, false", "X-3000, true", "X-3049, true", "X-3050, false"})
  void aBlockIncludesItsEnds(String number, boolean reserved) {
    assertThat(dated(number).get(0).reserved().isPresent()).isEqualTo(reserved);
  }

  @Test
  void saysWhatTheBuildDaysRestOn() {
    Judgment all =
        judge(
            "vehicle: {name: One, model: X1}\nnumbers: {chassis: X-4388}\n"
                + "built: {date: 1934-05, basis: plate}\n");
    assertThat(all.build().statements())
        .extracting(saying -> saying.basis() + " " + saying.words())
        .containsExactly(
            "RECORD the record, by plate",
            "NUMBER Chassis number X-4388",
            "MODEL the production of model X1");
    assertThat(judge("vehicle: {name: One}\nbuilt: 1934-05\n").build().statements())
        .extracting(saying -> saying.words() + " " + DateRangeFormatter.of(saying.days()))
        .containsExactly(
            "the record May 1934", "the production of all models March 1932 to August 1936");
    assertThat(judge("vehicle: {name: One}\n").build().days())
        .isEqualTo(DateRange.of(LocalDate.of(1932, 3, 1), LocalDate.of(1936, 8, 31)));
    String bare =
        """
        rule_set: bench
        name: Bench
        edition: "1"
        areas: {all: {name: All, items: {thing: {title: Thing, points: 1, expect: {present: yes}}}}}
        """;
    assertThat(
            Judging.judge(bare, "record: one\nrules: bench\nvehicle: {name: One}\n")
                .build()
                .statements())
        .extracting(saying -> saying.words())
        .containsExactly("nothing: the rule set names no model");
  }

  /** Each pair that has no day in common is said, the first pair with what is done about it. */
  @Test
  void everyContradictionIsSaid() {
    assertThat(
            remarks("vehicle: {name: One, model: X2}\nnumbers: {chassis: X-1001}\nbuilt: 1930\n"))
        .containsExactly(
            "The build day is contradicted: the record says 1930,"
                + " Chassis number X-1001 says 14 March 1932. The first is followed.",
            "The build day is contradicted: the record says 1930,"
                + " the production of model X2 says January 1933 to August 1936."
                + " The first is followed.",
            "The build day is contradicted: Chassis number X-1001 says 14 March 1932,"
                + " the production of model X2 says January 1933 to August 1936.");
  }

  /** X1 was made from 1 March 1932 to 31 August 1936. */
  @ParameterizedTest
  @CsvSource({
    "1933/.., 1933-01-01, 1936-08-31",
    "../1933, 1932-03-01, 1933-12-31",
    "../.., 1932-03-01, 1936-08-31",
    "1940/.., 1940-01-01, 1940-01-01",
    "../1930, 1930-12-31, 1930-12-31",
    "1930/1931, 1930-01-01, 1931-12-31"
  })
  void anOpenEndIsClosed(String built, LocalDate first, LocalDate last) {
    assertThat(judge("vehicle: {name: One, model: X1}\nbuilt: " + built + "\n").build().days())
        .isEqualTo(DateRange.of(first, last));
  }

  /** October 1933 has 31 days; the sixteenth is the one in the middle. */
  @Test
  void ofABlocksDaysTheMiddleIsLikely() {
    assertThat(dated("X-3010").get(0).likely().map(DateRangeFormatter::iso)).contains("1933-10-16");
  }

  /** The last number of a series that names no last, by hand. */
  @Test
  void withoutALastNumberTheEndIsOpen() {
    String open = RULES.replaceFirst(" *last: .number: 6875, built: 1936-08-28.\n", "");
    assertThat(dated(open, "X-4120").get(0).likely().map(DateRangeFormatter::iso))
        .contains("1934-01-02");
    assertThat(dated(open, "X-4121").get(0).likely()).isEmpty();
    assertThat(dated(open, "X-4121").get(0).days().map(DateRange::first))
        .contains(LocalDate.of(1934, 1, 2));
    assertThat(dated(open, "X-4121").get(0).days().map(DateRange::openEnd)).contains(true);
  }
}
