package assize.image;

import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import javax.imageio.spi.ImageReaderWriterSpi;
import javax.imageio.spi.ImageWriterSpi;

/** Decodes pictures by Java's own readers, and WebP by one that is named here: never by others. */
final class Decoder {
  /** How many pixels are decoded at once; of a picture with more, rows and columns are skipped. */
  static final long AT_ONCE = 16_000_000;

  private Decoder() {}

  /**
   * A decoded picture.
   *
   * @param warnings what the decoder said of it
   */
  record Decoded(BufferedImage image, List<String> warnings) {
    /** Says whether the decoder made up pixels that the file does not have. */
    boolean isDamaged() {
      return warnings.stream()
          .anyMatch(
              it ->
                  !it.contains("extraneous bytes")
                      && (it.contains("Corrupt JPEG data") || it.contains("Premature end")));
    }
  }

  /** Returns by what the columns and rows of a picture are divided when it is decoded. */
  static int step(long pixels) {
    int step = 1;
    while (pixels / step / step > AT_ONCE) {
      step++;
    }
    return step;
  }

  static Decoded decode(ImageHeader head) throws IOException {
    List<String> warnings = new ArrayList<>();
    ImageReader reader = reader(head.kind());
    try {
      reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
      reader.setInput(new BoundedImageStream(head.bare()), true, true);
      ImageReadParam how = reader.getDefaultReadParam();
      int step = step(head.pixels());
      how.setSourceSubsampling(step, step, 0, 0);
      if (head.kind() == ImageFormat.JPEG && isThreeBytes(reader.getImageTypes(0).next())) {
        // Their order in the file, which its reader copies row by row; it would turn them else.
        int width = (head.width() + step - 1) / step;
        int height = (head.height() + step - 1) / step;
        how.setDestination(Pixels.image(new byte[3 * width * height], width, height, Pixels.SRGB));
      }
      return new Decoded(reader.read(0, how), warnings);
    } finally {
      reader.dispose();
    }
  }

  private static boolean isThreeBytes(ImageTypeSpecifier type) {
    return type.getBufferedImageType() == BufferedImage.TYPE_3BYTE_BGR;
  }

  private static ImageReader reader(ImageFormat kind) throws IOException {
    ImageReaderSpi spi =
        kind == ImageFormat.WEBP ? new WebPImageReaderSpi() : javas(ImageReaderSpi.class, kind);
    return spi.createReaderInstance();
  }

  /** Returns Java's own JPEG writer. */
  static ImageWriter jpegWriter() throws IOException {
    return javas(ImageWriterSpi.class, ImageFormat.JPEG).createWriterInstance();
  }

  private static <T extends ImageReaderWriterSpi> T javas(Class<T> type, ImageFormat kind) {
    Iterator<T> all = IIORegistry.getDefaultInstance().getServiceProviders(type, false);
    while (all.hasNext()) {
      T one = all.next();
      boolean javas = one.getClass().getModule() == IIORegistry.class.getModule();
      if (javas && Stream.of(one.getFormatNames()).anyMatch(kind.name()::equalsIgnoreCase)) {
        return one;
      }
    }
    throw new IllegalStateException("this Java has no " + kind);
  }
}
