package assize.redaction;

import assize.judgment.Judgment;
import assize.record.EvidenceItem;
import assize.record.Observation;
import assize.record.PhysicalTrace;
import assize.record.Secret;
import assize.record.VehicleRecord;
import assize.schema.Facts;
import assize.text.FileChecksum;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Leaves out of a judgment what its record marks private. */
final class PrivateDataRemover {
  private final Masking masking;
  private final Judgment judgment;
  private final VehicleRecord vehicle;
  private final Set<String> shared;
  private final List<Omission> omissions = new ArrayList<>();

  private PrivateDataRemover(Judgment judgment, Masking masking) {
    this.masking = masking;
    this.judgment = judgment;
    this.vehicle = judgment.vehicle();
    this.shared = shared(vehicle);
  }

  /** Returns the judgment without what is private; verdicts and points stay as they are. */
  static RedactedJudgment of(Judgment judgment, Masking masking) {
    return new PrivateDataRemover(judgment, masking).copy();
  }

  private RedactedJudgment copy() {
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
            judgment.withoutAllowances(),
            judgment.award(),
            judgment.notices());
    int evidence = vehicle.evidence().size() - left.evidence().size();
    return new RedactedJudgment(rest, vehicle, omissions, evidence, masking);
  }

  /** Evidence that is cited stays as long as it is cited where that is not private. */
  private static Set<String> shared(VehicleRecord vehicle) {
    Set<String> open = new LinkedHashSet<>();
    Set<String> hidden = new LinkedHashSet<>();
    for (Observation one : vehicle.observations().values()) {
      (one.unshared().contains(Observation.EVIDENCE.name()) ? hidden : open).addAll(one.evidence());
    }
    vehicle.traces().forEach(trace -> open.addAll(trace.evidence()));
    Set<String> shared = new LinkedHashSet<>();
    for (EvidenceItem one : vehicle.evidence().values()) {
      if (!one.isPrivate() && (open.contains(one.id()) || !hidden.contains(one.id()))) {
        shared.add(one.id());
      }
    }
    return shared;
  }

  private VehicleRecord vehicle() {
    VehicleRecord left = without(vehicle, VehicleRecord.SECRETS, vehicle.unshared(), "");
    Map<String, EvidenceItem> evidence = new LinkedHashMap<>(vehicle.evidence());
    evidence.keySet().retainAll(shared);
    Map<String, Observation> observations = new LinkedHashMap<>();
    vehicle.observations().forEach((item, one) -> observations.put(item, observation(one)));
    return left.with(VehicleRecord.OBSERVATIONS, observations)
        .with(VehicleRecord.EVIDENCE, evidence)
        .with(VehicleRecord.TRACES, vehicle.traces().stream().map(this::trace).toList())
        .with(VehicleRecord.PRIVATE, Set.of())
        .with(VehicleRecord.PRIVATE_WORDS, List.of())
        .with(VehicleRecord.ACCEPTED, List.of())
        .with(VehicleRecord.FILES, files(evidence));
  }

  /** Leaves out what is private of some facts, and notes what that was. */
  private <S extends Facts> S without(
      S facts, List<Secret<S>> secrets, Set<String> hidden, String title) {
    S left = facts;
    List<Secret<?>> there = new ArrayList<>();
    for (Secret<S> one : secrets) {
      if (hidden.contains(one.word()) && one.says().test(facts)) {
        there.add(one);
        left = one.without().apply(left);
      }
    }
    if (!there.isEmpty()) {
      omissions.add(new Omission(title, there.stream().<String>map(Secret::spoken).toList()));
    }
    return left;
  }

  private Observation observation(Observation one) {
    Observation left =
        without(one, Observation.SECRETS, one.unshared(), judgment.rules().title(one.item()));
    return left.with(Observation.EVIDENCE, cited(left.evidence()))
        .with(Observation.PRIVATE, Set.of());
  }

  private PhysicalTrace trace(PhysicalTrace one) {
    return one.with(PhysicalTrace.EVIDENCE, cited(one.evidence()));
  }

  private List<String> cited(List<String> evidence) {
    return evidence.stream().filter(shared::contains).toList();
  }

  /** The record's own file comes first; a file stays as long as any shared piece shows it. */
  private List<FileChecksum> files(Map<String, EvidenceItem> evidence) {
    List<FileChecksum> files = new ArrayList<>();
    for (FileChecksum file : vehicle.files()) {
      if (files.isEmpty()) {
        files.add(new FileChecksum(file.path(), "", file.bytes()));
      } else if (evidence.values().stream().anyMatch(it -> it.what().equals(file.path()))) {
        files.add(file);
      }
    }
    return files;
  }
}
