package assize.judge;

import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.judge.Ground.Held;
import assize.judgment.AspectJudgment;
import assize.measure.Ciede2000;
import assize.measure.ColorDifference;
import assize.measure.Conformity;
import assize.measure.Lab;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What one aspect comes to, by what was found: worked out once for all findings that are judged
 * alike. Which are alike is told by the least that a comparison looks at: a word, whether it was
 * there, which of the expected values a finding meets. What is not plainly within or without is
 * judged by itself.
 */
final class Marks {
  /** How many different findings are kept in mind. */
  private static final int MOST_KEPT = 128;

  /** How many values can be told apart by bits. */
  private static final int MOST_BITS = 62;

  private static final Object NOTHING = "nothing was found";
  private static final Optional<Object> ITSELF = Optional.empty();

  private final Ground ground;
  private final Likeness likeness;
  private final Kept<Object, Mark> kept = new Kept<>(MOST_KEPT);

  Marks(RuleSet rules, Ground ground) {
    this.ground = ground;
    List<Expectation> values = new ArrayList<>();
    ground.held().stream().filter(Held::judged).forEach(held -> values.addAll(held.accepts()));
    this.likeness = new Likeness(rules, values);
  }

  Ground ground() {
    return ground;
  }

  /**
   * Returns what it comes to.
   *
   * @param judging judges this vehicle by the ground
   */
  Mark of(Optional<Finding> found, Supplier<AspectJudgment> judging) {
    Optional<Object> like = found.isEmpty() ? Optional.of(NOTHING) : found.get().match(likeness);
    return like.isEmpty()
        ? Mark.of(judging.get())
        : kept.get(like.get(), key -> Mark.of(judging.get()));
  }

  /**
   * Tells what of a finding its comparison looks at; nothing where it has to be judged by itself.
   *
   * @param values all that a vehicle is judged by
   */
  private record Likeness(RuleSet rules, List<Expectation> values)
      implements Finding.Cases<Optional<Object>> {

    @Override
    public Optional<Object> word(Finding.Word found) {
      return Optional.of(found.id());
    }

    @Override
    public Optional<Object> yesNo(Finding.YesNo found) {
      return Optional.of(found.yes());
    }

    @Override
    public Optional<Object> pieces(Finding.Pieces found) {
      return Optional.of(found.count());
    }

    @Override
    public Optional<Object> screwThread(Finding.ScrewThread found) {
      return ITSELF;
    }

    @Override
    public Optional<Object> gloss(Finding.Gloss found) {
      return bits(
          value ->
              value instanceof Expectation.Gloss gloss
                  ? gloss.range().judge(found.reading()).probability()
                  : UNSURE);
    }

    @Override
    public Optional<Object> size(Finding.Size found) {
      return bits(
          value ->
              value instanceof Expectation.Size size
                      && size.limits().dimension() == found.measured().dimension()
                  ? Conformity.judge(found.measured(), size.limits()).probability()
                  : UNSURE);
    }

    @Override
    public Optional<Object> stamped(Finding.Stamped found) {
      return bits(
          value ->
              value instanceof Expectation.PartNumber number
                  ? number.number().fits(found.text()) ? 1 : 0
                  : UNSURE);
    }

    @Override
    public Optional<Object> color(Finding.Color found) {
      if (found.lab().isEmpty()) {
        return values.stream().allMatch(value -> value instanceof Expectation.Chip)
            ? found.chip().map(chip -> chip)
            : ITSELF;
      }
      Lab lab = found.lab().get();
      return bits(
          value ->
              value instanceof Expectation.Chip chip
                  ? Colors.target(rules, chip.chip())
                      .map(
                          target ->
                              ColorDifference.withinTolerance(
                                  Ciede2000.of(lab, target).de00(),
                                  found.uncertainty(),
                                  Colors.tolerance(rules, chip.chip(), chip.tolerance())))
                      .orElse(UNSURE)
                  : UNSURE);
    }

    private static final double UNSURE = 0.5;

    private interface Within {
      double probability(Expectation value);
    }

    /** Tells by which values are met, where that is plain for each. */
    private Optional<Object> bits(Within within) {
      if (values.size() > MOST_BITS) {
        return ITSELF;
      }
      long bits = 0;
      for (int i = 0; i < values.size(); i++) {
        double probability = within.probability(values.get(i));
        if (probability >= Conformity.MEETS) {
          bits |= 1L << i;
        } else if (probability > Conformity.DEPARTS) {
          return ITSELF;
        }
      }
      return Optional.of(bits);
    }
  }
}
