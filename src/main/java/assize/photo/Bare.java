package assize.photo;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;

/** Looks whether a finished picture holds anything beside the picture. */
public final class Bare {
  private Bare() {}

  /** Returns what a PNG or JPEG holds that does not make the picture; empty where it is bare. */
  public static List<String> faults(byte[] picture) {
    if (picture.length > 1 && (picture[0] & 0xff) == 0xff && (picture[1] & 0xff) == 0xd8) {
      return JpegSegments.faults(picture);
    }
    try {
      return Arrays.equals(PngChunks.bare(picture), picture)
          ? List.of()
          : List.of("something beside the picture");
    } catch (IOException e) {
      return List.of(String.valueOf(e.getMessage()));
    }
  }
}
