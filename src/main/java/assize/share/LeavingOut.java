package assize.share;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.judgment.Judgment;
import assize.record.Evidence;
import assize.record.Observation;
import assize.record.Opinion;
import assize.record.Trace;
import assize.record.Unshared;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import assize.text.Fingerprint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Leaves out of a judgment what its record marks private. */
final class LeavingOut {
  private final Masking masking;
  private final Judgment judgment;
  private final VehicleRecord vehicle;
  private final Set<String> shared;
  private final List<Omission> omissions = new ArrayList<>();

  private LeavingOut(Judgment judgment, Masking masking) {
    this.masking = masking;
    this.judgment = judgment;
    this.vehicle = judgment.vehicle();
    this.shared = shared(vehicle);
  }

  /** Returns the judgment without what is private; verdicts and points stay as they are. */
  static Copy of(Judgment judgment, Masking masking) {
    return new LeavingOut(judgment, masking).copy();
  }

  private Copy copy() {
    VehicleRecord left = vehicle();
    Judgment rest =
        new Judgment(
            judgment.rules(),
            left,
            judgment.build(),
            judgment.stretches(),
            judgment.areas(),
            judgment.items(),
            judgment.score(),
            judgment.strict(),
            judgment.award(),
            judgment.remarks());
    int evidence = vehicle.evidence().size() - left.evidence().size();
    return new Copy(rest, vehicle, omissions, evidence, masking);
  }

  /** Evidence that is cited stays as long as it is cited where that is not private. */
  private static Set<String> shared(VehicleRecord vehicle) {
    Set<String> open = new LinkedHashSet<>();
    Set<String> hidden = new LinkedHashSet<>();
    for (Observation one : vehicle.observations().values()) {
      (one.unshared().contains(Unshared.EVIDENCE) ? hidden : open).addAll(one.evidence());
    }
    vehicle.traces().forEach(trace -> open.addAll(trace.evidence()));
    Set<String> shared = new LinkedHashSet<>();
    for (Evidence one : vehicle.evidence().values()) {
      if (!one.isUnshared() && (open.contains(one.id()) || !hidden.contains(one.id()))) {
        shared.add(one.id());
      }
    }
    return shared;
  }

  private VehicleRecord vehicle() {
    omit("", record());
    Map<String, Evidence> evidence = new LinkedHashMap<>(vehicle.evidence());
    evidence.keySet().retainAll(shared);
    Map<String, Observation> observations = new LinkedHashMap<>();
    vehicle.observations().forEach((item, one) -> observations.put(item, observation(one)));
    return new VehicleRecord(
        vehicle.id(),
        vehicle.rules(),
        vehicle.edition(),
        vehicle.name(),
        vehicle.model(),
        kept(vehicle.notes(), Unshared.NOTES),
        vehicle.numbers(),
        vehicle.oneOf(),
        vehicle.built(),
        kept(vehicle.plant(), Unshared.PLANT),
        kept(vehicle.market(), Unshared.MARKET),
        vehicle.equipment(),
        kept(vehicle.judged(), Unshared.JUDGED),
        observations,
        evidence,
        vehicle.traces().stream().map(this::trace).toList(),
        Set.of(),
        List.of(),
        List.of(),
        files(evidence),
        vehicle.at());
  }

  private <T> Optional<T> kept(Optional<T> value, Unshared field) {
    return vehicle.unshared().contains(field) ? Optional.empty() : value;
  }

  private List<Unshared> record() {
    List<Unshared> there = new ArrayList<>();
    vehicle.notes().ifPresent(it -> there.add(Unshared.NOTES));
    vehicle.judged().ifPresent(it -> there.add(Unshared.JUDGED));
    vehicle.plant().ifPresent(it -> there.add(Unshared.PLANT));
    vehicle.market().ifPresent(it -> there.add(Unshared.MARKET));
    there.retainAll(vehicle.unshared());
    return there;
  }

  private void omit(String item, List<Unshared> what) {
    if (!what.isEmpty()) {
      omissions.add(new Omission(item, what));
    }
  }

  private Observation observation(Observation one) {
    Set<Unshared> hidden = one.unshared();
    List<Unshared> there = new ArrayList<>();
    one.note().ifPresent(it -> there.add(Unshared.NOTE));
    if (one.by().isPresent() || one.findings().values().stream().anyMatch(LeavingOut::saysBy)) {
      there.add(Unshared.BY);
    }
    one.on().ifPresent(it -> there.add(Unshared.ON));
    if (!one.evidence().isEmpty()) {
      there.add(Unshared.EVIDENCE);
    }
    one.departure().flatMap(Observation.Departure::why).ifPresent(it -> there.add(Unshared.WHY));
    one.opinion().flatMap(Opinion::because).ifPresent(it -> there.add(Unshared.BECAUSE));
    there.retainAll(hidden);
    omit(title(one.item()), there);
    return new Observation(
        one.item(),
        hidden.contains(Unshared.BY) ? withoutBy(one.findings()) : one.findings(),
        hidden.contains(Unshared.EVIDENCE) ? List.of() : cited(one.evidence()),
        hidden.contains(Unshared.NOTE) ? Optional.empty() : one.note(),
        hidden.contains(Unshared.BY) ? Optional.empty() : one.by(),
        hidden.contains(Unshared.ON) ? Optional.empty() : one.on(),
        hidden.contains(Unshared.WHY) ? one.departure().map(LeavingOut::bare) : one.departure(),
        hidden.contains(Unshared.BECAUSE) ? one.opinion().map(LeavingOut::bare) : one.opinion(),
        Set.of(),
        one.at());
  }

  private static boolean saysBy(Finding finding) {
    return finding instanceof Finding.Color color && color.by().isPresent();
  }

  private static Map<Aspect, Finding> withoutBy(Map<Aspect, Finding> findings) {
    Map<Aspect, Finding> bare = new LinkedHashMap<>(findings);
    bare.replaceAll(
        (aspect, finding) ->
            finding instanceof Finding.Color color
                ? new Finding.Color(
                    color.chip(), color.lab(), color.uncertainty(), color.light(), Optional.empty())
                : finding);
    return bare;
  }

  private static Observation.Departure bare(Observation.Departure departure) {
    return new Observation.Departure(
        departure.reason(), Optional.empty(), departure.until(), departure.at());
  }

  private static Opinion bare(Opinion opinion) {
    return new Opinion(opinion.holds(), Optional.empty(), opinion.at());
  }

  private Trace trace(Trace one) {
    return new Trace(
        one.item(),
        one.grade(),
        one.manner(),
        one.values(),
        one.where(),
        cited(one.evidence()),
        one.at());
  }

  private List<String> cited(List<String> evidence) {
    return evidence.stream().filter(shared::contains).toList();
  }

  /** The record's own file comes first; a file stays as long as any shared piece shows it. */
  private List<Fingerprint> files(Map<String, Evidence> evidence) {
    List<Fingerprint> files = new ArrayList<>();
    for (Fingerprint file : vehicle.files()) {
      if (files.isEmpty()) {
        files.add(new Fingerprint(file.path(), "", file.bytes()));
      } else if (evidence.values().stream().anyMatch(it -> it.what().equals(file.path()))) {
        files.add(file);
      }
    }
    return files;
  }

  private String title(String item) {
    return judgment
        .rules()
        .items()
        .filter(it -> it.id().equals(item))
        .findFirst()
        .map(Item::title)
        .orElse(item);
  }
}
