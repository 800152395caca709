package assize.report.view;

import java.util.List;

/**
 * What one source says of one aspect of this vehicle; an empty text stands for what is not known.
 *
 * @param cite the source, without a place in it
 * @param weight what its grade weighs, 0 to 1
 * @param counts whether it is a witness, and why not if it is none
 * @param lines one for each claim
 */
public record SourceStatementView(
    CiteView cite,
    String kind,
    String weight,
    String date,
    String heldBy,
    boolean witness,
    String counts,
    List<StatementLine> lines) {
  public SourceStatementView {
    lines = List.copyOf(lines);
  }

  /**
   * One claim.
   *
   * @param says in the claim's manner: says, leaves open or rules out
   * @param where the place in the source
   * @param days the build days that it speaks of
   */
  public record StatementLine(String says, String where, String days) {}
}
