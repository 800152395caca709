package assize.image;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/**
 * A decoded picture.
 *
 * @param rgb row by row, red in bits 16 to 23, green in 8 to 15, blue in 0 to 7
 */
record Pixels(int width, int height, int[] rgb) {
  /** What colors mean where nothing else is said. */
  static final ColorSpace SRGB = ColorSpace.getInstance(ColorSpace.CS_sRGB);

  /** Returns it as Java's own readers and writers take it. */
  BufferedImage image(ColorSpace meant) {
    byte[] samples = new byte[3 * rgb.length];
    for (int i = 0; i < rgb.length; i++) {
      samples[3 * i] = (byte) (rgb[i] >> 16);
      samples[3 * i + 1] = (byte) (rgb[i] >> 8);
      samples[3 * i + 2] = (byte) rgb[i];
    }
    return image(samples, width, height, meant);
  }

  /**
   * Returns samples as a picture.
   *
   * @param samples red, green and blue of each pixel, row by row
   */
  static BufferedImage image(byte[] samples, int width, int height, ColorSpace meant) {
    WritableRaster raster =
        Raster.createInterleavedRaster(
            new DataBufferByte(samples, samples.length),
            width,
            height,
            3 * width,
            3,
            new int[] {0, 1, 2},
            null);
    ComponentColorModel model =
        new ComponentColorModel(
            meant, false, false, ComponentColorModel.OPAQUE, DataBuffer.TYPE_BYTE);
    return new BufferedImage(model, raster, false, null);
  }
}
