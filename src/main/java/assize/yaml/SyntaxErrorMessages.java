package assize.yaml;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.text.SourceFile;
import assize.text.Span;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** Says in plain words why a text is not YAML, and where. */
public final class SyntaxErrorMessages {
  /** The bound of YAML 1.2.2, section 7.4, for a name in front of its colon. */
  private static final int LONGEST_NAME = 1024;

  private final SourceFile file;
  private final CodePointOffsets codePoints;
  private final int lastEnd;

  private SyntaxErrorMessages(SourceFile file, CodePointOffsets codePoints, int lastEnd) {
    this.file = file;
    this.codePoints = codePoints;
    this.lastEnd = lastEnd;
  }

  /**
   * Explains a refusal of the library. Its own location can be that of the token before, so the
   * marks of its cause are taken.
   *
   * @param lastEnd where the last good token ended
   */
  public static Diagnostic explain(
      RuntimeException refusal, SourceFile file, CodePointOffsets codePoints, int lastEnd) {
    SyntaxErrorMessages words = new SyntaxErrorMessages(file, codePoints, lastEnd);
    for (Throwable cause = refusal; cause != null; cause = cause.getCause()) {
      if (cause instanceof MarkedYamlEngineException marked) {
        return words.explain(marked);
      }
    }
    String message = String.valueOf(refusal.getMessage());
    if (message.contains("Expected a property name")) {
      return words.at(
          DiagnosticCode.INVALID_KEY,
          words.firstAfter(lastEnd),
          "a name is one word; here a list or a group stands in its place");
    }
    if (message.contains("Version")) {
      return words.at(
          DiagnosticCode.SYNTAX,
          words.firstAfter(0),
          "this version of YAML is not known; leave the line out");
    }
    int next = words.firstAfter(lastEnd);
    boolean tagged = next < file.text().length() && file.text().charAt(next) == '!';
    return words.at(
        tagged ? DiagnosticCode.TAG : DiagnosticCode.SYNTAX,
        next,
        tagged
            ? "this begins with \"!\", which is a tag; leave it out, or put the text in quotes"
            : "nothing can be made of what stands here");
  }

  private Diagnostic explain(MarkedYamlEngineException refusal) {
    String context = Optional.ofNullable(refusal.getContext()).orElse("");
    String problem = refusal.getProblem();
    int at = place(refusal.getProblemMark());
    int from = refusal.getContextMark().isPresent() ? place(refusal.getContextMark()) : at;
    Optional<Integer> tab = tabBefore(at);
    if (tab.isPresent()) {
      return at(
          DiagnosticCode.TAB_INDENTATION,
          tab.get(),
          "a tab stands here; lines are indented by spaces, two for each step");
    }
    if (context.contains("quoted scalar") && problem.contains("end of stream")
        || context.contains("quoted scalar") && problem.contains("document separator")) {
      return at(DiagnosticCode.SYNTAX, from, "this quote is never closed");
    }
    if (problem.contains("escape")) {
      return at(
          DiagnosticCode.SYNTAX,
          Math.max(from, at - 1),
          "a backslash in double quotes begins an escape, and this is none",
          "write \\\\ or use single quotes");
    }
    if (problem.contains("(TAB)")) {
      return at(
          DiagnosticCode.TAB_INDENTATION,
          at,
          "a tab stands here where a space is wanted",
          "write a space");
    }
    if (problem.contains("cannot start any token")) {
      return at(
          DiagnosticCode.SYNTAX,
          at,
          "a text can't begin with " + MessageParts.quoted(character(at)),
          "put it in quotes");
    }
    if (problem.contains("mapping values are not allowed")) {
      return secondColon(at);
    }
    if (problem.contains("sequence entries are not allowed")) {
      return at(
          DiagnosticCode.SYNTAX,
          at,
          "a list can't begin in the middle of a line",
          "begin a new line");
    }
    if (problem.contains("could not find expected ':'")) {
      return at(
          DiagnosticCode.SYNTAX,
          from,
          "a name needs a colon and a space behind it, or this is too long for one");
    }
    return explainStructure(context, problem, from, at);
  }

  private Diagnostic explainStructure(String context, String problem, int from, int at) {
    if (context.contains("flow sequence")) {
      return unclosed("[", "]", from, at);
    }
    if (context.contains("flow mapping")) {
      return unclosed("{", "}", from, at);
    }
    if (context.contains("flow node")) {
      return at(
          DiagnosticCode.SYNTAX,
          at,
          at < file.text().length()
              ? MessageParts.quoted(character(at))
                  + " can't stand here; is something missing before it?"
              : "the file ends before the bracket is closed");
    }
    if (context.contains("alias")) {
      return at(
          DiagnosticCode.ALIAS,
          from,
          "a text can't begin with \"*\", which is an alias",
          "put it in quotes");
    }
    if (context.contains("anchor")) {
      return at(
          DiagnosticCode.ANCHOR,
          from,
          "a text can't begin with \"&\", which is an anchor",
          "put it in quotes");
    }
    if (context.contains("tag") || problem.contains("tag")) {
      return at(
          DiagnosticCode.TAG,
          from,
          "a text can't begin with \"!\", which is a tag",
          "put it in quotes");
    }
    if (context.contains("directive") || problem.contains("directive")) {
      return at(
          DiagnosticCode.SYNTAX, from, "a line can't begin with \"%\"", "put the text in quotes");
    }
    if (context.contains("block scalar")) {
      return at(DiagnosticCode.SYNTAX, at, "behind | or > nothing may stand but + - and one digit");
    }
    if (context.contains("block mapping") || context.contains("block collection")) {
      return at(
          DiagnosticCode.SYNTAX,
          at,
          "this is indented differently from the lines it belongs with, or lacks its"
              + " name and colon");
    }
    if (problem.contains("document start")) {
      return at(DiagnosticCode.SYNTAX, at, MessageParts.quoted(character(at)) + " closes nothing");
    }
    return at(DiagnosticCode.SYNTAX, at, "nothing can be made of what stands here");
  }

  private Diagnostic secondColon(int at) {
    String before = file.text().substring(lineStart(at), at);
    if (before.length() > LONGEST_NAME) {
      return at(
          DiagnosticCode.SYNTAX,
          firstAfter(lineStart(at)),
          "a name may have at most " + LONGEST_NAME + " characters; this one has more");
    }
    boolean second = before.matches(".*[^\\s\"']:\\s.*");
    return second
        ? at(
            DiagnosticCode.SYNTAX,
            at,
            "a second colon stands in this line; a text with a colon and a space needs quotes",
            "put the text in quotes")
        : at(
            DiagnosticCode.SYNTAX,
            at,
            "a colon can't stand here: is this line indented further than it should be?");
  }

  private Diagnostic unclosed(String open, String close, int from, int at) {
    Diagnostic diagnostic =
        at(
            DiagnosticCode.SYNTAX,
            from,
            "this \""
                + open
                + "\" is not closed by \""
                + close
                + "\", or a comma is missing in it");
    Span other = span(at);
    return diagnostic.with(other, "here a comma or \"" + close + "\" is wanted");
  }

  private Optional<Integer> tabBefore(int at) {
    int start = lineStart(at);
    String text = file.text();
    for (int i = start;
        i < text.length() && (text.charAt(i) == ' ' || text.charAt(i) == '\t');
        i++) {
      if (text.charAt(i) == '\t') {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private int lineStart(int at) {
    return file.offset(file.lineAt(at), 1);
  }

  private String character(int at) {
    return at < file.text().length() ? Character.toString(file.text().codePointAt(at)) : "";
  }

  private int place(Optional<Mark> mark) {
    return mark.map(it -> codePoints.unit(it.getIndex())).orElse(lastEnd);
  }

  private int firstAfter(int offset) {
    int at = offset;
    String text = file.text();
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private Span span(int at) {
    int length = at < file.text().length() ? character(at).length() : 0;
    boolean lineEnd = length > 0 && "\r\n".indexOf(file.text().charAt(at)) >= 0;
    return file.span(at, at + (lineEnd ? 0 : length));
  }

  private Diagnostic at(DiagnosticCode code, int at, String message) {
    return Diagnostic.of(code, span(at), message);
  }

  private Diagnostic at(DiagnosticCode code, int at, String message, String hint) {
    return Diagnostic.of(code, span(at), message, hint);
  }
}
