package assize.report.vehicle;

import assize.report.view.DepartureView;
import assize.report.view.DisputeView;
import assize.report.view.EvidenceView;
import assize.report.view.FileView;
import assize.report.view.FilterView;
import assize.report.view.HazardView;
import assize.report.view.LossesView;
import assize.report.view.NotAssessedView;
import assize.report.view.ReportHeaderView;
import assize.report.view.ScoreView;
import java.util.List;
import java.util.Optional;

/**
 * A finished report, in the order in which it is read.
 *
 * @param remarks what judging noticed, in whole sentences
 * @param disputes disputed aspects on which points ride
 * @param settled aspects where a source dissents from what is settled
 * @param idle disputed aspects that make no difference to this vehicle
 * @param evidence all of it, cited or not
 * @param steps the score against the build day, where it depends on it
 * @param filter what every item can be narrowed to
 * @param shared what is left out, where this is the copy for others
 */
public record ReportView(
    ReportHeaderView head,
    List<RemarkView> remarks,
    ScoreView score,
    LossesView costs,
    List<DisputeView> disputes,
    List<DisputeView> settled,
    List<DisputeView> idle,
    NotAssessedView notShown,
    List<DepartureView> departures,
    List<AreaView> areas,
    Optional<ScoreByDateView> steps,
    FilterView filter,
    ScoreCalculationView sum,
    List<SourceView> sources,
    List<HazardView> hazards,
    String afterHazards,
    List<EvidenceView> evidence,
    List<FileView> files,
    Optional<RedactionsView> shared) {
  public ReportView {
    remarks = List.copyOf(remarks);
    disputes = List.copyOf(disputes);
    settled = List.copyOf(settled);
    idle = List.copyOf(idle);
    departures = List.copyOf(departures);
    areas = List.copyOf(areas);
    sources = List.copyOf(sources);
    hazards = List.copyOf(hazards);
    evidence = List.copyOf(evidence);
    files = List.copyOf(files);
  }

  /** Returns the same as the copy for others. */
  public ReportView with(RedactionsView said) {
    return new ReportView(
        head,
        remarks,
        score,
        costs,
        disputes,
        settled,
        idle,
        notShown,
        departures,
        areas,
        steps,
        filter,
        sum,
        sources,
        hazards,
        afterHazards,
        evidence,
        files,
        Optional.of(said));
  }

  /**
   * Something that a person should know.
   *
   * @param about what it is about, in a word or two
   */
  public record RemarkView(String about, String words) {}
}
