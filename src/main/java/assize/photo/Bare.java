package assize.photo;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks whether a finished picture holds anything beside the picture. */
public final class Bare {
  private Bare() {}

  /** Returns what a PNG or JPEG holds that does not make the picture; empty where it is bare. */
  public static List<String> faults(byte[] picture) {
    return switch (Kind.of(picture)) {
      case JPEG -> jpeg(picture);
      case PNG -> PngChunks.of(picture).match(Bare::png, bad -> List.of(bad.reason()));
      default -> List.of("neither a PNG nor a JPEG");
    };
  }

  private static List<String> jpeg(byte[] picture) {
    Optional<JpegSegments> read = JpegSegments.of(picture);
    if (read.isEmpty()) {
      return List.of("something between its segments, or no end");
    }
    List<String> faults = new ArrayList<>(JpegTables.faults(read.get()));
    if (read.get().end() != picture.length) {
      faults.add("bytes behind its end");
    }
    if (faults.isEmpty()) {
      JpegHead.of(picture)
          .match(head -> faults.addAll(decoded(head)), bad -> faults.add(bad.reason()));
    }
    return faults;
  }

  /** The decoder tells whether coded pixels end where the picture does. */
  private static List<String> decoded(Head head) {
    try {
      return Decoder.decode(head).warnings();
    } catch (IOException | RuntimeException e) {
      return List.of("pixels that can't be read");
    }
  }

  private static List<String> png(PngChunks chunks) {
    List<String> faults = new ArrayList<>();
    String order = "";
    int length = PngChunks.SIGNATURE;
    for (PngChunks.Chunk chunk : chunks.list()) {
      if (!chunk.isPicture()) {
        faults.add("a chunk " + printable(chunk.type()));
      }
      order += chunk.type() + " ";
      length += chunk.length() + 12;
    }
    if (faults.isEmpty() && !order.matches("IHDR (PLTE )?(tRNS )?(IDAT )+IEND ")) {
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
