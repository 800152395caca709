package assize.report.html;

import assize.report.view.AreaView;
import assize.report.view.DisputeView;
import assize.report.view.ItemView;
import assize.report.view.ReportView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where on paper an anchor is found: items are numbered through the report, disputes are D1, D2 and
 * so on. Paper has no links to follow, and no browser can count pages ahead.
 */
public final class PrintReferences {
  private static final String DISPUTE = "D";

  private final Map<String, String> places = new LinkedHashMap<>();

  /** Returns the places of all items, disputes, areas and their sections, by anchor. */
  static Map<String, String> of(ReportView report) {
    PrintReferences all = new PrintReferences();
    int items = 0;
    for (AreaView area : report.areas()) {
      List<String> anchors = area.items().stream().map(ItemView::anchor).toList();
      items = all.number(area.anchor(), "", items, anchors);
    }
    all.range("items", "", 1, items);
    int disputed = all.number("disputed", DISPUTE, 0, anchors(report.disputes()));
    List<String> others = new ArrayList<>(anchors(report.idle()));
    others.addAll(anchors(report.settled()));
    all.number("dissent", DISPUTE, disputed, others);
    return all.places();
  }

  /** Returns what was numbered, by anchor. */
  public Map<String, String> places() {
    return Map.copyOf(places);
  }

  private static List<String> anchors(List<DisputeView> disputes) {
    return disputes.stream().map(DisputeView::anchor).toList();
  }

  /** Numbers anchors on from those before them, and returns the last number given. */
  public int number(String whole, String letter, int before, List<String> anchors) {
    int last = before;
    for (String anchor : anchors) {
      last++;
      places.put(anchor, letter + last);
    }
    range(whole, letter, before + 1, last);
    return last;
  }

  /** Gives a place that holds several its first number and its last; nothing where it is empty. */
  public void range(String whole, String letter, int first, int last) {
    if (first == last) {
      places.put(whole, letter + first);
    } else if (first < last) {
      places.put(whole, letter + first + "–" + letter + last);
    }
  }
}
