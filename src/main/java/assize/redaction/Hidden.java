package assize.redaction;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A number that a copy masks, and what it may still say of it.
 *
 * @param table the number table's name
 * @param showing how much of it is shown
 * @param oneOf samples of the numbers that it can't be told from, one of each run of which the
 *     standard says the same; none where a copy says nothing that follows from it
 * @param count how many numbers of the table give the same copy; empty where the table does not
 *     date it
 * @param standIn one of them, in whose place it is judged where it is stamped on an item; empty
 *     where that must be left out
 */
public record Hidden(
    String table,
    Showing showing,
    List<String> oneOf,
    OptionalInt count,
    Optional<String> standIn) {
  public Hidden {
    oneOf = List.copyOf(oneOf);
  }

  /** Returns the same, to be left out where it is stamped. */
  Hidden withoutStandIn() {
    return new Hidden(table, showing, oneOf, count, Optional.empty());
  }

  /** Returns the number as a copy shows it. */
  public String masked() {
    return showing.masked();
  }
}
