package assize.ruleset;

import java.util.List;

/** Every check of a rule set as a whole. */
final class RuleSetChecks {
  static final List<RuleSetCheck> ALL =
      List.of(
          new CopiesCircleCheck(),
          new KindOfCircleCheck(),
          new SameColorCheck(),
          new CauseAreaCheck(),
          new ModelDatesCheck(),
          new AwardCheck(),
          new NumberTableCheck(),
          new ReservedBlockCheck(),
          new OnlyRuledOutCheck(),
          new ClaimComplexityCheck(),
          new CreditWithoutValueCheck());

  private RuleSetChecks() {}
}
