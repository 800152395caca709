package assize.image;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;

/** Pictures with red, green, blue and white corners, and what their corners are afterwards. */
final class CornerColors {
  private static final List<Color> COLORS =
      List.of(Color.RED, Color.GREEN, Color.BLUE, Color.WHITE);

  private CornerColors() {}

  /** Draws one: red at the upper left, green right of it, blue and white below. */
  static BufferedImage image(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    for (int i = 0; i < 4; i++) {
      graphics.setColor(COLORS.get(i));
      graphics.fillRect(i % 2 * width / 2, i / 2 * height / 2, width, height);
    }
    graphics.dispose();
    return image;
  }

  static byte[] file(String format, int width, int height) {
    return file(format, image(width, height));
  }

  static byte[] file(String format, BufferedImage image) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, out)) {
        throw new IllegalArgumentException(format);
      }
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns one of the WebP pictures that are kept with the tests. */
  static byte[] webp(String name) {
    try (InputStream in =
        Objects.requireNonNull(CornerColors.class.getResourceAsStream(name + ".webp"))) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static BufferedImage seen(Photo photo) {
    try {
      return ImageIO.read(new ByteArrayInputStream(photo.bytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Says what stands in the four corners, row by row, by first letters: RGBW, and "?" else. */
  static String of(Photo photo) {
    BufferedImage image = seen(photo);
    StringBuilder corners = new StringBuilder();
    for (int i = 0; i < 4; i++) {
      int x = i % 2 == 0 ? image.getWidth() / 4 : image.getWidth() * 3 / 4;
      int y = i / 2 == 0 ? image.getHeight() / 4 : image.getHeight() * 3 / 4;
      corners.append(letter(image.getRGB(x, y)));
    }
    return corners.toString();
  }

  private static char letter(int rgb) {
    for (int i = 0; i < 4; i++) {
      if (near(rgb, COLORS.get(i).getRGB(), 24)) {
        return "RGBW".charAt(i);
      }
    }
    return '?';
  }

  /** Says whether no sample differs by more than {@code most} of 255. */
  static boolean near(int rgb, int other, int most) {
    for (int shift = 0; shift < 24; shift += 8) {
      if (Math.abs((rgb >> shift & 0xff) - (other >> shift & 0xff)) > most) {
        return false;
      }
    }
    return true;
  }
}
