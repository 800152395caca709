package assize.share;

import assize.judgment.Judgment;
import assize.record.VehicleRecord;
import java.util.List;

/**
 * A judgment as others may see it, its texts not masked yet.
 *
 * @param judgment holds nothing that the record marks private; its record's own file has no
 *     fingerprint, since numbers could be tried by it
 * @param facts the record that was judged, by which claims speak or do not; never printed
 * @param omissions what was left out where, the record's own first
 * @param evidence how many pieces of evidence were left out
 */
public record Copy(Judgment judgment, VehicleRecord facts, List<Omission> omissions, int evidence) {
  public Copy {
    omissions = List.copyOf(omissions);
  }
}
