package assize.report.view;

import assize.report.view.WalkView.WalkArea;
import assize.report.view.WalkView.WalkAspect;
import assize.report.view.WalkView.WalkItem;
import java.util.List;

/**
 * Roughly how long a walk round a vehicle takes one person: half a minute for each item, to find it
 * and read what is asked, and to that for each thing to look at a quarter of a minute where a look
 * tells, a half to match a color or a gloss or to find and read a number, a whole to measure. That
 * is an estimate of this program.
 */
final class WalkTime {
  private static final int ITEM = 30;
  private static final int HOUR = 3600;

  private WalkTime() {}

  /** Returns as in "about 25 minutes" or "about 3 1/2 hours". */
  static String of(List<WalkArea> areas) {
    return words(
        areas.stream().flatMap(area -> area.items().stream()).mapToInt(WalkTime::seconds).sum());
  }

  private static int seconds(WalkItem item) {
    return ITEM + item.aspects().stream().mapToInt(WalkTime::seconds).sum();
  }

  private static int seconds(WalkAspect aspect) {
    return switch (aspect.control().kind()) {
      case WORDS, YES_NO, PIECES -> 15;
      case COLOR, GLOSS, STAMPED -> 30;
      case SIZE -> 60;
    };
  }

  /** Rounds up: to 5 minutes up to an hour and a half, then to half hours. */
  static String words(int seconds) {
    if (seconds <= HOUR * 3 / 2) {
      int minutes = Math.max(5, (seconds + 299) / 300 * 5);
      return "about " + minutes + " minutes";
    }
    int halves = (seconds + HOUR / 2 - 1) / (HOUR / 2);
    return "about " + halves / 2 + (halves % 2 == 0 ? "" : " 1/2") + " hours";
  }
}
