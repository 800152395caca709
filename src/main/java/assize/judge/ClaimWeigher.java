package assize.judge;

import assize.evidence.Source;
import assize.evidence.SourceIndependence;
import assize.judge.FrameOfDiscernment.SourceStatement;
import assize.ruleset.AspectRule;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Weighs what sources say.
 *
 * @param copies which sources copy which
 */
record ClaimWeigher(RuleSet rules, SourceIndependence<String> copies) {

  static ClaimWeigher of(RuleSet rules) {
    return new ClaimWeigher(
        rules,
        SourceIndependence.of(
            rules.sources().values().stream()
                .collect(Collectors.toMap(Source::id, Source::copies))));
  }

  /** Returns what it comes to; nothing where no position is named. */
  Optional<WeighedAspect> weigh(AspectRule rule, List<SourceStatement> voices) {
    return WeighedAspect.of(rules, copies, rule, voices);
  }
}
