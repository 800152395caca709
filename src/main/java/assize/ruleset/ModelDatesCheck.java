package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.yaml.DiagnosticCollector;

/** Finds models whose production does not begin or does not end. */
final class ModelDatesCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    for (Model model : rules.models().values()) {
      if (model.production().openStart() || model.production().openEnd()) {
        problems.add(
            DiagnosticCode.OPEN_PRODUCTION_DATES,
            model.at(),
            "the production of model \""
                + model.id()
                + "\" has no "
                + (model.production().openStart() ? "beginning" : "end"),
            "write both, as in 1932-03/1936-08");
      }
    }
  }
}
