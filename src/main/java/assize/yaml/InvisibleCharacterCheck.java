package assize.yaml;

import assize.diagnostic.DiagnosticCode;
import assize.text.Ascii;
import assize.text.SourceFile;
import java.util.Locale;

/** Finds characters that can't be seen, or that change how the text around them is seen. */
public final class InvisibleCharacterCheck {
  private static final char MARK = '\uFEFF';
  private static final int MOST_REPORTED = 1000;

  private InvisibleCharacterCheck() {}

  /** Reports each of them, and returns the text with a harmless letter in its place. */
  public static String check(SourceFile file, DiagnosticCollector problems) {
    String text = file.text();
    return hasUnseen(text) ? cleaned(file, text, problems) : text;
  }

  private static String cleaned(SourceFile file, String text, DiagnosticCollector problems) {
    int reported = 0;
    StringBuilder clean = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      int length = Character.charCount(c);
      if (i == 0 && c == MARK || !isUnseen(c)) {
        clean.appendCodePoint(c);
      } else {
        if (reported++ <= MOST_REPORTED) {
          problems.add(
              DiagnosticCode.CONTROL_CHARACTER, file.span(i, i + length), message(c), "delete it");
        }
        clean.append("?".repeat(length));
      }
      i += length;
    }
    return clean.toString();
  }

  /** Says whether there is such a character in a text. */
  public static boolean hasUnseen(String text) {
    return Ascii.hasBesides(text, InvisibleCharacterCheck::isUnseen);
  }

  private static String message(int c) {
    String name =
        switch (c) {
          case 0 -> "a zero byte";
          case MARK -> "a byte order mark inside of the text";
          case 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068, 0x2069 ->
              "a mark that turns the direction of writing";
          default -> isSurrogate(c) ? "half of a character" : "a character that can't be seen";
        };
    return name + " stands here (" + number(c) + ")";
  }

  private static String number(int c) {
    return String.format(Locale.ROOT, "U+%04X", c);
  }

  private static boolean isUnseen(int c) {
    return c < 0x20 && c != '\t' && c != '\n' && c != '\r'
        || c >= 0x7F && c <= 0x9F && c != 0x85
        || c == MARK
        || c == 0xFFFE
        || c == 0xFFFF
        || c >= 0x202A && c <= 0x202E
        || c >= 0x2066 && c <= 0x2069
        || isSurrogate(c);
  }

  private static boolean isSurrogate(int c) {
    return c >= 0xD800 && c <= 0xDFFF;
  }
}
