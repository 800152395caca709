package assize.date;

import static assize.date.Dates.day;
import static assize.date.Dates.read;
import static assize.date.Dates.reason;
import static assize.date.Dates.span;
import static org.assertj.core.api.Assertions.assertThat;

import assize.text.Parsed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EdtfTest {

  /** Our own convention: one unit of the stated precision on each side. */
  @ParameterizedTest
  @CsvSource({
    "1934-06~, 1934-05-01/1934-07-31",
    "1934-06%, 1934-05-01/1934-07-31",
    "1934-06?, 1934-06-01/1934-06-30",
    "1934~, 1933-01-01/1935-12-31",
    "1935~, 1934-01-01/1936-12-31",
    "1934-03-01~, 1934-02-28/1934-03-02",
    "1936-02-29~, 1936-02-28/1936-03-01",
    "1936-02~, 1936-01-01/1936-03-31",
    "193X~, 1920-01-01/1949-12-31",
    "19XX~, 1800-01-01/2099-12-31",
    "1934-XX~, 1933-01-01/1935-12-31",
    "1934-06-XX~, 1934-05-01/1934-07-31",
    "1934-21~, 1933-12-01/1934-08-31",
    "1934-24~, 1934-09-01/1935-05-31",
    "1934-34~, 1934-01-01/1934-09-30",
    "1934-38~, 1934-01-01/1934-12-31",
    "1934-40~, 1933-07-01/1934-12-31",
    "1950S2~, 1800-01-01/2099-12-31",
    "1984~/2004-06, 1983-01-01/2004-06-30",
    "1984/2004-06~, 1984-01-01/2004-07-31",
    "2004-06-~01/2004-06-~20, 2004-05-31/2004-06-21",
    "2004~-06-11, 2003-06-11/2005-06-11",
    "2004-06~-11, 2004-05-11/2004-07-11",
    "2004-~06-11, 2004-05-11/2004-07-11",
    "?2004-06-~11, 2004-06-10/2004-06-12",
    "~2004-06-~11, 2003-06-11/2005-06-11",
    "1934-~01-28, 1933-12-28/1934-02-28",
    "1934-~01-30, 1933-12-30/1934-02-28",
    "1934-~02-28, 1934-01-28/1934-03-28",
    "1934-~05-31, 1934-04-30/1934-06-30",
    "~1935-02-28, 1934-02-28/1936-02-28",
    "~1936-02-29, 1935-02-28/1937-02-28",
    "../1934-06~, ../1934-07-31",
    "1934-06~/.., 1934-05-01/..",
  })
  void approximateDatesWidenByOneUnit(String text, String span) {
    assertThat(read(text).span()).isEqualTo(span(span));
  }

  /** Months of seasons are our own; quarters, four months and halves are what the words say. */
  @ParameterizedTest
  @CsvSource({
    "1934-21, 1934-03-01/1934-05-31",
    "1934-22, 1934-06-01/1934-08-31",
    "1934-23, 1934-09-01/1934-11-30",
    "1934-24, 1934-12-01/1935-02-28",
    "1935-24, 1935-12-01/1936-02-29",
    "1934-25, 1934-03-01/1934-05-31",
    "1934-28, 1934-12-01/1935-02-28",
    "1934-29, 1934-09-01/1934-11-30",
    "1934-30, 1934-12-01/1935-02-28",
    "1934-31, 1934-03-01/1934-05-31",
    "1934-32, 1934-06-01/1934-08-31",
    "1934-33, 1934-01-01/1934-03-31",
    "1934-36, 1934-10-01/1934-12-31",
    "1934-37, 1934-01-01/1934-04-30",
    "1934-39, 1934-09-01/1934-12-31",
    "1934-40, 1934-01-01/1934-06-30",
    "1934-41, 1934-07-01/1934-12-31",
  })
  void partsOfTheYear(String text, String span) {
    assertThat(read(text).stated()).isEqualTo(span(span));
  }

  @ParameterizedTest
  @CsvSource({
    "1934-02-30, February 1934 has 28 days, 8, 2",
    "1936-02-30, February 1936 has 29 days, 8, 2",
    "190X-09-31, September has 30 days, 8, 2",
    "1934-13, there is no month 13, 5, 2",
    "1934/1935-13, there is no month 13, 10, 2",
    "'[1934,1935-13]', there is no month 13, 11, 2",
    "1934-00, months are counted from 01; if it is not known write XX, 5, 2",
    "1934-06-32, there is no day 32, 8, 2",
    "1934-21-05, '21 is a part of the year, and has no days', 8, 2",
    "19uu, write X for a digit that is not known, 2, 1",
    "19xx, write X for a digit that is not known, 2, 1",
    "1984?~, write % for uncertain and approximate, 4, 2",
    "1984~~, one ~ is enough, 4, 2",
    "1984/1982, the interval ends before it begins, 0, 9",
    "1934-06-20/1934-06-11, the interval ends before it begins, 0, 21",
    "{2002..2001}, the range ends before it begins, 1, 10",
    "June 1934, write 1934-06, 0, 9",
    "12 March 1935, write 1935-03-12, 0, 13",
    "'Mar. 12, 1935', write 1935-03-12, 0, 13",
    "spring 1934, write 1934-21, 0, 11",
    "about 1934, write 1934~, 0, 10",
    "c. 1934, write 1934~, 0, 7",
    "1930s, write 193X, 0, 5",
    "1900s, write 19XX, 0, 5",
    "before 1934, write ../1934, 0, 11",
    "about June 1934, write 1934-06~, 0, 15",
    "probably 12 March 1935, write 1935-03-12?, 0, 22",
    "May-June 1934, write 1934-05/1934-06, 0, 13",
    "1 May 1934 to 4 June 1935, write 1934-05-01/1935-06-04, 0, 25",
    "1934 to 1936, write 1934/1936, 0, 12",
    "1934-1936, write a slash between two dates: 1934/1936, 0, 9",
    "1934 or 1935, 'write [1934,1935]', 0, 12",
    "unknown/1934, write /1934, 0, 12",
    "04/1985, write 1985-04, 0, 7",
    "-Y12345, 'Y comes first, before a year of more than four digits', 1, 1",
    "early 1934, 'this cannot stand in a date: write year-month-day, as in 1985-04-12', 0, 5",
    "1985-04-12t10:00:00, write T as a capital, 10, 1",
    "1934/open, write 1934/.., 0, 9",
    "12/04/85, 'write year-month-day, the year with four digits', 0, 8",
    "1985/13/45, 'an interval has two dates, so one slash', 7, 1",
    "25/04/1985, write year-month-day: 1985-04-25, 0, 10",
    "04/25/1985, write year-month-day: 1985-04-25, 0, 10",
    "12/04/1985, write year-month-day: 1985-04-12 or 1985-12-04, 0, 10",
    "12.4.1985, write year-month-day: 1985-04-12 or 1985-12-04, 0, 9",
    "1985/04/12, write year-month-day: 1985-04-12, 0, 10",
    "1985-4-2, write year-month-day: 1985-04-02, 0, 8",
    "19850412, write year-month-day: 1985-04-12, 0, 8",
    "1985/04, write a month as in 1985-04; a slash stands between two dates, 0, 7",
    "1985 -04, write the date without spaces, 4, 1",
    "85, a year has four digits, 0, 2",
    "12345, 'a year of more than four digits begins with Y, as in Y12345', 0, 5",
    "Y1234, a year of four digits is written without Y, 0, 1",
    "Y9999999999, years here go from -999999998 to 999999998, 0, 11",
    "Y1E99, years here go from -999999998 to 999999998, 0, 5",
    "'', a date is missing here, 0, 0",
    "/, a date is missing on either side of the slash, 0, 1",
    "1934/1935/1936, 'an interval has two dates, so one slash', 9, 1",
    "2004-01-01T10:10:10/2005, 'intervals and sets are made of days, without times', 10, 1",
    "[1934, a set that begins with [ ends with ], 4, 1",
    "'[1934,]', a date is missing in the set, 6, 0",
    "'[1934,..1935,1936]', only the first or the last of a set can be open, 6, 2",
    "-0000, year 0 has no minus sign, 1, 4",
  })
  void saysWhatIsWrongAndWhere(String text, String reason, int at, int length) {
    assertThat(Edtf.parse(text)).isEqualTo(new Parsed.Bad<Edtf>(reason, at, length));
  }

  @Test
  void unspecifiedDigitsAreTheDaysTheyCanBe() {
    assertThat(read("193X-12-25").days().spans())
        .hasSize(10)
        .startsWith(DateRange.day(day("1930-12-25")))
        .endsWith(DateRange.day(day("1939-12-25")));
    assertThat(read("190X-02-29").days().spans())
        .containsExactly(DateRange.day(day("1904-02-29")), DateRange.day(day("1908-02-29")));
    assertThat(read("1984-1X").days().spans()).containsExactly(span("1984-10-01/1984-12-31"));
    assertThat(read("1934-06-1X").days().spans()).containsExactly(span("1934-06-10/1934-06-19"));
  }

  @Test
  void tooManySpansBecomeOne() {
    assertThat(read("XXXX-12-25").days().spans()).hasSize(10_000);
    assertThat(read("XXXX-XX-25").days().spans()).containsExactly(span("0000-01-25/9999-12-25"));
    assertThat(read("XXXX-XX-XX").days().spans()).containsExactly(span("0000-01-01/9999-12-31"));
  }

  @Test
  void longTextsAreRefusedBeforeTheyCostAnything() {
    String set = "[" + "XXXX-12-25,XXXX-06-25,".repeat(45) + "1934]";
    assertThat(read(set).days().spans()).hasSize(1);
    assertThat(reason(Edtf.parse("[" + "1934,".repeat(200) + "1935]")))
        .isEqualTo("a date has at most 1000 characters");
  }

  @Test
  void significantDigitsLeaveYearsOpen() {
    assertThat(read("1950S2").stated()).isEqualTo(span("1900-01-01/1999-12-31"));
    assertThat(read("-1950S2").stated().first().getYear()).isEqualTo(-1999);
    assertThat(read("-1950S2").stated().last().getYear()).isEqualTo(-1900);
    // The specification's own numbers.
    assertThat(years("Y171010000S3")).isEqualTo("171000000 to 171999999");
    assertThat(years("Y3388E2S3")).isEqualTo("338000 to 338999");
    assertThat(years("Y-17E7")).isEqualTo("-170000000");
  }

  private static String years(String text) {
    return DateRangeFormatter.of(read(text).stated());
  }

  @Test
  void setsHoldTheirMembersAndNotWhatLiesBetween() {
    Edtf set = read("[1667,1668-12,1670..1672]");
    assertThat(set.days().spans())
        .containsExactly(
            span("1667-01-01/1667-12-31"),
            span("1668-12-01/1668-12-31"),
            span("1670-01-01/1672-12-31"));
    assertThat(set.stated()).isEqualTo(span("1667-01-01/1672-12-31"));
    assertThat(read("[..1760-12-03]").span()).isEqualTo(span("../1760-12-03"));
    assertThat(read("{1960~,1961-12}").span()).isEqualTo(span("1959-01-01/1961-12-31"));
  }

  @Test
  void tellsUnknownFromOpen() {
    Edtf unknown = read("1985/");
    assertThat(unknown.openEnd()).isTrue();
    assertThat(unknown.unknownEnd()).isTrue();
    assertThat(unknown.unknownStart()).isFalse();
    Edtf open = read("../1985");
    assertThat(open.openStart()).isTrue();
    assertThat(open.unknownStart()).isFalse();
  }

  @Test
  void tellsWhatIsMarked() {
    assertThat(read("1934?").uncertain()).isTrue();
    assertThat(read("1934?").approximate()).isFalse();
    assertThat(read("1934~").uncertain()).isFalse();
    assertThat(read("1934~").approximate()).isTrue();
    assertThat(read("1934/%1935").uncertain()).isTrue();
    assertThat(read("Y12345%").approximate()).isTrue();
  }

  @Test
  void aCoarserEndMayHoldTheStart() {
    assertThat(read("1934-05-03/1934-05").stated()).isEqualTo(span("1934-05-03/1934-05-31"));
    assertThat(read("1934-05-03/1934").stated()).isEqualTo(span("1934-05-03/1934-12-31"));
  }

  @Test
  void theFarthestYearsAreNotOpen() {
    for (String text : new String[] {"Y999999998~", "Y-999999998~", "Y999999998S1%"}) {
      assertThat(read(text).openStart()).as(text).isFalse();
      assertThat(read(text).openEnd()).as(text).isFalse();
    }
  }

  @Test
  void aTimeLeavesTheDayAsWritten() {
    assertThat(read("1985-04-12T23:20:30-04").span()).isEqualTo(span("1985-04-12/1985-04-12"));
    assertThat(reason(Edtf.parse("1985-04-12T25:00:00"))).isEqualTo("there is no such time of day");
    assertThat(reason(Edtf.parse("1985-04T20:00:00")))
        .isEqualTo("only a whole day, as in 1985-04-12, has a time");
  }

  /** 31 December 2016 ended with a leap second, 1 January 2017 in Kolkata, from memory. */
  @Test
  void aDayMayEndWithALeapSecond() {
    assertThat(read("2016-12-31T23:59:60Z").span()).isEqualTo(span("2016-12-31/2016-12-31"));
    assertThat(read("2017-01-01T05:29:60+05:30").span()).isEqualTo(span("2017-01-01/2017-01-01"));
    assertThat(read("2016-12-31T18:59:60-05").span()).isEqualTo(span("2016-12-31/2016-12-31"));
    for (String text : new String[] {"T23:58:60Z", "T23:59:60+05:30", "T10:10:60", "T23:59:61Z"}) {
      assertThat(reason(Edtf.parse("2016-12-31" + text))).doesNotStartWith("accepted");
    }
  }
}
