package assize.redaction;

import java.net.IDN;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Characters written as codes in links and in HTML: percent-encoded (RFC 3986, 2.1) or by number
 * ({@code &#52;}); and names of hosts in Punycode (RFC 3492).
 */
final class Escapes {
  private static final int MOST_BYTES = 4;
  private static final int MOST_CODE_LENGTH = 12;
  private static final Pattern HOST = Pattern.compile("(?i)xn--[a-z0-9-]{1,59}");

  private Escapes() {}

  /**
   * A character and where its code ends.
   *
   * @param end where it begins if there is no code
   */
  record Escape(int point, int end) {}

  /** Says whether there may be any. */
  static boolean mayBeIn(String text) {
    return text.indexOf('%') >= 0 || text.contains("&#");
  }

  /** Reads the code that begins at a place of a text. */
  static Escape at(String text, int at) {
    return switch (text.charAt(at)) {
      case '%' -> percent(text, at);
      case '&' -> number(text, at);
      default -> new Escape(0, at);
    };
  }

  private static Escape percent(String text, int at) {
    ByteBuffer bytes = ByteBuffer.allocate(MOST_BYTES);
    int end = at;
    while (bytes.hasRemaining() && end + 2 < text.length() && text.charAt(end) == '%') {
      int high = digit(text.charAt(end + 1), 16);
      int low = digit(text.charAt(end + 2), 16);
      if (high < 0 || low < 0) {
        break;
      }
      bytes.put((byte) (high * 16 + low));
      end += 3;
    }
    bytes.flip();
    CharBuffer chars = CharBuffer.allocate(2);
    for (int count = 1; count <= bytes.limit(); count++) {
      ByteBuffer some = bytes.slice(0, count);
      CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(some, chars.clear(), true);
      if (!result.isError() && chars.position() > 0) {
        return new Escape(Character.codePointAt(chars.flip(), 0), at + 3 * count);
      }
    }
    return new Escape(0, at);
  }

  private static Escape number(String text, int at) {
    int from = at + 1;
    if (from >= text.length() || text.charAt(from) != '#') {
      return new Escape(0, at);
    }
    from++;
    boolean hex = from < text.length() && (text.charAt(from) == 'x' || text.charAt(from) == 'X');
    from += hex ? 1 : 0;
    int end = from;
    int point = 0;
    while (end < Math.min(text.length(), at + MOST_CODE_LENGTH)) {
      int digit = digit(text.charAt(end), hex ? 16 : 10);
      if (digit < 0 || !Character.isValidCodePoint(point)) {
        break;
      }
      point = point * (hex ? 16 : 10) + digit;
      end++;
    }
    if (end == from || !Character.isValidCodePoint(point)) {
      return new Escape(0, at);
    }
    return new Escape(point, end < text.length() && text.charAt(end) == ';' ? end + 1 : end);
  }

  private static int digit(char c, int radix) {
    return c < 0x80 ? Character.digit(c, radix) : -1;
  }

  /** Returns a text with each name of a host that is in Punycode changed. */
  static String hosts(String text, UnaryOperator<String> change) {
    if (!text.contains("--")) {
      return text;
    }
    return HOST.matcher(text)
        .replaceAll(
            host -> {
              String meant = IDN.toUnicode(host.group());
              String changed = change.apply(meant);
              return Matcher.quoteReplacement(changed.equals(meant) ? host.group() : changed);
            });
  }
}
