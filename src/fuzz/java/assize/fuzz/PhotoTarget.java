package assize.fuzz;

import assize.image.Photo;
import java.util.List;

/** Pictures. */
public final class PhotoTarget {
  private PhotoTarget() {}

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) {
    Photo.of(data, List.of())
        .match(
            photo -> {
              Checks.demand(photo.dataUri().startsWith("data:image/"), "no picture");
              return "";
            },
            bad -> {
              Checks.demand(!bad.reason().isBlank(), "no reason");
              return "";
            });
  }
}
