package assize.report.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Writes JSON (RFC 8259), members in the order given. */
public final class Json {
  private final StringBuilder out = new StringBuilder();
  private boolean first = true;

  private Json() {}

  /** Begins an object. */
  public static Json object() {
    Json json = new Json();
    json.out.append('{');
    return json;
  }

  private StringBuilder name(String name) {
    if (!first) {
      out.append(", ");
    }
    first = false;
    return quote(name).append(": ");
  }

  /** Adds a text. */
  public Json text(String name, String value) {
    name(name);
    quote(value);
    return this;
  }

  /** Adds a text, or null where there is none. */
  public Json orNull(String name, Optional<String> value) {
    name(name);
    value.ifPresentOrElse(this::quote, () -> out.append("null"));
    return this;
  }

  /** Adds a truth value. */
  public Json flag(String name, boolean value) {
    name(name).append(value);
    return this;
  }

  /** Adds thousandths as an exact decimal. */
  public Json thousandths(String name, long value) {
    name(name).append(plain(BigDecimal.valueOf(value, 3)));
    return this;
  }

  /** Adds a whole number. */
  public Json whole(String name, long value) {
    name(name).append(value);
    return this;
  }

  /** Adds a number rounded half-even to so many decimals. */
  public Json number(String name, double value, int decimals) {
    name(name).append(plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN)));
    return this;
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** Adds an object. */
  public Json object(String name, Json value) {
    name(name).append(value);
    return this;
  }

  /** Adds a list of texts. */
  public Json texts(String name, Collection<String> values) {
    name(name).append('[');
    String between = "";
    for (String value : values) {
      out.append(between);
      quote(value);
      between = ", ";
    }
    out.append(']');
    return this;
  }

  /**
   * Adds a list of objects.
   *
   * @param indent white space before each object, which stands on a line of its own; empty: all on
   *     one line
   * @param fill fills an object from a value
   */
  public <T> Json objects(
      String name, String indent, Collection<T> values, BiConsumer<Json, T> fill) {
    name(name).append('[');
    String between = "";
    for (T value : values) {
      Json one = object();
      fill.accept(one, value);
      out.append(between);
      if (!indent.isEmpty()) {
        out.append('\n').append(indent);
      }
      out.append(one);
      between = indent.isEmpty() ? ", " : ",";
    }
    out.append(']');
    return this;
  }

  /** Returns a text in quotes. */
  static String quoted(String text) {
    Json json = new Json();
    json.quote(text);
    return json.out.toString();
  }

  private StringBuilder quote(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (isHidden(text, i)) {
            out.append("\\u").append(Integer.toHexString(0x10000 | c), 1, 5);
          } else {
            out.append(c);
          }
        }
      }
    }
    return out.append('"');
  }

  /** Says whether a character would steer a terminal, can't be seen, or is half of one. */
  private static boolean isHidden(String text, int i) {
    char c = text.charAt(i);
    if (Character.isSurrogate(c)) {
      int start = Character.isLowSurrogate(c) && i > 0 ? i - 1 : i;
      return !paired(text, i) || Character.getType(text.codePointAt(start)) == Character.FORMAT;
    }
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  private static boolean paired(String text, int i) {
    return Character.isHighSurrogate(text.charAt(i))
        ? i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))
        : i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
  }

  /** Returns the finished object. */
  @Override
  public String toString() {
    return out + "}";
  }
}
