package assize.edit;

import assize.text.SourceFile;
import java.util.Optional;
import java.util.regex.Pattern;

/** Looks at the letters around a place of a text. */
record LineScanner(SourceFile file) {
  private static final Pattern REMARK = Pattern.compile("[ \\t]*|[ \\t]+#[^\\r\\n]*");

  private static final Pattern EMPTY =
      Pattern.compile("(?:\\r\\n|\\r|\\n)[ \\t]*(?:\\r\\n|\\r|\\n)");

  private String text() {
    return file.text();
  }

  /** Returns where the line of a place begins. */
  int start(int offset) {
    return file.offset(file.lineAt(offset), 1);
  }

  /** Returns where the line of a place ends, in front of what ends it. */
  int end(int offset) {
    return Math.max(offset, file.lineEnd(file.lineAt(offset)));
  }

  /** Says whether behind a place nothing stands in its line but a remark. */
  boolean isLast(int offset) {
    return REMARK.matcher(text()).region(offset, end(offset)).matches();
  }

  /** Says whether two places stand in one line. */
  boolean isOneLine(int from, int to) {
    return file.lineAt(from) == file.lineAt(to);
  }

  /** Returns how far a place is indented, if nothing but spaces stands before it. */
  Optional<Integer> indent(int offset) {
    return indent(offset, " ");
  }

  /** Returns how far a place is indented, spaces and the dashes of lists before it. */
  Optional<Integer> indentInList(int offset) {
    return indent(offset, " -");
  }

  private Optional<Integer> indent(int offset, String letters) {
    int start = start(offset);
    int at = offset;
    while (at > start && letters.indexOf(text().charAt(at - 1)) >= 0) {
      at--;
    }
    return at == start ? Optional.of(offset - start) : Optional.empty();
  }

  /** Returns what ends the line of a place, or the line before where it is the last. */
  String lineEnd(int offset) {
    String here = lineEndAt(end(offset));
    if (!here.isEmpty()) {
      return here;
    }
    int start = start(offset);
    if (start == 0) {
      return "\n";
    }
    return start > 1 && text().startsWith("\r\n", start - 2)
        ? "\r\n"
        : text().substring(start - 1, start);
  }

  private String lineEndAt(int at) {
    return text().startsWith("\r\n", at)
        ? "\r\n"
        : at < text().length() ? text().substring(at, at + 1) : "";
  }

  /** Returns the first place from here on that is no blank in the same line. */
  int afterBlanks(int offset) {
    int at = offset;
    while (at < text().length() && " \t".indexOf(text().charAt(at)) >= 0) {
      at++;
    }
    return at;
  }

  boolean has(int offset, char letter) {
    return offset < text().length() && text().charAt(offset) == letter;
  }

  /** Says whether an empty line stands between two places. */
  boolean isApart(int from, int to) {
    return EMPTY.matcher(text()).region(from, to).find();
  }
}
