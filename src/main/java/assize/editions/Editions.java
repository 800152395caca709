package assize.editions;

import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;

/**
 * Two editions of one standard, compared.
 *
 * @param changes everything that they say differently, in the order of the newer edition
 * @param renamings what may only have been given another name
 * @param shifted aspects of items of which they hold different things, and for which vehicles
 */
public record Editions(
    RuleSet before,
    RuleSet after,
    List<Change> changes,
    List<Renaming> renamings,
    List<Shifted> shifted) {
  public Editions {
    changes = List.copyOf(changes);
    renamings = List.copyOf(renamings);
    shifted = List.copyOf(shifted);
  }

  /** Compares two editions. */
  public static Editions between(RuleSet before, RuleSet after) {
    Bearing bearing = new Bearing(before, after);
    List<Change> changes = new ArrayList<>();
    new StandardChanges(before, after, bearing).into(changes);
    new VehicleChanges(before, after, bearing).into(changes);
    new SourceChanges(before, after, bearing).into(changes);
    new WordChanges(before, after, bearing).into(changes);
    new AreaChanges(before, after, bearing).into(changes);
    new ItemChanges(before, after).into(changes);
    return new Editions(
        before, after, changes, Renaming.among(before, after), Shifted.between(before, after));
  }

  /** Says whether nothing that they say differs. */
  public boolean isEmpty() {
    return changes.isEmpty();
  }
}
