package assize.report.view;

import assize.date.DayWords;
import assize.date.Edtf;
import assize.judgment.AwardResult;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.record.Judged;
import assize.record.VehicleRecord;
import assize.report.chart.Bars;
import assize.ruleset.Award;
import assize.ruleset.RuleSet;
import assize.text.Fingerprint;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * What a roster keeps of one judged vehicle: little, since there may be thousands.
 *
 * @param likely the likely score in thousandths of a point
 * @param awards how the vehicle stands to each award of the standard
 * @param fewest in a copy for others, how many numbers at least give the same row; empty where the
 *     standard dates none of the vehicle's numbers
 */
public record RosterEntry(
    Standard standard,
    long likely,
    List<RosterEntry.Standing> awards,
    OptionalInt fewest,
    RosterRowView row) {
  public RosterEntry {
    awards = List.copyOf(awards);
  }

  /**
   * What a vehicle was judged by. Only vehicles of one standard can be compared.
   *
   * @param digest the fingerprints of its files: two texts may call themselves one edition
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
   * Takes from a judgment what a roster says of it.
   *
   * @param report the file of its report; empty for none
   */
  public static RosterEntry of(Judgment judgment, String report) {
    return of(judgment, judgment.vehicle(), report);
  }

  /** Does the same for a vehicle that leaves out some of the facts that claims speak by. */
  static RosterEntry of(Judgment judgment, VehicleRecord facts, String report) {
    RuleSet rules = judgment.rules();
    Standard standard =
        new Standard(
            rules.id(),
            rules.name(),
            HeadViews.edition(rules),
            rules.files().stream().map(Fingerprint::sha256).collect(Collectors.joining(" ")),
            rules.scale().outOf(),
            rules.awards().stream()
                .sorted(Comparator.comparingLong(Award::points).reversed())
                .toList());
    AwardResult award = judgment.award();
    List<Standing> standings =
        standard.awards().stream()
            .map(
                one ->
                    new Standing(
                        ScoreViews.under(one, award.certain()),
                        ScoreViews.under(one, award.reached()),
                        ScoreViews.under(one, award.possible())))
            .toList();
    return new RosterEntry(
        standard,
        judgment.score().likely(),
        standings,
        OptionalInt.empty(),
        row(judgment, facts, standings, report));
  }

  private static RosterRowView row(
      Judgment judgment, VehicleRecord facts, List<Standing> standings, String report) {
    VehicleRecord vehicle = judgment.vehicle();
    ScoreRange score = judgment.score();
    double of = judgment.rules().scale().outOf();
    Reading reading = new Reading(judgment, facts);
    DisputeViews.Open open = new DisputeViews(reading).open();
    long notShown = new CostViews(reading).notShownPoints();
    Optional<Edtf> on = vehicle.judged().flatMap(Judged::on);
    return new RosterRowView(
        vehicle.name(),
        vehicle.id(),
        report,
        HeadViews.model(judgment),
        DayWords.of(judgment.build().days()),
        key(judgment.build().days().first()),
        Numbers.points(score.likely()),
        score.isPoint() ? "" : Numbers.range(score),
        Long.toString(score.likely()),
        Bars.earned("", "", score.low() / of, score.likely() / of, score.high() / of),
        awards(judgment),
        Long.toString(standings.stream().filter(Standing::reached).count()),
        open.count() == 0 ? "none" : Long.toString(open.count()),
        open.count() == 0 ? "" : Numbers.points(open.rides()),
        Long.toString(open.rides()),
        notShown == 0 ? "nothing" : Numbers.points(notShown),
        Long.toString(notShown),
        on.map(DayTexts::date).orElse("not said"),
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
