package assize.image;

import java.util.Arrays;

/** The whole pixels of a picture that a box touches. */
record PixelRectangle(int left, int top, int right, int bottom) {
  /** Gray, in the middle between black and white. */
  static final int GRAY = 0x808080;

  static PixelRectangle of(BlackoutBox box, int width, int height) {
    return new PixelRectangle(
        down(box.left(), width),
        down(box.top(), height),
        up(box.left() + box.width(), width),
        up(box.top() + box.height(), height));
  }

  private static int down(long part, int whole) {
    return (int) (part * whole / BlackoutBox.WHOLE);
  }

  private static int up(long part, int whole) {
    return (int) ((part * whole + BlackoutBox.WHOLE - 1) / BlackoutBox.WHOLE);
  }

  /**
   * Paints over its part of a row.
   *
   * @param row three samples a pixel
   */
  void paint(int[] row, int y) {
    if (y >= top && y < bottom) {
      Arrays.fill(row, 3 * left, 3 * right, GRAY & 0xff);
    }
  }
}
