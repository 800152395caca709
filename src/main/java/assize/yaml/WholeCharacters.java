package assize.yaml;

import java.io.Reader;

/**
 * Reads a text in pieces of which none ends between the two halves of a character: the YAML library
 * fails where such a piece fills its buffer.
 */
final class WholeCharacters extends Reader {
  private final String text;
  private int at;

  WholeCharacters(String text) {
    this.text = text;
  }

  @Override
  public int read(char[] into, int offset, int length) {
    if (at == text.length()) {
      return -1;
    }
    int end = Math.min(text.length(), at + length);
    if (end - at > 1 && end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    text.getChars(at, end, into, offset);
    int read = end - at;
    at = end;
    return read;
  }

  @Override
  public void close() {}
}
