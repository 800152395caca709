package assize.report.html;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * A finished page whose photos are put in while it is written, so that hundreds of them are not
 * held as one text.
 */
public final class Page {
  private static final String SHORT = "data:image/png;base64,cGljdHVyZQ";
  private static final String BEFORE = " src=\"";
  private static final int LENGTH = SHORT.length() + 8;

  private final String html;
  private final Map<String, String> whole;

  private Page(String html, Map<String, String> whole) {
    this.html = html;
    this.whole = whole;
  }

  /**
   * Prints a page with a short address in the place of each photo inside it.
   *
   * @param print gives the finished page for such pictures
   */
  public static Page of(
      Map<String, PageImage> pictures, Function<? super Map<String, PageImage>, String> print) {
    Map<String, PageImage> brief = new LinkedHashMap<>();
    Map<String, String> whole = new HashMap<>();
    pictures.forEach(
        (key, picture) -> {
          String src = picture.src();
          if (!picture.isBeside()) {
            src = SHORT + String.format(java.util.Locale.ROOT, "%08d", whole.size());
            whole.put(src, picture.src());
          }
          brief.put(key, new PageImage(src, picture.width(), picture.height()));
        });
    return new Page(print.apply(brief), whole);
  }

  /** Writes the page as UTF-8. */
  public void writeTo(OutputStream out) throws IOException {
    pieces(text -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** Returns the whole page. */
  public String text() {
    StringBuilder text = new StringBuilder(html.length());
    try {
      pieces(text::append);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  @FunctionalInterface
  private interface PageParts {
    void add(String text) throws IOException;
  }

  /** Gives the page in pieces. A text in it has no quote as these addresses have around them. */
  private void pieces(PageParts pieces) throws IOException {
    int from = 0;
    int place = whole.isEmpty() ? -1 : html.indexOf(BEFORE + SHORT);
    while (place >= 0) {
      int start = place + BEFORE.length();
      int end = start + LENGTH;
      String address = html.substring(start, end);
      pieces.add(html.substring(from, start));
      pieces.add(whole.getOrDefault(address, address));
      from = end;
      place = html.indexOf(BEFORE + SHORT, from);
    }
    pieces.add(html.substring(from));
  }
}
