package assize.yaml;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.Node.Scalar.Style;
import java.io.StringReader;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * Builds the tree of one file from Jackson's tokens, taking every text as typed and refusing what
 * YAML does behind people's backs.
 */
public final class YamlTree {
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
  private final Problems problems;
  private final CodePoints codePoints;
  private final JsonParser parser;
  private boolean stopped;
  private int nodes;
  private int lastEnd;
  private int lastNoted = -1;

  private YamlTree(SourceFile file, String text, Problems problems) {
    this.file = file;
    this.problems = problems;
    this.codePoints = new CodePoints(text);
    this.parser = FACTORY.createParser(ObjectReadContext.empty(), new StringReader(text));
  }

  /** Reads a text as a tree with places; what its names mean is not asked. */
  public static Result<Node> read(SourceFile file) {
    Problems problems = new Problems();
    Optional<Node> root = parse(file, problems);
    return new Result<>(root.filter(it -> !problems.hasErrors()), problems.all());
  }

  /** Reads a file; empty where it is no YAML, has nothing in it, or goes beyond the bounds. */
  static Optional<Node> parse(SourceFile file, Problems problems) {
    String readable = Unseen.check(file, problems);
    YamlTree tree = new YamlTree(file, readable, problems);
    try (tree.parser) {
      return tree.document();
    }
  }

  private Optional<Node> document() {
    Optional<Node> root = next().flatMap(first -> node(first, 0));
    if (stopped) {
      return Optional.empty();
    }
    if (root.isEmpty() || root.get() instanceof Node.Scalar scalar && scalar.isNothing()) {
      problems.add(Code.NO_TEXT, file.span(0, 0), "there is nothing in this file");
      return Optional.empty();
    }
    if (next().isPresent()) {
      int start = start();
      int dashes = file.text().lastIndexOf("---", start);
      boolean found = dashes >= lastEnd;
      Span at = found ? file.span(dashes, dashes + 3) : file.span(start, start);
      return stop(
          Diagnostic.of(
              Code.SECOND_DOCUMENT, at, "a second YAML document begins here; one file holds one"));
    }
    return stopped ? Optional.empty() : root;
  }

  private Optional<Node> node(JsonToken token, int depth) {
    int start = start();
    nodes++;
    if (nodes > MOST_NODES) {
      return stop(
          Diagnostic.of(
              Code.TOO_MANY_ENTRIES,
              file.span(start, start),
              "a file may have at most " + MOST_NODES + " entries; this is one more"));
    }
    if (depth > DEEPEST) {
      return stop(
          Diagnostic.of(
              Code.TOO_DEEP,
              file.span(start, start),
              "names may be nested " + DEEPEST + " deep; this is deeper"));
    }
    noteProperties(start);
    return switch (token) {
      case START_OBJECT -> mapping(start, depth);
      case START_ARRAY -> sequence(start, depth);
      default -> Optional.of(scalar(start));
    };
  }

  private Optional<Node> mapping(int start, int depth) {
    List<Node.Entry> entries = new ArrayList<>();
    Map<String, Span> seen = new HashMap<>();
    Optional<JsonToken> token = next();
    while (token.isPresent() && token.get() == JsonToken.PROPERTY_NAME) {
      noteProperties(start());
      Node.Scalar key = scalar(start());
      Optional<Node> value = next().flatMap(first -> node(first, depth + 1));
      if (value.isEmpty()) {
        return Optional.empty();
      }
      if (isWanted(key, seen)) {
        entries.add(new Node.Entry(key, value.get()));
      }
      token = next();
    }
    return token.map(end -> new Node.Mapping(entries, file.span(start, end(start))));
  }

  private boolean isWanted(Node.Scalar key, Map<String, Span> seen) {
    if (key.style() == Style.PLAIN && key.text().equals("<<")) {
      problems.add(
          Code.MERGE_KEY,
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
                  Code.REPEATED_KEY,
                  key.at(),
                  "\"" + Words.brief(key.text()) + "\" is written twice here",
                  "first in line " + first.line())
              .with(first, "first written here"));
    }
    return first == null;
  }

  private Optional<Node> sequence(int start, int depth) {
    List<Node> parts = new ArrayList<>();
    Optional<JsonToken> token = next();
    while (token.isPresent() && token.get() != JsonToken.END_ARRAY) {
      Optional<Node> part = node(token.get(), depth + 1);
      if (part.isEmpty()) {
        return Optional.empty();
      }
      parts.add(part.get());
      token = next();
    }
    return token.map(end -> new Node.Sequence(parts, file.span(start, end(start))));
  }

  /** Takes a text as typed: a plain one from the file itself, any other as the library undid it. */
  private Node.Scalar scalar(int tokenStart) {
    int start = afterProperties(tokenStart);
    int end = end(start);
    while (end > start && Character.isWhitespace(file.text().charAt(end - 1))) {
      end--;
    }
    Span at = file.span(start, end);
    String written = at.text();
    Style style =
        written.startsWith("\"") || written.startsWith("'")
            ? Style.QUOTED
            : written.startsWith("|") || written.startsWith(">") ? Style.BLOCK : Style.PLAIN;
    boolean oneLine = written.indexOf('\n') < 0 && written.indexOf('\r') < 0;
    String text = style == Style.PLAIN && oneLine ? written : parser.getString();
    if (text.length() > LONGEST_TEXT) {
      problems.add(
          Code.TEXT_TOO_LONG,
          at,
          "a text may have at most " + LONGEST_TEXT + " characters; this one has " + text.length());
      return new Node.Scalar("", style, at);
    }
    if (style == Style.QUOTED && Unseen.hasUnseen(text)) {
      problems.add(
          Code.CONTROL_CHARACTER,
          at,
          "this text has an escape that stands for a character that can't be seen",
          "delete the escape");
    }
    return new Node.Scalar(text, style, at);
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
    String shown = Words.quoted(at.text());
    switch (at.text().charAt(0)) {
      case '*' ->
          problems.add(
              Code.ALIAS,
              at,
              shown + " is an alias: it stands for text elsewhere",
              "write the text out, or put it in quotes");
      case '&' ->
          problems.add(
              Code.ANCHOR,
              at,
              shown + " is an anchor, which has no use here",
              "leave it out, or put the text in quotes");
      default ->
          problems.add(
              Code.TAG,
              at,
              shown + " is a tag; every text is taken as typed",
              "leave it out, or put the text in quotes");
    }
  }

  private boolean isProperty(int at) {
    return at < file.text().length() && "*&!".indexOf(file.text().charAt(at)) >= 0;
  }

  private int afterProperties(int start) {
    int at = start;
    while (isProperty(at) && file.text().charAt(at) != '*') {
      at = nextWord(at);
    }
    return Math.min(at, Math.max(start, codePoints.unit(parser.currentLocation().getCharOffset())));
  }

  private int wordEnd(int start) {
    int end = start;
    String text = file.text();
    while (end < text.length()
        && !Character.isWhitespace(text.charAt(end))
        && (end == start || ",[]{}".indexOf(text.charAt(end)) < 0)) {
      end++;
    }
    return end;
  }

  private int nextWord(int start) {
    int next = wordEnd(start);
    String text = file.text();
    while (next < text.length() && Character.isWhitespace(text.charAt(next))) {
      next++;
    }
    return next;
  }

  private int start() {
    return codePoints.unit(parser.currentTokenLocation().getCharOffset());
  }

  /** Returns where the current token ends; a group in lines ends where its last part does. */
  private int end(int start) {
    int end = codePoints.unit(parser.currentLocation().getCharOffset());
    boolean isGroup = parser.currentToken() != null && parser.currentToken().isStructEnd();
    boolean bracket = end > 0 && "]}".indexOf(file.text().charAt(end - 1)) >= 0;
    if (isGroup && !bracket) {
      end = lastEnd;
    }
    lastEnd = Math.max(start, end);
    return lastEnd;
  }

  private <T> Optional<T> stop(Diagnostic why) {
    problems.add(why);
    stopped = true;
    return Optional.empty();
  }

  private Optional<JsonToken> next() {
    if (stopped) {
      return Optional.empty();
    }
    try {
      return Optional.ofNullable(parser.nextToken());
    } catch (RuntimeException e) {
      // Beside its own exceptions the library lets some of the JDK's through (bad base64, numbers).
      return stop(SyntaxWords.explain(e, file, codePoints, lastEnd));
    }
  }
}
