package assize.report.handbook;

import assize.report.chart.Chart;
import assize.report.view.CiteView;
import java.util.List;
import java.util.Optional;

/**
 * An item of the handbook.
 *
 * @param number its place in the handbook, from 1
 * @param applies to which vehicles; empty for all
 * @param cause what it loses its points for together with other items
 */
public record HandbookItemView(
    String anchor,
    int number,
    String id,
    String title,
    String points,
    String applies,
    String look,
    List<HandbookView.Fact> hazards,
    String notes,
    String cause,
    List<AspectView> aspects) {
  public HandbookItemView {
    hazards = List.copyOf(hazards);
    aspects = List.copyOf(aspects);
  }

  /**
   * One aspect.
   *
   * @param points its part of the item's points
   * @param words what the words of its choice mean
   * @param codes how its date codes are written and read
   * @param state how it stands, where that is the same for all vehicles and plain; else empty
   * @param courses how it stands, where there is more to say
   * @param remark why nothing is laid out
   */
  public record AspectView(
      String name,
      String points,
      List<HandbookView.Fact> words,
      List<HandbookView.Fact> codes,
      List<ClaimStatement> statements,
      String state,
      List<CourseView> courses,
      String remark) {
    public AspectView {
      words = List.copyOf(words);
      codes = List.copyOf(codes);
      statements = List.copyOf(statements);
      courses = List.copyOf(courses);
    }
  }

  /**
   * What is said, and by whom.
   *
   * @param manner what stands before the words: empty for what is right, else how it is meant
   */
  public record ClaimStatement(
      String manner, String words, List<String> swatches, List<Teller> tellers) {
    public ClaimStatement {
      swatches = List.copyOf(swatches);
      tellers = List.copyOf(tellers);
    }
  }

  /**
   * Who says so.
   *
   * @param source empty where the rule names none
   * @param scope of which vehicles; empty for all
   * @param shows what its picture shows
   */
  public record Teller(Optional<CiteView> source, String scope, String shows) {}

  /**
   * How an aspect stands over the production of some vehicles.
   *
   * @param vehicles which; empty where it is all of them
   */
  public record CourseView(String vehicles, Optional<TimelineCharts> line, List<StandView> stands) {
    public CourseView {
      stands = List.copyOf(stands);
    }
  }

  /** What is right when, drawn. */
  public record TimelineCharts(Chart wide, Chart narrow) {}

  /**
   * How it stands for some build days.
   *
   * @param days empty where it is the whole production
   * @param right what is right, or what is judged by
   * @param state agreed, settled, disputed, no source named, or that none speaks
   * @param positions told one by one where sources differ
   * @param conflict how much of the evidence contradicts itself, where it does
   */
  public record StandView(
      String days, String right, String state, List<PositionView> positions, String conflict) {
    public StandView {
      positions = List.copyOf(positions);
    }
  }

  /**
   * One position.
   *
   * @param scored whether a vehicle is judged by it
   * @param by who holds it
   */
  public record PositionView(
      String words, String belief, String plausibility, boolean scored, List<CiteView> by) {
    public PositionView {
      by = List.copyOf(by);
    }
  }
}
