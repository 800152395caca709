package assize.report.html;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * What there is on a page.
 *
 * @param text all that can be read, and the data for its script, in small letters
 * @param parts how many elements there are of each kind, with the names of their attributes, but
 *     those inside notes, and of drawings, which leave out a label that has no room
 */
record PageContent(String text, Map<String, Integer> parts) {
  private static final Pattern ESCAPE = Pattern.compile("\\\\(?:u([0-9a-f]{4})|(.))");

  private static final Pattern QUIET = Pattern.compile("(\\*quiet\\*|quiet) (q[0-9]+z)");

  static Map<String, PageContent> all(Map<String, Path> pages) throws IOException {
    Map<String, PageContent> all = new LinkedHashMap<>();
    for (Map.Entry<String, Path> page : pages.entrySet()) {
      all.put(kind(page.getKey()), of(Files.readString(page.getValue())));
    }
    return all;
  }

  private static String kind(String name) {
    return name.replaceFirst(":.*", "");
  }

  static PageContent of(String html) {
    Document page = Jsoup.parse(html);
    Map<String, Integer> parts = new TreeMap<>();
    for (Element one : page.select("*:not(.notes *, svg *)")) {
      StringBuilder part = new StringBuilder(one.normalName());
      for (Attribute attribute : one.attributes()) {
        part.append(' ').append(attribute.getKey());
      }
      parts.merge(part.toString(), 1, Integer::sum);
    }
    String data = page.select("#data").text();
    return new PageContent(flat(page.wholeText() + "\n" + unescaped(data)), parts);
  }

  /** Returns JSON with its texts as they are meant. */
  private static String unescaped(String json) {
    return ESCAPE
        .matcher(json)
        .replaceAll(
            it -> {
              String hex = it.group(1);
              String one =
                  hex == null
                      ? it.group(2).replace('n', '\n')
                      : Character.toString((char) Integer.parseInt(hex, 16));
              return Matcher.quoteReplacement(one);
            });
  }

  static String flat(String text) {
    return text.replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  /** Says which elements are on this page and not on another, and the other way round. */
  List<String> otherPartsThan(PageContent other, String kind) {
    Map<String, Integer> more = new TreeMap<>(parts);
    other.parts().forEach((part, count) -> more.merge(part, -count, Integer::sum));
    more.values().removeIf(it -> it == 0);
    return more.isEmpty() ? List.of() : List.of(kind + " has other elements: " + more);
  }

  /**
   * Says what can't be read of an attack where a page with harmless texts shows those.
   *
   * @param files the names of files, which hold of an attack what a name can hold
   */
  List<String> lostFrom(
      PageContent quiet, InjectionStrings attack, List<String> files, String kind) {
    List<String> lost = new ArrayList<>();
    Matcher marks = QUIET.matcher(quiet.text());
    while (marks.find()) {
      boolean note = marks.group(1).equals("quiet");
      String plain = attack.text() + " " + marks.group(2);
      String wanted =
          files.stream()
              .filter(it -> it.contains(" " + marks.group(2)))
              .findFirst()
              .orElse(note ? attack.asNote() + " " + marks.group(2) : plain);
      if (!text.contains(flat(wanted))) {
        lost.add(kind + " does not show " + wanted + (note ? ", a note" : ""));
      }
    }
    return lost;
  }
}
