package assize.report.html;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A finished page whose photos are put in while it is written, so that hundreds of them are not
 * held as one text.
 */
public final class Page {
  private static final String SHORT = "data:image/png;base64,cGljdHVyZQ";
  private static final Pattern PLACE =
      Pattern.compile("(?<= src=\")" + Pattern.quote(SHORT) + "[0-9]{8}(?=\")");

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
  static Page of(
      Map<String, Picture> pictures, Function<? super Map<String, Picture>, String> print) {
    Map<String, Picture> brief = new LinkedHashMap<>();
    Map<String, String> whole = new HashMap<>();
    pictures.forEach(
        (key, picture) -> {
          String src = picture.src();
          if (!picture.isBeside()) {
            src = SHORT + String.format(java.util.Locale.ROOT, "%08d", whole.size());
            whole.put(src, picture.src());
          }
          brief.put(key, new Picture(src, picture.width(), picture.height()));
        });
    return new Page(print.apply(brief), whole);
  }

  /** Writes the page as UTF-8. */
  public void writeTo(OutputStream out) throws IOException {
    int from = 0;
    Matcher places = PLACE.matcher(html);
    while (places.find()) {
      write(out, html.substring(from, places.start()));
      write(out, whole.getOrDefault(places.group(), places.group()));
      from = places.end();
    }
    write(out, html.substring(from));
  }

  private static void write(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Returns the whole page. */
  public String text() {
    return PLACE
        .matcher(html)
        .replaceAll(place -> whole.getOrDefault(place.group(), place.group()));
  }
}
