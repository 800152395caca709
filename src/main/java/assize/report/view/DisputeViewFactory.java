package assize.report.view;

import assize.aspect.Aspect;
import assize.aspect.Verdict;
import assize.evidence.DisputeState;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemJudgment;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What sources differ on, in words. */
public final class DisputeViewFactory {
  private final ReportContext reading;
  private final ClaimDatesViewFactory dates;
  private final AspectViewFactory aspects;
  private final DisputePeriodViewFactory differing;
  private final OwnerViewFactory owner;

  public DisputeViewFactory(ReportContext reading) {
    this.reading = reading;
    this.dates = new ClaimDatesViewFactory(reading);
    this.aspects = new AspectViewFactory(reading);
    this.differing = new DisputePeriodViewFactory(reading, dates, aspects);
    this.owner = new OwnerViewFactory(reading);
  }

  /** The aspects on which sources differ, each list with the dearest first. */
  public record Sorted(
      List<DisputeView> disputed, List<DisputeView> settled, List<DisputeView> idle) {}

  private record RankedAspect(ItemJudgment one, int aspect, long pointsAtStake, boolean disputed) {}

  /** Returns the items that are disputed and matter, and where they are written up. */
  public Map<String, LinkView> places() {
    Map<String, LinkView> places = new LinkedHashMap<>();
    found().stream()
        .filter(it -> it.disputed() && it.pointsAtStake() > 0)
        .forEach(it -> places.putIfAbsent(it.one().item().id(), place(it)));
    return places;
  }

  /** Returns where the first aspect of an item is written up on which sources differ. */
  public LinkView place(ItemJudgment one) {
    return IntStream.range(0, one.item().aspects().size())
        .mapToObj(i -> look(one, i))
        .flatMap(Optional::stream)
        .map(DisputeViewFactory::place)
        .findFirst()
        .orElseThrow();
  }

  private static LinkView place(RankedAspect found) {
    Item item = found.one().item();
    Aspect aspect = item.aspects().get(found.aspect()).aspect();
    return new LinkView(
        AnchorIds.dispute(item.id(), aspect.word()),
        item.title() + ": " + aspect.kind().question(aspect));
  }

  /**
   * Disputes on which points ride.
   *
   * @param pointsAtStake in thousandths of a point
   */
  public record Open(long count, long pointsAtStake) {}

  public Open open() {
    List<RankedAspect> open =
        found().stream().filter(it -> it.disputed() && it.pointsAtStake() > 0).toList();
    return new Open(open.size(), open.stream().mapToLong(RankedAspect::pointsAtStake).sum());
  }

  private List<RankedAspect> found() {
    List<RankedAspect> found = new ArrayList<>();
    for (ItemJudgment one : reading.judgment().items()) {
      for (int i = 0; i < one.item().aspects().size(); i++) {
        look(one, i).ifPresent(found::add);
      }
    }
    found.sort((a, b) -> Long.compare(b.pointsAtStake(), a.pointsAtStake()));
    return found;
  }

  public Sorted sorted(EvidenceViewFactory evidence, SourceImageViewFactory pictures) {
    List<RankedAspect> found = found();
    return new Sorted(
        found.stream()
            .filter(it -> it.disputed() && it.pointsAtStake() > 0)
            .map(it -> view(it, evidence, pictures))
            .toList(),
        found.stream()
            .filter(it -> !it.disputed())
            .map(it -> view(it, evidence, pictures))
            .toList(),
        found.stream()
            .filter(it -> it.disputed() && it.pointsAtStake() == 0)
            .map(it -> view(it, evidence, pictures))
            .toList());
  }

  /** Returns one aspect of one item; nothing where the sources do not differ on it. */
  public Optional<DisputeView> of(
      ItemJudgment one,
      AspectRule rule,
      EvidenceViewFactory evidence,
      SourceImageViewFactory pictures) {
    return look(one, one.item().aspects().indexOf(rule))
        .map(found -> view(found, evidence, pictures));
  }

  private Optional<RankedAspect> look(ItemJudgment one, int aspect) {
    List<AspectJudgment> all =
        IntStream.range(0, reading.stretches())
            .mapToObj(stretch -> at(one, aspect, stretch))
            .flatMap(Optional::stream)
            .filter(AspectViewFactory::differs)
            .toList();
    long rides = all.stream().mapToLong(AspectJudgment::pointsAtStake).max().orElse(0);
    boolean disputed = all.stream().anyMatch(it -> it.dispute() == DisputeState.DISPUTED);
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(new RankedAspect(one, aspect, rides, disputed));
  }

  private static Optional<AspectJudgment> at(ItemJudgment one, int aspect, int stretch) {
    List<AspectJudgment> aspects = one.stretches().get(stretch).aspects();
    var rule = one.item().aspects().get(aspect);
    return aspects.stream().filter(it -> it.rule().aspect() == rule.aspect()).findFirst();
  }

  private DisputeView view(
      RankedAspect found, EvidenceViewFactory evidence, SourceImageViewFactory pictures) {
    Item item = found.one().item();
    var rule = item.aspects().get(found.aspect());
    String anchor = AnchorIds.dispute(item.id(), rule.aspect().word());
    List<DisputeView.Span> spans =
        ViewPeriods.join(
            reading,
            i -> differing.of(item, at(found.one(), found.aspect(), i), i, found.pointsAtStake()),
            (span, days) -> span.within(days));
    return new DisputeView(
        anchor,
        AnchorIds.item(item.id()),
        item.title(),
        rule.aspect().spoken(),
        item.title() + ": " + rule.aspect().kind().question(rule.aspect()),
        pointsAtStake(found),
        outcome(found),
        aspects.found(item, rule.aspect()),
        spans,
        dates.of(item, rule, anchor),
        rule.aspect() == Aspect.COLOR,
        pictures(found, evidence, pictures),
        owner.of(found.one(), rule.aspect()));
  }

  /**
   * What sources show first, then what the vehicle shows; papers without a picture are left out.
   */
  private static List<EvidenceView> pictures(
      RankedAspect found, EvidenceViewFactory evidence, SourceImageViewFactory pictures) {
    LinkView place = place(found);
    Item item = found.one().item();
    return Stream.concat(
            pictures.of(item.aspects().get(found.aspect()), place).stream(),
            evidence.of(item.id(), place.anchor()).stream().filter(EvidenceView::photo))
        .toList();
  }

  private static String pointsAtStake(RankedAspect found) {
    return found.pointsAtStake() == 0
        ? "No points ride on it."
        : NumberFormatter.points(found.pointsAtStake())
            + (found.pointsAtStake() == 1000 ? " point rides on it." : " points ride on it.");
  }

  private String outcome(RankedAspect found) {
    boolean shown =
        IntStream.range(0, reading.stretches())
            .mapToObj(i -> at(found.one(), found.aspect(), i))
            .flatMap(Optional::stream)
            .anyMatch(it -> it.verdict() != Verdict.NOT_ASSESSED);
    return shown ? "" : "This aspect has not been shown, so the vehicle stands nowhere yet.";
  }
}
