package assize.compare;

import java.util.Collections;
import java.util.Optional;
import java.util.Set;

/**
 * One thing that two editions say differently.
 *
 * @param id the name of what changed; empty for the standard and its scoring
 * @param name what it is called, as the newer edition has it
 * @param what which of its properties changed; empty where all of it was added or taken out
 * @param before empty where the older edition says nothing of it
 * @param after empty where the newer edition says nothing of it
 * @param effect what it can alter
 * @param items the items that it bears on, in the order of the newer edition
 */
public record Change(
    RuleSetPart part,
    Kind kind,
    String id,
    String name,
    String what,
    Optional<ChangedValue> before,
    Optional<ChangedValue> after,
    Effect effect,
    Set<String> items) {
  public Change {
    // not copied: thousands of changes bear on the same items
    items = Collections.unmodifiableSet(items);
  }

  /** Says whether it can alter a verdict, points or an award; if not, only the wording changed. */
  public boolean alters() {
    return effect != Effect.NONE;
  }

  /** What became of it. */
  public enum Kind {
    ADDED("added"),
    REMOVED("taken out"),
    MOVED("moved"),
    CHANGED("changed");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Returns the name that reports use. */
    public String word() {
      return word;
    }
  }
}
