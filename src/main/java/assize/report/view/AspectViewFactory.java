package assize.report.view;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.aspect.Place;
import assize.aspect.Verdict;
import assize.evidence.DisputeState;
import assize.judgment.AspectJudgment;
import assize.judgment.PositionJudgment;
import assize.judgment.ScoreRange;
import assize.measure.Swatch;
import assize.ruleset.Item;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** One aspect of one item in words. */
public final class AspectViewFactory {
  private final ReportContext reading;

  AspectViewFactory(ReportContext reading) {
    this.reading = reading;
  }

  ItemView.AspectView of(Item item, AspectJudgment aspect, int stretch) {
    return new ItemView.AspectView(
        aspect.rule().aspect().spoken(),
        VerdictView.of(aspect.verdict()),
        state(aspect),
        dispute(item, aspect),
        found(item, aspect.rule().aspect()),
        swatches(item, aspect),
        expected(item, aspect, stretch),
        NumberFormatter.range(aspect.earned()),
        NumberFormatter.points(aspect.possible()),
        why(item, aspect),
        sums(aspect));
  }

  /** Says whether sources differ so that the report writes it up. */
  public static boolean differs(AspectJudgment aspect) {
    return aspect.dispute() == DisputeState.DISPUTED || aspect.dispute() == DisputeState.SETTLED;
  }

  private static String state(AspectJudgment aspect) {
    return switch (aspect.dispute()) {
      case AGREED -> "";
      case SETTLED -> "settled against dissent";
      case DISPUTED -> "disputed";
      case UNSOURCED -> "the rule set names no source";
    };
  }

  private static Optional<LinkView> dispute(Item item, AspectJudgment aspect) {
    return differs(aspect)
        ? Optional.of(
            new LinkView(
                AnchorIds.dispute(item.id(), aspect.rule().aspect().word()), state(aspect)))
        : Optional.empty();
  }

  /** Returns what was found, in words; nothing where it is not shown. */
  String found(Item item, Aspect aspect) {
    return Optional.ofNullable(reading.judgment().vehicle().observations().get(item.id()))
        .map(seen -> seen.findings().get(aspect))
        .map(finding -> finding.words(reading.at(item, aspect)))
        .orElse("");
  }

  private List<String> swatches(Item item, AspectJudgment aspect) {
    return aspect.rule().aspect() != Aspect.COLOR
        ? List.of()
        : Optional.ofNullable(reading.judgment().vehicle().observations().get(item.id()))
            .map(seen -> seen.findings().get(Aspect.COLOR))
            .flatMap(Finding::lab)
            .map(lab -> List.of(Swatch.of(lab).hex()))
            .orElse(List.of());
  }

  private List<ItemView.Expected> expected(Item item, AspectJudgment aspect, int stretch) {
    return aspect.positions().stream()
        .map(
            position ->
                new ItemView.Expected(
                    reading.words().any(item, aspect.rule().aspect(), position.accepts()),
                    reading.words().swatches(position.accepts()),
                    reading.claims().of(aspect.rule(), position, reading.dayOf(stretch)),
                    position.scored()))
        .toList();
  }

  /** Returns the values compared, once each; of several positions, by which of them. */
  private List<String> why(Item item, AspectJudgment aspect) {
    if (aspect.verdict() == Verdict.NOT_ASSESSED) {
      return List.of();
    }
    List<PositionJudgment> judged =
        aspect.positions().stream().filter(PositionJudgment::scored).toList();
    Set<String> lines = new LinkedHashSet<>();
    for (PositionJudgment position : judged) {
      String why = position.comparison().reason().besides(reading.at(item, aspect.rule().aspect()));
      if (!why.isBlank()) {
        String by = reading.words().any(item, aspect.rule().aspect(), position.accepts());
        lines.add(judged.size() == 1 ? why : "by “" + by + "”: " + why);
      }
    }
    return List.copyOf(lines);
  }

  /**
   * Returns why points are lost: what was found, once, and what is right by each position that is
   * lost by.
   */
  List<String> losses(Item item, AspectJudgment aspect) {
    if (aspect.verdict() == Verdict.NOT_ASSESSED) {
      return List.of();
    }
    Place at = reading.at(item, aspect.rule().aspect());
    Map<String, Set<String>> expected = new LinkedHashMap<>();
    for (PositionJudgment position : aspect.positions()) {
      if (position.scored() && position.comparison().credit().compareTo(BigFraction.ONE) < 0) {
        expected
            .computeIfAbsent(position.comparison().reason().words(at), why -> new LinkedHashSet<>())
            .add(right(item, aspect.rule().aspect(), position));
      }
    }
    String disputed = aspect.dispute() == DisputeState.DISPUTED ? " (disputed)" : "";
    List<String> lines = new ArrayList<>();
    expected.forEach(
        (why, right) ->
            lines.add(
                aspect.rule().aspect().spoken()
                    + ", "
                    + why
                    + (aspect.rule().aspect().kind().isGraded() ? "; " : "; expected: ")
                    + String.join(", or ", right)
                    + disputed));
    return lines;
  }

  /** Returns what is right by a position or, where it only grades, what the grade earns. */
  private String right(Item item, Aspect aspect, PositionJudgment position) {
    return aspect.kind().isGraded()
        ? "it earns " + NumberFormatter.number(position.comparison().credit())
        : reading.words().any(item, aspect, position.accepts());
  }

  private static List<String> sums(AspectJudgment aspect) {
    List<String> lines = new ArrayList<>();
    ScoreRange earned = aspect.earned();
    boolean alike = aspect.low().equals(aspect.high());
    if (alike) {
      lines.add(product("", aspect, aspect.likely(), earned.likely()));
    } else {
      lines.add(product("low: ", aspect, aspect.low(), earned.low()));
      lines.add(likely(aspect));
      lines.add(product("high: ", aspect, aspect.high(), earned.high()));
    }
    aspect
        .allowed()
        .ifPresent(
            kept ->
                lines.add(
                    "An allowed departure keeps a credit of "
                        + NumberFormatter.number(kept)
                        + "; without the allowance it earns "
                        + NumberFormatter.range(aspect.withoutAllowances())
                        + "."));
    return lines;
  }

  private static String product(
      String what, AspectJudgment aspect, BigFraction credit, long earned) {
    return what
        + NumberFormatter.points(aspect.possible())
        + " × "
        + NumberFormatter.number(credit)
        + " = "
        + NumberFormatter.points(earned);
  }

  private static String likely(AspectJudgment aspect) {
    List<PositionJudgment> judged =
        aspect.positions().stream().filter(PositionJudgment::scored).toList();
    boolean weighed =
        judged.size() > 1 && aspect.verdict() != Verdict.NOT_ASSESSED && aspect.allowed().isEmpty();
    if (!weighed) {
      return product("likely: ", aspect, aspect.likely(), aspect.earned().likely());
    }
    return "likely: "
        + NumberFormatter.points(aspect.possible())
        + " × ("
        + judged.stream()
            .map(
                one ->
                    share(one.share()) + " × " + NumberFormatter.number(one.comparison().credit()))
            .collect(Collectors.joining(" + "))
        + ") = "
        + NumberFormatter.points(aspect.earned().likely());
  }

  private static String share(double share) {
    return BigDecimal.valueOf(share)
        .setScale(6, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
