package assize.report.view;

import assize.aspect.Aspect;
import assize.evidence.Claim;
import assize.evidence.DisputeState;
import assize.evidence.Manner;
import assize.evidence.SourceKind;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemJudgment;
import assize.judgment.PositionJudgment;
import assize.judgment.Verdict;
import assize.record.Trace;
import assize.report.drawing.Bars;
import assize.report.drawing.Drawing;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What sources differ on, in words. */
final class DisputeViews {
  private final Reading reading;
  private final ClaimDateViews dates;
  private final AspectViews aspects;

  DisputeViews(Reading reading) {
    this.reading = reading;
    this.dates = new ClaimDateViews(reading);
    this.aspects = new AspectViews(reading);
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
        Spans.join(
            reading,
            i -> span(found, i),
            (span, days) ->
                new DisputeView.Span(
                    days,
                    span.state(),
                    span.conflict(),
                    span.rides(),
                    span.positions(),
                    span.others(),
                    span.settling()));
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
        dates.of(item, rule, anchor));
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
      return new DisputeView.Span(
          "", "The item does not apply on these days.", "", "", List.of(), List.of(), List.of());
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
        settling(item, aspect));
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
            : "");
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
                manner(claim.manner()) + words));
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
                manner(trace.manner()) + words));
      }
    }
    return others;
  }

  private static String manner(Manner manner) {
    return switch (manner) {
      case SAYS -> "says ";
      case LEAVES_OPEN -> "leaves open: ";
      case RULES_OUT -> "rules out: ";
    };
  }

  private List<String> settling(Item item, AspectJudgment aspect) {
    return aspect.positions().stream()
        .filter(position -> !position.settling().isEmpty())
        .map(
            position ->
                "“"
                    + reading.words().any(item, aspect.rule().aspect(), position.accepts())
                    + "”: "
                    + position.settling().stream()
                        .map(further -> further.sources() + " of grade " + further.grade())
                        .collect(Collectors.joining(", or ")))
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
