package assize.yaml;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.Node.Scalar.Style;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * Builds the tree of one file from Jackson's tokens, taking every text as typed and refusing what
 * YAML does behind people's backs.
 */
public final class YamlTreeBuilder {
  static final int DEEPEST = 64;
  static final int MOST_NODES = 200_000;
  static final int LONGEST_TEXT = 65_536;

  /** The library's own bounds, above ours, so that ours speak first. */
  private static final int LIBRARY_BOUND = 16 * 1024 * 1024;

  /**
   * The library copies a long text anew for each buffer that it reads: a large one keeps it quick.
   */
  private static final int BUFFER = 64 * 1024;

  private static final YAMLFactory FACTORY =
      YAMLFactory.builder()
          .loadSettings(
              LoadSettings.builder()
                  .setCodePointLimit(LIBRARY_BOUND)
                  .setBufferSize(BUFFER)
                  .setAllowDuplicateKeys(true)
                  .build())
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxStringLength(LIBRARY_BOUND)
                  .maxNameLength(LIBRARY_BOUND)
                  .maxNumberLength(LIBRARY_BOUND)
                  .build())
          .build();

  private final SourceFile file;
  private final String source;
  private final DiagnosticCollector problems;
  private final CodePointOffsets codePoints;
  private final JsonParser parser;
  private JsonToken token = JsonToken.NOT_AVAILABLE;
  private boolean stopped;
  private int nodes;
  private int lastEnd;
  private int lastNoted = -1;

  private YamlTreeBuilder(SourceFile file, String text, DiagnosticCollector problems) {
    this.file = file;
    this.source = file.text();
    this.problems = problems;
    this.codePoints = new CodePointOffsets(text);
    this.parser = FACTORY.createParser(ObjectReadContext.empty(), new WholeCharacters(text));
  }

  /** Reads a text as a tree with places; what its names mean is not asked. */
  public static Result<Node> read(SourceFile file) {
    DiagnosticCollector problems = new DiagnosticCollector();
    Optional<Node> root = parse(file, problems);
    return new Result<>(root.filter(it -> !problems.hasErrors()), problems.all());
  }

  /** Reads a file; empty where it is no YAML, has nothing in it, or goes beyond the bounds. */
  public static Optional<Node> parse(SourceFile file, DiagnosticCollector problems) {
    String readable = InvisibleCharacterCheck.check(file, problems);
    YamlTreeBuilder tree = new YamlTreeBuilder(file, readable, problems);
    try (tree.parser) {
      return tree.document();
    }
  }

  private Optional<Node> document() {
    Node root = next() ? node(0) : null;
    if (stopped) {
      return Optional.empty();
    }
    if (root == null || root instanceof Node.Scalar scalar && scalar.isNothing()) {
      problems.add(DiagnosticCode.EMPTY_FILE, file.span(0, 0), "there is nothing in this file");
      return Optional.empty();
    }
    if (next()) {
      int start = start();
      int dashes = source.lastIndexOf("---", start);
      boolean found = dashes >= lastEnd;
      Span at = found ? file.span(dashes, dashes + 3) : file.span(start, start);
      stop(
          Diagnostic.of(
              DiagnosticCode.SECOND_DOCUMENT,
              at,
              "a second YAML document begins here; one file holds one"));
    }
    return stopped ? Optional.empty() : Optional.of(root);
  }

  /** Reads what the present token begins; null where reading stopped. */
  private @Nullable Node node(int depth) {
    int start = start();
    nodes++;
    if (nodes > MOST_NODES) {
      return stop(
          Diagnostic.of(
              DiagnosticCode.TOO_MANY_ENTRIES,
              file.span(start, start),
              "a file may have at most " + MOST_NODES + " entries; this is one more"));
    }
    if (depth > DEEPEST) {
      return stop(
          Diagnostic.of(
              DiagnosticCode.TOO_DEEP,
              file.span(start, start),
              "names may be nested " + DEEPEST + " deep; this is deeper"));
    }
    noteProperties(start);
    return switch (token) {
      case START_OBJECT -> mapping(start, depth);
      case START_ARRAY -> sequence(start, depth);
      default -> scalar(start);
    };
  }

  private @Nullable Node mapping(int start, int depth) {
    List<Node.Entry> entries = new ArrayList<>();
    Map<String, Span> seen = new HashMap<>();
    while (next() && token == JsonToken.PROPERTY_NAME) {
      int at = start();
      noteProperties(at);
      Node.Scalar key = scalar(at);
      Node value = next() ? node(depth + 1) : null;
      if (value == null) {
        return null;
      }
      if (isWanted(key, seen)) {
        entries.add(new Node.Entry(key, value));
      }
    }
    return stopped ? null : new Node.Mapping(entries, file.span(start, end(start)));
  }

  private boolean isWanted(Node.Scalar key, Map<String, Span> seen) {
    if (key.style() == Style.PLAIN && key.text().equals("<<")) {
      problems.add(
          DiagnosticCode.MERGE_KEY,
          key.at(),
          "\"<<\" copies other entries in some readers of YAML and not in others",
          "write the entries out");
      return false;
    }
    String composed = Normalizer.normalize(key.text(), Normalizer.Form.NFC);
    Span first = seen.putIfAbsent(composed, key.at());
    if (first != null) {
      problems.add(
          Diagnostic.of(
                  DiagnosticCode.DUPLICATE_KEY,
                  key.at(),
                  "\"" + MessageParts.brief(key.text()) + "\" is written twice here",
                  "first in line " + first.line())
              .with(first, "first written here"));
    }
    return first == null;
  }

  private @Nullable Node sequence(int start, int depth) {
    List<Node> parts = new ArrayList<>();
    while (next() && token != JsonToken.END_ARRAY) {
      Node part = node(depth + 1);
      if (part == null) {
        return null;
      }
      parts.add(part);
    }
    return stopped ? null : new Node.Sequence(parts, file.span(start, end(start)));
  }

  /** Takes a text as typed: a plain one as it stands, any other as the library undid it. */
  private Node.Scalar scalar(int tokenStart) {
    int start = afterProperties(tokenStart);
    int end = end(start);
    while (end > start && Character.isWhitespace(source.charAt(end - 1))) {
      end--;
    }
    Span at = file.span(start, end);
    Style style = style(start, end);
    String written = style == Style.PLAIN ? at.text() : "";
    boolean asTyped =
        style == Style.PLAIN && written.indexOf('\n') < 0 && written.indexOf('\r') < 0;
    String text = asTyped ? written : parser.getString();
    if (text.length() > LONGEST_TEXT) {
      problems.add(
          DiagnosticCode.TEXT_TOO_LONG,
          at,
          "a text may have at most " + LONGEST_TEXT + " characters; this one has " + text.length());
      return new Node.Scalar("", style, at);
    }
    if (style == Style.QUOTED && InvisibleCharacterCheck.hasUnseen(text)) {
      problems.add(
          DiagnosticCode.CONTROL_CHARACTER,
          at,
          "this text has an escape that stands for a character that can't be seen",
          "delete the escape");
    }
    return new Node.Scalar(text, style, at);
  }

  private Style style(int start, int end) {
    char first = start < end ? source.charAt(start) : ' ';
    return switch (first) {
      case '"', '\'' -> Style.QUOTED;
      case '|', '>' -> Style.BLOCK;
      default -> Style.PLAIN;
    };
  }

  /** Reports an alias, anchor or tag: they are what begins with {@code *}, {@code &}, {@code !}. */
  private void noteProperties(int start) {
    for (int i = start; isProperty(i); i = nextWord(i)) {
      // A group in lines begins where its first name does: each place is looked at once.
      if (i > lastNoted) {
        lastNoted = i;
        noteProperty(file.span(i, wordEnd(i)));
      }
    }
  }

  private void noteProperty(Span at) {
    String shown = MessageParts.quoted(at.text());
    switch (at.text().charAt(0)) {
      case '*' ->
          problems.add(
              DiagnosticCode.ALIAS,
              at,
              shown + " is an alias: it stands for text elsewhere",
              "write the text out, or put it in quotes");
      case '&' ->
          problems.add(
              DiagnosticCode.ANCHOR,
              at,
              shown + " is an anchor, which has no use here",
              "leave it out, or put the text in quotes");
      default ->
          problems.add(
              DiagnosticCode.TAG,
              at,
              shown + " is a tag; every text is taken as typed",
              "leave it out, or put the text in quotes");
    }
  }

  private boolean isProperty(int at) {
    return at < source.length() && "*&!".indexOf(source.charAt(at)) >= 0;
  }

  private int afterProperties(int start) {
    int at = start;
    while (isProperty(at) && source.charAt(at) != '*') {
      at = nextWord(at);
    }
    return at == start ? at : Math.min(at, Math.max(start, place(parser.currentLocation())));
  }

  private int wordEnd(int start) {
    int end = start;
    while (end < source.length()
        && !Character.isWhitespace(source.charAt(end))
        && (end == start || ",[]{}".indexOf(source.charAt(end)) < 0)) {
      end++;
    }
    return end;
  }

  private int nextWord(int start) {
    int next = wordEnd(start);
    while (next < source.length() && Character.isWhitespace(source.charAt(next))) {
      next++;
    }
    return next;
  }

  private int start() {
    return place(parser.currentTokenLocation());
  }

  private int place(TokenStreamLocation location) {
    return codePoints.unit(location.getCharOffset());
  }

  /** Returns where the current token ends; a group in lines ends where its last part does. */
  private int end(int start) {
    int end = place(parser.currentLocation());
    boolean isGroup = token.isStructEnd();
    boolean bracket = end > 0 && "]}".indexOf(source.charAt(end - 1)) >= 0;
    if (isGroup && !bracket) {
      end = lastEnd;
    }
    lastEnd = Math.max(start, end);
    return lastEnd;
  }

  private @Nullable Node stop(Diagnostic why) {
    problems.add(why);
    stopped = true;
    return null;
  }

  /** Goes on to the next token; says whether there is one. */
  private boolean next() {
    if (stopped) {
      return false;
    }
    try {
      JsonToken next = parser.nextToken();
      token = next == null ? JsonToken.NOT_AVAILABLE : next;
      return next != null;
    } catch (RuntimeException e) {
      // Beside its own exceptions the library lets some of the JDK's through (bad base64, numbers).
      stop(SyntaxErrorMessages.explain(e, file, codePoints, lastEnd));
      return false;
    }
  }
}
