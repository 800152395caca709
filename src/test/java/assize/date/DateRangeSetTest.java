package assize.date;

import static assize.date.Dates.day;
import static assize.date.Dates.span;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateRangeSetTest {

  @ParameterizedTest
  @CsvSource({
    "1934-05-01/1934-05-31, May 1934",
    "1934-05-01/1934-07-31, May to July 1934",
    "1933-12-01/1934-02-28, December 1933 to February 1934",
    "1934-01-01/1934-12-31, 1934",
    "1934-01-01/1936-12-31, 1934 to 1936",
    "1934-05-01/1934-06-04, 1 May to 4 June 1934",
    "1934-05-01/1935-06-04, 1 May 1934 to 4 June 1935",
    "1935-03-12/1935-03-12, 12 March 1935",
    "1935-03-12/.., from 12 March 1935",
    "../1934-06-04, until 4 June 1934",
    "../.., any day",
  })
  void spansInWords(String span, String words) {
    assertThat(DateRangeFormatter.of(span(span))).isEqualTo(words);
  }

  @Test
  void setsInWords() {
    DateRange may = span("1924-05-01/1924-05-31");
    DateRange june = span("1934-06-01/1934-06-30");
    DateRange july = span("1944-07-01/1944-07-31");
    assertThat(DateRangeFormatter.of(DateRangeSet.EMPTY)).isEqualTo("no day");
    assertThat(DateRangeFormatter.of(DateRangeSet.of(may))).isEqualTo("May 1924");
    assertThat(DateRangeFormatter.of(DateRangeSet.of(List.of(july, june, may))))
        .isEqualTo("May 1924, June 1934 or July 1944");
  }

  @Test
  void daysInFigures() {
    assertThat(DateRangeFormatter.iso(day("0934-05-01"))).isEqualTo("0934-05-01");
    assertThat(DateRangeFormatter.iso(span("1934-05-01/.."))).isEqualTo("1934-05-01/..");
    assertThat(DateRangeFormatter.iso(DateRange.day(day("1934-05-01")))).isEqualTo("1934-05-01");
  }

  @Test
  void spansMeet() {
    DateRange may = span("1934-05-01/1934-05-31");
    assertThat(may.days()).isEqualTo(31);
    assertThat(may.intersect(span("1934-05-31/.."))).contains(DateRange.day(day("1934-05-31")));
    assertThat(may.intersect(span("1934-06-01/.."))).isEmpty();
    assertThat(may.hull(span("1934-07-01/1934-07-02"))).isEqualTo(span("1934-05-01/1934-07-02"));
    assertThat(DateRange.ALL.contains(may)).isTrue();
    assertThatThrownBy(DateRange.ALL::days).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> span("1934-05-02/1934-05-01"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void neighborsMerge() {
    assertThat(
            DateRangeSet.of(
                    List.of(
                        span("1934-06-01/1934-06-30"),
                        span("1934-05-01/1934-05-31"),
                        span("1934-07-02/..")))
                .spans())
        .containsExactly(span("1934-05-01/1934-06-30"), span("1934-07-02/.."));
    assertThat(DateRangeSet.of(List.of(DateRange.ALL, span("1934-05-01/1934-05-31"))))
        .isEqualTo(DateRangeSet.of(DateRange.ALL));
  }

  /** Compares with plain sets of days, drawn with a fixed seed. */
  @Test
  void setsBehaveAsSetsOfDays() {
    Random random = new Random(1934);
    LocalDate start = day("1936-02-20");
    for (int round = 0; round < 300; round++) {
      List<DateRange> a = draw(random, start);
      List<DateRange> b = draw(random, start);
      DateRangeSet left = DateRangeSet.of(a);
      DateRangeSet right = DateRangeSet.of(b);
      DateRangeSet both = left.intersect(right);
      DateRangeSet either = left.union(right);
      for (LocalDate day : start.datesUntil(start.plusDays(45)).toList()) {
        boolean inLeft = a.stream().anyMatch(span -> span.contains(day));
        boolean inRight = b.stream().anyMatch(span -> span.contains(day));
        assertThat(left.contains(day)).isEqualTo(inLeft);
        assertThat(both.contains(day)).isEqualTo(inLeft && inRight);
        assertThat(either.contains(day)).isEqualTo(inLeft || inRight);
      }
      assertThat(right.spans().stream().anyMatch(left::overlaps)).isEqualTo(!both.isEmpty());
      assertThat(DateRangeSet.of(both.spans())).isEqualTo(both);
    }
  }

  private static List<DateRange> draw(Random random, LocalDate start) {
    List<DateRange> spans = new ArrayList<>();
    for (int i = random.nextInt(5); i > 0; i--) {
      LocalDate first = start.plusDays(random.nextInt(30));
      spans.add(DateRange.of(first, first.plusDays(random.nextInt(10))));
    }
    return spans;
  }
}
