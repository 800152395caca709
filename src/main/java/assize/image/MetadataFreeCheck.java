package assize.image;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Looks whether a finished picture holds anything beside the picture. */
public final class MetadataFreeCheck {
  private static final Pattern ORDER = Pattern.compile("IHDR (PLTE )?(tRNS )?(IDAT )++IEND ");

  private MetadataFreeCheck() {}

  /** Returns what a PNG or JPEG holds that does not make the picture; empty where it is bare. */
  public static List<String> faults(byte[] picture) {
    return switch (ImageFormat.of(picture)) {
      case JPEG -> jpeg(picture);
      case PNG -> PngChunks.of(picture).match(MetadataFreeCheck::png, bad -> List.of(bad.reason()));
      default -> List.of("neither a PNG nor a JPEG");
    };
  }

  private static List<String> jpeg(byte[] picture) {
    return JpegSegments.of(picture)
        .match(
            MetadataFreeCheck::jpeg, bad -> List.of("something between its segments, or no end"));
  }

  private static List<String> jpeg(JpegSegments segments) {
    byte[] picture = segments.file();
    List<String> faults = new ArrayList<>(JpegSegmentCheck.faults(segments));
    if (segments.end() != picture.length) {
      faults.add("bytes behind its end");
    }
    if (faults.isEmpty()) {
      JpegHead.of(picture)
          .match(head -> faults.addAll(decoded(head)), bad -> faults.add(bad.reason()));
    }
    return faults;
  }

  /** The decoder tells whether coded pixels end where the picture does. */
  private static List<String> decoded(ImageHeader head) {
    try {
      return Decoder.decode(head).warnings();
    } catch (IOException | RuntimeException e) {
      return List.of("pixels that can't be read");
    }
  }

  private static List<String> png(PngChunks chunks) {
    List<String> faults = new ArrayList<>();
    StringBuilder order = new StringBuilder();
    int length = PngChunks.SIGNATURE;
    for (PngChunks.Chunk chunk : chunks.list()) {
      if (!chunk.isPicture()) {
        faults.add("a chunk " + printable(chunk.type()));
      }
      order.append(chunk.type()).append(' ');
      length += chunk.length() + 12;
    }
    if (faults.isEmpty() && !ORDER.matcher(order).matches()) {
      faults.add("chunks out of order");
    }
    if (chunks.end() != chunks.file().length || length != chunks.end()) {
      faults.add("bytes behind its end, or a chunk whose check sum does not fit");
    }
    PngShape.of(chunks)
        .match(shape -> faults.addAll(shape.faults(chunks)), bad -> faults.add(bad.reason()));
    return faults;
  }

  private static String printable(String type) {
    return type.matches("[A-Za-z]{4}") ? type : "without a name";
  }

  /** Says whether a bare PNG shows each of its bytes: no palette, nothing under what is clear. */
  static boolean isPlain(byte[] png) {
    return PngChunks.of(png)
        .match(
            chunks ->
                chunks.list().stream().noneMatch(it -> it.type().matches("PLTE|tRNS"))
                    && PngShape.of(chunks).match(PngShape::isPlain, bad -> false)
                    && png(chunks).isEmpty(),
            bad -> false);
  }
}
