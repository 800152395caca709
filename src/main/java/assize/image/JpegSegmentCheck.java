package assize.image;

import assize.image.JpegSegments.Segment;
import java.util.ArrayList;
import java.util.List;

/** Looks whether the segments of a JPEG hold what they are for and no more. */
final class JpegSegmentCheck {
  private JpegSegmentCheck() {}

  static List<String> faults(JpegSegments segments) {
    List<String> faults = new ArrayList<>();
    int at = 2;
    for (Segment one : segments.list()) {
      String name =
          "a segment FF" + Integer.toHexString(one.marker()).toUpperCase(java.util.Locale.ROOT);
      if (one.marker() != JpegSegments.SCAN && one.from() != at + 4) {
        faults.add("bytes before " + name);
      }
      if (!isKnown(one.marker())) {
        faults.add(name);
      } else if (!isFilled(segments, one)) {
        faults.add(name + " that is longer than what it is for");
      }
      at = one.to();
    }
    if (at != segments.end() - 2) {
      faults.add("bytes before its end");
    }
    return faults;
  }

  private static boolean isKnown(int marker) {
    return switch (marker) {
      case JpegSegments.APP0,
          JpegSegments.DQT,
          JpegSegments.SOF0,
          JpegSegments.SOF0 + 1,
          JpegSegments.SOF2,
          JpegSegments.DHT,
          JpegSegments.DRI,
          JpegSegments.SOS,
          JpegSegments.SCAN ->
          true;
      default -> false;
    };
  }

  /** Counts what a segment says by its own numbers (ISO/IEC 10918-1, B.2; JFIF 1.02). */
  private static boolean isFilled(JpegSegments segments, Segment one) {
    return switch (one.marker()) {
      case JpegSegments.SCAN -> true;
      case JpegSegments.APP0 ->
          one.length() == 14
              && segments.begins(one, "JFIF")
              && JpegSegments.two(segments.file(), one.to() - 2) == 0;
      case JpegSegments.DRI -> one.length() == 2;
      case JpegSegments.SOS ->
          one.length() > 0
              && one.length() == 4 + 2 * JpegSegments.unsigned(segments.file(), one.from());
      case JpegSegments.DQT -> tables(segments, one, false);
      case JpegSegments.DHT -> tables(segments, one, true);
      default ->
          one.length() > 5
              && one.length() == 6 + 3 * JpegSegments.unsigned(segments.file(), one.from() + 5);
    };
  }

  private static boolean tables(JpegSegments segments, Segment one, boolean codes) {
    int at = one.from();
    while (at < one.to()) {
      int length = 65 + 64 * (JpegSegments.unsigned(segments.file(), at) >> 4);
      if (codes) {
        length = 17;
        for (int i = 1; i <= 16 && at + i < one.to(); i++) {
          length += JpegSegments.unsigned(segments.file(), at + i);
        }
      }
      at += length;
    }
    return at == one.to();
  }
}
