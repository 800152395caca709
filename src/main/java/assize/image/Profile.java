package assize.image;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.util.Optional;

/** Brings colors that are meant by an ICC profile to sRGB, which every page means. */
final class Profile {
  private Profile() {}

  /**
   * Converts a picture; a profile that is none, or not for red, green and blue, changes nothing.
   */
  static Pixels toSrgb(Pixels pixels, Optional<byte[]> profile) {
    if (profile.isEmpty()) {
      return pixels;
    }
    try {
      ICC_Profile read = ICC_Profile.getInstance(profile.get());
      return read.getColorSpaceType() == ColorSpace.TYPE_RGB
          ? converted(pixels, new ICC_ColorSpace(read))
          : pixels;
    } catch (IllegalArgumentException | CMMException e) {
      return pixels;
    }
  }

  private static Pixels converted(Pixels pixels, ICC_ColorSpace meant) {
    BufferedImage to =
        new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_RGB);
    new ColorConvertOp(null).filter(pixels.image(meant), to);
    int[] rgb = new int[pixels.rgb().length];
    to.getRGB(0, 0, pixels.width(), pixels.height(), rgb, 0, pixels.width());
    return new Pixels(pixels.width(), pixels.height(), rgb);
  }
}
