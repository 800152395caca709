package assize.aspect;

import assize.schema.Rewording;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One value that is held to be right for one aspect.
 *
 * <p>A source that accepts several values names several expectations.
 */
public interface Expectation {

  /** Returns what makes two expectations of the same aspect the same; also how it is named. */
  String key();

  /** Returns the credit that the value earns, 0 to 1; 1 unless the rule set says otherwise. */
  default BigFraction credit() {
    return BigFraction.ONE;
  }

  /** Holds what was found against it. */
  Comparison against(Finding found, Setting setting);

  /** Says whether it names what was found, and not only something in whose place that may stand. */
  default boolean names(Finding found) {
    return false;
  }

  /** Returns it in the rule set's words, without its credit. */
  String words(Place at);

  /** Returns the item whose finding of the same aspect it is held against, if any. */
  default Optional<String> other() {
    return Optional.empty();
  }

  /** Returns what of it is compared with what was found; its name where that is all. */
  default Object told() {
    return key();
  }

  /**
   * Returns the same, its texts changed.
   *
   * @param aspect the key of the aspect that it is of
   */
  default Expectation reworded(String aspect, Rewording rewording) {
    return this;
  }

  /** Says whether a rule set has the words for it. */
  default boolean isKnown(Place at) {
    return true;
  }
}
