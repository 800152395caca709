package assize.compare;

import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Two editions of one standard, compared.
 *
 * @param changes everything that they say differently, in the order of the newer edition
 * @param renamings what may only have been given another name
 * @param shifted aspects of items of which they hold different things, and for which vehicles
 */
public record EditionComparison(
    RuleSet before,
    RuleSet after,
    List<Change> changes,
    List<RenameCandidate> renamings,
    List<ChangedExpectation> shifted) {
  /** All changes together may bear on so many items, each counted for each change. */
  public static final long MOST_BEARING = 200_000;

  public EditionComparison {
    changes = List.copyOf(changes);
    renamings = List.copyOf(renamings);
    shifted = List.copyOf(shifted);
  }

  /** Compares two editions. */
  public static EditionComparison between(RuleSet before, RuleSet after) {
    AffectedItems bearing = new AffectedItems(before, after);
    List<Change> changes = new ArrayList<>();
    new StandardChanges(before, after, bearing).into(changes);
    new ProductionDataChanges(before, after, bearing).into(changes);
    new SourceChanges(before, after, bearing).into(changes);
    new VocabularyChanges(before, after, bearing).into(changes);
    new AreaChanges(before, after, bearing).into(changes);
    new ItemChanges(before, after).into(changes);
    EditionComparison changed =
        new EditionComparison(
            before, after, changes, RenameCandidate.among(before, after), List.of());
    return changed.isTooMuch()
        ? changed
        : new EditionComparison(
            before, after, changes, changed.renamings(), ChangedExpectation.between(before, after));
  }

  /** Returns how many names of items all changes bear on, each as often as a change does. */
  public long bearing() {
    return changes.stream().mapToLong(it -> it.items().size()).sum();
  }

  /** Says whether the changes bear on more than can be laid out; they are not all of them then. */
  public boolean isTooMuch() {
    return bearing() > MOST_BEARING;
  }

  /** Returns the changes that can alter something, by the items that they bear on. */
  public Map<String, List<Change>> altering() {
    Map<String, List<Change>> altering = new HashMap<>();
    for (Change change : changes) {
      if (change.alters()) {
        change
            .items()
            .forEach(it -> altering.computeIfAbsent(it, id -> new ArrayList<>(2)).add(change));
      }
    }
    return altering;
  }

  /** Says whether nothing that they say differs. */
  public boolean isEmpty() {
    return changes.isEmpty();
  }
}
