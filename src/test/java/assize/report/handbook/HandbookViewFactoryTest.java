package assize.report.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import assize.compare.EditionFixture;
import assize.judge.Judge;
import assize.record.RecordReader;
import assize.report.handbook.HandbookItemView.AspectView;
import assize.report.handbook.HandbookItemView.CourseView;
import assize.report.handbook.HandbookItemView.StandView;
import assize.report.view.CiteView;
import assize.report.view.LinkView;
import assize.report.view.NumberFormatter;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The yard's handbook, worded by hand. */
class HandbookViewFactoryTest {
  private final HandbookView book = HandbookViewFactory.of(EditionFixture.newer());

  private HandbookItemView item(String id) {
    return book.areas().stream()
        .flatMap(area -> area.items().stream())
        .filter(item -> item.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void itemsAreNumberedThroughTheBook() {
    assertThat(book.areas().stream().flatMap(area -> area.items().stream()))
        .extracting(HandbookItemView::number, HandbookItemView::id)
        .containsExactly(
            tuple(1, "bracket"),
            tuple(2, "horn-button"),
            tuple(3, "bed-color"),
            tuple(4, "heater-tap"),
            tuple(5, "stake"),
            tuple(6, "hoop"));
  }

  @Test
  void aRunningChangeIsToldStretchByStretch() {
    AspectView number = item("bracket").aspects().get(0);
    assertThat(number.statements())
        .extracting(HandbookItemView.ClaimStatement::words, saying -> saying.tellers().size())
        .containsExactly(tuple("Y-10", 2), tuple("Y-20", 1));
    assertThat(number.statements().get(0).tellers().get(1).scope())
        .isEqualTo("built until 31 August 1934");
    CourseView course = number.courses().get(0);
    assertThat(course.vehicles()).isEmpty();
    assertThat(course.line()).isPresent();
    assertThat(course.stands())
        .extracting(StandView::days, StandView::right, StandView::state)
        .containsExactly(
            tuple("January 1932 to May 1934", "Y-10", "agreed"),
            tuple("June to August 1934", "Y-10 or Y-20", "agreed"),
            tuple("September 1934 to December 1935", "Y-20", "agreed"));
  }

  /** Numbers A are those of the north works alone, so that no vehicle is within both claims. */
  @Test
  void vehiclesThatCannotExistAreNotShown() {
    String rules =
        """
        rule_set: small
        name: A small standard
        edition: "1"
        models: {X1: {name: Dropside, production: 1932/1936}}
        plants: {north: North works, south: South works}
        sources:
          drawing: {kind: drawing, grade: A, title: Works drawing 204}
          guide: {kind: club guide, grade: C, title: Guide}
        number_tables:
          chassis:
            name: number
            series: [{prefix: A-, plant: north, first_numbers: {1: 1932}, last: {number: 99, built: 1936}}]
        finishes: {nickel: {name: nickel plate}, chrome: {name: chromium plate}}
        areas:
          cab:
            name: Cab
            items:
              horn:
                title: Horn
                points: 2
                claims:
                  - {source: drawing, numbers: {chassis: A-1..A-50}, says: {finish: nickel}}
                  - {source: guide, plant: south, says: {finish: chrome}}
        """;
    HandbookView small =
        HandbookViewFactory.of(
            RuleSetReader.parse(List.of(new SourceFile("rules.yaml", rules)))
                .value()
                .orElseThrow());
    assertThat(small.areas().get(0).items().get(0).aspects().get(0).courses())
        .extracting(CourseView::vehicles, course -> course.stands().get(0).state())
        .containsExactly(
            tuple("number A-1 to A-50", "agreed"),
            tuple(
                "number outside of those ranges, from “North works”",
                "no source speaks; not judged"),
            tuple("from “South works”", "agreed"));
  }

  @Test
  void whatIsPlainIsSaidOnce() {
    AspectView finish = item("horn-button").aspects().get(0);
    assertThat(finish.points()).isEqualTo("2");
    assertThat(finish.state()).isEqualTo("agreed");
    assertThat(finish.courses()).isEmpty();
    assertThat(item("stake").aspects().get(0).state()).isEqualTo("no source named");
    assertThat(item("heater-tap").applies()).isEqualTo("with “Cab heater”");
    assertThat(item("heater-tap").aspects().get(0).state()).isEqualTo("agreed");
  }

  @Test
  void sourcesThatDifferAreToldWithTheirBelief() {
    List<CourseView> courses = item("bed-color").aspects().get(0).courses();
    assertThat(courses).extracting(CourseView::vehicles).containsExactly("X1", "X2");
    StandView x1 = courses.get(0).stands().get(0);
    assertThat(x1.state()).isEqualTo("disputed");
    assertThat(x1.conflict()).isEqualTo("Conflict K 0.450.");
    // 0.45/0.55 and 0.05/0.55; plausibility 0.50/0.55 and 0.10/0.55
    assertThat(x1.positions())
        .extracting(
            HandbookItemView.PositionView::words,
            HandbookItemView.PositionView::belief,
            HandbookItemView.PositionView::plausibility)
        .containsExactly(
            tuple("Yard green", "0.818", "0.909"), tuple("Chassis black", "0.091", "0.182"));
    assertThat(x1.positions().get(1).by())
        .extracting(CiteView::title, CiteView::repeats)
        .containsExactly(tuple("Guide for restorers", ""), tuple("Leaflet", "Guide for restorers"));
  }

  @Test
  void dateCodesAreSpelledOut() {
    assertThat(item("hoop").aspects().get(0).codes())
        .singleElement()
        .satisfies(
            code -> {
              assertThat(code.name()).isEqualTo("(?P<month>[A-L])(?P<year>[0-9])");
              assertThat(code.words())
                  .startsWith("a date code of month and year, made at most 6 months before")
                  .contains("; months: A is 1, B is 2,")
                  .endsWith("L is 12");
            });
    assertThat(book.stamps())
        .extracting(HandbookView.Stamp::text, HandbookView.Stamp::what)
        .containsExactly(
            tuple("(?P<month>[A-L])(?P<year>[0-9])", "date code"),
            tuple("Y-10", "number"),
            tuple("Y-20", "number"));
  }

  @Test
  void scoringIsToldInWords() {
    HandbookScoringView scoring = book.scoring();
    assertThat(scoring.areas())
        .extracting(HandbookScoringView.AreaRow::cells)
        .containsExactly(List.of("2", "7", "6"), List.of("4", "10", "all"));
    assertThat(scoring.awards().get(0).conditions())
        .containsExactly(
            "every area earns 50 % of its points or more",
            "no item loses more than 3 points by departing");
    assertThat(scoring.allow())
        .extracting(HandbookView.Fact::name, HandbookView.Fact::words)
        .containsExactly(tuple("law", "0.5"), tuple("safety", "1"));
    assertThat(scoring.causes())
        .singleElement()
        .satisfies(
            cause ->
                assertThat(cause.items())
                    .extracting(LinkView::words)
                    .containsExactly("Stake of the side boards", "Hoop sockets"));
  }

  /** 2 of 3 points lost for sure, 1 × 1/4 kept of the rest: (17 − 2.75) ÷ 17 × 100 = 83.8235… */
  @Test
  void theExampleIsThatOfAPencil() {
    assertThat(book.scoring().example())
        .containsExactly(
            "“Horn button” has 3 points: 2 points for its finish, 1 point for its origin.",
            "Say the finish is incorrect: 2 × 0 = 0.",
            "The origin is not assessed: low 0, likely 1 × 0.25 = 0.25, high 1.",
            "The item earns likely 0.25 of 3 points, low 0, high 1.",
            "If all items of this handbook applied to one vehicle and everything else on it met, it"
                + " would likely score (17 − 2.75) ÷ 17 × 100 = 83.824.");
  }

  /** The same by the judge: a standard of the example's item and one other that meets. */
  @Test
  void theExampleIsThatOfTheJudge() {
    for (String method : List.of("sum", "areas", "deductions")) {
      RuleSet rules =
          RuleSetReader.parse(
                  List.of(
                      new SourceFile(
                          "rules.yaml",
                          """
                          rule_set: small
                          name: Small
                          edition: "1"
                          scale: {method: %s, out_of: 50, not_assessed: 1/4}
                          models: {X1: {name: Dropside, production: 1932/1935}}
                          sources: {drawing: {kind: drawing, grade: A, title: Drawing}}
                          origins: {original: 1}
                          areas:
                            front:
                              name: Front
                              items:
                                horn:
                                  title: Horn
                                  points: 3
                                  aspect_points: {present: 2, origin: 1}
                                  expect: {present: yes, origin: graded}
                                  source: drawing
                            rear:
                              name: Rear
                              items:
                                lamp: {title: Lamp, points: 5, expect: {present: yes}, source: drawing}
                          """
                              .formatted(method))))
              .value()
              .orElseThrow();
      long likely =
          Judge.judge(
                  rules,
                  RecordReader.parse(
                          new SourceFile(
                              "record.yaml",
                              """
                              record: truck
                              rules: rules.yaml
                              vehicle: {name: Truck, model: X1}
                              observations:
                                horn: {present: no}
                                lamp: {present: yes}
                              """),
                          rules)
                      .value()
                      .orElseThrow(),
                  Optional.empty())
              .score()
              .likely();
      List<String> steps = HandbookViewFactory.of(rules).scoring().example();
      assertThat(steps.get(steps.size() - 1))
          .as(method)
          .endsWith(" = " + NumberFormatter.points(likely) + ".");
    }
  }

  @Test
  void theDemonstrationsBookIsWhole() {
    HandbookView truck =
        HandbookViewFactory.of(
            RuleSetReader.read(Path.of("rules/tarrowby-type-l")).value().orElseThrow());
    assertThat(truck.copying()).isPresent();
    assertThat(truck.tables()).allMatch(table -> table.wide().isPresent());
    assertThat(truck.areas().stream().flatMap(area -> area.items().stream()))
        .allSatisfy(
            item ->
                assertThat(item.aspects())
                    .allSatisfy(
                        aspect ->
                            assertThat(aspect.state().isEmpty())
                                .isEqualTo(!aspect.courses().isEmpty())));
  }
}
