package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.stream.Stream;

/**
 * One rule: looks for one thing that a rule set may say but probably does not mean, and words it.
 * What the messages page says of it stands under its code.
 */
public interface RuleSetWarningRule {
  /** Every rule. */
  List<RuleSetWarningRule> ALL =
      List.of(
          new SourceNotCited(),
          new RedundantCopyClaim(),
          new ItemWithoutSource(),
          new AreaPoints(),
          new UncoveredDates(),
          new UncoveredVehicles(),
          new UnreachableItem(),
          new ClaimNeverSpeaks(),
          new OverlappingClaims(),
          new IndistinguishablePositions(),
          new PatternMatchesNothing(),
          new CodeNeverFits(),
          new NumbersOutsideTable(),
          new NumberTableGaps(),
          new UnusedVocabulary(),
          new SameTitle());

  /** Returns the code of all that it finds. */
  DiagnosticCode code();

  /** Returns what is doubtful in a rule set. */
  Stream<Diagnostic> in(RuleSet rules);

  /** Returns everything that is doubtful in a rule set, in the order of file and place. */
  static List<Diagnostic> all(RuleSet rules) {
    return ALL.stream().flatMap(it -> it.in(rules)).sorted().toList();
  }
}
