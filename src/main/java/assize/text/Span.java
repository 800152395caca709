package assize.text;

/**
 * A piece of a file.
 *
 * @param file the file
 * @param start its first UTF-16 unit, counted from 0
 * @param end the unit after its last; equal to {@code start} for a place between two
 */
public record Span(SourceFile file, int start, int end) implements Comparable<Span> {
  public Span {
    if (start < 0 || end < start || end > file.text().length()) {
      throw new IllegalArgumentException(file + " has no span " + start + ".." + end);
    }
  }

  /** Returns the line of the first unit, from 1. */
  public int line() {
    return file.lineAt(start);
  }

  /** Returns the column of the first unit, from 1, in code points. */
  public int column() {
    return file.columnAt(start);
  }

  /** Returns the text of the piece. */
  public String text() {
    return file.text().substring(start, end);
  }

  /** Returns the piece of this piece that begins {@code offset} units in. */
  public Span part(int offset, int length) {
    int from = Math.min(start + offset, end);
    return new Span(file, from, Math.min(from + length, end));
  }

  @Override
  public int compareTo(Span other) {
    int byFile = file.path().compareTo(other.file.path());
    return byFile != 0 ? byFile : Integer.compare(start, other.start);
  }

  @Override
  public String toString() {
    return file.place(start);
  }
}
