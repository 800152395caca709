package assize.image;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What kind of file it is, by what is in it and not by its name. */
enum ImageFormat {
  JPEG("a JPEG", "jpg", "jpeg", "jpe", "jfif"),
  PNG("a PNG", "png"),
  WEBP("a WebP picture", "webp"),
  HEIC("a HEIC photo", "heic", "heif", "hif"),
  AVIF("an AVIF photo", "avif"),
  GIF("a GIF", "gif"),
  TIFF("a TIFF, or a camera's raw photo", "tif", "tiff", "dng"),
  BMP("a BMP", "bmp"),
  SVG("an SVG drawing", "svg"),
  PDF("a PDF", "pdf"),
  NONE("no picture");

  private static final int LOOKED_AT = 1024;

  private final String words;
  private final List<String> endings;

  ImageFormat(String words, String... endings) {
    this.words = words;
    this.endings = List.of(endings);
  }

  /** Returns what it is called, with its article. */
  String words() {
    return words;
  }

  /** Looks at the first bytes of a file. */
  static ImageFormat of(byte[] file) {
    String start =
        new String(file, 0, Math.min(file.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
    if (start.startsWith("\u00ff\u00d8\u00ff")) {
      return JPEG;
    }
    if (start.startsWith("\u0089PNG\r\n\u001a\n")) {
      return PNG;
    }
    if (start.startsWith("RIFF") && start.startsWith("WEBP", 8)) {
      return WEBP;
    }
    if (start.startsWith("ftyp", 4)) {
      return ofBrand(start.substring(8));
    }
    if (start.startsWith("GIF8")) {
      return GIF;
    }
    if (start.startsWith("II*\0") || start.startsWith("MM\0*")) {
      return TIFF;
    }
    if (start.startsWith("BM") && start.startsWith("\0\0\0\0", 6)) {
      return BMP;
    }
    if (start.startsWith("%PDF-")) {
      return PDF;
    }
    return start.contains("<svg") ? SVG : NONE;
  }

  /** Tells the kinds of one container apart by their brands (ISO/IEC 14496-12, 4.3). */
  private static ImageFormat ofBrand(String brands) {
    if (brands.startsWith("avif") || brands.startsWith("avis")) {
      return AVIF;
    }
    boolean heif =
        List.of("heic", "heix", "hevc", "heim", "heis", "mif1", "msf1").stream()
            .anyMatch(brands::startsWith);
    return heif ? HEIC : NONE;
  }

  /** Returns what a file's name says that it is, if its ending says anything that is known. */
  static Optional<ImageFormat> named(String name) {
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(kind -> kind.endings.contains(ending)).findFirst();
  }

  /** Returns why it can't be shown, and what to do; empty where it can. */
  Optional<String> refusal() {
    return switch (this) {
      case JPEG, PNG, WEBP -> Optional.empty();
      case HEIC, AVIF ->
          Optional.of(
              "this is "
                  + words
                  + ", which can't be read here; save it as JPEG in the phone or the photo program,"
                  + " name that file, and keep this one as the original");
      case GIF, TIFF, BMP, SVG ->
          Optional.of("this is " + words + ", which is not shown; save it as JPEG or PNG");
      case PDF ->
          Optional.of("this is a PDF and no photo; give it as a document, or save its page as PNG");
      case NONE -> Optional.of("this file holds no picture; name a JPEG, a PNG or a WebP picture");
    };
  }
}
