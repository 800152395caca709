package assize.report.html;

import assize.text.Parsed;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jsoup.parser.Parser;

/**
 * Reads the masked numbers and their hashes from a copy for others, in one pass and in memory that
 * does not grow with the page. They are read only where this program writes them. A page that has
 * what this program never writes is refused, since it could show one thing and mean another.
 */
public final class Seals {
  private static final String PART = "section id=left-out";

  /** What the hashes stand in, each with its number; {@code back.ftlh} writes it. */
  private static final List<String> PLACE =
      List.of(
          "html",
          "body",
          "div class=page",
          "main",
          PART,
          "div class=matter",
          "dl class=files",
          "div");

  private static final String TERM = "dt";
  private static final String NUMBER = "strong";
  private static final String SEAL = "dd class=sha256 seal";

  /** Attributes that do not alter how an element is shown. */
  private static final Set<String> HARMLESS =
      Set.of("lang", "title", "aria-labelledby", "data-vehicle", "data-standard");

  /** Elements without an end tag (HTML Living Standard, 13.1.2, from memory). */
  private static final Set<String> VOID =
      Set.of(
          "area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source",
          "track", "wbr");

  /** Elements that hold text alone. */
  private static final Set<String> RAW = Set.of("script", "style", "title");

  /** Elements whose text this program would read otherwise than a browser does. */
  private static final Set<String> FOREIGN =
      Set.of(
          "iframe",
          "math",
          "noembed",
          "noframes",
          "noscript",
          "object",
          "plaintext",
          "select",
          "template",
          "textarea",
          "xmp");

  private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");
  private static final String DOCTYPE = "!doctype html>";
  private static final int DEEPEST = 100;

  /** How much of a text is kept, and how many numbers. */
  private static final int KEPT = 1000;

  private final Reader page;
  private final char[] buffer = new char[1 << 16];
  private int at;
  private int end;
  private int line = 1;

  private final List<String> open = new ArrayList<>();
  private int drawings;
  private boolean inPart;
  private final StringBuilder tag = new StringBuilder();
  private final StringBuilder word = new StringBuilder();
  private final StringBuilder name = new StringBuilder();
  private final StringBuilder number = new StringBuilder();
  private final StringBuilder seal = new StringBuilder();
  private final StringBuilder nothing = new StringBuilder();
  private StringBuilder text = nothing;
  private final List<NumberHash> seals = new ArrayList<>();

  private Seals(Reader page) {
    this.page = page;
  }

  /**
   * A masked number and its hash.
   *
   * @param name what it is the number of
   * @param masked the number as the page shows it
   */
  public record NumberHash(String name, String masked, String hash) {}

  /** The page has something that this program never writes. */
  private static final class Foreign extends Exception {
    private static final long serialVersionUID = 1L;

    Foreign(String what) {
      super(what);
    }
  }

  /** Returns what a page has; an empty list where it is no copy for others. */
  public static Parsed<List<NumberHash>> of(Reader page) throws IOException {
    Seals reading = new Seals(page);
    try {
      reading.read();
      return Parsed.ok(List.copyOf(reading.seals));
    } catch (Foreign e) {
      return Parsed.bad("line " + reading.line + " has " + e.getMessage(), 0, 0);
    }
  }

  private void read() throws IOException, Foreign {
    for (int c = next(); c >= 0; c = next()) {
      if (c == '<' && isLetter(peek())) {
        startTag();
      } else if (c == '<' && peek() == '/') {
        next();
        endTag();
      } else if (c == '<' && (peek() == '!' || peek() == '?')) {
        declaration();
      } else if (text != nothing) {
        keep(text, c);
      }
    }
  }

  private int peek() throws IOException {
    if (at == end) {
      end = Math.max(page.read(buffer), 0);
      at = 0;
    }
    return at < end ? buffer[at] : -1;
  }

  private int next() throws IOException {
    int c = peek();
    at += c < 0 ? 0 : 1;
    line += c == '\n' ? 1 : 0;
    return c;
  }

  private int space() throws IOException {
    while (isSpace(peek())) {
      next();
    }
    return peek();
  }

  private static boolean isLetter(int c) {
    return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
  }

  private static boolean isSpace(int c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
  }

  /** Photos are far longer than anything that is compared with what this program writes. */
  private static void keep(StringBuilder text, int c) {
    if (text.length() < KEPT) {
      text.append((char) c);
    }
  }

  private void declaration() throws IOException, Foreign {
    StringBuilder said = new StringBuilder();
    while (peek() >= 0 && said.length() < DOCTYPE.length()) {
      said.append((char) next());
    }
    if (!open.isEmpty() || !said.toString().toLowerCase(Locale.ROOT).equals(DOCTYPE)) {
      throw new Foreign("a comment");
    }
  }

  private void startTag() throws IOException, Foreign {
    String element = name("/>");
    if (FOREIGN.contains(element)) {
      throw new Foreign("an element <" + element + ">");
    }
    tag.setLength(0);
    tag.append(element);
    boolean part = false;
    boolean ended = false;
    for (int c = space(); c >= 0 && c != '>'; c = space()) {
      if (c == '/') {
        next();
        ended = peek() == '>';
        continue;
      }
      String attribute = name("/>=");
      boolean kept = !HARMLESS.contains(attribute) && tag.length() < KEPT;
      if (kept) {
        tag.append(' ').append(attribute).append('=');
      }
      if (space() == '=') {
        value();
      } else {
        word.setLength(0);
      }
      if (kept) {
        tag.append(word);
      }
      part |= attribute.equals("id") && isPart();
    }
    next();
    if (part) {
      begin(tag.toString());
    }
    if (RAW.contains(element) && drawings == 0) {
      raw(element);
    } else if (!VOID.contains(element) && !(ended && (drawings > 0 || element.equals("svg")))) {
      open(tag.toString());
    }
  }

  private void begin(String tag) throws Foreign {
    if (inPart) {
      throw new Foreign("a second part on masked numbers");
    }
    if (!tag.equals(PART) || !open.equals(PLACE.subList(0, PLACE.indexOf(PART)))) {
      throw new Foreign("the part on masked numbers within something that can hide it");
    }
    inPart = true;
  }

  private void open(String tag) throws Foreign {
    if (open.size() == DEEPEST) {
      throw new Foreign("elements more than " + DEEPEST + " deep");
    }
    boolean allowed = text == name && tag.equals(NUMBER) == number.isEmpty();
    if (text != nothing && !allowed) {
      throw new Foreign("<" + tag + "> within a masked number or its hash");
    }
    open.add(tag);
    drawings += isOf(tag, "svg") ? 1 : 0;
    if (open.equals(PLACE)) {
      name.setLength(0);
      number.setLength(0);
      seal.setLength(0);
    }
    text = target();
  }

  /** Returns where the text of what is open now belongs. */
  private StringBuilder target() {
    int depth = open.size() - PLACE.size();
    if (!inPart || depth < 1 || depth > 2 || !open.subList(0, PLACE.size()).equals(PLACE)) {
      return nothing;
    }
    List<String> inner = open.subList(PLACE.size(), open.size());
    if (inner.equals(List.of(TERM))) {
      return name;
    }
    if (inner.equals(List.of(SEAL))) {
      return seal;
    }
    return inner.equals(List.of(TERM, NUMBER)) ? number : nothing;
  }

  private static boolean isOf(String tag, String element) {
    return tag.equals(element) || tag.startsWith(element + " ");
  }

  private void endTag() throws IOException, Foreign {
    String element = name("/>");
    while (peek() >= 0 && next() != '>') {}
    int last = open.size() - 1;
    if (last < 0 || !isOf(open.get(last), element)) {
      throw new Foreign("an end tag that ends nothing");
    }
    if (text == seal) {
      sealed();
    }
    open.remove(last);
    drawings -= element.equals("svg") ? 1 : 0;
    text = target();
  }

  private void sealed() throws Foreign {
    if (!DIGEST.matcher(seal).matches() || number.isEmpty()) {
      throw new Foreign("no hash, or no number beside it");
    }
    if (seals.size() == KEPT) {
      throw new Foreign("more than " + KEPT + " masked numbers");
    }
    String called = decoded(name).strip();
    seals.add(
        new NumberHash(
            called.endsWith(":") ? called.substring(0, called.length() - 1) : called,
            decoded(number),
            seal.toString()));
    seal.setLength(0);
    number.setLength(0);
  }

  private static String decoded(StringBuilder text) {
    return Parser.unescapeEntities(text.toString(), false);
  }

  /** Says whether the name just read is that of the part; no name has characters written out. */
  private boolean isPart() throws Foreign {
    if (word.indexOf("&") >= 0) {
      throw new Foreign("a name with an & in it");
    }
    return word.toString().equals("left-out");
  }

  /** Reads a name up to a space or one of some characters; the first always belongs to it. */
  private String name(String ends) throws IOException {
    word.setLength(0);
    do {
      int c = next();
      keep(word, c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c);
    } while (peek() >= 0 && !isSpace(peek()) && ends.indexOf(peek()) < 0);
    return word.toString();
  }

  /** Reads a value. */
  private void value() throws IOException {
    next();
    word.setLength(0);
    int quote = space();
    if (quote == '"' || quote == '\'') {
      next();
      for (int c = next(); c >= 0 && c != quote; c = next()) {
        keep(word, c);
      }
    } else {
      while (peek() >= 0 && !isSpace(peek()) && peek() != '>') {
        keep(word, next());
      }
    }
  }

  /** Passes over what is no text of the page, and over its end tag. */
  private void raw(String element) throws IOException, Foreign {
    for (int c = next(); c >= 0; c = next()) {
      if (c == '<' && peek() == '!') {
        next();
        if (peek() == '-') {
          throw new Foreign("a comment within <" + element + ">");
        }
      } else if (c == '<' && peek() == '/') {
        next();
        StringBuilder said = new StringBuilder();
        while (isLetter(peek()) && said.length() <= element.length()) {
          said.append((char) next());
        }
        boolean whole = isSpace(peek()) || peek() == '/' || peek() == '>';
        if (whole && said.toString().equalsIgnoreCase(element)) {
          while (peek() >= 0 && next() != '>') {}
          return;
        }
      }
    }
  }
}
