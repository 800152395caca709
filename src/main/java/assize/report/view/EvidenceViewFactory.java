package assize.report.view;

import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.record.EvidenceItem;
import assize.record.Observation;
import assize.record.PhysicalTrace;
import assize.record.VehicleRecord;
import assize.text.FileChecksum;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What is there to show, each picture at the first item that cites it. */
public final class EvidenceViewFactory {
  private static final LinkView BACK = new LinkView("papers", "Photos and papers");

  private final VehicleRecord vehicle;
  private final Map<String, String> unshown;
  private final Map<String, List<LinkView>> citing = new LinkedHashMap<>();
  private final Map<String, LinkView> places = new LinkedHashMap<>();

  /**
   * Finds out who cites what.
   *
   * @param unshown why a picture can't be shown, by its name in the record
   * @param disputes items whose photos are shown where they are written up, and that place
   */
  public EvidenceViewFactory(
      Judgment judgment, Map<String, String> unshown, Map<String, LinkView> disputes) {
    this.vehicle = judgment.vehicle();
    this.unshown = unshown;
    disputes.forEach((item, place) -> cited(item).forEach(id -> places.putIfAbsent(id, place)));
    for (ItemJudgment one : inReadingOrder(judgment)) {
      LinkView link = new LinkView(AnchorIds.item(one.item().id()), one.item().title());
      for (String id : cited(one.item().id())) {
        citing.computeIfAbsent(id, it -> new ArrayList<>()).add(link);
        if (!ItemViewFactory.isNotApplicable(one)) {
          places.putIfAbsent(id, link);
        }
      }
    }
  }

  /** Returns the items as the page has them: area by area. */
  private static List<ItemJudgment> inReadingOrder(Judgment judgment) {
    return judgment.areas().stream()
        .flatMap(
            area ->
                judgment.items().stream().filter(one -> one.item().area().equals(area.area().id())))
        .toList();
  }

  private Set<String> cited(String item) {
    Stream<String> seen =
        Optional.ofNullable(vehicle.observations().get(item)).map(Observation::evidence).stream()
            .flatMap(List::stream);
    Stream<String> traced =
        vehicle.traces().stream()
            .filter(trace -> trace.item().equals(item))
            .map(PhysicalTrace::evidence)
            .flatMap(List::stream);
    Set<String> ids = new LinkedHashSet<>(Stream.concat(seen, traced).toList());
    ids.retainAll(vehicle.evidence().keySet());
    return ids;
  }

  /** Returns what an item cites, in its order. */
  List<EvidenceView> of(String item) {
    return of(item, AnchorIds.item(item));
  }

  /** Returns what an item cites, as another place in the page has it. */
  List<EvidenceView> of(String item, String anchor) {
    return cited(item).stream()
        .map(id -> view(Objects.requireNonNull(vehicle.evidence().get(id)), anchor))
        .toList();
  }

  /** Returns all there is, in the record's order, as the list at the back has it. */
  public List<EvidenceView> all() {
    return vehicle.evidence().values().stream().map(one -> view(one, BACK.anchor())).toList();
  }

  private EvidenceView view(EvidenceItem one, String shownAt) {
    LinkView place = places.getOrDefault(one.id(), BACK);
    boolean photo = one.kind() == EvidenceItem.Kind.PHOTO;
    Optional<FileChecksum> file =
        vehicle.files().stream()
            .skip(1)
            .filter(
                it -> one.kind() != EvidenceItem.Kind.MEASUREMENT && it.path().equals(one.what()))
            .findFirst();
    return new EvidenceView(
        one.id(),
        AnchorIds.evidence(one.id()),
        one.kind().word(),
        one.what(),
        one.caption().orElse(""),
        one.taken().map(EdtfFormatter::date).orElse(""),
        one.by().orElse(""),
        photo,
        photo && place.anchor().equals(shownAt),
        place,
        citing.getOrDefault(one.id(), List.of()),
        file.map(it -> NumberFormatter.bytes(it.bytes())).orElse(""),
        file.map(FileChecksum::sha256).orElse(""),
        unshown.getOrDefault(one.id(), ""));
  }
}
