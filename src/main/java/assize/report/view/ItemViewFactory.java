package assize.report.view;

import assize.aspect.Verdict;
import assize.evidence.Ternary;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.judgment.ScoreRange;
import assize.record.Observation;
import assize.ruleset.AspectRule;
import assize.ruleset.Hazard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;

/** One item in words. */
public final class ItemViewFactory {
  private final ReportContext reading;
  private final AspectViewFactory aspects;
  private final EvidenceViewFactory evidence;
  private final SourceImageViewFactory pictures;
  private final OwnerViewFactory owner;

  public ItemViewFactory(
      ReportContext reading, EvidenceViewFactory evidence, SourceImageViewFactory pictures) {
    this.reading = reading;
    this.evidence = evidence;
    this.pictures = pictures;
    this.owner = new OwnerViewFactory(reading);
    this.aspects = new AspectViewFactory(reading);
  }

  public ItemView of(ItemJudgment one) {
    Optional<Observation> seen =
        Optional.ofNullable(reading.judgment().vehicle().observations().get(one.item().id()));
    return new ItemView(
        AnchorIds.item(one.item().id()),
        one.item().title(),
        VerdictView.of(one.verdict()),
        FilterViewFactory.marks(one),
        NumberFormatter.points(one.earned().likely()),
        one.earned().isPoint() ? "" : NumberFormatter.range(one.earned()),
        NumberFormatter.points(one.possible()),
        one.item().look().orElse(""),
        one.item().notes().orElse(""),
        one.item().hazards().stream().map(ItemViewFactory::hazard).toList(),
        withMean(
            one,
            ViewPeriods.join(
                reading,
                one,
                i -> span(one, i),
                (span, days) ->
                    new ItemView.Span(days, span.applies(), span.aspects(), span.sums()))),
        seen.flatMap(Observation::note).orElse(""),
        by(seen),
        shown(one),
        owner.apart(one),
        departure(one));
  }

  /** Returns the record's evidence, and what sources show that do not differ. */
  private List<EvidenceView> shown(ItemJudgment one) {
    List<EvidenceView> shown = new ArrayList<>(evidence.of(one.item().id()));
    LinkView here = new LinkView(AnchorIds.item(one.item().id()), one.item().title());
    for (AspectRule rule : one.item().aspects()) {
      boolean differs =
          one.stretches().stream()
              .flatMap(stretch -> stretch.aspects().stream())
              .anyMatch(it -> it.rule().equals(rule) && AspectViewFactory.differs(it));
      if (!differs) {
        shown.addAll(pictures.of(rule, here));
      }
    }
    return shown.stream().distinct().toList();
  }

  /** Adds how the likely points over all build days come about, where they differ. */
  private List<ItemView.Span> withMean(ItemJudgment one, List<ItemView.Span> spans) {
    List<String> parts = new ArrayList<>();
    long days = 0;
    for (int i = 0; i < one.stretches().size(); i++) {
      ItemInPeriod here = one.stretches().get(i);
      if (here.applies() != Ternary.NO) {
        long of = reading.judgment().stretches().get(i).days().days();
        days += of;
        parts.add(of + " × " + NumberFormatter.points(here.earned().likely()));
      }
    }
    if (spans.size() < 2 || parts.size() < 2) {
      return spans;
    }
    String mean =
        "Likely over all these days: ("
            + String.join(" + ", parts)
            + ") ÷ "
            + days
            + " = "
            + NumberFormatter.points(one.earned().likely());
    ItemView.Span last = spans.get(spans.size() - 1);
    List<String> sums = new ArrayList<>(last.sums());
    sums.add(mean);
    List<ItemView.Span> all = new ArrayList<>(spans.subList(0, spans.size() - 1));
    all.add(new ItemView.Span(last.days(), last.applies(), last.aspects(), sums));
    return all;
  }

  public static HazardView hazard(Hazard hazard) {
    return new HazardView(
        AnchorIds.hazard(hazard.word()), hazard.word(), hazard.precaution(), List.of());
  }

  private static String by(Optional<Observation> seen) {
    List<String> parts = new ArrayList<>();
    seen.flatMap(Observation::by).ifPresent(by -> parts.add("by " + by));
    seen.flatMap(Observation::on).ifPresent(on -> parts.add("on " + EdtfFormatter.date(on)));
    return String.join(", ", parts);
  }

  /** Returns what the owner says of a departure, and what it keeps. */
  public Optional<DepartureView> departure(ItemJudgment one) {
    return Optional.ofNullable(reading.judgment().vehicle().observations().get(one.item().id()))
        .flatMap(Observation::departure)
        .map(
            departure ->
                new DepartureView(
                    AnchorIds.item(one.item().id()),
                    one.item().title(),
                    departure.reason(),
                    departure.explanation().orElse(""),
                    kept(one, departure.reason()),
                    departure.reviewBy().map(EdtfFormatter::date).orElse("")));
  }

  private String kept(ItemJudgment one, String reason) {
    boolean differs =
        one.stretches().stream().anyMatch(it -> !it.earned().equals(it.withoutAllowances()));
    String earned =
        NumberFormatter.range(one.earned()) + " of " + NumberFormatter.points(one.possible());
    if (!differs) {
      return reading.judgment().rules().scale().allowances().containsKey(reason)
          ? "Earns " + earned + "; the allowance changes nothing here."
          : "Earns " + earned + "; the scale makes no allowance for this reason.";
    }
    ScoreRange strict =
        one.stretches().stream()
            .map(ItemInPeriod::withoutAllowances)
            .reduce(
                (a, b) ->
                    new ScoreRange(
                        Math.min(a.low(), b.low()),
                        Math.max(Math.min(a.low(), b.low()), a.likely()),
                        Math.max(Math.max(a.high(), b.high()), a.likely())))
            .orElse(ScoreRange.ZERO);
    return "Earns "
        + earned
        + " by the scale's allowance, "
        + NumberFormatter.range(strict)
        + " without it.";
  }

  private ItemView.Span span(ItemJudgment one, int stretch) {
    ItemInPeriod here = one.stretches().get(stretch);
    return new ItemView.Span(
        "",
        applies(here),
        here.aspects().stream().map(it -> aspects.of(one.item(), it, stretch)).toList(),
        sums(here, one.item().cause()));
  }

  private static String applies(ItemInPeriod here) {
    return switch (here.applies()) {
      case YES -> "";
      case NO -> "Does not apply.";
      case UNKNOWN ->
          "May apply: what would decide it is not known. In the likely score it counts by half.";
    };
  }

  private static List<String> sums(ItemInPeriod here, Optional<String> cause) {
    List<String> lines = new ArrayList<>();
    if (here.applies() == Ternary.NO) {
      return lines;
    }
    if (here.earned().isPoint()) {
      lines.add("Earned: " + sum(here, it -> it.earned().likely(), here.earned().likely()));
    } else {
      lines.add("Low: " + sum(here, it -> it.earned().low(), here.earned().low()));
      lines.add("Likely: " + sum(here, it -> it.earned().likely(), here.earned().likely()));
      lines.add("High: " + sum(here, it -> it.earned().high(), here.earned().high()));
    }
    cause.ifPresent(
        word ->
            lines.add(
                "It shares the cause “"
                    + word
                    + "” with other items; the area gives back what they"
                    + " would lose twice."));
    return lines;
  }

  private static String sum(ItemInPeriod here, ToLongFunction<AspectJudgment> part, long sum) {
    if (here.aspects().size() == 1) {
      return NumberFormatter.points(sum);
    }
    return here.aspects().stream()
            .map(aspect -> NumberFormatter.points(part.applyAsLong(aspect)))
            .collect(Collectors.joining(" + "))
        + " = "
        + NumberFormatter.points(sum);
  }

  /** Returns the verdict on an item that does not apply on any build day. */
  public static boolean isNotApplicable(ItemJudgment one) {
    return one.verdict() == Verdict.NOT_APPLICABLE;
  }
}
