package assize.report.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import assize.aspect.Verdict;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.record.RecordReader;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reports of the demonstration: what is printed adds up, and nothing is missing. */
class DemoReportTest {
  private static final Pattern EQUATION =
      Pattern.compile(
          "([-0-9.(][-0-9.()+−×÷/ ]*[-+−×÷/][-0-9.()+−×÷/ ]*) = ([0-9]+(?:[.][0-9]+)?)");
  private static final Pattern GIVEN_BACK = Pattern.compile(", ([0-9.]+) likely,");

  private static Judgment judgment(String name) {
    Path record = Path.of("rules", name);
    Path folder = RecordReader.rulesOf(record).value().orElseThrow();
    RuleSet rules = RuleSetReader.read(folder).value().orElseThrow();
    return Judge.judge(
        rules, RecordReader.read(record, rules).value().orElseThrow(), Optional.empty());
  }

  private static Document page(Judgment judgment) {
    return Jsoup.parse(HtmlReport.render(ReportViewFactory.of(judgment)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"l45-4388.yaml", "l41-half-recorded.yaml", "q-1187.yaml"})
  void everySumCanBeCheckedByHand(String name) {
    Document page = page(judgment(name));
    int checked = 0;
    for (Element line : page.select("ul.sum li, p.sum")) {
      Matcher equation = EQUATION.matcher(line.text());
      while (equation.find()) {
        double sum = new Sum(equation.group(1)).value();
        // a score is rounded once; a share is printed to six places, of at most some ten points
        assertThat(sum)
            .as(line.text())
            .isCloseTo(Double.parseDouble(equation.group(2)), within(0.0006));
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(100);
  }

  @Test
  void itemsAddUpToTheirArea() {
    Document page = page(judgment("l45-4388.yaml"));
    assertThat(page.select("section.area")).hasSizeGreaterThan(8);
    for (Element area : page.select("section.area")) {
      BigDecimal sum = BigDecimal.ZERO;
      for (Element points : area.select("article.item > .head > .points > strong")) {
        sum = sum.add(new BigDecimal(points.text()));
      }
      for (Element line : area.select("> .matter > details li:contains(given back)")) {
        Matcher back = GIVEN_BACK.matcher(line.text());
        assertThat(back.find()).isTrue();
        sum = sum.add(new BigDecimal(back.group(1)));
      }
      assertThat(sum)
          .as(area.id())
          .isEqualByComparingTo(area.select("> .area-head > .points > strong").text());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"l45-4388.yaml", "l41-half-recorded.yaml", "q-1187.yaml"})
  void everyItemAndSourceIsThere(String name) {
    Judgment judgment = judgment(name);
    Document page = page(judgment);
    long apart =
        judgment.items().stream().filter(it -> it.verdict() == Verdict.NOT_APPLICABLE).count();
    assertThat(page.select("article.item")).hasSize((int) (judgment.items().size() - apart));
    assertThat(page.select(".apart li")).hasSize((int) apart);
    assertThat(page.select("#sources li"))
        .hasSize(judgment.rules().sources().size() + judgment.vehicle().traces().size());
    assertThat(page.select(".figure .great").text())
        .isEqualTo(
            BigDecimal.valueOf(judgment.score().likely(), 3).stripTrailingZeros().toPlainString());
  }

  /** What a person with a pencil does: four rules of arithmetic and parentheses. */
  private static final class Sum {
    private final String text;
    private int at;

    Sum(String text) {
      this.text = text.replace(" ", "");
    }

    double value() {
      double value = terms();
      assertThat(at).as(text).isEqualTo(text.length());
      return value;
    }

    private double terms() {
      double value = factors();
      while (at < text.length() && "+−".indexOf(text.charAt(at)) >= 0) {
        boolean plus = text.charAt(at++) == '+';
        double next = factors();
        value = plus ? value + next : value - next;
      }
      return value;
    }

    private double factors() {
      double value = atom();
      while (at < text.length() && "×÷/".indexOf(text.charAt(at)) >= 0) {
        boolean times = text.charAt(at++) == '×';
        double next = atom();
        value = times ? value * next : value / next;
      }
      return value;
    }

    private double atom() {
      if (text.charAt(at) == '(') {
        at++;
        double value = terms();
        at++;
        return value;
      }
      int from = at;
      while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
        at++;
      }
      return Double.parseDouble(text.substring(from, at));
    }
  }
}
