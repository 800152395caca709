package assize.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Who copies whom: a row for each source, every source below those that it copies, and a line from
 * each of these to it. A line goes down in a column of its own, so that lines cross and never join.
 *
 * @param nodes in the order of the rows
 */
public record CopyGraph(List<Node> nodes) {
  private static final double LEFT = 12;
  private static final double COLUMN = 20;
  private static final double ROW = 30;
  private static final double DOT = 5;
  private static final double BEND = 7;

  public CopyGraph {
    nodes = List.copyOf(nodes);
    for (int i = 0; i < nodes.size(); i++) {
      for (int copied : nodes.get(i).copies()) {
        if (copied < 0 || copied >= i) {
          throw new IllegalArgumentException("row " + i + " stands above what it copies");
        }
      }
    }
  }

  /**
   * One source.
   *
   * @param copies the rows of those that it copies, all above
   */
  public record Node(String title, List<Integer> copies) {
    public Node {
      copies = List.copyOf(copies);
    }
  }

  /**
   * Draws it.
   *
   * @param width in drawing units
   */
  public Chart draw(String id, String title, String description, int width) {
    List<Integer> columns = columns();
    int most = columns.stream().mapToInt(column -> column).max().orElse(0);
    double text = LEFT + (most + 1) * COLUMN;
    ChartBuilder sketch = new ChartBuilder(width, (int) (nodes.size() * ROW) + 4);
    for (int row = 0; row < nodes.size(); row++) {
      for (int copied : nodes.get(row).copies()) {
        line(sketch, x(columns.get(copied)), y(copied), x(columns.get(row)), y(row));
      }
    }
    for (int row = 0; row < nodes.size(); row++) {
      sketch.path(dot(x(columns.get(row)), y(row)), "dot");
      String words = TextMetrics.fit(nodes.get(row).title(), width - text);
      sketch.label(text, y(row) + 4.5, "start", "label-row", words);
    }
    return sketch.done(id, title, description);
  }

  private static double x(int column) {
    return LEFT + column * COLUMN;
  }

  private static double y(int row) {
    return ROW / 2 + row * ROW;
  }

  /** Puts each source right of all that it copies, in the first column that no line goes down. */
  List<Integer> columns() {
    List<Integer> columns = new ArrayList<>();
    for (int row = 0; row < nodes.size(); row++) {
      int least = 0;
      TreeSet<Integer> taken = new TreeSet<>();
      for (int copied : nodes.get(row).copies()) {
        least = Math.max(least, columns.get(copied) + 1);
      }
      for (int above = 0; above < row; above++) {
        if (lastCopier(above) >= row) {
          taken.add(columns.get(above));
        }
      }
      while (taken.contains(least)) {
        least++;
      }
      columns.add(least);
    }
    return columns;
  }

  private int lastCopier(int row) {
    int last = row;
    for (int i = row + 1; i < nodes.size(); i++) {
      if (nodes.get(i).copies().contains(row)) {
        last = i;
      }
    }
    return last;
  }

  private static void line(ChartBuilder sketch, double x1, double y1, double x2, double y2) {
    sketch.path(
        "M"
            + ChartBuilder.at(x1)
            + " "
            + ChartBuilder.at(y1)
            + "V"
            + ChartBuilder.at(y2 - BEND)
            + "Q"
            + ChartBuilder.at(x1)
            + " "
            + ChartBuilder.at(y2)
            + " "
            + ChartBuilder.at(x1 + BEND)
            + " "
            + ChartBuilder.at(y2)
            + "H"
            + ChartBuilder.at(x2),
        "axis");
  }

  private static String dot(double x, double y) {
    String r = ChartBuilder.at(DOT);
    return "M"
        + ChartBuilder.at(x - DOT)
        + " "
        + ChartBuilder.at(y)
        + "a"
        + r
        + " "
        + r
        + " 0 1 0 "
        + ChartBuilder.at(2 * DOT)
        + " 0a"
        + r
        + " "
        + r
        + " 0 1 0 -"
        + ChartBuilder.at(2 * DOT)
        + " 0Z";
  }
}
