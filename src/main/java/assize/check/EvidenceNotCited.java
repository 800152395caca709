package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.judgment.Judgment;
import assize.record.VehicleRecord;
import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds evidence that no item and no trace of the record cites. */
final class EvidenceNotCited implements RecordWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.UNCITED_EVIDENCE;
  }

  @Override
  public Stream<Diagnostic> in(Judgment judged, LocalDate asOf) {
    VehicleRecord vehicle = judged.vehicle();
    Set<String> cited =
        Stream.concat(
                vehicle.observations().values().stream().flatMap(it -> it.evidence().stream()),
                vehicle.traces().stream().flatMap(it -> it.evidence().stream()))
            .collect(Collectors.toSet());
    return vehicle.evidence().values().stream()
        .filter(it -> !cited.contains(it.id()))
        .map(
            it ->
                Diagnostic.of(
                        DiagnosticCode.UNCITED_EVIDENCE,
                        it.at(),
                        "nothing cites the evidence \"" + it.id() + "\"",
                        "add `evidence: " + it.id() + "` to the item that it shows")
                    .subjects(it.id()));
  }
}
