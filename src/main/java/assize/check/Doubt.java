package assize.check;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.stream.Stream;

/**
 * One rule: looks for one thing that a rule set may say but probably does not mean, and words it.
 * What the messages page says of it stands under its code.
 */
public interface Doubt {
  /** Every rule. */
  List<Doubt> ALL =
      List.of(
          new SourceNotCited(),
          new CopyBesideOriginal(),
          new Unsourced(),
          new AreaPoints(),
          new UncoveredDates(),
          new UncoveredVehicles(),
          new UnreachableItem(),
          new ClaimNeverSpeaks(),
          new ClaimWithinClaim(),
          new PositionsAlike(),
          new PatternMatchesNothing(),
          new CodeNeverFits(),
          new NumbersOutside(),
          new NumbersWithHoles(),
          new WordNeverUsed(),
          new SameTitle());

  /** Returns the code of all that it finds. */
  Code code();

  /** Returns what is doubtful in a rule set. */
  Stream<Diagnostic> in(RuleSet rules);

  /** Returns everything that is doubtful in a rule set, in the order of file and place. */
  static List<Diagnostic> all(RuleSet rules) {
    return ALL.stream().flatMap(it -> it.in(rules)).sorted().toList();
  }
}
