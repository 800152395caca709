package assize.report.sheet;

import assize.aspect.Control;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.date.DateRangeFormatter;
import assize.evidence.Ternary;
import assize.judge.VehicleFacts;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.record.Observation;
import assize.report.sheet.InspectionView.ExpectedValue;
import assize.report.sheet.InspectionView.FoundValue;
import assize.report.sheet.InspectionView.InspectedArea;
import assize.report.sheet.InspectionView.InspectedAspect;
import assize.report.sheet.InspectionView.InspectedItem;
import assize.report.sheet.InspectionView.SheetText;
import assize.report.view.HazardView;
import assize.report.view.ItemViewFactory;
import assize.report.view.NumberFormatter;
import assize.report.view.ReportContext;
import assize.report.view.ReportHeaderView;
import assize.report.view.ReportHeaderViewFactory;
import assize.ruleset.Area;
import assize.ruleset.AspectRule;
import assize.ruleset.Hazard;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns a judgment into what there is to look at, the items that do not apply left out. */
public final class InspectionViewFactory {
  private final ReportContext reading;
  private final ScopeFormatter scopes;
  private final ExpectedViewFactory expected;

  private InspectionViewFactory(Judgment judgment) {
    this.reading = new ReportContext(judgment);
    this.scopes = new ScopeFormatter(judgment.rules());
    this.expected = new ExpectedViewFactory(reading, scopes);
  }

  /**
   * Words what there is to look at on one vehicle.
   *
   * @param judgment of a record without observations, or of one that is partly filled in
   */
  public static InspectionView of(Judgment judgment) {
    return new InspectionViewFactory(judgment).view();
  }

  private InspectionView view() {
    Judgment judgment = reading.judgment();
    List<InspectedArea> areas = areas();
    List<InspectedItem> items = areas.stream().flatMap(area -> area.items().stream()).toList();
    return new InspectionView(
        judgment.vehicle().name(),
        judgment.vehicle().id(),
        judgment.rules().id(),
        judgment.rules().name(),
        ReportHeaderViewFactory.edition(judgment.rules()),
        facts(),
        areas,
        hazards(),
        Hazard.THEN,
        items.size(),
        items.stream().mapToInt(item -> item.aspects().size()).sum(),
        InspectionTime.words(InspectionTime.seconds(areas)),
        InspectionTime.minutes(InspectionTime.seconds(areas)));
  }

  private List<ReportHeaderView.Named> facts() {
    Judgment judgment = reading.judgment();
    return Stream.concat(
            Stream.of(
                new ReportHeaderView.Named("Model", ReportHeaderViewFactory.model(judgment)),
                new ReportHeaderView.Named(
                    "Built",
                    DateRangeFormatter.of(judgment.build().days())
                        + ", by "
                        + ReportHeaderViewFactory.basis(judgment.build().basis()))),
            ReportHeaderViewFactory.facts(judgment.rules(), judgment.vehicle()).stream())
        .toList();
  }

  private List<InspectedArea> areas() {
    Map<String, ItemJudgment> judged = new HashMap<>();
    reading.judgment().items().forEach(one -> judged.put(one.item().id(), one));
    List<InspectedArea> areas = new ArrayList<>();
    int number = 0;
    for (Area area : reading.judgment().rules().areas()) {
      List<InspectedItem> items = new ArrayList<>();
      for (Item item : area.items()) {
        number++;
        ItemJudgment one = Objects.requireNonNull(judged.get(item.id()));
        if (!ItemViewFactory.isNotApplicable(one)) {
          items.add(item(number, one));
        }
      }
      if (!items.isEmpty()) {
        areas.add(new InspectedArea(area.id(), area.name(), items));
      }
    }
    return areas;
  }

  private InspectedItem item(int number, ItemJudgment one) {
    Item item = one.item();
    Optional<Observation> seen =
        Optional.ofNullable(reading.judgment().vehicle().observations().get(item.id()));
    return new InspectedItem(
        number,
        item.id(),
        item.title(),
        NumberFormatter.points(item.points()),
        item.look().orElse(""),
        item.notes().orElse(""),
        mayApply(one),
        item.hazards().stream().map(ItemViewFactory::hazard).toList(),
        item.aspects().stream().flatMap(rule -> aspect(one, rule, seen).stream()).toList(),
        seen.orElseGet(() -> Observation.of(item.id())).texts().entrySet().stream()
            .map(it -> SheetText.of(it.getKey(), it.getValue()))
            .toList());
  }

  /** Returns nothing where no source speaks of the aspect on such a vehicle, nor the record. */
  private Optional<InspectedAspect> aspect(
      ItemJudgment one, AspectRule rule, Optional<Observation> seen) {
    List<ExpectedValue> right = expected.of(one, rule);
    FoundValue found =
        seen.map(it -> it.findings().get(rule.aspect()))
            .map(it -> found(one.item(), rule, it))
            .orElse(FoundValue.NOTHING);
    return right.isEmpty() && found.equals(FoundValue.NOTHING)
        ? Optional.empty()
        : Optional.of(
            new InspectedAspect(
                rule.aspect().word(),
                rule.aspect().spoken(),
                control(one.item(), rule),
                right,
                found));
  }

  private Control control(Item item, AspectRule rule) {
    List<Expectation> right =
        rule.claims().stream().flatMap(claim -> claim.values().stream()).toList();
    return rule.aspect().kind().control(reading.at(item, rule.aspect()), right);
  }

  private FoundValue found(Item item, AspectRule rule, Finding finding) {
    Finding.Written written = finding.written();
    return new FoundValue(
        written.typed(), written.yaml(), finding.words(reading.at(item, rule.aspect())));
  }

  /** Build days on which an item plainly applies, or depends on facts that are not known. */
  private record Case(boolean out, String open) {}

  private String mayApply(ItemJudgment one) {
    List<String> cases = new ArrayList<>();
    for (int from = 0; from < reading.stretches(); ) {
      Case here = asCase(one, from);
      int to = from;
      while (to + 1 < reading.stretches() && asCase(one, to + 1).equals(here)) {
        to++;
      }
      if (!here.out()) {
        boolean always = from == 0 && to == reading.stretches() - 1;
        cases.add(
            Stream.of(always ? "" : "built " + reading.period(from, to), here.open())
                .filter(words -> !words.isEmpty())
                .reduce((a, b) -> a + ", " + b)
                .orElse(""));
      }
      from = to + 1;
    }
    return cases.equals(List.of("")) ? "" : "only a vehicle " + String.join("; or ", cases);
  }

  private Case asCase(ItemJudgment one, int stretch) {
    ItemInPeriod here = one.stretches().get(stretch);
    VehicleFacts facts = reading.facts(stretch);
    return here.applies() == Ternary.NO
        ? new Case(true, "")
        : new Case(false, scopes.open(one.item().scope(), facts));
  }

  private List<HazardView> hazards() {
    return Arrays.stream(Hazard.values())
        .filter(
            hazard ->
                reading.judgment().items().stream()
                    .filter(one -> !ItemViewFactory.isNotApplicable(one))
                    .anyMatch(one -> one.item().hazards().contains(hazard)))
        .map(ItemViewFactory::hazard)
        .toList();
  }
}
