package assize.ruleset;

import assize.yaml.DiagnosticCollector;

/** Looks for one thing that does not fit together in a rule set whose parts could be read. */
interface RuleSetCheck {
  void check(RuleSet rules, DiagnosticCollector problems);
}
