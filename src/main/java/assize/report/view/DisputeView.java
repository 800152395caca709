package assize.report.view;

import assize.report.drawing.Drawing;
import java.util.List;
import java.util.Optional;

/**
 * One aspect on which sources differ.
 *
 * @param rides points that ride on it, in words
 * @param outcome why it rests where it does; empty where the positions say it
 * @param found what the vehicle has; empty where that is not shown
 * @param dates the claims' dates against the vehicle's build days, where they differ
 */
public record DisputeView(
    String anchor,
    String itemAnchor,
    String item,
    String aspect,
    String question,
    String rides,
    String outcome,
    String found,
    List<Span> spans,
    Optional<Dates> dates) {
  public DisputeView {
    spans = List.copyOf(spans);
  }

  /**
   * Days within which it stands alike.
   *
   * @param days empty where it stands alike on all build days
   * @param conflict the conflict mass, and what is left unassigned, in words
   * @param others claims that leave open or rule out, in words
   */
  public record Span(
      String days,
      String state,
      String conflict,
      String rides,
      List<PositionView> positions,
      List<Other> others,
      List<String> settling) {
    public Span {
      positions = List.copyOf(positions);
      others = List.copyOf(others);
      settling = List.copyOf(settling);
    }
  }

  /**
   * What is held to be right, by whom, how strongly, and how the vehicle stands to it.
   *
   * @param share its part of the likely credit; empty where it is not judged by
   */
  public record PositionView(
      String accepts,
      List<CiteView> sources,
      String belief,
      String plausibility,
      Drawing bar,
      String share,
      boolean judged,
      VerdictView verdict,
      String credit,
      String why) {
    public PositionView {
      sources = List.copyOf(sources);
    }
  }

  /** A source that leaves open or rules out. */
  public record Other(CiteView cite, String says) {}

  /** The claims' dates as bars, and as a table. */
  public record Dates(Drawing wide, Drawing narrow, List<Row> rows) {
    public Dates {
      rows = List.copyOf(rows);
    }
  }

  /** One claim and the build days that it speaks of. */
  public record Row(String who, String says, String days) {}
}
