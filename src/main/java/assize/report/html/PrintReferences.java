package assize.report.html;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where on paper an anchor is found: items are numbered through the report, disputes are D1, D2 and
 * so on. Paper has no links to follow, and no browser can count pages ahead.
 */
public final class PrintReferences {
  private final Map<String, String> places = new LinkedHashMap<>();

  /** Returns what was numbered, by anchor. */
  public Map<String, String> places() {
    return Map.copyOf(places);
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
