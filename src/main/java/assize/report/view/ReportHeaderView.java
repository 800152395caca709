package assize.report.view;

import java.util.List;

/**
 * Which vehicle, judged by what, by whom; an empty text stands for what is not known.
 *
 * @param built its possible build days
 * @param basis what those days rest on
 * @param statements everything that says something of them, where there is more than one
 * @param contradiction what contradicts what, or empty
 */
public record ReportHeaderView(
    String vehicle,
    String id,
    String model,
    List<Named> facts,
    String built,
    String basis,
    List<DatingStatementView> statements,
    String contradiction,
    String rules,
    String edition,
    String judged,
    String notes) {
  public ReportHeaderView {
    facts = List.copyOf(facts);
    statements = List.copyOf(statements);
  }

  /** A name and what stands for it. */
  public record Named(String name, String value) {}

  /** What one thing says of the build days. */
  public record DatingStatementView(String basis, String words, String days, boolean followed) {}
}
