package assize.image;

import assize.text.Parsed;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * What the first chunk of a PNG says of its pixels (ISO/IEC 15948, 11.2.2).
 *
 * @param depth bits of one sample
 * @param type 0 gray, 2 color, 3 by palette, 4 gray and 6 color with transparency
 */
record PngShape(int width, int height, int depth, int type, boolean interlaced) {
  /** Where the seven passes of an interlaced picture begin, and how far apart they are (8.2). */
  private static final int[][] PASSES = {
    {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
  };

  static Parsed<PngShape> of(PngChunks chunks) {
    boolean fits =
        !chunks.list().isEmpty()
            && chunks.list().get(0).type().equals("IHDR")
            && chunks.list().get(0).length() == 13;
    if (!fits) {
      return ImageHeader.damaged(ImageFormat.PNG, "it does not say how large it is");
    }
    ByteBuffer said = ByteBuffer.wrap(chunks.said(chunks.list().get(0)));
    PngShape shape =
        new PngShape(said.getInt(), said.getInt(), said.get(), said.get(), said.get(12) == 1);
    boolean packed = said.get(10) == 0 && said.get(11) == 0 && said.get(12) >>> 1 == 0;
    boolean known =
        switch (shape.type) {
          case 0 -> List.of(1, 2, 4, 8, 16).contains(shape.depth);
          case 3 -> List.of(1, 2, 4, 8).contains(shape.depth) && chunks.first("PLTE").isPresent();
          case 2, 4, 6 -> shape.depth == 8 || shape.depth == 16;
          default -> false;
        };
    return known && packed && shape.width > 0 && shape.height > 0
        ? Parsed.ok(shape)
        : ImageHeader.damaged(ImageFormat.PNG, "it does not say how its pixels are kept");
  }

  private int samples() {
    return switch (type) {
      case 2 -> 3;
      case 4 -> 2;
      case 6 -> 4;
      default -> 1;
    };
  }

  /** Returns how many bytes the unpacked pixels have, with the byte before each row. */
  long length() {
    if (!interlaced) {
      return length(width, height);
    }
    long sum = 0;
    for (int[] pass : PASSES) {
      sum +=
          length(
              (width - pass[0] + pass[2] - 1) / pass[2],
              (height - pass[1] + pass[3] - 1) / pass[3]);
    }
    return sum;
  }

  private long length(long columns, long rows) {
    return columns <= 0 || rows <= 0 ? 0 : rows * (1 + (columns * samples() * depth + 7) / 8);
  }

  /** Looks whether the packed pixels are the picture, and what stands behind it. */
  Data holds(List<ByteBuffer> packed) {
    BoundedInflater.Ending ending = BoundedInflater.ending(packed, length());
    boolean enough = ending.length() >= length() && ending.isComplete();
    return new Data(enough, ending.length() == length() && ending.left() == 0);
  }

  /** Returns what the chunks hold beside the picture. */
  List<String> faults(PngChunks chunks) {
    List<String> faults = new ArrayList<>();
    Data data = holds(chunks.data());
    if (!data.isEnough() || !data.isNoMore()) {
      faults.add("pixels that do not end where the picture does");
    }
    int colors = chunks.first("PLTE").map(PngChunks.Chunk::length).orElse(0) / 3;
    int clear = chunks.first("tRNS").map(PngChunks.Chunk::length).orElse(0);
    int most = type == 3 ? colors : type == 2 ? 6 : type == 0 ? 2 : 0;
    if (type != 3 && colors > 0 || colors > 1 << depth || clear > most) {
      faults.add("colors that the picture does not use");
    }
    return faults;
  }

  /** Says whether each pixel is kept by its own bytes, and nothing lies under a transparent one. */
  boolean isPlain() {
    return depth == 8 && (type == 0 || type == 2) && !interlaced;
  }

  /** What packed pixels are: enough for the picture, and not a byte more. */
  record Data(boolean isEnough, boolean isNoMore) {}
}
