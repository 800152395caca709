package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.docs.WorkedPage.Example;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each sum on the page of worked examples comes out, and is what the program reports. */
class ArithmeticTest {
  private static final Path PAGE = Path.of("docs/arithmetic.md");
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?<figure>.+?)(?: of \"(?<of>[^\"]+)\")? (?<value>\"[^\"]+\"|[^ ]+|partly correct|not assessed|may apply)");
  private static final Pattern NUMBER = Pattern.compile("−?[0-9]+(\\.[0-9]+)?");

  /** What the page must work out besides an item of each aspect. */
  private static final List<String> OTHER_KINDS =
      List.of(
          "worth",
          "equal shares",
          "not assessed",
          "departure",
          "agreed",
          "settled",
          "copied crowd",
          "dispute",
          "leaves open",
          "many sources",
          "may apply",
          "cause",
          "limit",
          "area",
          "build days",
          "sum",
          "deductions",
          "areas",
          "awards");

  private static Demonstration demonstration;

  @BeforeAll
  static void judge() throws IOException {
    demonstration = new Demonstration();
  }

  static List<Example> examples() throws IOException {
    return WorkedPage.read(PAGE);
  }

  @Test
  void thereIsOneOfEachKind() throws IOException {
    Set<String> required = new LinkedHashSet<>(OTHER_KINDS);
    Arrays.stream(Aspect.values()).map(Aspect::word).forEach(required::add);
    Set<String> found = new LinkedHashSet<>();
    examples().forEach(example -> found.addAll(example.kinds()));
    assertThat(found).containsExactlyInAnyOrderElementsOf(required);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theSumsComeOut(Example example) {
    assertThat(example.reported()).isNotEmpty();
    assertThat(example.sums())
        .allSatisfy(
            sum -> {
              int label = sum.indexOf(": ");
              int equals = sum.lastIndexOf(" = ");
              String result = sum.substring(equals + 3);
              BigDecimal stated = Calculator.number(result);
              BigDecimal own = Calculator.of(sum.substring(label < 0 ? 0 : label + 2, equals));
              assertThat(Calculator.rounded(own, stated.scale())).isEqualByComparingTo(stated);
            });
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theReportSaysSo(Example example) {
    assertThat(example.reported()).allSatisfy(this::isReported);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void whatTheReportSaysIsWorkedOut(Example example) {
    Set<String> worked = new LinkedHashSet<>();
    NUMBER.matcher(example.prose()).results().forEach(it -> worked.add(it.group()));
    assertThat(example.reported().stream().map(it -> it.substring(it.lastIndexOf(' ') + 1)))
        .filteredOn(value -> NUMBER.matcher(value).matches())
        .isSubsetOf(worked);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void anAspectIsWorkedOutUnderItsName(Example example) {
    List<String> aspects =
        Arrays.stream(Aspect.values()).map(Aspect::word).filter(example.kinds()::contains).toList();
    assertThat(aspects)
        .allSatisfy(
            aspect ->
                assertThat(example.reported())
                    .anyMatch(line -> line.matches("\\S+ \\S+ " + aspect + "( on \\S+)?: .*")));
  }

  private void isReported(String line) {
    int end = line.indexOf(": ");
    String[] recordAndSubject = line.substring(0, end).split(" ", 2);
    Matcher matcher = FIGURE.matcher(line.substring(end + 2));
    assertThat(matcher.matches()).isTrue();
    String of = Stream.ofNullable(matcher.group("of")).findFirst().orElse("");
    String value = matcher.group("value");
    Object found =
        new ReportFigures(demonstration.of(recordAndSubject[0]))
            .find(recordAndSubject[1], matcher.group("figure"), of);
    if (found instanceof BigDecimal number) {
      BigDecimal stated = Calculator.number(value);
      boolean points = number.scale() == 3;
      assertThat(points ? number : Calculator.rounded(number, stated.scale()))
          .isEqualByComparingTo(stated);
    } else {
      boolean quoted = value.startsWith("\"");
      String words = quoted ? value.substring(1, value.length() - 1) : value;
      assertThat(found)
          .asString()
          .satisfies(
              it -> assertThat(quoted ? it.contains(words) : it.equals(words)).as(it).isTrue());
    }
  }
}
