package assize.report.text;

import assize.edit.TextEdit;
import assize.text.SourceFile;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines of a text as they read after a change.
 *
 * @param line the line they stand for, or that they stand behind, from 1
 * @param isNew whether they are put in behind that line
 * @param lines how they read
 */
record ChangedLines(int line, boolean isNew, List<String> lines) {
  ChangedLines {
    lines = List.copyOf(lines);
  }

  /** Returns what changes by pieces of text, from the first line to the last. */
  static List<ChangedLines> of(SourceFile file, List<TextEdit> pieces) {
    List<ChangedLines> all = new ArrayList<>();
    int i = 0;
    while (i < pieces.size()) {
      int first = i;
      boolean isNew = isNew(pieces.get(i));
      int lastLine = lastLine(pieces.get(i));
      i++;
      while (i < pieces.size()
          && isNew(pieces.get(i)) == isNew
          && pieces.get(i).at().line() == lastLine) {
        lastLine = Math.max(lastLine, lastLine(pieces.get(i)));
        i++;
      }
      List<TextEdit> group = pieces.subList(first, i);
      int line = group.get(0).at().line();
      String text = isNew ? joined(group).replaceFirst("\\r\\n|\\r|\\n", "") : read(file, group);
      all.add(new ChangedLines(line, isNew, List.of(text.split("\\r\\n|\\r|\\n", -1))));
    }
    return all;
  }

  private static boolean isNew(TextEdit piece) {
    boolean between = piece.at().start() == piece.at().end();
    return between && (piece.text().startsWith("\n") || piece.text().startsWith("\r"));
  }

  private static int lastLine(TextEdit piece) {
    return piece.at().file().lineAt(piece.at().end());
  }

  private static String joined(List<TextEdit> pieces) {
    StringBuilder out = new StringBuilder();
    pieces.forEach(it -> out.append(it.text()));
    return out.toString();
  }

  /** Returns the lines that pieces stand in, with what is put in or replaced. */
  private static String read(SourceFile file, List<TextEdit> pieces) {
    int at = file.offset(pieces.get(0).at().line(), 1);
    StringBuilder out = new StringBuilder();
    for (TextEdit piece : pieces) {
      out.append(file.text(), at, piece.at().start()).append(piece.text());
      at = piece.at().end();
    }
    int end = at;
    while (end < file.text().length() && "\r\n".indexOf(file.text().charAt(end)) < 0) {
      end++;
    }
    return out.append(file.text(), at, end).toString();
  }
}
