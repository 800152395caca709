package assize.report.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import assize.Pinned;
import assize.compare.EditionComparison;
import assize.compare.EditionFixture;
import assize.report.SampleJudgments;
import assize.report.changes.ChangesViewFactory;
import assize.report.changes.HtmlChanges;
import assize.report.html.PageValidator;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A rule set as a handbook, and what changed between two editions. */
class HtmlHandbookTest {
  private static final Path PINNED =
      Path.of("src/test/resources/assize/report/handbook/handbook-main.html");

  private static RuleSet rules(String name) {
    return RuleSetReader.read(Path.of(name)).value().orElseThrow();
  }

  private static Document book(RuleSet rules) {
    String html = HtmlHandbook.render(HandbookViewFactory.of(rules));
    assertThat(PageValidator.faults(html, "")).isEmpty();
    assertThat(html).doesNotContain("<script");
    return Jsoup.parse(html);
  }

  @Tag("pinned")
  @Test
  void isTheYardsAsPinned() {
    Document page = book(EditionFixture.newer());
    page.outputSettings().prettyPrint(false);
    String main = page.select(".page").outerHtml() + "\n";
    Pinned.equal(PINNED, main);
  }

  @ParameterizedTest
  @ValueSource(strings = {"rules/tarrowby-type-l", "rules/quillhurst-q.yaml"})
  void everythingThatAReaderCouldLookForIsThere(String name) {
    RuleSet rules = rules(name);
    Document page = book(rules);
    String all = page.select(".page").text();
    assertThat(page.select("article.item .under .id").eachText())
        .containsExactlyElementsOf(rules.items().map(item -> item.id()).toList());
    assertThat(page.select("article.item h4").eachText())
        .containsExactlyElementsOf(
            rules.items().map(item -> item.title().replaceAll("\\s+", " ").strip()).toList());
    assertThat(page.select("#sources .entries .id").eachText())
        .containsExactlyElementsOf(rules.sources().keySet());
    assertThat(page.select(".colors .id").eachText())
        .containsExactlyElementsOf(rules.colors().keySet());
    rules
        .items()
        .forEach(
            item -> {
              String text = page.select("#item-" + item.id()).text();
              item.look().ifPresent(look -> assertThat(text).contains(flat(look)));
              item.hazards().forEach(one -> assertThat(text).contains(one.precaution()));
              item.choices().values().forEach(word -> assertThat(text).contains(flat(word)));
              item.aspects().stream()
                  .flatMap(rule -> rule.claims().stream())
                  .flatMap(claim -> claim.citation().stream())
                  .forEach(cite -> assertThat(text).contains(flat(cite)));
            });
    rules
        .numberTables()
        .values()
        .forEach(
            table ->
                table
                    .series()
                    .forEach(
                        series -> {
                          series
                              .firstNumbers()
                              .forEach(
                                  entry ->
                                      assertThat(all)
                                          .contains(
                                              "from "
                                                  + series.prefix()
                                                  + entry.number()
                                                  + series.suffix()));
                          series
                              .reserved()
                              .forEach(block -> assertThat(all).contains(block.purpose()));
                        }));
    rules.finishes().values().forEach(finish -> assertThat(all).contains(finish.name()));
    rules.materials().values().forEach(word -> assertThat(all).contains(word));
    rules.awards().forEach(award -> assertThat(all).contains(award.name()));
    rules.models().values().forEach(model -> assertThat(all).contains(model.name()));
    rules.equipment().values().forEach(word -> assertThat(all).contains(word));
    rules.scale().allowances().keySet().forEach(reason -> assertThat(all).contains(reason));
    rules.files().forEach(file -> assertThat(all).contains(file.sha256()));
    rules
        .sources()
        .values()
        .forEach(
            source -> {
              assertThat(all).contains(flat(source.title()));
              source.heldBy().ifPresent(held -> assertThat(all).contains(flat(held)));
            });
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  @Test
  void aDrawingHasItsTableBesideIt() {
    Document page = book(EditionFixture.newer());
    Elements bracket = page.select("#item-bracket");
    assertThat(bracket.select("svg.wide desc").text())
        .isEqualTo("Y-10: until 31 August 1934; Y-20: from 1 June 1934");
    assertThat(bracket.select(".stands tbody th").eachText())
        .containsExactly(
            "January 1932 to May 1934", "June to August 1934", "September 1934 to December 1935");
    assertThat(page.select("#sources svg.wide desc").text())
        .isEqualTo("Leaflet copies Guide for restorers");
    assertThat(page.select("#sources .entries strong:contains(No item cites it)")).hasSize(1);
  }

  @Test
  void saysThatNoScreenIsEvidenceOfAColor() {
    Document page = book(EditionFixture.newer());
    assertThat(page.select("#words .key").text())
        .contains("A photo, a screen or a print is never evidence of a color");
    assertThat(page.select("#items > .key").text())
        .contains("A screen or a print is never evidence of a color");
  }

  /** One item's name may be another's with something behind it; no model need be named. */
  @Test
  void namesThatContinueEachOtherAreToldApart() {
    RuleSet rules =
        RuleSetReader.parse(
                List.of(
                    new SourceFile(
                        "rules.yaml",
                        """
                        rule_set: bare
                        name: Bare
                        edition: "1"
                        sources: {drawing: {kind: drawing, grade: A, title: Drawing}}
                        areas:
                          front:
                            items:
                              horn:
                                title: Horn
                                points: 1
                                choices: {bulb: a bulb, ring: a ring}
                                claims:
                                  - {source: drawing, built: ../1934, says: {choice: bulb}}
                                  - {source: drawing, built: 1936/.., says: {choice: ring}}
                              horn-title: {title: Plate, points: 1, expect: {present: yes}}
                          front-title:
                            items:
                              other: {title: Other, points: 1, expect: {present: yes}}
                        """)))
            .value()
            .orElseThrow();
    Document page = book(rules);
    assertThat(page.select("#item-horn .stands tbody tr").eachText())
        .containsExactly(
            "until 31 December 1934 a bulb agreed",
            "1935 no source speaks; not judged",
            "from 1 January 1936 a ring agreed");
    assertThat(page.select("#item-horn svg.drawing")).isEmpty();
  }

  @Test
  void rendersToTheSameBytes() {
    assertThat(HtmlHandbook.render(HandbookViewFactory.of(EditionFixture.newer())))
        .isEqualTo(HtmlHandbook.render(HandbookViewFactory.of(EditionFixture.newer())));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onmouseover='alert(1)",
        "</style></title><svg onload=alert(1)>",
        "${book.name} <#include \"x\"> [=1]",
        "&lt;b&gt; &amp; </details>",
        "[a](javascript:alert(1)) ![b](https://example.org/x.png) <a href=\"#top\" id=scoring>",
        "<style>@import url(https://example.org/x.css)</style>"
      })
  void textThatPeopleWriteIsShownAndDoesNothing(String hostile) {
    RuleSet rules = SampleJudgments.hostile(hostile).rules();
    Document page = book(rules);
    isHarmless(page);
    assertThat(page.select("h1").text()).endsWith(flat(hostile));
    assertThat(page.select("article.item h4").eachText())
        .allSatisfy(title -> assertThat(title).endsWith(flat(hostile)));
    RuleSet plain = SampleJudgments.hostile("").rules();
    String changes =
        HtmlChanges.render(
            ChangesViewFactory.of(
                EditionComparison.between(plain, rules),
                Optional.empty(),
                List.of("left" + hostile)));
    assertThat(PageValidator.faults(changes, "")).isEmpty();
    isHarmless(Jsoup.parse(changes));
    assertThat(Jsoup.parse(changes).select("h1").text()).endsWith(flat(hostile));
  }

  private static void isHarmless(Document page) {
    assertThat(page.select("script, img, iframe, svg[onload], [onerror], [onmouseover]")).isEmpty();
    assertThat(page.select("style")).hasSize(1);
  }
}
