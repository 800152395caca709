package assize.report.html;

import assize.text.Invisible;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** What must be true of every page before anybody gets it. */
public final class PageValidator {
  private static final Set<String> ELEMENTS =
      Set.of(
          ("html head meta title style body header main footer nav section article aside figure"
                  + " figcaption h1 h2 h3 h4 h5 h6 p a em strong i b small span br hr ul ol li dl dt"
                  + " dd table caption thead tbody tfoot tr th td details summary blockquote code"
                  + " pre div img svg symbol use g path rect circle line text desc abbr form fieldset"
                  + " legend label input button output del ins")
              .split(" "));
  private static final Set<String> LOADING =
      Set.of(
          ("srcset action formaction poster background data ping xlink:href cite longdesc manifest"
                  + " archive codebase srcdoc style")
              .split(" "));
  private static final Set<String> INPUTS = Set.of("checkbox", "search");
  private static final Set<String> HEADINGS = Set.of("h1", "h2", "h3", "h4", "h5", "h6");
  private static final Pattern LOADING_STYLE = Pattern.compile("(?i)url\\s*\\(|@import|\\\\");
  private static final int SHOWN = 80;

  /** How each page begins: by this a page of an earlier run is known. */
  private static final Pattern BEGINNING =
      Pattern.compile(
          "\\s*<!DOCTYPE html>\\s*<html lang=\"en\" data-vehicle=\"[^\"]*+\"(?: data-standard=\"[^\"]*+\")?>"
              + "\\s*<head>\\s*<meta charset=\"utf-8\">\\s*<meta"
              + " http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src"
              + " 'sha256-");

  /** Enough for the beginning of nearly every page, in bytes. */
  private static final int USUAL_BEGINNING = 8192;

  /** Enough for three texts as long as a text may be, each letter written as six bytes. */
  private static final int LONGEST_BEGINNING = 3 * 65_536 * 6 + USUAL_BEGINNING;

  private PageValidator() {}

  /** Says whether a file begins as every page does that was checked here. */
  public static boolean isOne(InputStream file) throws IOException {
    String begins = new String(file.readNBytes(USUAL_BEGINNING), StandardCharsets.ISO_8859_1);
    if (begins.length() == USUAL_BEGINNING && !BEGINNING.matcher(begins).lookingAt()) {
      begins += new String(file.readNBytes(LONGEST_BEGINNING), StandardCharsets.ISO_8859_1);
    }
    return BEGINNING.matcher(begins).lookingAt();
  }

  /**
   * Checks a page.
   *
   * @param script the one script that it may hold; empty for none
   * @throws IllegalStateException if it would load anything from outside, run anything, or has a
   *     repeated id, a link to nowhere, a heading out of order or a picture without its words
   */
  public static void check(String html, String script) {
    check(html, script, Set.of());
  }

  /**
   * Checks a page that photos are written beside.
   *
   * @param files their addresses; it may load these and no others
   */
  static void check(String html, String script, Set<String> files) {
    demand(faults(html, script, files, false));
  }

  /** Checks a results page: one that may also lead to pages beside it. */
  public static void checkResults(String html, String script) {
    demand(faults(html, script, Set.of(), true));
  }

  /** Checks one row of a results page: nothing in it may be named from outside. */
  public static void checkRow(String html) {
    Document page = Jsoup.parse("<table><tbody>" + html + "</tbody></table>");
    List<String> faults = new ArrayList<>();
    List<Element> all = page.getAllElements();
    elements(all, "", Set.of(), faults);
    links(all, Set.of(), true, faults);
    if (page.select("tr").size() != 1 || !page.select("[id], h1, h2, h3, h4, h5, h6").isEmpty()) {
      faults.add("not one row");
    }
    demand(faults);
  }

  private static void demand(List<String> faults) {
    if (!faults.isEmpty()) {
      throw new IllegalStateException("the page is not fit to be handed out: " + faults);
    }
  }

  public static List<String> faults(String html, String script) {
    return faults(html, script, Set.of(), false);
  }

  static List<String> faults(String html, String script, Set<String> files) {
    return faults(html, script, files, false);
  }

  private static List<String> faults(
      String html, String script, Set<String> files, boolean besides) {
    Document page = Jsoup.parse(html);
    List<String> faults = new ArrayList<>();
    List<Element> all = page.getAllElements();
    if (!BEGINNING.matcher(html).lookingAt()) {
      faults.add("a beginning by which no later run knows the page");
    }
    policy(page, files, faults);
    elements(all, script, files, faults);
    Set<String> ids = ids(all, faults);
    links(all, ids, besides, faults);
    headings(all, faults);
    return faults;
  }

  private static void policy(Document page, Set<String> files, List<String> faults) {
    String policy = page.select("head > meta[http-equiv=Content-Security-Policy]").attr("content");
    if (!policy.startsWith("default-src 'none';") || policy.contains("http")) {
      faults.add("no policy that forbids outside requests");
    }
    if (policy.contains("'self'") == files.isEmpty()) {
      faults.add("a policy that does not fit the files beside the page");
    }
    if (Invisible.isAllOf(page.title()) || page.select("html[lang]").isEmpty()) {
      faults.add("no title or language");
    }
    if (page.select("meta[http-equiv]").size() > 1) {
      faults.add("a second http-equiv");
    }
  }

  private static void elements(
      List<Element> all, String script, Set<String> files, List<String> faults) {
    for (Element element : all) {
      String name = element.normalName();
      boolean ours =
          name.equals("script") && element.attributesSize() == 0 && element.data().equals(script);
      if (!name.equals("#root") && !ours && !ELEMENTS.contains(name)) {
        faults.add("element <" + name + ">");
      }
      for (Attribute attribute : attributes(element)) {
        String key = attribute.getKey().toLowerCase(Locale.ROOT);
        if (key.startsWith("on") || LOADING.contains(key)) {
          faults.add("attribute " + key + " on <" + name + ">");
        }
        String value = attribute.getValue();
        boolean picture =
            name.equals("img") && (value.startsWith("data:image/") || files.contains(value));
        if (key.equals("src") && !picture) {
          faults.add("src=" + shown(attribute.getValue()));
        }
      }
      if (name.equals("style") && LOADING_STYLE.matcher(element.data()).find()) {
        faults.add("a style sheet that loads or hides something");
      }
      controls(element, faults);
      if (name.equals("img") && Invisible.isAllOf(element.attr("alt"))) {
        faults.add("a picture without alt");
      }
    }
  }

  private static Iterable<Attribute> attributes(Element element) {
    return element.attributesSize() == 0 ? List.of() : element.attributes();
  }

  /** Controls choose what is shown; none has a name, so that nothing could be sent. */
  private static void controls(Element element, List<String> faults) {
    String name = element.normalName();
    boolean fit =
        switch (name) {
          case "input" -> INPUTS.contains(element.attr("type"));
          case "button" -> element.attr("type").equals("reset");
          default -> true;
        };
    boolean named = element.hasAttr("name") && !name.equals("meta");
    if (!fit || named) {
      faults.add("control <" + name + " type=" + shown(element.attr("type")) + ">");
    }
  }

  private static Set<String> ids(List<Element> all, List<String> faults) {
    Set<String> ids = new HashSet<>();
    for (Element element : all) {
      if (element.hasAttr("id")
          && (!ids.add(element.id())
              || element.id().isEmpty()
              || element.id().chars().anyMatch(Character::isWhitespace))) {
        faults.add("id " + shown(element.id()));
      }
    }
    for (String name : List.of("aria-labelledby", "aria-describedby")) {
      all.stream()
          .filter(element -> element.hasAttr(name))
          .flatMap(element -> Stream.of(element.attr(name).split(" ")))
          .filter(id -> !ids.contains(id))
          .forEach(id -> faults.add(name + " to nowhere: " + shown(id)));
    }
    return ids;
  }

  private static void links(
      List<Element> all, Set<String> ids, boolean besides, List<String> faults) {
    for (Element element : all) {
      if (!element.hasAttr("href")) {
        continue;
      }
      String href = element.attr("href");
      boolean inside = href.startsWith("#") && ids.contains(href.substring(1));
      boolean outside =
          !inside
              && element.normalName().equals("a")
              && href.matches("(?is)(https?://|mailto:).*")
              && element.attr("rel").contains("noreferrer");
      boolean beside =
          !inside
              && besides
              && element.normalName().equals("a")
              && href.matches("[A-Za-z0-9][A-Za-z0-9-]*\\.html");
      if (!inside && !outside && !beside) {
        faults.add("href=" + shown(href));
      }
    }
  }

  private static void headings(List<Element> all, List<String> faults) {
    int level = 0;
    for (Element heading : all) {
      if (!HEADINGS.contains(heading.normalName())) {
        continue;
      }
      int next = heading.normalName().charAt(1) - '0';
      if (next > level + 1 || next == 1 && level > 0) {
        faults.add("heading " + heading.normalName() + " after h" + level);
      }
      if (Invisible.isAllOf(heading.text())) {
        faults.add("an empty heading");
      }
      level = next;
    }
    if (level == 0) {
      faults.add("no heading");
    }
  }

  private static String shown(String text) {
    return text.codePoints()
        .limit(SHOWN)
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }
}
