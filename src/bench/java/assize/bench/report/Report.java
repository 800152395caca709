package assize.bench.report;

import assize.bench.Baseline;
import assize.bench.Generated;
import assize.judge.Judge;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.vehicle.HtmlReport;
import assize.report.vehicle.ReportView;
import assize.report.vehicle.ReportViewFactory;
import assize.report.vehicle.Unchecked;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Prints the page of a judged vehicle, against its pieces put together by a StringBuilder. */
@State(Scope.Benchmark)
public class Report {
  private static final int ITEMS = 1000;

  /** The demonstration's finished truck, or a generated vehicle. */
  @Param({"finished truck", "1000 items"})
  public String of = "finished truck";

  private Optional<ReportView> view = Optional.empty();
  private Optional<HandWrittenReport> pieces = Optional.empty();
  private String page = "";

  /** Judges the vehicle and prints it once. */
  @Setup
  public void prepare() {
    view = Optional.of(of.equals("1000 items") ? generated() : truck());
    page = Unchecked.report(view.get());
    pieces = Optional.of(new HandWrittenReport(page));
  }

  private static ReportView truck() {
    Path record = Path.of("rules", "l45-4388.yaml");
    RuleSet rules = RuleSetReader.read(Path.of("rules", "tarrowby-type-l")).value().orElseThrow();
    VehicleRecord vehicle = RecordReader.read(record, rules).value().orElseThrow();
    return ReportViewFactory.of(Judge.judge(rules, vehicle, Optional.empty()));
  }

  private static ReportView generated() {
    RuleSet rules =
        RuleSetReader.parse(List.of(new SourceFile("rules.yaml", Generated.rules(ITEMS, 40))))
            .value()
            .orElseThrow();
    SourceFile record = new SourceFile("r.yaml", Generated.record(ITEMS, "rules.yaml", 1));
    VehicleRecord vehicle = RecordReader.parse(record, rules).value().orElseThrow();
    return ReportViewFactory.of(Judge.judge(rules, vehicle, Optional.empty()));
  }

  /** Appends the same pieces. */
  @Benchmark
  public String byHand() {
    return pieces.orElseThrow().page();
  }

  /** Prints it by its template. */
  @Benchmark
  @Baseline(value = "byHand", says = "page printed, not yet checked : by hand", goal = 0.25)
  public String printed() {
    return Unchecked.report(view.orElseThrow());
  }

  /** Checks the finished page. */
  @Benchmark
  @Baseline(value = "byHand", says = "the check of the finished page alone : by hand", goal = 0.25)
  public void checked() {
    Unchecked.check(page);
  }

  /** Prints and checks it. */
  @Benchmark
  @Baseline(value = "byHand", says = "page printed and checked : by hand", goal = 0.25)
  public String whole() {
    return HtmlReport.render(view.orElseThrow());
  }
}
