package assize.image;

import assize.text.Parsed;
import java.util.ArrayList;
import java.util.List;

/**
 * The segments of a JPEG from its start to its end marker (ISO/IEC 10918-1, annex B).
 *
 * @param end the byte after the end marker
 */
record JpegSegments(byte[] file, List<Segment> list, int end) {
  static final int SOF0 = 0xc0;
  static final int SOF2 = 0xc2;
  static final int DHT = 0xc4;
  static final int JPG = 0xc8;
  static final int DAC = 0xcc;
  static final int SOF15 = 0xcf;
  static final int EOI = 0xd9;
  static final int SOS = 0xda;
  static final int DQT = 0xdb;
  static final int DNL = 0xdc;
  static final int DRI = 0xdd;
  static final int APP0 = 0xe0;
  static final int APP1 = 0xe1;
  static final int APP2 = 0xe2;
  static final int APP14 = 0xee;

  /** A camera's own data come in some thousand at most, each of 64 KiB. */
  private static final int MOST = 10_000;

  /** Coded pixels, which follow each SOS. */
  static final int SCAN = 0;

  JpegSegments {
    list = List.copyOf(list);
  }

  /**
   * A segment.
   *
   * @param marker its second byte, or {@link #SCAN}
   * @param from where what it says begins
   * @param to the byte after it
   */
  record Segment(int marker, int from, int to) {
    int length() {
      return to - from;
    }

    boolean isFrame() {
      return marker >= SOF0 && marker <= SOF15 && marker != DHT && marker != JPG && marker != DAC;
    }
  }

  /**
   * Reads the segments; there are none where the file ends too early, something else stands between
   * them, or they are too many.
   */
  static Parsed<JpegSegments> of(byte[] file) {
    List<Segment> list = new ArrayList<>();
    int count = 0;
    int at = 2;
    while (at + 1 < file.length && unsigned(file, at) == 0xff) {
      int marker = unsigned(file, at + 1);
      if (marker == 0xff) {
        at++;
      } else if (marker == EOI) {
        return Parsed.ok(new JpegSegments(file, list, at + 2));
      } else if (at + 4 > file.length || marker < SOF0 || isRestart(marker)) {
        return ImageHeader.endsEarly(ImageFormat.JPEG);
      } else if (++count > MOST) {
        return Parsed.bad(
            "a JPEG may have at most 10000 segments; this one has more: save it again as an"
                + " ordinary JPEG",
            0,
            0);
      } else {
        int length = two(file, at + 2);
        if (length < 2 || at + 2 + length > file.length) {
          return ImageHeader.endsEarly(ImageFormat.JPEG);
        }
        list.add(new Segment(marker, at + 4, at + 2 + length));
        at += 2 + length;
        if (marker == SOS) {
          int scan = scanEnd(file, at);
          list.add(new Segment(SCAN, at, scan));
          at = scan;
        }
      }
    }
    return ImageHeader.endsEarly(ImageFormat.JPEG);
  }

  /** Returns where the next marker stands that is neither a stuffed byte nor a restart. */
  private static int scanEnd(byte[] file, int from) {
    int at = from;
    while (at + 1 < file.length) {
      int next = unsigned(file, at + 1);
      if (unsigned(file, at) == 0xff && next != 0 && next != 0xff && !isRestart(next)) {
        return at;
      }
      at++;
    }
    return file.length;
  }

  private static boolean isRestart(int marker) {
    return (marker & 0xf8) == 0xd0;
  }

  static int unsigned(byte[] file, int at) {
    return file[at] & 0xff;
  }

  /** Returns two bytes as a number, the greater first. */
  static int two(byte[] file, int at) {
    return unsigned(file, at) << 8 | unsigned(file, at + 1);
  }

  /** Says whether a segment begins with a word that ends in a zero byte. */
  boolean begins(Segment segment, String word) {
    int length = word.length();
    if (segment.length() <= length || file[segment.from() + length] != 0) {
      return false;
    }
    for (int i = 0; i < length; i++) {
      if (file[segment.from() + i] != word.charAt(i)) {
        return false;
      }
    }
    return true;
  }
}
