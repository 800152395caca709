package assize.redaction;

import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.record.VehicleRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A judgment as others may see it, its private words not masked yet.
 *
 * @param judgment holds nothing that the record marks private; its record's own file has no
 *     checksum, since numbers could be tried by it
 * @param facts the record that was judged, by which claims speak or do not; never printed
 * @param omissions what was left out where, the record's own first
 * @param evidence how many pieces of evidence were left out
 * @param masking how the numbers were taken out
 */
public record RedactedJudgment(
    Judgment judgment,
    VehicleRecord facts,
    List<Omission> omissions,
    int evidence,
    Masking masking) {
  public RedactedJudgment {
    omissions = List.copyOf(omissions);
  }

  /**
   * A text of the record.
   *
   * @param item the item it stands at; empty for none
   */
  public record Written(String item, String text) {}

  /** Returns every text of its record that its owner wrote freely. */
  public List<Written> texts() {
    return RecordTexts.in(judgment.vehicle());
  }

  /**
   * Takes out of a record its numbers, judges it by what is left and leaves out what is private.
   *
   * @param judge judges by the rule set
   * @param own the owner's own judgment
   * @param asOf the day on which departures with a date are looked at
   */
  public static RedactedJudgment of(Judge judge, Judgment own, Optional<LocalDate> asOf) {
    Masking masking = Masking.of(judge, own.rules(), own.vehicle());
    return PrivateDataRemover.of(judge.judge(masking.record(), asOf), masking);
  }
}
