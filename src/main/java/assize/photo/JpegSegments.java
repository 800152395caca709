package assize.photo;

import java.util.ArrayList;
import java.util.List;

/** The segments of a JPEG (ISO/IEC 10918-1, annex B). */
final class JpegSegments {
  private JpegSegments() {}

  static List<String> faults(byte[] file) {
    List<String> faults = new ArrayList<>();
    int at = 2;
    while (at + 4 <= file.length) {
      int marker = file[at + 1] & 0xff;
      if ((file[at] & 0xff) != 0xff) {
        faults.add("bytes between segments");
        return faults;
      }
      if (marker == 0xd9) {
        break;
      }
      int length = ((file[at + 2] & 0xff) << 8) + (file[at + 3] & 0xff);
      boolean tables = marker == 0xdb || marker == 0xc4 || marker == 0xdd || marker == 0xda;
      boolean frame = marker == 0xc0 || marker == 0xc1 || marker == 0xc2;
      boolean jfif = marker == 0xe0 && length == 16;
      if (!tables && !frame && !jfif) {
        faults.add("a segment " + Integer.toHexString(0xff00 + marker));
      }
      at += length + 2;
      if (marker == 0xda) {
        while (at + 1 < file.length
            && ((file[at] & 0xff) != 0xff || file[at + 1] == 0 || (file[at + 1] & 0xf8) == 0xd0)) {
          at++;
        }
      }
    }
    if (at != file.length - 2) {
      faults.add("bytes behind the end");
    }
    return faults;
  }
}
