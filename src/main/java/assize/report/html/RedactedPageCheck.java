package assize.report.html;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Comment;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeVisitor;

/** What must be true of a copy for others before anybody gets it. */
public final class RedactedPageCheck {
  private static final Set<String> INLINE =
      Set.of("a", "em", "strong", "i", "b", "small", "span", "abbr", "code");

  /** Where things are drawn; no text of a person stands there. */
  private static final Set<String> DRAWING =
      Set.of("svg", "symbol", "rect", "path", "circle", "line", "use", "g", "text", "img");

  private static final Set<String> COORDINATES =
      Set.of("x", "y", "x1", "y1", "x2", "y2", "width", "height", "cx", "cy", "r", "d", "viewbox");

  private static final Pattern COORDINATE = Pattern.compile("[MLHVAZmlhvaz0-9., -]*");
  private static final Pattern KEY = Pattern.compile("-?[0-9]*");
  private static final Pattern COLOR = Pattern.compile("#[0-9a-fA-F]{6}");
  private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");
  private static final Set<String> LEADING =
      Set.of("id", "href", "for", "aria-labelledby", "aria-describedby");
  private static final Pattern ESCAPED = Pattern.compile("\\.([0-9a-f]{1,6})\\.");

  /** What pages say of themselves with digits in it; no text of a person is built from it. */
  static final Pattern OWN =
      Pattern.compile("SHA-256 \\(FIPS 180-4\\)|Theory of Evidence, 1976|\\(Smets 1990\\)");

  /** Stands between blocks: no space, dash or stroke, and in no text of the program's. */
  private static final char BOUND = '¶';

  /** The class of what holds a person's note. */
  private static final String NOTE = "notes";

  private static final String DATA = ";base64,";
  private static final int AROUND = 30;

  private final UnaryOperator<String> mask;
  private final Function<byte[], List<String>> pictures;
  private final List<Fault> faults = new ArrayList<>();

  private RedactedPageCheck(UnaryOperator<String> mask, Function<byte[], List<String>> pictures) {
    this.mask = mask;
    this.pictures = pictures;
  }

  /**
   * Something that should not be there.
   *
   * @param where in which part of the page
   * @param what the text around it, masked; or what is wrong
   */
  public record Fault(String where, String what) {}

  /**
   * Searches a finished page for what the mask would still change: in its texts, over the bounds of
   * elements too, its attributes and its remarks. Only digests, coordinates, classes and the page's
   * own style and script are left out.
   *
   * @param pictures what a picture holds beside the picture
   */
  public static List<Fault> faults(
      String html, UnaryOperator<String> mask, Function<byte[], List<String>> pictures) {
    RedactedPageCheck page = new RedactedPageCheck(mask, pictures);
    Document document = Jsoup.parse(html);
    Texts texts = page.new Texts();
    document.traverse(texts);
    document.getAllElements().forEach(page::attributes);
    texts.searchAll();
    return List.copyOf(page.faults);
  }

  /**
   * Searches a text of a person, as a note is shown, for what the mask would still change.
   *
   * @param where the part of a page that it stands in
   */
  public static List<Fault> faultsOfNote(String where, String text, UnaryOperator<String> mask) {
    RedactedPageCheck page = new RedactedPageCheck(mask, picture -> List.of());
    Document document = Jsoup.parseBodyFragment(Notes.toHtml(text));
    document.traverse(page.new Texts());
    document.getAllElements().forEach(page::attributes);
    return page.faults.stream().map(it -> new Fault("“" + where + "”", it.what())).toList();
  }

  /** Joins the text of each block, whatever elements it is divided into, of each note, and all. */
  private final class Texts implements NodeVisitor {
    private final StringBuilder block = new StringBuilder();
    private final StringBuilder page = new StringBuilder();
    private final NavigableMap<Integer, Element> blocks = new TreeMap<>();

    @Override
    public void head(Node node, int depth) {
      if (node instanceof TextNode text) {
        block.append(text.getWholeText());
      } else if (node instanceof Comment comment) {
        search(node, comment.getData());
      } else if (node instanceof Element element) {
        bound(element);
      }
    }

    @Override
    public void tail(Node node, int depth) {
      if (!(node instanceof Element element)) {
        return;
      }
      bound(element);
      if (element.hasClass(NOTE)) {
        note(element);
      }
    }

    private void bound(Element element) {
      if (element.normalName().equals("br")) {
        block.append('\n');
      } else if (!INLINE.contains(element.normalName())) {
        String text = block.toString();
        block.setLength(0);
        boolean digest = element.hasClass("sha256") && DIGEST.matcher(text).matches();
        if (!digest && !text.isBlank()) {
          String said = OWN.matcher(text).replaceAll("§");
          search(element, said);
          blocks.put(page.length(), element);
          page.append(said).append(BOUND);
        }
      }
    }

    /** Searches a note over the bounds of its paragraphs, headings and lists. */
    private void note(Element element) {
      int before = faults.size();
      StringBuilder note = new StringBuilder();
      element.traverse(
          (node, depth) -> {
            if (node instanceof TextNode text) {
              note.append(text.getWholeText());
            } else if (node instanceof Element part && !INLINE.contains(part.normalName())) {
              note.append('\n');
            }
          });
      if (faults.size() == before) {
        search(element, note.toString());
      }
    }

    /**
     * Searches over the bounds of blocks, where no block by itself has what should not be there.
     */
    void searchAll() {
      if (!faults.isEmpty()) {
        return;
      }
      String text = page.toString();
      int at = difference(text, mask.apply(text));
      Map.Entry<Integer, Element> block = blocks.floorEntry(at);
      if (at < text.length() && block != null) {
        search(block.getValue(), text);
      }
    }
  }

  private void attributes(Element element) {
    for (Attribute attribute : element.attributes()) {
      String key = attribute.getKey().toLowerCase(Locale.ROOT);
      String value = attribute.getValue();
      if (key.equals("src") && value.contains(DATA)) {
        picture(element, value);
      } else if (!isNoise(element, key, value)) {
        search(element, value);
        if (LEADING.contains(key)) {
          search(element, unescaped(value));
        }
      }
    }
  }

  private static boolean isNoise(Element element, String key, String value) {
    boolean drawn = DRAWING.contains(element.normalName());
    boolean policy = element.attr("http-equiv").equals("Content-Security-Policy");
    return key.equals("class")
        || key.equals("data-by") && KEY.matcher(value).matches()
        || policy && key.equals("content")
        || drawn && COORDINATES.contains(key) && COORDINATE.matcher(value).matches()
        || drawn && key.equals("fill") && COLOR.matcher(value).matches();
  }

  private static String unescaped(String name) {
    return ESCAPED
        .matcher(name)
        .replaceAll(
            code -> {
              int point = Integer.parseInt(code.group(1), 16);
              boolean valid = Character.isValidCodePoint(point);
              return Matcher.quoteReplacement(valid ? Character.toString(point) : code.group());
            });
  }

  private void picture(Element element, String address) {
    String data = address.substring(address.indexOf(DATA) + DATA.length());
    for (String fault : pictures.apply(Base64.getDecoder().decode(data))) {
      faults.add(new Fault(where(element), "a picture holds " + fault));
    }
  }

  private void search(Node at, String text) {
    String masked = mask.apply(text);
    if (masked.equals(text)) {
      return;
    }
    int from = difference(text, masked);
    int start = Math.max(0, from - AROUND);
    String around = masked.substring(start, Math.min(masked.length(), from + AROUND));
    faults.add(
        new Fault(where(at), "“" + around.replaceAll("[\\s" + BOUND + "]+", " ").strip() + "”"));
  }

  /** Returns where two texts begin to differ; the end where they do not. */
  private static int difference(String text, String other) {
    int at = 0;
    while (at < Math.min(text.length(), other.length()) && text.charAt(at) == other.charAt(at)) {
      at++;
    }
    return at;
  }

  /** Returns the heading of the innermost part of the page that has one. */
  private String where(Node at) {
    for (Node node = at; node != null; node = node.parent()) {
      if (node instanceof Element part
          && part.normalName().matches("article|section|header|body|html")) {
        Element heading = part.selectFirst(":root > head > title, h1, h2, h3, h4");
        if (heading != null) {
          return "“" + mask.apply(heading.text()) + "”";
        }
      }
    }
    return "the page";
  }
}
