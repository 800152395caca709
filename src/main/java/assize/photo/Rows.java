package assize.photo;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;

/**
 * The rows of a decoded picture as red, green and blue, on white where it is transparent. It takes
 * samples as they are: Java's own conversion would make gray pictures lighter.
 */
final class Rows {
  private static final int WHITE = 0xff;

  private final Raster raster;
  private final ColorModel colors;
  private final int bands;
  private final int most;
  private int[] samples = new int[0];

  Rows(BufferedImage image) {
    this.raster = image.getRaster();
    this.colors = image.getColorModel();
    this.bands = raster.getNumBands();
    this.most = (1 << colors.getComponentSize(0)) - 1;
  }

  int width() {
    return raster.getWidth();
  }

  int height() {
    return raster.getHeight();
  }

  int[] row(int y) {
    int[] row = new int[width()];
    samples =
        raster.getPixels(
            raster.getMinX(),
            raster.getMinY() + y,
            width(),
            1,
            samples.length == 0 ? new int[width() * bands] : samples);
    for (int x = 0; x < row.length; x++) {
      row[x] = colors instanceof IndexColorModel palette ? of(palette, samples[x]) : at(x * bands);
    }
    return row;
  }

  private static int of(IndexColorModel palette, int sample) {
    int color = palette.getRGB(sample);
    return onWhite(color >> 16 & 0xff, color >> 8 & 0xff, color & 0xff, color >>> 24);
  }

  private int at(int first) {
    int red = eight(first);
    int green = bands < 3 ? red : eight(first + 1);
    int blue = bands < 3 ? red : eight(first + 2);
    int opaque = bands % 2 == 0 ? eight(first + bands - 1) : WHITE;
    return onWhite(red, green, blue, opaque);
  }

  private int eight(int at) {
    return most == WHITE ? samples[at] : (int) (((long) samples[at] * WHITE + most / 2) / most);
  }

  private static int onWhite(int red, int green, int blue, int opaque) {
    return over(red, opaque) << 16 | over(green, opaque) << 8 | over(blue, opaque);
  }

  private static int over(int sample, int opaque) {
    return (sample * opaque + WHITE * (WHITE - opaque) + WHITE / 2) / WHITE;
  }
}
