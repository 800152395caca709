package assize.ruleset;

import assize.aspect.Finding;
import assize.diagnostic.Code;
import assize.yaml.Node;
import assize.yaml.Problems;

/** Keeps the word {@code other}, which records use for what the rule set has no word for. */
public final class ReservedWords {
  private ReservedWords() {}

  public static void check(Node.Scalar name, Problems problems) {
    if (name.text().equals(Finding.OTHER)) {
      problems.add(
          Code.BAD_NAME,
          name.at(),
          "\"other\" is what records write for anything that the rule set has no word for",
          "choose another name");
    }
  }
}
