package assize.check;

import assize.aspect.Verdict;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.judgment.Judgment;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds items at which something was found though they do not apply to the vehicle. */
final class ItemDoesNotApply implements RecordWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.ITEM_DOES_NOT_APPLY;
  }

  @Override
  public Stream<Diagnostic> in(Judgment judged, LocalDate asOf) {
    return judged.items().stream()
        .filter(it -> it.verdict() == Verdict.NOT_APPLICABLE)
        .map(it -> it.item().id())
        .flatMap(
            item ->
                Optional.ofNullable(judged.vehicle().observations().get(item))
                    .filter(it -> !it.findings().isEmpty())
                    .stream())
        .map(
            it ->
                Diagnostic.of(
                        DiagnosticCode.ITEM_DOES_NOT_APPLY,
                        it.at(),
                        "item \"" + it.item() + "\" does not apply to this vehicle",
                        "look its model, build date and equipment up again; what was found here"
                            + " counts for nothing")
                    .subjects(it.item()));
  }
}
