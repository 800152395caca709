package assize.bench.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A page in pieces: markup, which is put down as it stands, and text, which is escaped. Between
 * them they are what a program would append that has no template.
 */
final class HandWrittenReport {
  private final List<String> pieces = new ArrayList<>();

  /** Cuts a page where text begins and ends; style and script are markup. */
  HandWrittenReport(String page) {
    int body = page.indexOf("<body>");
    int script = page.lastIndexOf("<script>");
    int at = body;
    pieces.add(page.substring(0, body));
    pieces.add("");
    while (at < script) {
      int text = page.indexOf('>', at) + 1;
      int next = page.indexOf('<', text);
      pieces.add(page.substring(at, text));
      pieces.add(typed(page.substring(text, next)));
      at = next;
    }
    pieces.add(page.substring(script));
    pieces.add("");
  }

  /** Puts the page together again. */
  String page() {
    StringBuilder page = new StringBuilder();
    for (int i = 0; i < pieces.size(); i += 2) {
      page.append(pieces.get(i));
      escape(pieces.get(i + 1), page);
    }
    return page.toString();
  }

  private static void escape(String text, StringBuilder to) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '<' -> to.append("&lt;");
        case '>' -> to.append("&gt;");
        case '&' -> to.append("&amp;");
        case '"' -> to.append("&quot;");
        case '\'' -> to.append("&#39;");
        default -> to.append(c);
      }
    }
  }

  private static String typed(String escaped) {
    return escaped
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }
}
