package assize.ruleset;

import assize.aspect.Finding;
import assize.diagnostic.DiagnosticCode;
import assize.yaml.DiagnosticCollector;
import assize.yaml.Node;

/** Keeps the word {@code other}, which records use for what the rule set has no word for. */
public final class ReservedWords {
  private ReservedWords() {}

  public static void check(Node.Scalar name, DiagnosticCollector problems) {
    if (name.text().equals(Finding.OTHER)) {
      problems.add(
          DiagnosticCode.BAD_NAME,
          name.at(),
          "\"other\" is what records write for anything that the rule set has no word for",
          "choose another name");
    }
  }
}
