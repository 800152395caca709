package assize.report.view;

import assize.report.chart.Chart;
import java.util.List;
import java.util.Optional;

/**
 * One aspect on which sources differ.
 *
 * @param pointsAtStake points that ride on it, in words
 * @param outcome why it rests where it does; empty where the positions say it
 * @param found what the vehicle has; empty where that is not shown
 * @param dates the claims' dates against the vehicle's build days, where they differ
 * @param colored whether it is about a color, of which no photo is evidence
 * @param pictures what sources and the vehicle show of it
 * @param owner what the owner holds to be right, where the record says it
 */
public record DisputeView(
    String anchor,
    String itemAnchor,
    String item,
    String aspect,
    String question,
    String pointsAtStake,
    String outcome,
    String found,
    List<Span> spans,
    Optional<Dates> dates,
    boolean colored,
    List<EvidenceView> pictures,
    Optional<OwnerView> owner) {
  public DisputeView {
    spans = List.copyOf(spans);
    pictures = List.copyOf(pictures);
  }

  /**
   * Days within which it stands alike.
   *
   * @param days empty where it stands alike on all build days
   * @param conflict the conflict mass, and what is left unassigned, in words
   * @param others claims that leave open or rule out, in words
   * @param between sources that leave open or rule out, at length
   * @param witnesses how many sources speak and how many count
   * @param copies who copies whom; none where nobody does
   * @param working the arithmetic; empty where no source is named
   */
  public record Span(
      String days,
      String state,
      String conflict,
      String pointsAtStake,
      List<PositionView> positions,
      List<Other> others,
      List<String> settling,
      List<SourceStatementView> between,
      String witnesses,
      List<CopyTreeView> copies,
      Optional<CombinationStepsView> working) {
    public Span {
      positions = List.copyOf(positions);
      others = List.copyOf(others);
      settling = List.copyOf(settling);
      between = List.copyOf(between);
      copies = List.copyOf(copies);
    }

    /** Days on which there is nothing to differ on; {@code why} says so. */
    static Span notApplicable(String why) {
      return new Span(
          "",
          why,
          "",
          "",
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          "",
          List.of(),
          Optional.empty());
    }

    /** Returns the same of some days, in words. */
    Span within(String some) {
      return new Span(
          some,
          state,
          conflict,
          pointsAtStake,
          positions,
          others,
          settling,
          between,
          witnesses,
          copies,
          working);
    }
  }

  /**
   * What is held to be right, by whom, how strongly, and how the vehicle stands to it.
   *
   * @param number its place among the positions, as the arithmetic names it
   * @param share its part of the likely credit; empty where it is not judged by
   * @param earns the points that the vehicle has if this position alone is right
   * @param settling what would settle the matter for it; empty where it is not disputed
   * @param testimony its sources at length
   */
  public record PositionView(
      String number,
      String accepts,
      List<CiteView> sources,
      String belief,
      String plausibility,
      Chart bar,
      String share,
      boolean scored,
      VerdictView verdict,
      String credit,
      String why,
      String earns,
      String settling,
      List<SourceStatementView> testimony) {
    public PositionView {
      sources = List.copyOf(sources);
      testimony = List.copyOf(testimony);
    }
  }

  /** A source that leaves open or rules out. */
  public record Other(CiteView cite, String says) {}

  /** The claims' dates as bars, and as a table. */
  public record Dates(Chart wide, Chart narrow, List<ClaimDatesRow> rows) {
    public Dates {
      rows = List.copyOf(rows);
    }
  }

  /** One claim and the build days that it speaks of. */
  public record ClaimDatesRow(String who, String says, String days) {}
}
