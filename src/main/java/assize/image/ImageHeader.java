package assize.image;

import assize.text.Parsed;
import java.util.Optional;

/**
 * What is known of a picture before it is decoded.
 *
 * @param width as stored, in pixels
 * @param height as stored, in pixels
 * @param turn what makes it upright
 * @param profile the ICC profile that its colors are meant by
 * @param bare the file with only what is needed to decode it
 */
record ImageHeader(
    ImageFormat kind,
    int width,
    int height,
    OrientationTransform turn,
    Optional<byte[]> profile,
    byte[] bare) {
  /** The longest color profile that is followed, in bytes; common ones have 500 to 4,000. */
  static final int LONGEST_PROFILE = 1_000_000;

  /** Reads the head of a file of a kind that can be shown. */
  static Parsed<ImageHeader> of(ImageFormat kind, byte[] file) {
    return switch (kind) {
      case JPEG -> JpegHead.of(file);
      case PNG -> PngChunks.of(file).then(PngChunks::head);
      case WEBP -> WebpChunks.head(file);
      case HEIC, AVIF, GIF, TIFF, BMP, SVG, PDF, NONE -> throw new IllegalStateException("" + kind);
    };
  }

  static <T> Parsed<T> damaged(ImageFormat kind, String how) {
    return Parsed.bad(
        "this is "
            + kind.words()
            + ", but it is damaged ("
            + how
            + "); copy it again from where it came, or save it again as JPEG",
        0,
        0);
  }

  static <T> Parsed<T> endsEarly(ImageFormat kind) {
    return damaged(kind, "it ends before the picture does");
  }

  long pixels() {
    return (long) width * height;
  }
}
