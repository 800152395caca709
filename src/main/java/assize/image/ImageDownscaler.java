package assize.image;

import java.util.Arrays;

/**
 * Makes a picture smaller, row by row: each pixel is the mean of the area that it stands for, by
 * whole numbers, so that every machine gives the same.
 */
final class ImageDownscaler {
  private final PixelRows rows;
  private final int width;
  private final int height;
  private final int[] rgb;

  /** Each sample of the rows so far, as often as they count for the next row of the small one. */
  private final int[] columns;

  private int filled;

  private ImageDownscaler(PixelRows rows, int width, int height) {
    this.rows = rows;
    this.width = width;
    this.height = height;
    this.rgb = new int[width * height];
    this.columns = new int[3 * rows.width()];
  }

  /** Makes a picture no wider and no higher than {@code most}. */
  static Pixels of(PixelRows rows, int most) {
    int longest = Math.max(rows.width(), rows.height());
    int width = longest <= most ? rows.width() : scaled(rows.width(), most, longest);
    int height = longest <= most ? rows.height() : scaled(rows.height(), most, longest);
    ImageDownscaler shrinking = new ImageDownscaler(rows, width, height);
    for (int y = 0; y < rows.height(); y++) {
      shrinking.add(y);
    }
    return new Pixels(width, height, shrinking.rgb);
  }

  private static int scaled(int side, int most, int longest) {
    return (int) Math.max(1, Math.round((double) side * most / longest));
  }

  /**
   * Adds a row to the one or two rows of the small picture that it belongs to. No sum comes to more
   * than 255 times {@link Photo#LONGEST}, which an int holds.
   */
  private void add(int y) {
    long top = (long) y * height;
    long bottom = top + height;
    while (top < bottom) {
      long end = Math.min(bottom, (filled + 1L) * rows.height());
      rows.add(y, (int) (end - top), columns);
      if (end == (filled + 1L) * rows.height()) {
        finish();
      }
      top = end;
    }
  }

  /** Gives the next row of the small picture its pixels. */
  private void finish() {
    for (int x = 0; x < width; x++) {
      long left = (long) x * rows.width();
      long right = left + rows.width();
      int first = (int) (left / width);
      int last = (int) ((right - 1) / width);
      // What the columns at both ends have outside of the pixel is not counted.
      long before = left - (long) first * width;
      long behind = (last + 1L) * width - right;
      int color = 0;
      for (int band = 0; band < 3; band++) {
        long sum = width * sum(columns, 3 * first + band, 3 * last + band);
        sum -= before * columns[3 * first + band] + behind * columns[3 * last + band];
        color = color << 8 | mean(sum);
      }
      rgb[filled * width + x] = color;
    }
    Arrays.fill(columns, 0);
    filled++;
  }

  private static long sum(int[] columns, int from, int to) {
    long sum = 0;
    for (int i = from; i <= to; i += 3) {
      sum += columns[i];
    }
    return sum;
  }

  private int mean(long sum) {
    long all = (long) rows.width() * rows.height();
    return (int) ((sum + all / 2) / all);
  }
}
