package assize.report.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import assize.report.SampleJudgments;
import assize.report.view.CiteView;
import assize.report.view.DisputeView;
import assize.report.view.ItemView;
import assize.report.view.LossesView;
import assize.report.view.NotAssessedView;
import assize.report.view.ScoreView;
import assize.ruleset.Scale;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ReportViewFactoryTest {
  private final ReportView one = ReportViewFactory.of(SampleJudgments.oneStretch());
  private final ReportView three = ReportViewFactory.of(SampleJudgments.threeStretches());

  private static ItemView item(ReportView report, String anchor) {
    return report.areas().stream()
        .flatMap(area -> area.items().stream())
        .filter(item -> item.anchor().equals(anchor))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theHeadSaysWhatContradictsTheBuildDays() {
    assertThat(three.head().built())
        .isEqualTo("7 January to 20 June 1935, most likely about 14 February 1935");
    assertThat(three.head().basis()).isEqualTo("its number");
    assertThat(three.head().contradiction())
        .contains("is contradicted by “the model's production” (March 1932 to August 1934)");
  }

  @Test
  void theScoreIsSaidInSentences() {
    assertThat(one.score().sentences())
        .containsExactly(
            "The likely score is 49.706 of 100. However the open matters turn out, it is no less"
                + " than 45 and no more than 89.444.",
            "On the likely score it reaches: Second award.",
            "On the low score no award is certain.",
            "Possible, on the high score: First award.");
    assertThat(one.score().awards())
        .extracting(ScoreView.AwardView::standing)
        .containsExactly("out of reach", "possible", "reached");
    assertThat(one.score().awards().get(0).conditions())
        .isEqualTo("no area under 88%; no item departs by over 4 points");
  }

  @Test
  void costsLeaveOutWhatWasNotShown() {
    assertThat(one.costs().lines())
        .extracting(LossesView.LossLine::title)
        .containsExactly("Horn button", "Heater");
    assertThat(one.costs().lines().get(0).lost()).isEqualTo("18");
    assertThat(one.costs().lines().get(0).why().get(0))
        .endsWith("expected: nickel plate (disputed)");
    assertThat(one.notShown().areas().get(0).lines())
        .containsExactly(
            new NotAssessedView.NotAssessedLine("item-cab-mirror", "Mirror", "present", "20"));
  }

  @Test
  void aDisputeIsWrittenUpWithAllThatBearsOnIt() {
    DisputeView dispute = one.disputes().get(0);
    assertThat(dispute.question()).isEqualTo("Horn button: which finish is right?");
    assertThat(dispute.pointsAtStake()).isEqualTo("20 points ride on it.");
    DisputeView.Span span = dispute.spans().get(0);
    assertThat(span.conflict()).isEqualTo("Conflict 0.450; 0.091 is left unassigned.");
    assertThat(span.positions())
        .extracting(DisputeView.PositionView::belief)
        .containsExactly("0.818", "0.091");
    assertThat(span.settling()).contains("“nickel plate”: 1 of grade A, or 2 of grade C");
    assertThat(dispute.dates().orElseThrow().rows())
        .extracting(DisputeView.ClaimDatesRow::days)
        .containsExactly("1 March 1932 to 11 March 1935", "March 1932 to August 1936");
  }

  @Test
  void neighboringStretchesThatSayTheSameBecomeOne() {
    assertThat(item(three, "item-horn-button").spans())
        .extracting(ItemView.Span::days)
        .containsExactly("7 January to 11 March 1935", "12 March to 20 June 1935");
    assertThat(item(three, "item-bed-color").spans())
        .extracting(ItemView.Span::days)
        .containsExactly("");
  }

  @Test
  void settledAgainstDissentIsListedApart() {
    assertThat(one.settled())
        .extracting(DisputeView::item)
        .containsExactly("Color of the load bed");
    assertThat(one.settled().get(0).spans().get(0).others())
        .extracting(DisputeView.Other::says)
        .containsExactly("leaves open: Works green or Black");
  }

  @Test
  void arithmeticIsPrintedStepByStep() {
    ItemView.AspectView finish = item(one, "item-horn-button").spans().get(0).aspects().get(0);
    assertThat(finish.sums())
        .containsExactly(
            "low: 20 × 0 = 0", "likely: 20 × (0.9 × 0 + 0.1 × 1) = 2", "high: 20 × 1 = 20");
    assertThat(item(one, "item-cab-lamp").spans().get(0).aspects().get(0).sums())
        .containsExactly(
            "10.5 × 1 = 10.5",
            "An allowed departure keeps a credit of 1; without the allowance it earns 0.");
  }

  @Test
  void eachMethodShowsItsOwnFormula() {
    assertThat(one.sum().tables().get(0).formulas().get(0)).startsWith("Low: 40.5 ÷ 90 × 100 = ");
    assertThat(
            ReportViewFactory.of(SampleJudgments.by(Scale.Method.AREAS))
                .sum()
                .tables()
                .get(0)
                .formulas()
                .get(0))
        .startsWith("Low: (60 × 10.5/60 + 40 × 30/30) ÷ 100 × 100 = ");
    assertThat(
            ReportViewFactory.of(SampleJudgments.by(Scale.Method.DEDUCTIONS))
                .sum()
                .tables()
                .get(0)
                .formulas()
                .get(0))
        .startsWith("Low: 100 − 49.5 = ");
  }

  @Test
  void findingTheBuildDayHasItsWorth() {
    assertThat(one.steps()).isEmpty();
    assertThat(three.steps().orElseThrow().sentence())
        .isEqualTo(
            "It scores between 49.706, if built before 12 March 1935, and 70.943, if built from"
                + " 1 June 1935 on. Finding the build day is worth up to 21.237 points.");
  }

  @Test
  void aTraceIsOneMoreSource() {
    SourceView last = one.sources().get(one.sources().size() - 1);
    assertThat(last.title())
        .isEqualTo("Trace on this vehicle, at “Color of the load bed”: Under the left hinge strap");
    assertThat(last.weight()).isEqualTo("0.7");
    assertThat(one.disputes().get(0).spans().get(0).positions().get(0).sources())
        .extracting(CiteView::where)
        .containsExactly("note 7");
  }

  @Test
  void theMachinesLanguageDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("tr-TR", "ar-EG", "de-DE")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(ReportViewFactory.of(SampleJudgments.threeStretches())).isEqualTo(three);
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
