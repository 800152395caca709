package assize.report.view;

import assize.aspect.Verdict;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.SourceKind;
import assize.judgment.AspectJudgment;
import assize.judgment.PositionJudgment;
import assize.judgment.SourceJudgment;
import assize.record.PhysicalTrace;
import assize.report.chart.Chart;
import assize.report.chart.RangeBars;
import assize.ruleset.Item;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What sources differ on within one stretch, in words. */
final class DisputePeriodViewFactory {
  private final ReportContext reading;
  private final AspectViewFactory aspects;
  private final SourceStatementViewFactory testimonies;
  private final CopyTreeViewFactory copies;
  private final CombinationStepsViewFactory working;

  DisputePeriodViewFactory(
      ReportContext reading, ClaimDatesViewFactory dates, AspectViewFactory aspects) {
    this.reading = reading;
    this.aspects = aspects;
    this.testimonies = new SourceStatementViewFactory(reading, dates);
    this.copies = new CopyTreeViewFactory(reading, testimonies);
    this.working = new CombinationStepsViewFactory(reading, testimonies);
  }

  /**
   * Returns what there is to say of one aspect.
   *
   * @param here empty where the item does not apply
   * @param rides the points that ride on it at the most, in thousandths
   */
  DisputeView.Span of(Item item, Optional<AspectJudgment> here, int stretch, long rides) {
    if (here.isEmpty()) {
      return DisputeView.Span.notApplicable("The item does not apply on these days.");
    }
    AspectJudgment aspect = here.get();
    return new DisputeView.Span(
        "",
        state(aspect),
        "Conflict "
            + NumberFormatter.mass(aspect.conflict())
            + "; "
            + NumberFormatter.mass(aspect.unassigned())
            + " is left unassigned.",
        aspect.pointsAtStake() == rides
            ? ""
            : NumberFormatter.points(aspect.pointsAtStake()) + " points ride here.",
        IntStream.range(0, aspect.positions().size())
            .mapToObj(i -> position(item, aspect, stretch, i))
            .toList(),
        others(item, aspect, stretch),
        settling(item, aspect),
        between(item, aspect, stretch),
        witnesses(aspect),
        copies.of(item, aspect, stretch),
        working.of(item, aspect));
  }

  private static String witnesses(AspectJudgment aspect) {
    long all = aspect.sources().size();
    long count = aspect.sources().stream().filter(SourceJudgment::isWitness).count();
    return NumberFormatter.count(all, "source speaks", "sources speak")
        + " here; "
        + (count == all ? "each counts" : count + " of them " + (count == 1 ? "counts" : "count"))
        + " as a witness of its own.";
  }

  private List<SourceStatementView> between(Item item, AspectJudgment aspect, int stretch) {
    Set<String> saying =
        aspect.positions().stream()
            .flatMap(it -> Stream.concat(it.sources().stream(), it.repeatingSources().stream()))
            .collect(Collectors.toSet());
    return testimonies.inOrder(aspect).stream()
        .filter(it -> !saying.contains(it.source()))
        .map(it -> testimonies.of(item, aspect, it, stretch))
        .toList();
  }

  private static String state(AspectJudgment aspect) {
    return switch (aspect.dispute()) {
      case AGREED -> "agreed";
      case SETTLED -> "settled against dissent";
      case DISPUTED -> "disputed";
      case UNSOURCED -> "no source";
    };
  }

  private DisputeView.PositionView position(
      Item item, AspectJudgment aspect, int stretch, int index) {
    PositionJudgment position = aspect.positions().get(index);
    String accepts = reading.words().any(item, aspect.rule().aspect(), position.accepts());
    String belief = NumberFormatter.mass(position.belief());
    String plausibility = NumberFormatter.mass(position.plausibility());
    Chart bar =
        RangeBars.belief(
            "How far it is believed",
            "Belief " + belief + ", plausibility " + plausibility,
            position.belief(),
            position.plausibility(),
            reading.judgment().rules().scale().settledAt() / 1000.0);
    boolean shown = position.comparison().verdict() != Verdict.NOT_ASSESSED;
    return new DisputeView.PositionView(
        Integer.toString(index + 1),
        accepts,
        reading.claims().of(aspect.rule(), position, reading.dayOf(stretch)),
        belief,
        plausibility,
        bar,
        position.scored() ? NumberFormatter.mass(position.share()) : "",
        position.scored(),
        VerdictView.of(position.comparison().verdict()),
        shown ? NumberFormatter.number(position.comparison().credit()) : "",
        shown
            ? position.comparison().reason().besides(reading.at(item, aspect.rule().aspect()))
            : "",
        shown ? earns(aspect, position) : "",
        settling(position),
        testimonies.inOrder(aspect).stream()
            .filter(
                it ->
                    position.sources().contains(it.source())
                        || position.repeatingSources().contains(it.source()))
            .map(it -> testimonies.of(item, aspect, it, stretch))
            .toList());
  }

  /** The points under one position alone, an allowance included, rounded as an aspect's are. */
  private static String earns(AspectJudgment aspect, PositionJudgment position) {
    BigFraction credit = position.comparison().credit();
    BigFraction kept = aspect.allowed().filter(least -> least.compareTo(credit) > 0).orElse(credit);
    long earned =
        kept.multiply(aspect.possible()).bigDecimalValue(0, RoundingMode.HALF_EVEN).longValue();
    return NumberFormatter.points(earned) + " of " + NumberFormatter.points(aspect.possible());
  }

  private static String settling(PositionJudgment position) {
    return position.settling().stream()
        .map(further -> further.sources() + " of grade " + further.grade())
        .collect(Collectors.joining(", or "));
  }

  private List<DisputeView.Other> others(Item item, AspectJudgment aspect, int stretch) {
    List<DisputeView.Other> others = new ArrayList<>();
    for (Claim claim : aspect.rule().claims()) {
      if (claim.manner() != ClaimKind.SAYS
          && claim.source().isPresent()
          && reading.claims().speaks(claim, reading.dayOf(stretch))) {
        String words = reading.words().any(item, aspect.rule().aspect(), claim.values());
        others.add(
            new DisputeView.Other(
                reading.claims().cite(claim.source().get(), claim.citation().orElse(""), ""),
                SourceStatementViewFactory.manner(claim.manner()) + words));
      }
    }
    List<PhysicalTrace> traces = reading.judgment().vehicle().traces();
    for (String name : reading.claims().traces(item.id(), aspect.rule().aspect())) {
      PhysicalTrace trace = traces.get(Integer.parseInt(name.substring("trace ".length())) - 1);
      if (trace.manner() != ClaimKind.SAYS) {
        String words =
            reading
                .words()
                .any(
                    item,
                    aspect.rule().aspect(),
                    trace.values().getOrDefault(aspect.rule().aspect(), List.of()));
        others.add(
            new DisputeView.Other(
                reading.claims().cite(name, SourceKind.TRACE.word(), ""),
                SourceStatementViewFactory.manner(trace.manner()) + words));
      }
    }
    return others;
  }

  private List<String> settling(Item item, AspectJudgment aspect) {
    return aspect.positions().stream()
        .filter(position -> !position.settling().isEmpty())
        .map(
            position ->
                "“"
                    + reading.words().any(item, aspect.rule().aspect(), position.accepts())
                    + "”: "
                    + settling(position))
        .toList();
  }
}
