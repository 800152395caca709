package assize.judge;

import assize.evidence.Source;
import assize.judge.Frame.Voice;
import assize.ruleset.AspectRule;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Weighs what sources say.
 *
 * @param copies the sources that each source copies, directly
 */
record Grounds(RuleSet rules, Map<String, Set<String>> copies) {

  static Grounds of(RuleSet rules) {
    return new Grounds(
        rules,
        rules.sources().values().stream().collect(Collectors.toMap(Source::id, Source::copies)));
  }

  /** Returns what it comes to; nothing where no position is named. */
  Optional<Ground> weigh(AspectRule rule, List<Voice> voices) {
    return Ground.of(rules, copies, rule, voices);
  }
}
