package assize.fuzz;

import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.text.JudgmentJson;
import assize.report.vehicle.HtmlReport;
import assize.report.vehicle.ReportViewFactory;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import java.util.Optional;

/** A record read, judged, and printed as a report and as JSON. */
public final class RecordTarget {
  private static final RuleSet RULES = Checks.rules();

  private RecordTarget() {}

  /** Reads the rule set before any time is taken. */
  public static void fuzzerInitialize() {
    Checks.demand(!RULES.id().isEmpty(), "no rule set");
  }

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) {
    SourceFile file = new SourceFile("record.yaml", Checks.text(data));
    Checks.result(RecordReader.parse(file, RULES), RecordReader.parse(file, RULES))
        .value()
        .ifPresent(RecordTarget::judge);
  }

  private static void judge(VehicleRecord record) {
    Judgment judgment = Judge.judge(RULES, record, Optional.empty());
    String json = JudgmentJson.of(judgment);
    Checks.demand(
        json.equals(JudgmentJson.of(Judge.judge(RULES, record, Optional.empty()))),
        "judged otherwise the second time");
    HtmlReport.render(ReportViewFactory.of(judgment));
  }
}
