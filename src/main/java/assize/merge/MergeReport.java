package assize.merge;

import assize.ruleset.RuleSet;
import java.util.List;

/**
 * All there is to say of one merging.
 *
 * @param theirs how messages name the friends' files
 * @param isWritten whether the record's file was changed
 */
public record MergeReport(
    RuleSet rules,
    LocatedRecord mine,
    List<String> theirs,
    MergeResult merge,
    MergeApplier.Applied applied,
    boolean isWritten) {
  public MergeReport {
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
  public MergeReport written() {
    return new MergeReport(rules, mine, theirs, merge, applied, true);
  }
}
