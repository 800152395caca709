package assize.yaml;

import java.util.Optional;

/** Finds text whose characters take two or four bytes each, with or without a byte order mark. */
final class WideText {
  /** How much of a file is looked at. */
  private static final int LOOKED_AT = 4096;

  /** Of so many characters all but one are ASCII where a text has no mark. */
  private static final int ONE_OF = 4;

  private WideText() {}

  /** Names the encoding of such a text; empty where it may be UTF-8. */
  static Optional<String> of(byte[] bytes) {
    if (begins(bytes, 0xFF, 0xFE, 0, 0) || begins(bytes, 0, 0, 0xFE, 0xFF)) {
      return Optional.of("UTF-32");
    }
    if (begins(bytes, 0xFF, 0xFE) || begins(bytes, 0xFE, 0xFF)) {
      return Optional.of("UTF-16");
    }
    if (isWide(bytes, 4, 0) || isWide(bytes, 4, 3)) {
      return Optional.of("UTF-32");
    }
    return isWide(bytes, 2, 0) || isWide(bytes, 2, 1) ? Optional.of("UTF-16") : Optional.empty();
  }

  private static boolean begins(byte[] bytes, int... first) {
    for (int i = 0; i < first.length; i++) {
      if (i >= bytes.length || bytes[i] != (byte) first[i]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Says whether a text is mostly ASCII of so many bytes each: zeros but for one. UTF-8 has a zero
   * for the character U+0000 alone, of which no text has many.
   *
   * @param at which of the bytes of a character is not zero
   */
  private static boolean isWide(byte[] bytes, int width, int at) {
    int all = Math.min(bytes.length, LOOKED_AT) / width;
    int ascii = 0;
    for (int i = 0; i < all; i++) {
      boolean isAscii = bytes[i * width + at] > 0;
      for (int j = 0; j < width; j++) {
        isAscii &= j == at || bytes[i * width + j] == 0;
      }
      ascii += isAscii ? 1 : 0;
    }
    return all > 1 && ascii >= all - all / ONE_OF;
  }
}
