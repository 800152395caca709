package assize.report.html;

import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.safety.Safelist;

/** The small Markdown of notes: emphasis, lists, links, code. */
final class Notes {
  private static final Parser PARSER = Parser.builder().build();
  private static final HtmlRenderer RENDERER =
      HtmlRenderer.builder().escapeHtml(true).sanitizeUrls(true).softbreak("\n").build();

  private static final String PLAIN_SIGNS = ".,;:()/%-±’–°'\"?“”";

  private Notes() {}

  /** Returns clean HTML; headings become paragraphs, since they would break the page's order. */
  static String toHtml(String markdown) {
    return isPlain(markdown) ? "<p>" + markdown.replace('\n', ' ') + "</p>" : cleaned(markdown);
  }

  /**
   * Says whether a text is a paragraph of words: nothing in it means anything to Markdown or HTML,
   * so that there is nothing to read and nothing to clean. Each of its lines begins with a letter.
   */
  private static boolean isPlain(String text) {
    char before = '\n';
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean between = c == ' ' || c == '\n';
      boolean inside = between || c >= '0' && c <= '9' || PLAIN_SIGNS.indexOf(c) >= 0;
      if (!Character.isLetter(c)
          && (before == '\n' || !inside || between && (before == ' ' || before == '\n'))) {
        return false;
      }
      before = c;
    }
    return before != ' ' && before != '\n';
  }

  static String cleaned(String markdown) {
    Node document = PARSER.parse(markdown);
    Document dirty = Jsoup.parseBodyFragment(RENDERER.render(document));
    dirty.select("h1, h2, h3, h4, h5, h6").forEach(it -> it.tagName("p").addClass("note-heading"));
    dirty.select("img").forEach(it -> it.before(it.attr("alt")).remove());
    Document.OutputSettings settings = new Document.OutputSettings().prettyPrint(false);
    return Jsoup.clean(dirty.body().html(), "", safelist(), settings);
  }

  private static Safelist safelist() {
    return new Safelist()
        .addTags(
            "p", "em", "strong", "ul", "ol", "li", "blockquote", "code", "pre", "br", "hr", "a")
        .addAttributes("p", "class")
        .addAttributes("ol", "start")
        .addAttributes("a", "href")
        .addProtocols("a", "href", "http", "https", "mailto")
        .addEnforcedAttribute("a", "rel", "nofollow noopener noreferrer");
  }
}
