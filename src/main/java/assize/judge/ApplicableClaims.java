package assize.judge;

import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.ruleset.AspectRule;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One aspect of an item, as far as it is known which sources speak of a vehicle. */
sealed interface ApplicableClaims {
  AspectRule rule();

  /**
   * It is known which speak.
   *
   * @param claims those that speak, in the order written
   * @param ground what they come to; empty where they name no position
   */
  record Known(AspectRule rule, List<Claim> claims, Optional<WeighedAspect> ground)
      implements ApplicableClaims {}

  /**
   * It is not.
   *
   * @param certain those that speak
   * @param unsure those that may, by the conditions that are open
   */
  record Unknown(AspectRule rule, List<Claim> certain, Map<Scope, List<Claim>> unsure)
      implements ApplicableClaims {}
}
