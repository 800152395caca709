package assize.production;

import assize.evidence.Scope;
import java.util.List;

/** What a vehicle may have for an attribute, as far as scopes tell vehicles apart. */
public sealed interface AttributeValue {

  /** A model, market or plant by its name in the rule set. */
  record Named(String id) implements AttributeValue {}

  /** Whether a piece of equipment is fitted. */
  record Fitted(boolean fitted) implements AttributeValue {}

  /**
   * A number.
   *
   * @param ranges those asked for that it lies in; none where it lies outside of all
   */
  record Within(List<Scope.Numbers> ranges) implements AttributeValue {
    public Within {
      ranges = List.copyOf(ranges);
    }
  }
}
