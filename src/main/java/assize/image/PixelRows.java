package assize.image;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.util.Arrays;
import java.util.List;

/**
 * The rows of a decoded picture as red, green and blue, on white where it is transparent, with
 * parts painted over. It takes samples as they are: Java's own conversion would make gray pictures
 * lighter.
 */
final class PixelRows {
  private static final int WHITE = 0xff;

  private final Raster raster;
  private final ColorModel colors;
  private final List<PixelRectangle> covered;
  private final int bands;
  private final int most;
  private final boolean bytes;
  private int[] samples = new int[0];
  private int[] row = new int[0];
  private int lastRow = -1;

  /**
   * @param covered parts of the picture as stored
   */
  PixelRows(BufferedImage image, List<BlackoutBox> covered) {
    this.raster = image.getRaster();
    this.colors = image.getColorModel();
    this.covered =
        covered.stream()
            .map(box -> PixelRectangle.of(box, raster.getWidth(), raster.getHeight()))
            .toList();
    this.bands = raster.getNumBands();
    this.most = (1 << colors.getComponentSize(0)) - 1;
    this.bytes =
        colors instanceof ComponentColorModel
            && bands == 3
            && most == WHITE
            && raster.getDataBuffer() instanceof DataBufferByte
            && raster.getSampleModel() instanceof PixelInterleavedSampleModel model
            && Arrays.equals(model.getBandOffsets(), new int[] {0, 1, 2});
  }

  int width() {
    return raster.getWidth();
  }

  int height() {
    return raster.getHeight();
  }

  /**
   * Adds a row to sums of rows.
   *
   * @param weight how often it is added
   * @param sums of red, green and blue, from 0 to 255, of each pixel
   */
  void add(int y, int weight, int[] sums) {
    if (bytes && covered.isEmpty()) {
      addBytes(y, weight, sums);
      return;
    }
    if (y != lastRow) {
      // Most rows of a picture made smaller are added once, those between two of it twice.
      row = row(y);
      covered.forEach(one -> one.paint(row, y));
      lastRow = y;
    }
    for (int i = 0; i < row.length; i++) {
      sums[i] += weight * row[i];
    }
  }

  /** Adds a row of most photos, three bytes a pixel, straight from where it was decoded to. */
  private void addBytes(int y, int weight, int[] sums) {
    PixelInterleavedSampleModel model = (PixelInterleavedSampleModel) raster.getSampleModel();
    DataBufferByte buffer = (DataBufferByte) raster.getDataBuffer();
    byte[] data = buffer.getData();
    int first =
        buffer.getOffset()
            + (raster.getMinY() + y - raster.getSampleModelTranslateY()) * model.getScanlineStride()
            + (raster.getMinX() - raster.getSampleModelTranslateX()) * 3;
    for (int i = 0; i < sums.length; i++) {
      sums[i] += weight * (data[first + i] & WHITE);
    }
  }

  private int[] row(int y) {
    samples =
        raster.getPixels(
            raster.getMinX(),
            raster.getMinY() + y,
            width(),
            1,
            samples.length == 0 ? new int[width() * bands] : samples);
    int[] row = new int[3 * width()];
    for (int x = 0; x < width(); x++) {
      if (colors instanceof IndexColorModel palette) {
        add(palette, samples[x], row, 3 * x);
      } else {
        add(x * bands, row, 3 * x);
      }
    }
    return row;
  }

  private static void add(IndexColorModel palette, int sample, int[] row, int at) {
    int color = palette.getRGB(sample);
    int opaque = color >>> 24;
    row[at] = onWhite(color >> 16 & WHITE, opaque);
    row[at + 1] = onWhite(color >> 8 & WHITE, opaque);
    row[at + 2] = onWhite(color & WHITE, opaque);
  }

  private void add(int first, int[] row, int at) {
    int opaque = bands % 2 == 0 ? eight(first + bands - 1) : WHITE;
    for (int band = 0; band < 3; band++) {
      row[at + band] = onWhite(eight(bands < 3 ? first : first + band), opaque);
    }
  }

  private int eight(int at) {
    return most == WHITE ? samples[at] : (int) (((long) samples[at] * WHITE + most / 2) / most);
  }

  private static int onWhite(int sample, int opaque) {
    return (sample * opaque + WHITE * (WHITE - opaque) + WHITE / 2) / WHITE;
  }
}
