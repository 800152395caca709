package assize.photo;

import java.util.List;

/**
 * Makes a picture smaller, row by row: each pixel is the mean of the area that it stands for, by
 * whole numbers, so that every machine gives the same.
 */
final class Shrinking {
  private final int fromWidth;
  private final int fromHeight;
  private final int width;
  private final int height;
  private final int[] rgb;
  private final long[] sums;
  private int filled;

  private Shrinking(int fromWidth, int fromHeight, int width, int height) {
    this.fromWidth = fromWidth;
    this.fromHeight = fromHeight;
    this.width = width;
    this.height = height;
    this.rgb = new int[width * height];
    this.sums = new long[3 * width];
  }

  /**
   * Paints over what is covered, and makes the rest no wider and no higher than {@code most}.
   *
   * @param covered parts of the picture as stored
   */
  static Pixels of(Rows rows, List<Box> covered, int most) {
    int longest = Math.max(rows.width(), rows.height());
    int width = longest <= most ? rows.width() : scaled(rows.width(), most, longest);
    int height = longest <= most ? rows.height() : scaled(rows.height(), most, longest);
    Shrinking shrinking = new Shrinking(rows.width(), rows.height(), width, height);
    List<Covering> coverings =
        covered.stream().map(box -> Covering.of(box, rows.width(), rows.height())).toList();
    for (int y = 0; y < rows.height(); y++) {
      int[] row = rows.row(y);
      for (Covering one : coverings) {
        one.paint(row, y);
      }
      shrinking.add(row, y);
    }
    return new Pixels(width, height, shrinking.rgb);
  }

  private static int scaled(int side, int most, int longest) {
    return (int) Math.max(1, Math.round((double) side * most / longest));
  }

  /** Adds a row to the one or two rows of the small picture that it belongs to. */
  private void add(int[] row, int y) {
    long top = (long) y * height;
    long bottom = top + height;
    while (top < bottom) {
      long end = Math.min(bottom, (filled + 1L) * fromHeight);
      across(row, end - top);
      if (end == (filled + 1L) * fromHeight) {
        finish();
      }
      top = end;
    }
  }

  private void across(int[] row, long weight) {
    int to = 0;
    for (int x = 0; x < fromWidth; x++) {
      long left = (long) x * width;
      long right = left + width;
      while (left < right) {
        long end = Math.min(right, (to + 1L) * fromWidth);
        long share = weight * (end - left);
        sums[3 * to] += share * (row[x] >> 16 & 0xff);
        sums[3 * to + 1] += share * (row[x] >> 8 & 0xff);
        sums[3 * to + 2] += share * (row[x] & 0xff);
        if (end == (to + 1L) * fromWidth) {
          to++;
        }
        left = end;
      }
    }
  }

  private void finish() {
    for (int x = 0; x < width; x++) {
      rgb[filled * width + x] = mean(3 * x) << 16 | mean(3 * x + 1) << 8 | mean(3 * x + 2);
    }
    java.util.Arrays.fill(sums, 0);
    filled++;
  }

  private int mean(int at) {
    long all = (long) fromWidth * fromHeight;
    return (int) ((sums[at] + all / 2) / all);
  }
}
