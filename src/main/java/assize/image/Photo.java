package assize.image;

import assize.text.Parsed;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * A picture to put into a page: at most {@link #WIDEST} pixels wide or high, upright, its colors in
 * sRGB, and nothing in it but the picture.
 *
 * @param mediaType {@code image/png} or {@code image/jpeg}
 * @param bytes the whole file
 * @param width in pixels
 * @param height in pixels
 * @param original what its file was, as {@code a PNG}
 */
public record Photo(String mediaType, byte[] bytes, int width, int height, String original) {
  /** The most pixels a picture may have; it is not decoded where it says that it has more. */
  public static final long MOST_PIXELS = 100_000_000;

  /** The most pixels a picture may be wide or high. */
  public static final int LONGEST = 65_535;

  /** The most bytes a file may have. */
  public static final long MOST_BYTES = 100_000_000;

  /** The greatest width and height passed on, in pixels. */
  public static final int WIDEST = 1200;

  /** A PNG no longer than this, in bytes, and no wider than {@link #WIDEST} stays a PNG. */
  private static final int SMALL = 200_000;

  private static final int MILLION = 1_000_000;

  /**
   * Decodes a JPEG, a PNG or a WebP picture, whatever its name says.
   *
   * @param covered parts that are painted over before anything else is done
   * @return a refusal where it is none of them, damaged, or too large; it says what to do
   */
  public static Parsed<Photo> of(byte[] file, List<BlackoutBox> covered) {
    return open(file).then(opened -> opened.photo(covered));
  }

  /** Looks at a file without decoding it. */
  public static Parsed<Opened> open(byte[] file) {
    if (file.length == 0) {
      return Parsed.bad("the file is empty; copy it again from where it came", 0, 0);
    }
    if (file.length > MOST_BYTES) {
      return tooLong(file.length);
    }
    ImageFormat kind = ImageFormat.of(file);
    Optional<String> refusal = kind.refusal();
    return refusal.isPresent()
        ? Parsed.bad(refusal.get(), 0, 0)
        : ImageHeader.of(kind, file).then(Photo::within).map(Opened::new);
  }

  /** A file that is ready to be decoded. */
  public static final class Opened {
    private final ImageHeader head;

    private Opened(ImageHeader head) {
      this.head = head;
    }

    /** Returns how many pixels are held at once while it is decoded; those of a WebP take more. */
    public long pixels() {
      return head.kind() == ImageFormat.WEBP
          ? 2 * head.pixels()
          : Math.min(head.pixels(), Decoder.AT_ONCE);
    }

    /** Decodes it, with parts painted over before anything else is done. */
    public Parsed<Photo> photo(List<BlackoutBox> covered) {
      return made(head, covered);
    }
  }

  /** Refuses a file that is too long to be read. */
  public static <T> Parsed<T> tooLong(long bytes) {
    return Parsed.bad(
        "the file has " + millions(bytes) + " MB; at most 100 are read: save a smaller one", 0, 0);
  }

  /** Returns a number in millions, rounded up: what is past a limit is said to be more than it. */
  static long millions(long number) {
    return (number + MILLION - 1) / MILLION;
  }

  private static Parsed<ImageHeader> within(ImageHeader head) {
    return tooLarge(head.width(), head.height())
        .map(refusal -> Parsed.<ImageHeader>bad(refusal, 0, 0))
        .orElseGet(() -> Parsed.ok(head));
  }

  /** Returns why a picture is too large to be read, if it is. */
  static Optional<String> tooLarge(int width, int height) {
    int longest = Math.max(width, height);
    long pixels = (long) width * height;
    if (longest > LONGEST) {
      return Optional.of(
          "this picture is "
              + longest
              + " pixels long; at most "
              + LONGEST
              + " are read: cut off what is not needed, or save a smaller one");
    }
    return pixels <= MOST_PIXELS
        ? Optional.empty()
        : Optional.of(
            "this picture has "
                + millions(pixels)
                + " million pixels; at most 100 million are read: save a smaller one");
  }

  private static Parsed<Photo> made(ImageHeader head, List<BlackoutBox> covered) {
    try {
      if (head.kind() == ImageFormat.PNG && covered.isEmpty() && staysAsItIs(head)) {
        return Parsed.ok(of(head, "image/png", head.bare(), head.width(), head.height()));
      }
      Decoder.Decoded decoded = Decoder.decode(head);
      if (decoded.isDamaged()) {
        return ImageHeader.endsEarly(head.kind());
      }
      List<BlackoutBox> stored = covered.stream().map(head.turn()::stored).toList();
      Pixels small = ImageDownscaler.of(new PixelRows(decoded.image(), stored), WIDEST);
      Pixels upright = head.turn().upright(Profile.toSrgb(small, head.profile()));
      boolean png = head.kind() == ImageFormat.PNG && fits(head);
      return Parsed.ok(
          of(
              head,
              png ? "image/png" : "image/jpeg",
              png ? PngWriter.png(upright) : Encoder.jpeg(upright),
              upright.width(),
              upright.height()));
    } catch (IOException | RuntimeException e) {
      // decoders throw whatever they like at a damaged file
      return ImageHeader.damaged(head.kind(), "its pixels can't be read");
    }
  }

  /** Says whether a PNG is small, upright and bare, with each pixel's color as it is seen. */
  private static boolean staysAsItIs(ImageHeader head) {
    return fits(head)
        && head.turn().equals(OrientationTransform.NONE)
        && head.profile().isEmpty()
        && MetadataFreeCheck.isPlain(head.bare());
  }

  private static boolean fits(ImageHeader head) {
    return Math.max(head.width(), head.height()) <= WIDEST && head.bare().length <= SMALL;
  }

  private static Photo of(ImageHeader head, String mediaType, byte[] bytes, int width, int height) {
    return new Photo(mediaType, bytes, width, height, head.kind().words());
  }

  /**
   * Returns that a file's name says something else than is in it.
   *
   * @param name the file's name, or its path
   */
  public Optional<String> misnamed(String name) {
    return ImageFormat.named(name)
        .map(ImageFormat::words)
        .filter(it -> !it.equals(original))
        .map(it -> "named as " + it + ", this file holds " + original);
  }

  /** Returns the picture as an address that needs no other file. */
  public String dataUri() {
    return "data:" + mediaType + ";base64," + Base64.getEncoder().encodeToString(bytes);
  }
}
