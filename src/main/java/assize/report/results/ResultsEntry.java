package assize.report.results;

import assize.date.DateRangeFormatter;
import assize.date.Edtf;
import assize.judgment.AwardResult;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.record.Inspected;
import assize.record.VehicleRecord;
import assize.report.chart.RangeBars;
import assize.report.view.DisputeViewFactory;
import assize.report.view.EdtfFormatter;
import assize.report.view.LossesViewFactory;
import assize.report.view.NumberFormatter;
import assize.report.view.ReportContext;
import assize.report.view.ReportHeaderViewFactory;
import assize.report.view.ScoreViewFactory;
import assize.ruleset.Award;
import assize.ruleset.RuleSet;
import assize.text.FileChecksum;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * What a results page keeps of one judged vehicle: little, since there may be thousands.
 *
 * @param likely the likely score in thousandths of a point
 * @param awards how the vehicle stands to each award of the standard
 * @param fewest in a copy for others, how many numbers at least give the same row; empty where the
 *     standard dates none of the vehicle's numbers
 */
public record ResultsEntry(
    Standard standard,
    long likely,
    List<ResultsEntry.Standing> awards,
    OptionalInt fewest,
    ResultsRowView row) {
  public ResultsEntry {
    awards = List.copyOf(awards);
  }

  /**
   * What a vehicle was judged by. Only vehicles of one standard can be compared.
   *
   * @param digest the checksums of its files: two texts may call themselves one edition
   * @param outOf the full score in thousandths of a point
   * @param awards the highest first
   */
  public record Standard(
      String id, String name, String edition, String digest, long outOf, List<Award> awards) {
    public Standard {
      awards = List.copyOf(awards);
    }
  }

  /** Whether an award is reached on the likely score, certain on the low one, and so on. */
  public record Standing(boolean certain, boolean reached, boolean possible) {}

  /**
   * Takes from a judgment what a results page says of it.
   *
   * @param report the file of its report; empty for none
   */
  public static ResultsEntry of(Judgment judgment, String report) {
    return of(judgment, judgment.vehicle(), report);
  }

  /** Does the same for a vehicle that leaves out some of the facts that claims speak by. */
  public static ResultsEntry of(Judgment judgment, VehicleRecord facts, String report) {
    RuleSet rules = judgment.rules();
    Standard standard =
        new Standard(
            rules.id(),
            rules.name(),
            ReportHeaderViewFactory.edition(rules),
            rules.files().stream().map(FileChecksum::sha256).collect(Collectors.joining(" ")),
            rules.scale().outOf(),
            rules.awards().stream()
                .sorted(Comparator.comparingLong(Award::minScore).reversed())
                .toList());
    AwardResult award = judgment.award();
    List<Standing> standings =
        standard.awards().stream()
            .map(
                one ->
                    new Standing(
                        ScoreViewFactory.under(one, award.certain()),
                        ScoreViewFactory.under(one, award.reached()),
                        ScoreViewFactory.under(one, award.possible())))
            .toList();
    return new ResultsEntry(
        standard,
        judgment.score().likely(),
        standings,
        OptionalInt.empty(),
        row(judgment, facts, standings, report));
  }

  private static ResultsRowView row(
      Judgment judgment, VehicleRecord facts, List<Standing> standings, String report) {
    VehicleRecord vehicle = judgment.vehicle();
    ScoreRange score = judgment.score();
    double of = judgment.rules().scale().outOf();
    ReportContext reading = new ReportContext(judgment, facts);
    DisputeViewFactory.Open open = new DisputeViewFactory(reading).open();
    long notShown = new LossesViewFactory(reading).notShownPoints();
    Optional<Edtf> on = vehicle.inspected().flatMap(Inspected::on);
    return new ResultsRowView(
        vehicle.name(),
        vehicle.id(),
        report,
        ReportHeaderViewFactory.model(judgment),
        DateRangeFormatter.of(judgment.build().days()),
        key(judgment.build().days().first()),
        NumberFormatter.points(score.likely()),
        score.isPoint() ? "" : NumberFormatter.range(score),
        Long.toString(score.likely()),
        RangeBars.earned("", "", score.low() / of, score.likely() / of, score.high() / of),
        awards(judgment),
        Long.toString(standings.stream().filter(Standing::reached).count()),
        open.count() == 0 ? "none" : Long.toString(open.count()),
        open.count() == 0 ? "" : NumberFormatter.points(open.pointsAtStake()),
        Long.toString(open.pointsAtStake()),
        notShown == 0 ? "nothing" : NumberFormatter.points(notShown),
        Long.toString(notShown),
        on.map(EdtfFormatter::date).orElse("not said"),
        on.map(date -> key(date.span().first())).orElse(""));
  }

  private static String key(LocalDate day) {
    return day.equals(LocalDate.MIN) ? "" : Long.toString(day.toEpochDay());
  }

  private static List<String> awards(Judgment judgment) {
    if (judgment.rules().awards().isEmpty()) {
      return List.of("no awards");
    }
    AwardResult award = judgment.award();
    List<String> lines = new ArrayList<>();
    lines.add(award.reached().map(Award::name).orElse("none"));
    if (!award.certain().equals(award.reached())) {
      lines.add("certain: " + award.certain().map(Award::name).orElse("none"));
    }
    if (!award.possible().equals(award.reached())) {
      lines.add("possible: " + award.possible().map(Award::name).orElse("none"));
    }
    return lines;
  }
}
