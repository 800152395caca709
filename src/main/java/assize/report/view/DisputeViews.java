package assize.report.view;

import assize.aspect.Aspect;
import assize.evidence.Claim;
import assize.evidence.DisputeState;
import assize.evidence.Manner;
import assize.evidence.SourceKind;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemJudgment;
import assize.judgment.PositionJudgment;
import assize.judgment.SourceJudgment;
import assize.judgment.Verdict;
import assize.record.Trace;
import assize.report.drawing.Bars;
import assize.report.drawing.Drawing;
import assize.ruleset.AspectRule;
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

/** What sources differ on, in words. */
final class DisputeViews {
  private final Reading reading;
  private final ClaimDateViews dates;
  private final AspectViews aspects;
  private final TestimonyViews testimonies;
  private final CopyViews copies;
  private final WorkingViews working;
  private final OwnerViews owner;

  DisputeViews(Reading reading) {
    this.reading = reading;
    this.dates = new ClaimDateViews(reading);
    this.aspects = new AspectViews(reading);
    this.testimonies = new TestimonyViews(reading, dates);
    this.copies = new CopyViews(reading, testimonies);
    this.working = new WorkingViews(reading, testimonies);
    this.owner = new OwnerViews(reading);
  }

  /** The aspects on which sources differ, each list with the dearest first. */
  record Sorted(List<DisputeView> disputed, List<DisputeView> settled, List<DisputeView> idle) {}

  private record Found(ItemJudgment one, int aspect, long rides, boolean disputed) {}

  Sorted sorted() {
    List<Found> found = new ArrayList<>();
    for (ItemJudgment one : reading.judgment().items()) {
      for (int i = 0; i < one.item().aspects().size(); i++) {
        look(one, i).ifPresent(found::add);
      }
    }
    found.sort((a, b) -> Long.compare(b.rides(), a.rides()));
    return new Sorted(
        found.stream().filter(it -> it.disputed() && it.rides() > 0).map(this::view).toList(),
        found.stream().filter(it -> !it.disputed()).map(this::view).toList(),
        found.stream().filter(it -> it.disputed() && it.rides() == 0).map(this::view).toList());
  }

  /** Returns one aspect of one item; nothing where the sources do not differ on it. */
  Optional<DisputeView> of(ItemJudgment one, AspectRule rule) {
    return look(one, one.item().aspects().indexOf(rule)).map(this::view);
  }

  private Optional<Found> look(ItemJudgment one, int aspect) {
    List<AspectJudgment> all =
        IntStream.range(0, reading.stretches())
            .mapToObj(stretch -> at(one, aspect, stretch))
            .flatMap(Optional::stream)
            .filter(AspectViews::differs)
            .toList();
    long rides = all.stream().mapToLong(AspectJudgment::rides).max().orElse(0);
    boolean disputed = all.stream().anyMatch(it -> it.dispute() == DisputeState.DISPUTED);
    return all.isEmpty() ? Optional.empty() : Optional.of(new Found(one, aspect, rides, disputed));
  }

  private static Optional<AspectJudgment> at(ItemJudgment one, int aspect, int stretch) {
    List<AspectJudgment> aspects = one.stretches().get(stretch).aspects();
    var rule = one.item().aspects().get(aspect);
    return aspects.stream().filter(it -> it.rule().aspect() == rule.aspect()).findFirst();
  }

  private DisputeView view(Found found) {
    Item item = found.one().item();
    var rule = item.aspects().get(found.aspect());
    String anchor = Anchors.dispute(item.id(), rule.aspect().word());
    List<DisputeView.Span> spans =
        Spans.join(reading, i -> span(found, i), (span, days) -> span.within(days));
    return new DisputeView(
        anchor,
        Anchors.item(item.id()),
        item.title(),
        rule.aspect().spoken(),
        item.title() + ": " + question(rule.aspect()),
        rides(found),
        outcome(found),
        aspects.found(item, rule.aspect()),
        spans,
        dates.of(item, rule, anchor),
        owner.of(found.one(), rule.aspect()));
  }

  private static String rides(Found found) {
    return found.rides() == 0
        ? "No points ride on it."
        : Numbers.points(found.rides())
            + (found.rides() == 1000 ? " point rides on it." : " points ride on it.");
  }

  private String outcome(Found found) {
    boolean shown =
        IntStream.range(0, reading.stretches())
            .mapToObj(i -> at(found.one(), found.aspect(), i))
            .flatMap(Optional::stream)
            .anyMatch(it -> it.verdict() != Verdict.NOT_SHOWN);
    return shown ? "" : "This aspect has not been shown, so the vehicle stands nowhere yet.";
  }

  private DisputeView.Span span(Found found, int stretch) {
    Optional<AspectJudgment> here = at(found.one(), found.aspect(), stretch);
    if (here.isEmpty()) {
      return DisputeView.Span.apart("The item does not apply on these days.");
    }
    AspectJudgment aspect = here.get();
    Item item = found.one().item();
    return new DisputeView.Span(
        "",
        state(aspect),
        "Conflict "
            + Numbers.mass(aspect.conflict())
            + "; "
            + Numbers.mass(aspect.unassigned())
            + " is left unassigned.",
        aspect.rides() == found.rides()
            ? ""
            : Numbers.points(aspect.rides()) + " points ride here.",
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
    return Numbers.count(all, "source speaks", "sources speak")
        + " here; "
        + (count == all ? "each counts" : count + " of them " + (count == 1 ? "counts" : "count"))
        + " as a witness of its own.";
  }

  private List<TestimonyView> between(Item item, AspectJudgment aspect, int stretch) {
    Set<String> saying =
        aspect.positions().stream()
            .flatMap(it -> Stream.concat(it.sources().stream(), it.echoes().stream()))
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
    String belief = Numbers.mass(position.belief());
    String plausibility = Numbers.mass(position.plausibility());
    Drawing bar =
        Bars.belief(
            "How far it is believed",
            "Belief " + belief + ", plausibility " + plausibility,
            position.belief(),
            position.plausibility(),
            reading.judgment().rules().scale().settledAt() / 1000.0);
    boolean shown = position.comparison().verdict() != Verdict.NOT_SHOWN;
    return new DisputeView.PositionView(
        Integer.toString(index + 1),
        accepts,
        reading.claims().of(aspect.rule(), position, reading.dayOf(stretch)),
        belief,
        plausibility,
        bar,
        position.judged() ? Numbers.mass(position.share()) : "",
        position.judged(),
        VerdictView.of(position.comparison().verdict()),
        shown ? Numbers.number(position.comparison().credit()) : "",
        shown
            ? AspectViews.besides(
                aspects.found(item, aspect.rule().aspect()), position.comparison().why().words())
            : "",
        shown ? earns(aspect, position) : "",
        settling(position),
        testimonies.inOrder(aspect).stream()
            .filter(
                it ->
                    position.sources().contains(it.source())
                        || position.echoes().contains(it.source()))
            .map(it -> testimonies.of(item, aspect, it, stretch))
            .toList());
  }

  /** The points under one position alone, an allowance included, rounded as an aspect's are. */
  private static String earns(AspectJudgment aspect, PositionJudgment position) {
    BigFraction credit = position.comparison().credit();
    BigFraction kept = aspect.allowed().filter(least -> least.compareTo(credit) > 0).orElse(credit);
    long earned =
        kept.multiply(aspect.possible()).bigDecimalValue(0, RoundingMode.HALF_EVEN).longValue();
    return Numbers.points(earned) + " of " + Numbers.points(aspect.possible());
  }

  private static String settling(PositionJudgment position) {
    return position.settling().stream()
        .map(further -> further.sources() + " of grade " + further.grade())
        .collect(Collectors.joining(", or "));
  }

  private List<DisputeView.Other> others(Item item, AspectJudgment aspect, int stretch) {
    List<DisputeView.Other> others = new ArrayList<>();
    for (Claim claim : aspect.rule().claims()) {
      if (claim.manner() != Manner.SAYS
          && claim.source().isPresent()
          && reading.claims().speaks(claim, reading.dayOf(stretch))) {
        String words = reading.words().any(item, aspect.rule().aspect(), claim.values());
        others.add(
            new DisputeView.Other(
                reading.claims().cite(claim.source().get(), claim.citation().orElse(""), ""),
                TestimonyViews.manner(claim.manner()) + words));
      }
    }
    List<Trace> traces = reading.judgment().vehicle().traces();
    for (String name : reading.claims().traces(item.id(), aspect.rule().aspect())) {
      Trace trace = traces.get(Integer.parseInt(name.substring("trace ".length())) - 1);
      if (trace.manner() != Manner.SAYS) {
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
                TestimonyViews.manner(trace.manner()) + words));
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

  private static String question(Aspect aspect) {
    return switch (aspect) {
      case GLOSS -> "how glossy should it be?";
      case COUNT -> "how many are right?";
      case PRESENT -> "should it be there?";
      case WORKS -> "should it work?";
      case CHOICE -> "which is right?";
      case FINISH, COLOR, MATERIAL, PART_NUMBER, DATE_CODE, SIZE, ORIGIN, CONDITION ->
          "which " + aspect.spoken() + " is right?";
    };
  }
}
