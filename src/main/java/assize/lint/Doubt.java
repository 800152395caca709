package assize.lint;

import assize.diagnostic.Diagnostic;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.stream.Stream;

/** Looks for one thing that a rule set may say but probably does not mean. */
public interface Doubt {
  /** Every doubt there is. */
  List<Doubt> ALL =
      List.of(
          new SourceNotCited(),
          new CopyBesideOriginal(),
          new Unsourced(),
          new AreaPoints(),
          new UncoveredDates(),
          new UncoveredVehicles(),
          new UnreachableItem(),
          new ClaimWithinClaim(),
          new PositionsAlike(),
          new EmptyPatterns(),
          new NumbersOutside(),
          new NumbersWithHoles(),
          new WordNeverUsed(),
          new SameTitle());

  /** Returns what is doubtful in a rule set. */
  Stream<Diagnostic> in(RuleSet rules);

  /** Returns everything that is doubtful in a rule set, in the order of file and place. */
  static List<Diagnostic> all(RuleSet rules) {
    return ALL.stream().flatMap(it -> it.in(rules)).sorted().toList();
  }
}
