package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.judgment.Judgment;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/**
 * One rule: looks for one thing that a record may say but probably does not mean, and words it.
 * What the messages page says of it stands under its code.
 */
public interface RecordWarningRule {
  /** Every rule. */
  List<RecordWarningRule> ALL =
      List.of(new ItemDoesNotApply(), new EvidenceNotCited(), new DepartureOverdue());

  /** Returns the code of all that it finds. */
  DiagnosticCode code();

  /**
   * Returns what is doubtful in a record.
   *
   * @param judged the record, judged by its rule set
   * @param asOf the day on which departures with a date are looked at
   */
  Stream<Diagnostic> in(Judgment judged, LocalDate asOf);

  /** Returns everything that is doubtful in a record, in the order of the file. */
  static List<Diagnostic> all(Judgment judged, LocalDate asOf) {
    return ALL.stream().flatMap(it -> it.in(judged, asOf)).sorted().toList();
  }
}
