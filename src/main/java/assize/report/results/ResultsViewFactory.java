package assize.report.results;

import assize.report.chart.ScoreDistributionChart;
import assize.report.chart.ScoreRangeChart;
import assize.report.view.NumberFormatter;
import assize.ruleset.Award;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Gathers judged vehicles, one after another, and words what they come to. */
public final class ResultsViewFactory {
  private static final int WIDE = 680;
  private static final int NARROW = 300;

  private static final String COPY =
      "A copy for others: each vehicle's numbers are masked, and what its record marks private is"
          + " left out.";

  private final Map<ResultsEntry.Standard, Gathered> gathered = new LinkedHashMap<>();
  private final List<ResultsView.LeftOutView> leftOut = new ArrayList<>();
  private final boolean copy;
  private long faulty;
  private int fewest = Integer.MAX_VALUE;

  /**
   * Begins with none.
   *
   * @param copy whether it is for others, and so does not name the files of what is left out
   */
  public ResultsViewFactory(boolean copy) {
    this.copy = copy;
  }

  /** The vehicles of one standard so far: their likely scores, and how many reach what. */
  private static final class Gathered {
    private final int number;
    private final long[][] reached;
    private long[] likely = new long[16];
    private int count;

    Gathered(int number, int awards) {
      this.number = number;
      this.reached = new long[awards][3];
    }

    void add(ResultsEntry entry) {
      if (count == likely.length) {
        likely = Arrays.copyOf(likely, count * 2);
      }
      likely[count++] = entry.likely();
      for (int i = 0; i < reached.length; i++) {
        ResultsEntry.Standing standing = entry.awards().get(i);
        reached[i][0] += standing.reached() ? 1 : 0;
        reached[i][1] += standing.certain() ? 1 : 0;
        reached[i][2] += standing.possible() ? 1 : 0;
      }
    }
  }

  /** Adds a vehicle; returns the number of its standard, in the order in which they first came. */
  public int add(ResultsEntry entry) {
    Gathered standard =
        gathered.computeIfAbsent(
            entry.standard(), it -> new Gathered(gathered.size(), it.awards().size()));
    standard.add(entry);
    fewest = Math.min(fewest, entry.fewest().orElse(Integer.MAX_VALUE));
    return standard.number;
  }

  /** Adds a record that has errors. */
  public void leaveOut(String record, long problems) {
    faulty++;
    if (!copy) {
      leftOut.add(
          new ResultsView.LeftOutView(
              record, NumberFormatter.count(problems, "problem", "problems")));
    }
  }

  /** Returns the numbers of the standards in the order in which the page has them. */
  public List<Integer> order() {
    return sorted().stream().map(entry -> entry.getValue().number).toList();
  }

  /** Words what was gathered. */
  public ResultsView view() {
    List<ResultsView.StandardView> standards = new ArrayList<>();
    for (Map.Entry<ResultsEntry.Standard, Gathered> entry : sorted()) {
      standards.add(standard(standards.size() + 1, entry.getKey(), entry.getValue()));
    }
    long count = gathered.values().stream().mapToLong(one -> one.count).sum();
    List<String> sentences = new ArrayList<>();
    sentences.add(
        NumberFormatter.count(count, "vehicle", "vehicles")
            + ", judged by "
            + (standards.size() == 1
                ? standards.get(0).name() + ", " + standards.get(0).edition() + "."
                : standards.size() + " standards or editions."));
    if (standards.size() > 1) {
      sentences.add(
          "A score by one of them says nothing of a score by another, so each has a table of its"
              + " own.");
    }
    if (faulty > 0) {
      boolean one = faulty == 1;
      sentences.add(
          NumberFormatter.count(faulty, "record has", "records have")
              + " errors and "
              + (one ? "is" : "are")
              + " left out"
              + (copy ? "." : "; the end of this page lists " + (one ? "it." : "them.")));
    }
    return new ResultsView(
        Long.toString(count), copy ? words() : "", sentences, standards, leftOut);
  }

  private String words() {
    return fewest == Integer.MAX_VALUE
        ? COPY
        : COPY
            + " Each masked number is one of at least "
            + NumberFormatter.count(fewest, "number", "numbers")
            + " that fit its row.";
  }

  private List<Map.Entry<ResultsEntry.Standard, Gathered>> sorted() {
    return gathered.entrySet().stream()
        .sorted(
            Comparator.comparing(
                    (Map.Entry<ResultsEntry.Standard, Gathered> it) -> it.getKey().name())
                .thenComparing(it -> it.getKey().id())
                .thenComparing(it -> it.getKey().edition())
                .thenComparing(it -> it.getValue().number))
        .toList();
  }

  private ResultsView.StandardView standard(
      int at, ResultsEntry.Standard standard, Gathered vehicles) {
    long[] likely = Arrays.copyOf(vehicles.likely, vehicles.count);
    Arrays.sort(likely);
    List<String> sentences = sentences(likely, standard.outOf());
    ScoreDistributionChart spread =
        new ScoreDistributionChart(
            standard.outOf() / 1000.0,
            Arrays.stream(likely).mapToDouble(it -> it / 1000.0).toArray(),
            standard.awards().stream()
                .map(
                    award ->
                        new ScoreRangeChart.Threshold(
                            award.name(),
                            NumberFormatter.points(award.minScore()),
                            award.minScore() / 1000.0))
                .toList());
    String description = String.join(" ", sentences);
    String title = "The spread of likely scores";
    return new ResultsView.StandardView(
        "standard-" + at,
        standard.name(),
        standard.edition(),
        caveat(standard),
        Integer.toString(vehicles.count),
        sentences,
        IntStream.range(0, standard.awards().size())
            .mapToObj(i -> award(standard.awards().get(i), vehicles.reached[i]))
            .toList(),
        spread.draw("spread-" + at + "-wide", title, description, WIDE),
        spread.draw("spread-" + at + "-narrow", title, description, NARROW),
        NumberFormatter.points(standard.outOf()));
  }

  private static ResultsView.AwardView award(Award award, long[] reached) {
    return new ResultsView.AwardView(
        award.name(),
        NumberFormatter.points(award.minScore()),
        Long.toString(reached[0]),
        Long.toString(reached[1]),
        Long.toString(reached[2]));
  }

  private String caveat(ResultsEntry.Standard standard) {
    boolean twin =
        gathered.keySet().stream()
            .anyMatch(
                other ->
                    !other.equals(standard)
                        && other.id().equals(standard.id())
                        && other.edition().equals(standard.edition()));
    return twin
        ? "Another text of this edition was used for other vehicles: the files differ, so they stand"
            + " apart."
        : "";
  }

  private static List<String> sentences(long[] likely, long of) {
    String full = " of " + NumberFormatter.points(of);
    if (likely.length == 1) {
      return List.of(
          "One vehicle, with a likely score of " + NumberFormatter.points(likely[0]) + full + ".");
    }
    String spread =
        likely.length
            + " vehicles, with likely scores from "
            + NumberFormatter.points(likely[0])
            + " to "
            + NumberFormatter.points(likely[likely.length - 1])
            + full
            + ".";
    return likely.length < 3
        ? List.of(spread)
        : List.of(
            spread,
            "At least half of them reach "
                + NumberFormatter.points(likely[likely.length / 2])
                + " or more.");
  }
}
