package assize.check;

import assize.evidence.Claim;
import assize.ruleset.Item;
import java.util.stream.Stream;

/** The names by which a warning about a claim can be accepted. */
final class WarningSubjects {
  private WarningSubjects() {}

  /** Returns the item and the source. */
  static String[] of(Item item, Claim claim) {
    return Stream.concat(Stream.of(item.id()), claim.source().stream()).toArray(String[]::new);
  }
}
