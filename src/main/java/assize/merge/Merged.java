package assize.merge;

import assize.ruleset.RuleSet;
import java.util.List;

/**
 * All there is to say of one merging.
 *
 * @param theirs how messages name the friends' files
 * @param isWritten whether the record's file was changed
 */
public record Merged(
    RuleSet rules,
    WrittenRecord mine,
    List<String> theirs,
    Merge merge,
    Applying.Applied applied,
    boolean isWritten) {
  public Merged {
    theirs = List.copyOf(theirs);
  }

  /** Returns how many things are added. */
  public long added() {
    return applied.done().stream().filter(it -> it.before().isEmpty()).count();
  }

  /** Returns how many things are changed, since the owner takes a friend's word for them. */
  public long changed() {
    return applied.done().size() - added();
  }

  /** Returns the same once the file is written. */
  public Merged written() {
    return new Merged(rules, mine, theirs, merge, applied, true);
  }
}
