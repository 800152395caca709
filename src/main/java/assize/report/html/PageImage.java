package assize.report.html;

import java.util.regex.Pattern;

/**
 * A photo as the page carries it.
 *
 * @param src a {@code data:} URI of a PNG or JPEG in Base64 (RFC 2397), or the address of a file in
 *     a folder beside the page
 * @param width in pixels, above zero
 * @param height in pixels, above zero
 */
public record PageImage(String src, int width, int height) {
  private static final Pattern INSIDE =
      Pattern.compile("data:image/(png|jpeg);base64,[A-Za-z0-9+/]++={0,2}");
  private static final Pattern BESIDE =
      Pattern.compile("[A-Za-z0-9][A-Za-z0-9-]*/[0-9a-f]{16}\\.(png|jpg)");

  public PageImage {
    boolean known = INSIDE.matcher(src).matches() || BESIDE.matcher(src).matches();
    if (width <= 0 || height <= 0 || !known) {
      throw new IllegalArgumentException("not a picture that a page may carry");
    }
  }

  /** Says whether it is in a file of its own, which is loaded when it comes into view. */
  public boolean isBeside() {
    return BESIDE.matcher(src).matches();
  }
}
