package assize.report.text;

import assize.aspect.Expectation;
import assize.aspect.Verdict;
import assize.evidence.DisputeState;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.Notice;
import assize.judgment.PositionJudgment;
import assize.judgment.ScoreRange;
import assize.ruleset.AspectRule;
import assize.ruleset.Award;
import assize.text.Json;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A judgment for machines. Where positions differ between stretches, belief, plausibility and
 * conflict are means over the days on which some source speaks of the aspect, a position that
 * nobody holds on a day having none; credit is the mean over the days on which the position is
 * held.
 */
public final class JudgmentJson {
  private final Judgment judgment;

  private JudgmentJson(Judgment judgment) {
    this.judgment = judgment;
  }

  /** Returns the judgment as one JSON object and a line end. */
  public static String of(Judgment judgment) {
    return new JudgmentJson(judgment).json() + "\n";
  }

  /**
   * Returns the copy for others: each text changed as {@code mask} does, and marked as redacted.
   */
  public static String of(Judgment judgment, UnaryOperator<String> mask) {
    String json = new JudgmentJson(judgment).json().flag("redacted", true) + "\n";
    return JsonStringFinder.change(json, mask);
  }

  private Json json() {
    Json json =
        Json.object()
            .text("rule_set", judgment.rules().id())
            .text("edition", judgment.rules().edition())
            .text("record", judgment.vehicle().id())
            .object(
                "built",
                days(judgment.build().days().first(), judgment.build().days().last())
                    .text("basis", judgment.build().basis().word()))
            .object(
                "score",
                range(Json.object(), judgment.score())
                    .thousandths("of", judgment.rules().scale().outOf()))
            .object("score_without_allowances", range(Json.object(), judgment.withoutAllowances()))
            .object(
                "award",
                Json.object()
                    .orNull("certain", judgment.award().certain().map(Award::id))
                    .orNull("likely", judgment.award().reached().map(Award::id))
                    .orNull("possible", judgment.award().possible().map(Award::id)));
    json.objects(
        "by_build_day",
        "  ",
        judgment.stretches(),
        (one, stretch) -> {
          one.text("first", stretch.days().first().toString());
          one.text("last", stretch.days().last().toString());
          range(one, stretch.score());
        });
    json.objects(
        "areas",
        "  ",
        judgment.areas(),
        (one, area) ->
            range(one.text("id", area.area().id()), area.earned())
                .thousandths("possible", area.possible()));
    json.objects("items", "  ", judgment.items(), this::item);
    return json.texts("remarks", judgment.notices().stream().map(Notice::words).toList());
  }

  private static Json days(java.time.LocalDate first, java.time.LocalDate last) {
    return Json.object().text("first", first.toString()).text("last", last.toString());
  }

  private static Json range(Json json, ScoreRange range) {
    return json.thousandths("low", range.low())
        .thousandths("likely", range.likely())
        .thousandths("high", range.high());
  }

  private void item(Json json, ItemJudgment item) {
    json.text("id", item.item().id())
        .text("area", item.item().area())
        .text("verdict", item.verdict().id())
        .text("agreement", item.dispute().word());
    range(json, item.earned()).thousandths("possible", item.possible());
    List<AspectRule> rules =
        item.item().aspects().stream().filter(rule -> !cases(item, rule).isEmpty()).toList();
    json.objects("aspects", "", rules, (one, rule) -> aspect(one, rule, cases(item, rule)));
  }

  /** One aspect in one stretch, and the days of the stretch. */
  private record Case(AspectJudgment aspect, long days) {}

  private List<Case> cases(ItemJudgment item, AspectRule rule) {
    List<Case> cases = new ArrayList<>();
    for (int i = 0; i < item.stretches().size(); i++) {
      ItemInPeriod stretch = item.stretches().get(i);
      long days = judgment.stretches().get(i).days().days();
      stretch.aspects().stream()
          .filter(aspect -> aspect.rule().aspect() == rule.aspect())
          .forEach(aspect -> cases.add(new Case(aspect, days)));
    }
    return cases;
  }

  private static void aspect(Json json, AspectRule rule, List<Case> cases) {
    Set<Verdict> verdicts =
        cases.stream().map(one -> one.aspect().verdict()).collect(Collectors.toSet());
    DisputeState dispute =
        cases.stream()
            .map(one -> one.aspect().dispute())
            .max(java.util.Comparator.comparing(DisputeState::rank))
            .orElse(DisputeState.AGREED);
    json.text("aspect", rule.aspect().word())
        .text(
            "verdict",
            (verdicts.size() == 1 ? cases.get(0).aspect().verdict() : Verdict.UNDECIDED).id())
        .text("agreement", dispute.word())
        .number("conflict", mean(cases, one -> one.aspect().conflict()), 6);
    Map<Set<Expectation>, List<PositionDays>> held = new LinkedHashMap<>();
    for (Case one : cases) {
      for (PositionJudgment position : one.aspect().positions()) {
        held.computeIfAbsent(Set.copyOf(position.accepts()), key -> new ArrayList<>())
            .add(new PositionDays(position, one.days()));
      }
    }
    long days = cases.stream().mapToLong(Case::days).sum();
    json.objects("positions", "", held.values(), (one, all) -> position(one, all, days));
  }

  /** One position in one stretch, and the days of the stretch. */
  private record PositionDays(PositionJudgment position, long days) {}

  private static String expects(PositionJudgment position) {
    return position.accepts().stream().map(Expectation::key).collect(Collectors.joining(" or "));
  }

  private static void position(Json json, List<PositionDays> held, long days) {
    Set<String> sources = new LinkedHashSet<>();
    held.forEach(one -> sources.addAll(one.position().sources()));
    Set<String> echoes = new LinkedHashSet<>();
    held.forEach(one -> echoes.addAll(one.position().repeatingSources()));
    long heldDays = held.stream().mapToLong(PositionDays::days).sum();
    json.text("expects", expects(held.get(0).position()))
        .texts("sources", sources)
        .number("belief", sum(held, PositionJudgment::belief) / days, 6)
        .number("plausibility", sum(held, PositionJudgment::plausibility) / days, 6)
        .number("credit", sum(held, one -> one.comparison().credit().doubleValue()) / heldDays, 6);
    if (!echoes.isEmpty()) {
      json.texts("repeating_sources", echoes);
    }
  }

  private static double mean(List<Case> cases, ToDoubleFunction<Case> figure) {
    double days = cases.stream().mapToLong(Case::days).sum();
    return cases.stream().mapToDouble(one -> figure.applyAsDouble(one) * one.days()).sum() / days;
  }

  private static double sum(List<PositionDays> held, ToDoubleFunction<PositionJudgment> figure) {
    return held.stream()
        .mapToDouble(one -> figure.applyAsDouble(one.position()) * one.days())
        .sum();
  }
}
