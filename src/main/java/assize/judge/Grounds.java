package assize.judge;

import assize.evidence.Independence;
import assize.evidence.Source;
import assize.judge.Frame.Voice;
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
record Grounds(RuleSet rules, Independence<String> copies) {

  static Grounds of(RuleSet rules) {
    return new Grounds(
        rules,
        Independence.of(
            rules.sources().values().stream()
                .collect(Collectors.toMap(Source::id, Source::copies))));
  }

  /** Returns what it comes to; nothing where no position is named. */
  Optional<Ground> weigh(AspectRule rule, List<Voice> voices) {
    return Ground.of(rules, copies, rule, voices);
  }
}
