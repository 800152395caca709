package assize.ruleset;

import assize.aspect.Aspect;
import assize.diagnostic.DiagnosticCode;
import assize.yaml.DiagnosticCollector;
import java.util.List;

/** Finds items with the aspect choice that give nothing to choose from. */
final class ChoicesCheck {
  private final DiagnosticCollector problems;

  ChoicesCheck(DiagnosticCollector problems) {
    this.problems = problems;
  }

  void check(List<ClaimReader.Told> all, boolean hasChoices) {
    for (ClaimReader.Told one : all) {
      if (one.aspect() == Aspect.CHOICE && !hasChoices) {
        problems.add(
            DiagnosticCode.NO_CHOICES,
            one.entry().key().at(),
            "this item has the aspect choice but nothing to choose from",
            "add `choices:` with the words and what they mean");
        return;
      }
    }
  }
}
