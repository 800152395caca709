package assize.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/**
 * Writes JSON (RFC 8259), members in the order given. Values are texts, numbers, truth values,
 * maps, lists, and objects of this class; an empty Optional is null. Nothing else escapes texts.
 */
public final class Json {
  private static final Layout LINE = new Layout(", ", ": ", 0, Json::quoted);
  private static final Layout LINES = new Layout(", ", ": ", 100, Json::quoted);
  private static final Layout COMPACT = new Layout(",", ":", 0, Json::ascii);

  private final Map<String, Object> members = new LinkedHashMap<>();

  private Json() {}

  /** Begins an object. */
  public static Json object() {
    return new Json();
  }

  /** Adds a value of any kind. */
  public Json value(String name, Object value) {
    members.put(name, value);
    return this;
  }

  /** Adds a text. */
  public Json text(String name, String value) {
    return value(name, value);
  }

  /** Adds a text, or null where there is none. */
  public Json orNull(String name, Optional<String> value) {
    return value(name, value);
  }

  /** Adds a truth value. */
  public Json flag(String name, boolean value) {
    return value(name, value);
  }

  /** Adds thousandths as an exact decimal. */
  public Json thousandths(String name, long value) {
    return value(name, plain(BigDecimal.valueOf(value, 3)));
  }

  /** Adds a whole number. */
  public Json whole(String name, long value) {
    return value(name, value);
  }

  /** Adds a number rounded half-even to so many decimals. */
  public Json number(String name, double value, int decimals) {
    return value(name, plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN)));
  }

  private static BigDecimal plain(BigDecimal value) {
    return value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
  }

  /** Adds an object. */
  public Json object(String name, Json value) {
    return value(name, value);
  }

  /** Adds a list of texts. */
  public Json texts(String name, Collection<String> values) {
    return value(name, List.copyOf(values));
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
    List<Json> objects = new ArrayList<>();
    for (T value : values) {
      Json one = object();
      fill.accept(one, value);
      objects.add(one);
    }
    return value(name, indent.isEmpty() ? objects : new OwnLines(indent, objects));
  }

  /** Objects of which each stands on a line of its own. */
  private record OwnLines(String indent, List<Json> all) {}

  /** Returns the finished object on one line, but for lists of objects with a line for each. */
  @Override
  public String toString() {
    return LINE.write(this, "");
  }

  /** Returns the finished object for people: what is too wide for a line is parted into several. */
  public static String inLines(Map<String, Object> object) {
    return LINES.write(object, "") + "\n";
  }

  /**
   * Returns the finished object for a page: in ASCII, and without what markup begins with, so that
   * no browser changes it.
   */
  public String inPage() {
    return COMPACT.write(this, "");
  }

  /** Returns a text in quotes; what can't be seen or would steer a terminal is escaped. */
  public static String quoted(String text) {
    return quoted(text, Json::isSeen);
  }

  /**
   * Returns a text in quotes.
   *
   * @param asIs says of each character whether it stands as it is; quotes and backslashes never do
   */
  public static String quoted(String text, IntPredicate asIs) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> append(out, c, asIs.test(c));
              }
            });
    return out.append('"').toString();
  }

  /** Returns a text in quotes; whatever is not plain ASCII, or begins markup, is escaped. */
  private static String ascii(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(c -> append(out, c, c >= ' ' && c <= '~' && "\"\\<>&".indexOf(c) < 0));
    return out.append('"').toString();
  }

  private static void append(StringBuilder out, int c, boolean asIs) {
    if (asIs) {
      out.appendCodePoint(c);
      return;
    }
    for (char unit : Character.toChars(c)) {
      out.append("\\u").append(Integer.toHexString(0x10000 | unit), 1, 5);
    }
  }

  private static boolean isSeen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }

  private interface Quoting {
    String quoted(String text);
  }

  /**
   * How values are laid out.
   *
   * @param width the longest line, where what is longer goes into several; 0: all on one line
   */
  private record Layout(String comma, String colon, int width, Quoting quoting) {
    String write(Object value, String indent) {
      if (value instanceof Json object) {
        return write(object.members, indent);
      }
      if (value instanceof Map<?, ?> map) {
        List<String> members =
            map.entrySet().stream()
                .map(it -> text(it.getKey()) + colon + write(it.getValue(), indent + "  "))
                .toList();
        return enclosed(members, '{', '}', indent);
      }
      if (value instanceof Collection<?> list) {
        List<String> parts = list.stream().map(it -> write(it, indent + "  ")).toList();
        return enclosed(parts, '[', ']', indent);
      }
      if (value instanceof OwnLines lines) {
        return lines.all().stream()
            .map(it -> "\n" + lines.indent() + write(it, indent))
            .collect(Collectors.joining(",", "[", "]"));
      }
      if (value instanceof Optional<?> optional) {
        return optional.map(it -> write(it, indent)).orElse("null");
      }
      if (value instanceof BigDecimal number) {
        return number.toPlainString();
      }
      return value instanceof Boolean || value instanceof Number ? value.toString() : text(value);
    }

    private String text(Object text) {
      return quoting.quoted(text.toString());
    }

    private String enclosed(List<String> parts, char open, char close, String indent) {
      String line = open + String.join(comma, parts) + close;
      boolean fits = indent.length() + line.length() <= width && line.indexOf('\n') < 0;
      String inner = "\n" + indent + "  ";
      return width == 0 || fits
          ? line
          : parts.stream()
              .collect(Collectors.joining("," + inner, open + inner, "\n" + indent + close));
    }
  }
}
