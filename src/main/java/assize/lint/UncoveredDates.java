package assize.lint;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.date.DaySpan;
import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.evidence.Claim;
import assize.evidence.Kleene;
import assize.evidence.Manner;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Finds stretches of a model's production for which an item applies but no claim says what is
 * right, and items that apply to no vehicle at all.
 */
final class UncoveredDates implements Doubt {
  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules.items().flatMap(item -> in(item, rules));
  }

  private static Stream<Diagnostic> in(Item item, RuleSet rules) {
    List<Stretch> stretches = new ArrayList<>();
    for (Model model : rules.models().values()) {
      stretches.addAll(stretches(item, model));
    }
    List<Stretch> applies =
        stretches.stream().filter(it -> item.scope().holds(it) != Kleene.NO).toList();
    if (applies.isEmpty() && !stretches.isEmpty()) {
      return Stream.of(
          Diagnostic.of(
              Code.UNREACHABLE_ITEM,
              item.at(),
              "item \"" + item.id() + "\" applies to no vehicle of this rule set",
              "look its models and dates up again"));
    }
    return item.aspects().stream()
        .flatMap(
            rule ->
                applies.stream()
                    .filter(it -> rule.claims().stream().allMatch(claim -> isSilent(claim, it)))
                    .filter(it -> !isToBeAbsent(item, it))
                    .limit(1)
                    .map(it -> say(item, rule, it)));
  }

  private static boolean isSilent(Claim claim, Stretch stretch) {
    return claim.manner() == Manner.RULES_OUT || claim.scope().holds(stretch) == Kleene.NO;
  }

  /** Says whether the item should not be there at all: then nothing else is said of it. */
  private static boolean isToBeAbsent(Item item, Stretch stretch) {
    return item.aspects().stream()
        .filter(rule -> rule.aspect() == Aspect.PRESENT)
        .flatMap(rule -> rule.claims().stream())
        .anyMatch(
            claim ->
                claim.values().contains(new Expectation.YesNo(false)) && !isSilent(claim, stretch));
  }

  private static Diagnostic say(Item item, AspectRule rule, Stretch stretch) {
    return Diagnostic.of(
        Code.UNCOVERED_DATES,
        item.at(),
        "no claim says what is right for the "
            + rule.aspect().spoken()
            + " of \""
            + item.id()
            + "\" on model \""
            + stretch.model()
            + "\" built "
            + stretch.days().first()
            + " to "
            + stretch.days().last());
  }

  /** Cuts a model's production wherever something about the item begins or ends. */
  private static List<Stretch> stretches(Item item, Model model) {
    TreeSet<LocalDate> starts = new TreeSet<>();
    starts.add(model.built().first());
    Stream<DaySpan> claims =
        item.aspects().stream()
            .flatMap(rule -> rule.claims().stream())
            .flatMap(claim -> claim.scope().buildDays());
    Stream.concat(claims, item.scope().buildDays())
        .forEach(
            span -> {
              starts.add(span.first());
              if (!span.openEnd()) {
                starts.add(span.last().plusDays(1));
              }
            });
    List<Stretch> stretches = new ArrayList<>();
    for (LocalDate start : starts) {
      LocalDate next = Optional.ofNullable(starts.higher(start)).orElse(LocalDate.MAX);
      LocalDate last = next.equals(LocalDate.MAX) ? next : next.minusDays(1);
      new DaySpan(start, last)
          .intersect(model.built())
          .ifPresent(days -> stretches.add(new Stretch(model.id(), days)));
    }
    return stretches;
  }
}
