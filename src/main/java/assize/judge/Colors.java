package assize.judge;

import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.judgment.Comparison;
import assize.measure.Ciede2000;
import assize.measure.ColorDifference;
import assize.measure.Lab;
import assize.ruleset.ColorChip;
import assize.ruleset.RuleSet;
import java.util.Optional;
import java.util.OptionalDouble;

/** Colors, by eye and by instrument; where they disagree the instrument decides. */
final class Colors {
  private Colors() {}

  static Comparison toChip(
      RuleSet rules, Finding.Color found, String expected, OptionalDouble itemTolerance) {
    double tolerance = tolerance(rules, expected, itemTolerance);
    Optional<Lab> target = target(rules, expected);
    Optional<Comparison> byInstrument =
        found
            .lab()
            .flatMap(lab -> target.map(aim -> measured(lab, aim, found.uncertainty(), tolerance)));
    Optional<Comparison> byEye =
        found.chip().map(seen -> byEye(rules, seen, expected, target, tolerance));
    if (byInstrument.isPresent() && byEye.isPresent()) {
      boolean agree = byInstrument.get().verdict() == byEye.get().verdict();
      Comparison decided = byInstrument.get();
      return new Comparison(
          decided.verdict(),
          decided.credit(),
          () ->
              decided.why().words()
                  + "; by eye "
                  + new Names(rules).color(found.chip().orElse(Finding.OTHER))
                  + (agree ? "" : " — eye and instrument disagree, and the instrument decides"));
    }
    return byInstrument.or(() -> byEye).orElseGet(() -> noSample(rules, expected));
  }

  /** Returns the reading of a color of the rule set, where it has one. */
  static Optional<Lab> target(RuleSet rules, String chip) {
    return Optional.ofNullable(rules.colors().get(chip)).flatMap(ColorChip::lab);
  }

  /** Returns the greatest difference that is right: the item's own, the color's or the usual. */
  static double tolerance(RuleSet rules, String chip, OptionalDouble itemTolerance) {
    return itemTolerance.orElse(
        Optional.ofNullable(rules.colors().get(chip))
            .map(ColorChip::tolerance)
            .orElse(ColorChip.USUAL_TOLERANCE));
  }

  private static Comparison noSample(RuleSet rules, String expected) {
    return Comparer.notShown(
        () ->
            new Names(rules).color(expected)
                + " has no reading in the rule set, so it must be matched by eye");
  }

  private static Comparison byEye(
      RuleSet rules, String seen, String expected, Optional<Lab> target, double tolerance) {
    Names names = new Names(rules);
    if (seen.equals(expected)) {
      return Comparer.meets(() -> "by eye: " + names.color(seen));
    }
    Optional<Lab> own = Optional.ofNullable(rules.colors().get(seen)).flatMap(ColorChip::lab);
    if (own.isPresent() && target.isPresent()) {
      double difference = Ciede2000.of(own.get(), target.get()).de00();
      String figures = figures(difference, tolerance);
      return difference <= tolerance
          ? Comparer.meets(() -> "by eye: " + names.color(seen) + ", " + figures)
          : Comparer.departs(() -> "by eye: " + names.color(seen) + ", " + figures);
    }
    return Comparer.departs(() -> "by eye: " + names.color(seen));
  }

  private static Comparison measured(Lab lab, Lab aim, double uncertainty, double tolerance) {
    double difference = Ciede2000.of(lab, aim).de00();
    double probability = ColorDifference.withinTolerance(difference, uncertainty, tolerance);
    return Comparer.probably(
        probability,
        () ->
            "by instrument: "
                + lab(lab)
                + " against "
                + lab(aim)
                + ", "
                + figures(difference, tolerance)
                + Sizes.probability(probability, uncertainty));
  }

  /** Compares with the color found on another item. */
  static Comparison toOther(
      RuleSet rules, Finding.Color found, Finding.Color other, Expectation.SameColor expected) {
    double tolerance = expected.tolerance().orElse(ColorChip.USUAL_TOLERANCE);
    String item = new Names(rules).item(expected.item());
    Optional<Lab> own = found.lab().or(() -> labOf(rules, found));
    Optional<Lab> theirs = other.lab().or(() -> labOf(rules, other));
    boolean instrument = found.lab().isPresent() || other.lab().isPresent();
    boolean bothOther =
        found.chip().equals(Optional.of(Finding.OTHER)) && found.chip().equals(other.chip());
    if (!instrument
        && !bothOther
        && found.chip().isPresent()
        && found.chip().equals(other.chip())) {
      return Comparer.meets(() -> "by eye the same as " + item);
    }
    if (own.isPresent() && theirs.isPresent()) {
      double uncertainty = Math.hypot(found.uncertainty(), other.uncertainty());
      double difference = Ciede2000.of(own.get(), theirs.get()).de00();
      double probability = ColorDifference.withinTolerance(difference, uncertainty, tolerance);
      return Comparer.probably(
          probability,
          () ->
              "against "
                  + item
                  + ", "
                  + lab(own.get())
                  + " against "
                  + lab(theirs.get())
                  + ": "
                  + figures(difference, tolerance)
                  + Sizes.probability(probability, uncertainty));
    }
    if (bothOther || found.chip().isEmpty() || other.chip().isEmpty()) {
      return Comparer.notShown(
          () -> "what was found of it and of " + item + " does not tell whether they are the same");
    }
    return found.chip().equals(other.chip())
        ? Comparer.meets(() -> "by eye the same as " + item)
        : Comparer.departs(() -> "by eye not the same as " + item);
  }

  private static Optional<Lab> labOf(RuleSet rules, Finding.Color color) {
    return color
        .chip()
        .flatMap(chip -> Optional.ofNullable(rules.colors().get(chip)))
        .flatMap(ColorChip::lab);
  }

  private static String lab(Lab lab) {
    String figures =
        "L* "
            + Sizes.figure(lab.l(), 4)
            + " a* "
            + Sizes.figure(lab.a(), 4)
            + " b* "
            + Sizes.figure(lab.b(), 4);
    return figures.replace('-', '−');
  }

  private static String figures(double difference, double tolerance) {
    return "ΔE00 " + Sizes.figure(difference, 2) + ", " + Sizes.figure(tolerance, 2) + " allowed";
  }
}
