package assize.record;

/**
 * A part of a photo that is not for others, as the photo is seen upright; in hundredths of a
 * percent of its width and height.
 *
 * @param left from the left edge, 0 to 10,000
 * @param top from the upper edge, 0 to 10,000
 * @param width above 0; {@code left + width} at most 10,000
 * @param height above 0; {@code top + height} at most 10,000
 */
public record BlackoutArea(int left, int top, int width, int height) {
  /** The whole width or height. */
  public static final int WHOLE = 10_000;

  public BlackoutArea {
    if (left < 0 || top < 0 || width < 1 || height < 1) {
      throw new IllegalArgumentException("no part of a photo");
    }
    if (left + width > WHOLE || top + height > WHOLE) {
      throw new IllegalArgumentException("reaches past the photo");
    }
  }
}
