package assize.report.handbook;

import assize.report.view.NumberFormatter;
import assize.ruleset.Area;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** One item of the rule set, worked out by hand. */
final class WorkedExample {
  private final RuleSet rules;
  private final Scale scale;

  WorkedExample(RuleSet rules) {
    this.rules = rules;
    this.scale = rules.scale();
  }

  /** Returns the steps; none where there is no item that is worth a point. */
  List<String> steps() {
    Optional<Item> item =
        rules
            .items()
            .filter(one -> one.points() > 0 && one.cause().isEmpty() && fits(one))
            .min(
                Comparator.comparingInt(
                    (Item one) -> Math.abs(Math.min(one.aspects().size(), 4) - 3)));
    return item.map(this::steps).orElse(List.of());
  }

  private boolean fits(Item item) {
    Area area = area(item);
    return area.maxLoss().isEmpty() || area.maxLoss().getAsLong() >= item.points();
  }

  private Area area(Item item) {
    return rules.areas().stream()
        .filter(area -> area.id().equals(item.area()))
        .findFirst()
        .orElseThrow();
  }

  /** The first aspect departs, the last is not shown where there are several, the rest meet. */
  private List<String> steps(Item item) {
    List<AspectRule> rulesOf = item.aspects();
    int last = rulesOf.size() - 1;
    List<String> steps = new ArrayList<>();
    steps.add(
        "“"
            + item.title()
            + "” has "
            + points(item.points())
            + (last == 0
                ? ", all for its " + spoken(rulesOf.get(0))
                : ": "
                    + rulesOf.stream()
                        .map(one -> points(one.possible()) + " for its " + spoken(one))
                        .collect(Collectors.joining(", ")))
            + ".");
    BigFraction likely = BigFraction.ZERO;
    long low = 0;
    long high = 0;
    for (int i = 0; i <= last; i++) {
      AspectRule rule = rulesOf.get(i);
      String worth = NumberFormatter.points(rule.possible());
      if (i == 0) {
        steps.add("Say the " + spoken(rule) + " is incorrect: " + worth + " × 0 = 0.");
      } else if (i == last) {
        BigFraction part = rounded(scale.notAssessed().multiply(BigFraction.of(rule.possible())));
        likely = likely.add(part);
        high += rule.possible();
        steps.add(
            "The "
                + spoken(rule)
                + " is not assessed: low 0, likely "
                + worth
                + " × "
                + NumberFormatter.number(scale.notAssessed())
                + " = "
                + NumberFormatter.points(part)
                + ", high "
                + worth
                + ".");
      } else {
        likely = likely.add(BigFraction.of(rule.possible()));
        low += rule.possible();
        high += rule.possible();
        steps.add("The " + spoken(rule) + " is correct: " + worth + " × 1 = " + worth + ".");
      }
    }
    steps.add(
        "The item earns likely "
            + NumberFormatter.points(likely)
            + " of "
            + points(item.points())
            + (low == high
                ? "."
                : ", low "
                    + NumberFormatter.points(low)
                    + ", high "
                    + NumberFormatter.points(high)
                    + "."));
    steps.add(whole(item, likely));
    return steps;
  }

  private static String spoken(AspectRule rule) {
    return rule.aspect().spoken();
  }

  private static String points(long thousandths) {
    return NumberFormatter.points(thousandths) + (thousandths == 1000 ? " point" : " points");
  }

  private static BigFraction rounded(BigFraction exact) {
    return BigFraction.of(exact.bigDecimalValue(0, RoundingMode.HALF_EVEN).longValueExact());
  }

  /** The score where this is all that is lost and every item applies. */
  private String whole(Item item, BigFraction likely) {
    BigFraction lost = BigFraction.of(item.points()).subtract(likely);
    String of = NumberFormatter.points(scale.outOf());
    String suppose =
        "If all items of this handbook applied to one vehicle and everything else on it met, it would"
            + " likely score ";
    return switch (scale.method()) {
      case DEDUCTIONS ->
          "If everything else met, the vehicle would likely score "
              + of
              + " − "
              + NumberFormatter.points(lost)
              + " = "
              + NumberFormatter.points(BigFraction.of(scale.outOf()).subtract(lost))
              + ".";
      case SUM -> {
        BigFraction all = BigFraction.of(rules.items().mapToLong(Item::points).sum());
        yield suppose
            + "("
            + NumberFormatter.points(all)
            + " − "
            + NumberFormatter.points(lost)
            + ") ÷ "
            + NumberFormatter.points(all)
            + " × "
            + of
            + " = "
            + score(all.subtract(lost).divide(all))
            + ".";
      }
      case AREAS -> {
        Area area = area(item);
        BigFraction own = BigFraction.of(area.items().stream().mapToLong(Item::points).sum());
        BigFraction weights =
            BigFraction.of(
                rules.areas().stream()
                    .filter(one -> one.items().stream().anyMatch(it -> it.points() > 0))
                    .mapToLong(Area::points)
                    .sum());
        BigFraction share = own.subtract(lost).divide(own);
        BigFraction mean =
            weights
                .subtract(BigFraction.of(area.points()).multiply(BigFraction.ONE.subtract(share)))
                .divide(weights);
        yield "In its area it would leave "
            + NumberFormatter.points(own.subtract(lost))
            + " of "
            + NumberFormatter.points(own)
            + "; the area weighs "
            + NumberFormatter.points(area.points())
            + " of "
            + NumberFormatter.points(weights)
            + ". "
            + suppose
            + "("
            + NumberFormatter.points(weights.subtract(BigFraction.of(area.points())))
            + " + "
            + NumberFormatter.points(area.points())
            + " × "
            + NumberFormatter.points(own.subtract(lost))
            + " ÷ "
            + NumberFormatter.points(own)
            + ") ÷ "
            + NumberFormatter.points(weights)
            + " × "
            + of
            + " = "
            + score(mean)
            + ".";
      }
    };
  }

  private String score(BigFraction share) {
    return NumberFormatter.points(rounded(share.multiply(BigFraction.of(scale.outOf()))));
  }
}
