package assize.report.changes;

import assize.aspect.Verdict;
import assize.compare.VehicleComparison;
import assize.compare.VehicleComparison.ItemDifference;
import assize.judgment.AwardResult;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.report.changes.ChangesView.ChangeLine;
import assize.report.changes.ChangesView.ItemRow;
import assize.report.changes.ChangesView.VehicleView;
import assize.report.view.NumberFormatter;
import assize.ruleset.Award;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What two editions come to for one vehicle, in words. */
final class ChangedVehicleViewFactory {
  private final ChangeFormatter words;

  ChangedVehicleViewFactory(ChangeFormatter words) {
    this.words = words;
  }

  VehicleView view(VehicleComparison difference, List<String> left) {
    Judgment before = difference.before();
    Judgment after = difference.after();
    return new VehicleView(
        after.vehicle().name(),
        scores(before, after),
        difference.items().stream().map(this::row).toList(),
        left);
  }

  private static List<ChangeLine> scores(Judgment before, Judgment after) {
    List<ChangeLine> lines = new ArrayList<>();
    lines.add(
        new ChangeLine(
            "Likely score",
            score(before, before.score().likely()),
            score(after, after.score().likely())));
    lines.add(new ChangeLine("Between", range(before.score()), range(after.score())));
    if (!before.withoutAllowances().equals(before.score())
        || !after.withoutAllowances().equals(after.score())) {
      lines.add(
          new ChangeLine(
              "Without allowances",
              score(before, before.withoutAllowances().likely()),
              score(after, after.withoutAllowances().likely())));
    }
    lines.add(new ChangeLine("Award", award(before.award()), award(after.award())));
    return lines;
  }

  private static String score(Judgment judgment, long points) {
    return NumberFormatter.points(points)
        + " of "
        + NumberFormatter.points(judgment.rules().scale().outOf());
  }

  private static String range(ScoreRange range) {
    return NumberFormatter.points(range.low()) + " and " + NumberFormatter.points(range.high());
  }

  private static String award(AwardResult award) {
    return award.reached().map(Award::name).orElse("none");
  }

  private ItemRow row(ItemDifference one) {
    return new ItemRow(
        one.id(),
        words.title(one.id()),
        one.newlyApplies() ? "newly applies" : one.noLongerApplies() ? "no longer applies" : "",
        told(one.before()),
        told(one.after()),
        words.reasons(one.because()));
  }

  private static String told(Optional<ItemJudgment> judged) {
    return judged
        .map(
            it ->
                it.verdict() == Verdict.NOT_APPLICABLE
                    ? it.verdict().word()
                    : it.verdict().word()
                        + ", "
                        + NumberFormatter.points(it.earned().likely())
                        + " of "
                        + NumberFormatter.points(it.possible())
                        + (it.earned().isPoint()
                            ? ""
                            : " (" + NumberFormatter.range(it.earned()) + ")"))
        .orElse("no such item");
  }
}
