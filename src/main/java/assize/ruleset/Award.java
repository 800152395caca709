package assize.ruleset;

import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a vehicle reaches from a score on.
 *
 * @param at the least score, in thousandths of a point
 * @param noAreaUnder the least share of its points that every area must earn, 0 to 1
 * @param noItemOver the most that a single item may lose by departing, in thousandths of a point
 */
public record Award(
    String id, String name, long at, Optional<BigFraction> noAreaUnder, OptionalLong noItemOver) {

  /** Returns the same award under another name. */
  public Award named(String other) {
    return new Award(id, other, at, noAreaUnder, noItemOver);
  }
}
