package assize.report.dossier;

import assize.evidence.DisputeState;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.SourceJudgment;
import assize.record.VehicleRecord;
import assize.report.view.AspectViewFactory;
import assize.report.view.DisputeViewFactory;
import assize.report.view.EvidenceView;
import assize.report.view.EvidenceViewFactory;
import assize.report.view.FileView;
import assize.report.view.FileViewFactory;
import assize.report.view.ItemView;
import assize.report.view.ItemViewFactory;
import assize.report.view.ReportContext;
import assize.report.view.ReportHeaderViewFactory;
import assize.report.view.SourceImageViewFactory;
import assize.ruleset.Area;
import assize.ruleset.AspectRule;
import assize.ruleset.Hazard;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes up one item on which sources differ. */
public final class DossierViewFactory {
  /** The fewest witnesses that two disputes have in common to be called related. */
  private static final int SHARED = 2;

  private final Judgment judgment;
  private final Map<String, String> unshown;
  private final ReportContext reading;

  private DossierViewFactory(Judgment judgment, VehicleRecord facts, Map<String, String> unshown) {
    this.judgment = judgment;
    this.unshown = unshown;
    this.reading = new ReportContext(judgment, facts, false);
  }

  /** Returns the items on which no position is believed enough, in the rule set's order. */
  public static List<String> disputed(Judgment judgment) {
    return judgment.items().stream()
        .filter(one -> aspects(one).stream().anyMatch(it -> it.dispute() == DisputeState.DISPUTED))
        .map(one -> one.item().id())
        .toList();
  }

  /**
   * Returns nothing where the sources do not differ on that item, or it does not apply.
   *
   * @param unshown why a picture can't be shown, by its key
   */
  public static Optional<DossierView> of(
      Judgment judgment, String item, Map<String, String> unshown) {
    return of(judgment, judgment.vehicle(), item, unshown);
  }

  /** Does the same for a vehicle that leaves out some of the facts that claims speak by. */
  public static Optional<DossierView> of(
      Judgment judgment, VehicleRecord facts, String item, Map<String, String> unshown) {
    return judgment.items().stream()
        .filter(one -> one.item().id().equals(item))
        .filter(one -> aspects(one).stream().anyMatch(AspectViewFactory::differs))
        .findFirst()
        .map(one -> new DossierViewFactory(judgment, facts, unshown).view(one));
  }

  private static List<AspectJudgment> aspects(ItemJudgment one) {
    return one.stretches().stream().flatMap(stretch -> stretch.aspects().stream()).toList();
  }

  private DossierView view(ItemJudgment one) {
    String id = one.item().id();
    DisputeViewFactory disputes = new DisputeViewFactory(reading);
    EvidenceViewFactory evidence =
        new EvidenceViewFactory(judgment, unshown, Map.of(id, disputes.place(one)));
    SourceImageViewFactory pictures = new SourceImageViewFactory(reading, unshown);
    ItemView item =
        new ItemViewFactory(reading, evidence, new SourceImageViewFactory(reading, unshown))
            .of(one);
    EvidenceGapsViewFactory unheard = new EvidenceGapsViewFactory(reading);
    List<DossierView.Part> parts = new ArrayList<>();
    for (AspectRule rule : one.item().aspects()) {
      disputes
          .of(one, rule, evidence, pictures)
          .ifPresent(it -> parts.add(new DossierView.Part(it, unheard.of(one, rule))));
    }
    return new DossierView(
        ReportHeaderViewFactory.of(judgment),
        item.title(),
        judgment.rules().areas().stream()
            .filter(area -> area.id().equals(one.item().area()))
            .map(Area::name)
            .findFirst()
            .orElse(""),
        item.possible(),
        item.look(),
        item.notes(),
        item.hazards(),
        item.hazards().isEmpty() ? "" : Hazard.THEN,
        item.note(),
        item.by(),
        item.evidence().stream().filter(it -> !it.photo()).toList(),
        parts,
        related(one),
        files(parts, item.evidence()),
        "");
  }

  /** Returns the files that this rests on: no picture that is not shown here. */
  private List<FileView> files(List<DossierView.Part> parts, List<EvidenceView> evidence) {
    Set<String> shown =
        Stream.concat(
                parts.stream().flatMap(part -> part.dispute().pictures().stream()),
                evidence.stream())
            .map(EvidenceView::what)
            .collect(Collectors.toSet());
    return FileViewFactory.of(judgment).stream()
        .filter(
            file ->
                file.role().equals("record")
                    || file.role().equals("rule set") && file.path().endsWith(".yaml")
                    || shown.contains(file.path()))
        .toList();
  }

  private List<DossierView.Related> related(ItemJudgment one) {
    Set<String> here = sources(aspects(one).stream().filter(AspectViewFactory::differs).toList());
    List<DossierView.Related> related = new ArrayList<>();
    for (ItemJudgment other : judgment.items()) {
      if (other.item().id().equals(one.item().id())) {
        continue;
      }
      for (AspectRule rule : other.item().aspects()) {
        List<AspectJudgment> differing =
            aspects(other).stream()
                .filter(it -> it.rule().aspect() == rule.aspect() && AspectViewFactory.differs(it))
                .toList();
        Set<String> shared = sources(differing);
        shared.retainAll(here);
        if (shared.size() >= SHARED) {
          related.add(
              new DossierView.Related(
                  other.item().title(),
                  rule.aspect().spoken(),
                  differing.stream().anyMatch(it -> it.dispute() == DisputeState.DISPUTED)
                      ? "disputed"
                      : "settled against dissent",
                  shared.size() + " of the same witnesses"));
        }
      }
    }
    return related;
  }

  /** Returns the witnesses of the rule set that speak there. */
  private Set<String> sources(List<AspectJudgment> aspects) {
    return aspects.stream()
        .flatMap(it -> it.sources().stream())
        .filter(SourceJudgment::isWitness)
        .map(SourceJudgment::source)
        .filter(judgment.rules().sources()::containsKey)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
