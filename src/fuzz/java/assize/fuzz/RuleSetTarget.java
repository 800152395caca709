package assize.fuzz;

import assize.report.handbook.HandbookViewFactory;
import assize.report.handbook.HtmlHandbook;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.List;

/** A rule set with all checks, and the handbook of it. */
public final class RuleSetTarget {
  private RuleSetTarget() {}

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) {
    List<SourceFile> files = List.of(new SourceFile("rules.yaml", Checks.text(data)));
    Checks.result(RuleSetReader.parse(files), RuleSetReader.parse(files))
        .value()
        .ifPresent(RuleSetTarget::print);
  }

  private static void print(RuleSet rules) {
    HtmlHandbook.render(HandbookViewFactory.of(rules));
  }
}
