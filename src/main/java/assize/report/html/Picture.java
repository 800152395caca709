package assize.report.html;

import java.util.regex.Pattern;

/**
 * A photo as the page carries it.
 *
 * @param src a {@code data:} URI of a PNG or JPEG in Base64 (RFC 2397)
 * @param width in pixels, above zero
 * @param height in pixels, above zero
 */
public record Picture(String src, int width, int height) {
  private static final Pattern INSIDE =
      Pattern.compile("data:image/(png|jpeg);base64,[A-Za-z0-9+/]++={0,2}");

  public Picture {
    if (width <= 0 || height <= 0 || !INSIDE.matcher(src).matches()) {
      throw new IllegalArgumentException("not a picture that a page may carry");
    }
  }
}
