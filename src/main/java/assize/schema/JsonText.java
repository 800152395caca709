package assize.schema;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes maps, lists, texts, numbers and truth values as JSON (RFC 8259) that people can read. */
public final class JsonText {
  private static final int WIDE = 100;

  private JsonText() {}

  public static String of(Map<String, Object> object) {
    return write(object, "") + "\n";
  }

  private static String write(Object value, String indent) {
    if (value instanceof Map<?, ?> map) {
      List<String> members =
          map.entrySet().stream()
              .map(
                  it -> quoted(it.getKey().toString()) + ": " + write(it.getValue(), indent + "  "))
              .toList();
      return enclosed(members, '{', '}', indent);
    }
    if (value instanceof Collection<?> list) {
      return enclosed(list.stream().map(it -> write(it, indent + "  ")).toList(), '[', ']', indent);
    }
    return value instanceof Boolean
        ? value.toString()
        : value instanceof BigDecimal number ? number.toPlainString() : quoted(value.toString());
  }

  /** Puts parts on one line if they are short, else each on its own. */
  private static String enclosed(List<String> parts, char open, char close, String indent) {
    String line = open + String.join(", ", parts) + close;
    boolean isShort = indent.length() + line.length() <= WIDE && line.indexOf('\n') < 0;
    String inner = indent + "  ";
    return isShort
        ? line
        : parts.stream()
            .map(part -> inner + part)
            .collect(Collectors.joining(",\n", open + "\n", "\n" + indent + close));
  }

  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.chars()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                out.append('\\').append((char) c);
              } else if (c < 0x20) {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                out.append((char) c);
              }
            });
    return out.append('"').toString();
  }
}
