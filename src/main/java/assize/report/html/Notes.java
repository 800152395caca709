package assize.report.html;

import java.util.List;
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

  private Notes() {}

  /** Returns clean HTML; headings become paragraphs, since they would break the page's order. */
  static String toHtml(String markdown) {
    Node document = PARSER.parse(markdown);
    Document dirty = Jsoup.parseBodyFragment(RENDERER.render(document));
    for (String heading : List.of("h1", "h2", "h3", "h4", "h5", "h6")) {
      dirty.select(heading).forEach(it -> it.tagName("p").addClass("note-heading"));
    }
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
