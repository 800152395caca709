package assize.report.view;

import assize.aspect.Verdict;
import assize.evidence.Ternary;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.ruleset.Area;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What costs points, and what has not been shown. */
public final class LossesViewFactory {
  private static final int LISTED = 12;

  private final ReportContext reading;
  private final AspectViewFactory aspects;

  public LossesViewFactory(ReportContext reading) {
    this.reading = reading;
    this.aspects = new AspectViewFactory(reading);
  }

  private record Cost(ItemJudgment one, long lost) {}

  /** Returns the items that lose most by what was shown. */
  public LossesView costs() {
    List<Cost> costs =
        reading.judgment().items().stream()
            .map(one -> new Cost(one, lost(one)))
            .filter(cost -> cost.lost() > 0)
            .sorted(Comparator.comparingLong(Cost::lost).reversed())
            .toList();
    List<Cost> listed = costs.subList(0, Math.min(LISTED, costs.size()));
    List<Cost> others = costs.subList(listed.size(), costs.size());
    long more = others.stream().mapToLong(Cost::lost).sum();
    return new LossesView(
        listed.stream().map(this::line).toList(),
        others.isEmpty()
            ? ""
            : NumberFormatter.count(others.size(), "further item loses ", "further items lose ")
                + NumberFormatter.points(more)
                + (others.size() == 1 ? " points." : " points in all."));
  }

  private LossesView.LossLine line(Cost cost) {
    return new LossesView.LossLine(
        AnchorIds.item(cost.one().item().id()),
        cost.one().item().title(),
        area(cost.one()),
        VerdictView.of(cost.one().verdict()),
        NumberFormatter.points(cost.lost()),
        NumberFormatter.points(cost.one().possible()),
        why(cost.one()));
  }

  private String area(ItemJudgment one) {
    return reading.judgment().rules().areas().stream()
        .filter(area -> area.id().equals(one.item().area()))
        .findFirst()
        .map(Area::name)
        .orElse(one.item().area());
  }

  private List<String> why(ItemJudgment one) {
    Set<String> words = new LinkedHashSet<>();
    for (ItemInPeriod here : one.stretches()) {
      for (AspectJudgment aspect : here.aspects()) {
        if (aspect.possible() > aspect.earned().likely()) {
          words.addAll(aspects.losses(one.item(), aspect));
        }
      }
    }
    return List.copyOf(words);
  }

  /** Returns points lost in the likely case by what was shown, the mean over the build days. */
  private long lost(ItemJudgment one) {
    BigDecimal sum = BigDecimal.ZERO;
    for (int i = 0; i < one.stretches().size(); i++) {
      ItemInPeriod here = one.stretches().get(i);
      long lost =
          here.aspects().stream()
              .filter(aspect -> aspect.verdict() != Verdict.NOT_ASSESSED)
              .mapToLong(aspect -> aspect.possible() - aspect.earned().likely())
              .sum();
      sum = sum.add(BigDecimal.valueOf(lost).multiply(BigDecimal.valueOf(reading.weight(i))));
    }
    return sum.divide(BigDecimal.valueOf(reading.allDays()), 0, RoundingMode.HALF_EVEN)
        .longValueExact();
  }

  /** Returns what the aspects that were not shown are worth, in thousandths of a point. */
  public long notShownPoints() {
    return reading.judgment().items().stream()
        .flatMap(one -> missing(one).values().stream())
        .mapToLong(Long::longValue)
        .sum();
  }

  /** Returns what has not been shown, by area. */
  public NotAssessedView notShown() {
    Map<String, List<NotAssessedView.NotAssessedLine>> lines = new LinkedHashMap<>();
    Map<String, Long> points = new LinkedHashMap<>();
    for (ItemJudgment one : reading.judgment().items()) {
      Map<String, Long> missing = missing(one);
      if (!missing.isEmpty()) {
        long worth = missing.values().stream().mapToLong(Long::longValue).sum();
        lines
            .computeIfAbsent(area(one), area -> new ArrayList<>())
            .add(
                new NotAssessedView.NotAssessedLine(
                    AnchorIds.item(one.item().id()),
                    one.item().title(),
                    String.join(", ", missing.keySet()),
                    NumberFormatter.points(worth)));
        points.merge(area(one), worth, Long::sum);
      }
    }
    long all = points.values().stream().mapToLong(Long::longValue).sum();
    long count = lines.values().stream().mapToLong(List::size).sum();
    return new NotAssessedView(
        sentence(count, all),
        lines.entrySet().stream()
            .map(
                entry ->
                    new NotAssessedView.InArea(
                        entry.getKey(),
                        NumberFormatter.points(points.getOrDefault(entry.getKey(), 0L)),
                        entry.getValue()))
            .toList());
  }

  private String sentence(long count, long all) {
    if (count == 0) {
      return "Everything that applies has been shown.";
    }
    String credit = NumberFormatter.number(reading.judgment().rules().scale().notAssessed());
    return NumberFormatter.count(count, "item lacks", "items lack")
        + " something that the standard asks to see, worth "
        + NumberFormatter.points(all)
        + " points of the items. Until it is shown it counts nothing in the low score, all in the"
        + " high one, and a credit of "
        + credit
        + " in the likely one.";
  }

  private static Map<String, Long> missing(ItemJudgment one) {
    Map<String, Long> missing = new LinkedHashMap<>();
    for (ItemInPeriod here : one.stretches()) {
      if (here.applies() == Ternary.NO) {
        continue;
      }
      for (AspectJudgment aspect : here.aspects()) {
        if (aspect.verdict() == Verdict.NOT_ASSESSED) {
          missing.put(aspect.rule().aspect().spoken(), aspect.possible());
        }
      }
    }
    return missing;
  }
}
