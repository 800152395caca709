package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.judgment.Judgment;
import assize.record.Departure;
import assize.record.Observation;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds departures that were to be looked at again more than a year ago. The report brings up any
 * that is past its date; after a year (our own convention) it was probably forgotten.
 */
final class DepartureOverdue implements RecordWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.OVERDUE_REVIEW;
  }

  @Override
  public Stream<Diagnostic> in(Judgment judged, LocalDate asOf) {
    return judged.vehicle().observations().values().stream()
        .flatMap(it -> it.departure().flatMap(departure -> in(it, departure, asOf)).stream());
  }

  private static Optional<Diagnostic> in(
      Observation observation, Departure departure, LocalDate asOf) {
    return departure
        .reviewBy()
        .map(until -> until.span())
        .filter(span -> !span.openEnd() && span.last().isBefore(asOf.minusYears(1)))
        .map(
            span ->
                Diagnostic.of(
                        DiagnosticCode.OVERDUE_REVIEW,
                        departure.at(),
                        "the departure at \""
                            + observation.item()
                            + "\" was to be looked at again by "
                            + span.last(),
                        "look at it again, and give it a new date or leave the date out")
                    .subjects(observation.item()));
  }
}
