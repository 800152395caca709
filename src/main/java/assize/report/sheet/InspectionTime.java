package assize.report.sheet;

import assize.report.sheet.InspectionView.InspectedArea;
import assize.report.sheet.InspectionView.InspectedItem;
import java.util.List;

/**
 * Roughly how long a walk round a vehicle takes one person: half a minute for each item, to find it
 * and read what is asked, and to that for each thing to look at a quarter of a minute where a look
 * tells, a half to match a color or a gloss or to find and read a number, a whole to measure. That
 * is an estimate of this program.
 */
final class InspectionTime {
  private static final int ITEM = 30;
  private static final int HOUR = 3600;

  private InspectionTime() {}

  /** Returns how many seconds it comes to. */
  static int seconds(List<InspectedArea> areas) {
    return areas.stream()
        .flatMap(area -> area.items().stream())
        .mapToInt(InspectionTime::seconds)
        .sum();
  }

  private static int seconds(InspectedItem item) {
    return ITEM + item.aspects().stream().mapToInt(one -> one.control().kind().seconds()).sum();
  }

  /** Returns whole minutes, rounded up: to 5 up to an hour and a half, then to half hours. */
  static int minutes(int seconds) {
    int step = seconds <= HOUR * 3 / 2 ? 300 : HOUR / 2;
    return Math.max(1, (seconds + step - 1) / step) * step / 60;
  }

  /** Returns as in "about 25 minutes" or "about 3 1/2 hours". */
  static String words(int seconds) {
    int minutes = minutes(seconds);
    if (minutes <= 90) {
      return "about " + minutes + " minutes";
    }
    return "about " + minutes / 60 + (minutes % 60 == 0 ? "" : " 1/2") + " hours";
  }
}
