package assize.yaml;

import java.util.List;

/** Every check of a rule set as a whole. */
final class RuleSetChecks {
  static final List<RuleSetCheck> ALL = List.of();

  private RuleSetChecks() {}
}
