package assize.report.vehicle;

import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.Notice;
import assize.record.VehicleRecord;
import assize.report.view.AnchorIds;
import assize.report.view.DisputeViewFactory;
import assize.report.view.EvidenceViewFactory;
import assize.report.view.FileViewFactory;
import assize.report.view.FilterViewFactory;
import assize.report.view.HazardView;
import assize.report.view.ItemViewFactory;
import assize.report.view.LinkView;
import assize.report.view.LossesViewFactory;
import assize.report.view.ReportContext;
import assize.report.view.ReportHeaderViewFactory;
import assize.report.view.ScoreViewFactory;
import assize.report.view.SourceImageViewFactory;
import assize.ruleset.Hazard;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns a judgment into a finished report. */
public final class ReportViewFactory {
  private ReportViewFactory() {}

  /** Words and rounds everything that a judgment gave; the same judgment gives the same report. */
  public static ReportView of(Judgment judgment) {
    return of(judgment, Map.of());
  }

  /**
   * Does the same where some pictures can't be shown.
   *
   * @param unshown why not, by the evidence's name in the record
   */
  public static ReportView of(Judgment judgment, Map<String, String> unshown) {
    return of(judgment, judgment.vehicle(), unshown);
  }

  /**
   * Does the same for a judgment whose vehicle leaves some facts out.
   *
   * @param facts the record that was judged, by which claims speak or do not
   */
  public static ReportView of(Judgment judgment, VehicleRecord facts, Map<String, String> unshown) {
    ReportContext reading = new ReportContext(judgment, facts);
    DisputeViewFactory differing = new DisputeViewFactory(reading);
    EvidenceViewFactory evidence = new EvidenceViewFactory(judgment, unshown, differing.places());
    SourceImageViewFactory pictures = new SourceImageViewFactory(reading, unshown);
    ItemViewFactory items = new ItemViewFactory(reading, evidence, pictures);
    AreaViewFactory areas = new AreaViewFactory(reading, items);
    LossesViewFactory costs = new LossesViewFactory(reading);
    DisputeViewFactory.Sorted disputes = differing.sorted(evidence, pictures);
    return new ReportView(
        ReportHeaderViewFactory.of(judgment),
        judgment.notices().stream()
            .map(remark -> new ReportView.RemarkView(about(remark.kind()), remark.words()))
            .toList(),
        ScoreViewFactory.of(judgment),
        costs.costs(),
        disputes.disputed(),
        disputes.settled(),
        disputes.idle(),
        costs.notShown(),
        judgment.items().stream().flatMap(one -> items.departure(one).stream()).toList(),
        judgment.areas().stream().map(areas::of).toList(),
        new ScoreByDateViewFactory(reading).view(),
        new FilterViewFactory(judgment).view(),
        new ScoreCalculationViewFactory(reading).view(),
        new SourceViewFactory(reading).views(),
        hazards(judgment),
        Hazard.THEN,
        evidence.all(),
        FileViewFactory.of(judgment),
        Optional.empty());
  }

  private static String about(Notice.Kind kind) {
    return switch (kind) {
      case BUILD_DAYS -> "Build days";
      case NUMBER -> "Number";
      case EDITION -> "Edition";
      case DEPARTURE_DUE -> "Due to be looked at again";
    };
  }

  private static List<HazardView> hazards(Judgment judgment) {
    return Arrays.stream(Hazard.values())
        .map(hazard -> hazard(judgment, hazard))
        .filter(view -> !view.items().isEmpty())
        .toList();
  }

  private static HazardView hazard(Judgment judgment, Hazard hazard) {
    return new HazardView(
        AnchorIds.hazard(hazard.word()),
        hazard.word(),
        hazard.precaution(),
        judgment.items().stream()
            .filter(one -> !ItemViewFactory.isNotApplicable(one))
            .map(ItemJudgment::item)
            .filter(item -> item.hazards().contains(hazard))
            .map(item -> new LinkView(AnchorIds.item(item.id()), item.title()))
            .toList());
  }
}
