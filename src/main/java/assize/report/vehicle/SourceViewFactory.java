package assize.report.vehicle;

import assize.evidence.Claim;
import assize.evidence.Grade;
import assize.evidence.Source;
import assize.evidence.SourceKind;
import assize.judgment.ItemJudgment;
import assize.record.PhysicalTrace;
import assize.report.view.AnchorIds;
import assize.report.view.EdtfFormatter;
import assize.report.view.ItemViewFactory;
import assize.report.view.LinkView;
import assize.report.view.NumberFormatter;
import assize.report.view.ReportContext;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The sources, and the traces on the vehicle, in words. */
final class SourceViewFactory {
  private final ReportContext reading;

  SourceViewFactory(ReportContext reading) {
    this.reading = reading;
  }

  List<SourceView> views() {
    Map<String, Long> cited = cited();
    List<SourceView> views = new ArrayList<>();
    for (Source source : reading.judgment().rules().sources().values()) {
      views.add(view(source, cited.getOrDefault(source.id(), 0L)));
    }
    List<PhysicalTrace> traces = reading.judgment().vehicle().traces();
    for (int i = 0; i < traces.size(); i++) {
      views.add(view("trace " + (i + 1), traces.get(i)));
    }
    return views;
  }

  /** How many claims of each source speak of this vehicle. */
  private Map<String, Long> cited() {
    return reading.judgment().items().stream()
        .filter(one -> !ItemViewFactory.isNotApplicable(one))
        .map(ItemJudgment::item)
        .flatMap(item -> item.aspects().stream())
        .flatMap(rule -> rule.claims().stream())
        .filter(this::speaks)
        .map(Claim::source)
        .flatMap(Optional::stream)
        .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
  }

  private boolean speaks(Claim claim) {
    for (int i = 0; i < reading.stretches(); i++) {
      if (reading.claims().speaks(claim, reading.dayOf(i))) {
        return true;
      }
    }
    return false;
  }

  private SourceView view(Source source, long cited) {
    Map<String, Source> sources = reading.judgment().rules().sources();
    return new SourceView(
        AnchorIds.source(source.id()),
        source.title(),
        source.kind().word(),
        source.grade().name(),
        weight(source.grade()),
        source.date().map(EdtfFormatter::date).orElse(""),
        source.heldBy().orElse(""),
        sources.values().stream()
            .filter(other -> source.copies().contains(other.id()))
            .map(other -> new LinkView(AnchorIds.source(other.id()), other.title()))
            .toList(),
        cited == 0
            ? "says nothing of this vehicle"
            : NumberFormatter.count(cited, "claim bears", "claims bear") + " on this vehicle",
        source.notes().orElse(""));
  }

  private SourceView view(String name, PhysicalTrace trace) {
    String item =
        reading
            .judgment()
            .rules()
            .items()
            .filter(it -> it.id().equals(trace.item()))
            .findFirst()
            .map(Item::title)
            .orElse(trace.item());
    return new SourceView(
        AnchorIds.source(name),
        "Trace on this vehicle, at “" + item + "”" + trace.where().map(at -> ": " + at).orElse(""),
        SourceKind.TRACE.word(),
        trace.grade().name(),
        weight(trace.grade()),
        "",
        "",
        List.of(),
        shownBy(trace),
        "");
  }

  private String shownBy(PhysicalTrace trace) {
    String evidence =
        trace.evidence().stream()
            .map(id -> Optional.ofNullable(reading.judgment().vehicle().evidence().get(id)))
            .flatMap(Optional::stream)
            .map(it -> it.caption().map(words -> words + ", ").orElse("") + it.what())
            .collect(Collectors.joining("; "));
    return evidence.isEmpty() ? "" : "shown by: " + evidence;
  }

  private String weight(Grade grade) {
    return Optional.ofNullable(reading.judgment().rules().scale().grades().get(grade))
        .map(thousandths -> NumberFormatter.points((long) thousandths))
        .orElse("");
  }
}
