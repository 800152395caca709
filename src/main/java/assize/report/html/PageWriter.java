package assize.report.html;

import java.io.Writer;

/** Gathers a page that one thread prints, in one text. */
final class PageWriter extends Writer {
  private static final int USUAL = 256 * 1024;

  private final StringBuilder page = new StringBuilder(USUAL);

  @Override
  public void write(int c) {
    page.append((char) c);
  }

  @Override
  public void write(char[] some, int from, int length) {
    page.append(some, from, length);
  }

  @Override
  public void write(String text) {
    page.append(text);
  }

  @Override
  public void write(String text, int from, int length) {
    page.append(text, from, from + length);
  }

  @Override
  public void flush() {}

  @Override
  public void close() {}

  @Override
  public String toString() {
    return page.toString();
  }
}
