package assize.photo;

import assize.text.Parsed;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A picture to put into a page: at most {@link #WIDEST} pixels wide or high, and nothing in it but
 * the picture.
 *
 * @param mediaType {@code image/png} or {@code image/jpeg}
 * @param bytes the whole file
 */
public record Photo(
    String mediaType, byte[] bytes, int width, int height, Optional<String> misnamed) {
  /** The most pixels a picture may have before it is decoded. */
  public static final long MOST_PIXELS = 100_000_000;

  /** The most bytes a file may have. */
  public static final long MOST_BYTES = 100_000_000;

  /** Refuses a file that is too long to be read. */
  public static Parsed<Photo> tooLong(long bytes) {
    return Parsed.bad("the file has " + bytes / 1_000_000 + " MB; at most 100 are read", 0, 0);
  }

  /** Returns how many pixels a file says that it has; 0 where it does not say. */
  public static long pixels(byte[] file) {
    return 0;
  }

  /** The greatest width and height passed on, in pixels. */
  public static final int WIDEST = 1200;

  /** A PNG no larger than this, in bytes, and no wider than {@link #WIDEST} keeps its pixels. */
  private static final int SMALL = 200_000;

  /**
   * Decodes a PNG or JPEG.
   *
   * @return a refusal where it is neither, damaged, or too large
   */
  public static Parsed<Photo> of(byte[] file, String name, List<Box> covered) {
    try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
      if (!readers.hasNext()) {
        return Parsed.bad("this is no picture that can be shown: save it as JPEG or PNG", 0, 0);
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(stream, true, true);
        return decode(reader, file);
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException e) {
      return Parsed.bad("this picture is damaged: save it again as JPEG or PNG", 0, 0);
    }
  }

  private static Parsed<Photo> decode(ImageReader reader, byte[] file) throws IOException {
    String format = reader.getFormatName();
    boolean png = format.equalsIgnoreCase("png");
    if (!png && !format.equalsIgnoreCase("jpeg")) {
      return Parsed.bad("a picture is a JPEG or a PNG, not " + format, 0, 0);
    }
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    if ((long) width * height > MOST_PIXELS) {
      return Parsed.bad(
          "this picture has "
              + (long) width * height / 1_000_000
              + " million pixels; at most 100 million are read",
          0,
          0);
    }
    BufferedImage image = reader.read(0);
    boolean fits = Math.max(width, height) <= WIDEST;
    if (png && fits && file.length <= SMALL) {
      return Parsed.ok(
          new Photo("image/png", PngChunks.bare(file), width, height, Optional.empty()));
    }
    return Parsed.ok(encode(fits ? flat(image, width, height) : scaled(image), png && fits));
  }

  private static BufferedImage scaled(BufferedImage image) {
    double factor = WIDEST / (double) Math.max(image.getWidth(), image.getHeight());
    return flat(
        image,
        Math.max(1, (int) Math.round(image.getWidth() * factor)),
        Math.max(1, (int) Math.round(image.getHeight() * factor)));
  }

  /** Paints on white, since a JPEG has no transparency. */
  private static BufferedImage flat(BufferedImage image, int width, int height) {
    BufferedImage flat = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = flat.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.setColor(java.awt.Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.drawImage(image, 0, 0, width, height, null);
    graphics.dispose();
    return flat;
  }

  private static Photo encode(BufferedImage image, boolean png) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    String format = png ? "png" : "jpeg";
    if (!ImageIO.write(image, format, out)) {
      throw new IOException("no writer for " + format);
    }
    return new Photo(
        "image/" + format,
        out.toByteArray(),
        image.getWidth(),
        image.getHeight(),
        Optional.empty());
  }

  /** Returns the picture as an address that needs no other file. */
  public String dataUri() {
    return "data:" + mediaType + ";base64," + Base64.getEncoder().encodeToString(bytes);
  }
}
