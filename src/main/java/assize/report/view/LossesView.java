package assize.report.view;

import java.util.List;

/**
 * What costs the most points, the dearest first.
 *
 * @param more what the items not listed lose together, in words; empty where all are listed
 */
public record LossesView(List<LossLine> lines, String more) {
  public LossesView {
    lines = List.copyOf(lines);
  }

  /** One item and what it loses in the likely case. */
  public record LossLine(
      String anchor,
      String title,
      String area,
      VerdictView verdict,
      String lost,
      String possible,
      List<String> why) {}
}
