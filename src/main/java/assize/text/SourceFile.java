package assize.text;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One file as it was read: its name as a person would type it, its text, and where lines begin. Of
 * a table the text is that of its cells, one below the other.
 */
public final class SourceFile {
  private final String path;
  private final String text;
  private final int[] lineStarts;

  /** Where letters end that take two units; a line may have a million of them. */
  private final int[] pairEnds;

  private final List<String> cells;

  /**
   * Keeps a text under a name.
   *
   * @param path as shown in messages, with {@code /} between folders
   * @param text the whole text, line ends as they stand
   */
  public SourceFile(String path, String text) {
    this(path, text, List.of());
  }

  /**
   * Keeps the cells of a table.
   *
   * @param path as shown in messages, with {@code /} between folders
   * @param text the texts of the cells, each with a line end behind it
   * @param cells for each line the cell in which it stands, as messages name it: {@code cell F12}
   */
  public static SourceFile ofCells(String path, String text, List<String> cells) {
    return new SourceFile(path, text, List.copyOf(cells));
  }

  private SourceFile(String path, String text, List<String> cells) {
    this.path = path;
    this.text = text;
    this.cells = cells;
    this.lineStarts = lineStarts(text);
    this.pairEnds = pairEnds(text);
  }

  private static int[] pairEnds(String text) {
    return IntStream.range(1, text.length())
        .filter(i -> Character.isSurrogatePair(text.charAt(i - 1), text.charAt(i)))
        .toArray();
  }

  /** Returns how many letters of two units end before an offset. */
  private int pairsBefore(int offset) {
    int place = Arrays.binarySearch(pairEnds, offset);
    return place < 0 ? -place - 1 : place;
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[16 + text.length() / 32];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c > '\r') {
        continue;
      }
      boolean loneReturn = c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
      if (c == '\n' || loneReturn) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, 2 * count);
        }
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  public String path() {
    return path;
  }

  public String text() {
    return text;
  }

  /** Returns how many lines there are, an empty last one included. */
  public int lines() {
    return lineStarts.length;
  }

  /** Returns the line, counted from 1, in which the UTF-16 unit at {@code offset} stands. */
  public int lineAt(int offset) {
    int low = 0;
    int high = lineStarts.length - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (lineStarts[middle] <= offset) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low + 1;
  }

  /** Returns the column, counted from 1 in code points, of the unit at {@code offset}. */
  public int columnAt(int offset) {
    int start = lineStarts[lineAt(offset) - 1];
    int end = Math.min(offset, text.length());
    return end - start - (pairsBefore(end) - pairsBefore(start)) + 1;
  }

  /** Returns the text of a line, counted from 1, without its line end. */
  public String line(int line) {
    return text.substring(lineStarts[line - 1], lineEnd(line));
  }

  /** Returns the offset at which a line, counted from 1, ends, in front of what ends it. */
  public int lineEnd(int line) {
    int start = lineStarts[line - 1];
    int end = line < lineStarts.length ? lineStarts[line] : text.length();
    while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
      end--;
    }
    return end;
  }

  /**
   * Returns the offset of a place given as line and column, both from 1, columns in code points.
   */
  public int offset(int line, int column) {
    int start = lineStarts[Math.max(0, Math.min(line, lineStarts.length) - 1)];
    int offset = start;
    for (int i = 1; i < column && offset < text.length(); i++) {
      offset += Character.charCount(text.codePointAt(offset));
    }
    return offset;
  }

  /**
   * Returns how messages name the place of the unit at {@code offset}: {@code rules.yaml:3:5}, or
   * in a table {@code truck.xlsx, cell F12}.
   */
  public String place(int offset) {
    int line = lineAt(offset);
    return cell(line)
        .map(cell -> path + ", " + cell)
        .orElseGet(() -> path + ":" + line + ":" + columnAt(offset));
  }

  /** Returns what stands beside a line where it is shown: its number, or in a table {@code F12}. */
  public String margin(int line) {
    return cell(line)
        .map(cell -> cell.substring(cell.lastIndexOf(' ') + 1))
        .orElseGet(() -> Integer.toString(line));
  }

  private Optional<String> cell(int line) {
    return line <= cells.size() ? Optional.of(cells.get(line - 1)) : Optional.empty();
  }

  /** Returns a span of this file. */
  public Span span(int start, int end) {
    return new Span(this, start, end);
  }

  @Override
  public String toString() {
    return path;
  }
}
