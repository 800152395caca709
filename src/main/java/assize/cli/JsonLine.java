package assize.cli;

import java.util.StringJoiner;

/** One JSON object on one line (RFC 8259). */
final class JsonLine {
  private final StringJoiner members = new StringJoiner(", ", "{", "}");

  JsonLine text(String name, String value) {
    members.add(quoted(name) + ": " + quoted(value));
    return this;
  }

  JsonLine orNull(String name, java.util.Optional<String> value) {
    members.add(quoted(name) + ": " + value.map(JsonLine::quoted).orElse("null"));
    return this;
  }

  JsonLine flag(String name, boolean value) {
    members.add(quoted(name) + ": " + value);
    return this;
  }

  /** Adds a number that is already worded as JSON has it. */
  JsonLine number(String name, String value) {
    members.add(quoted(name) + ": " + value);
    return this;
  }

  static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (c < 0x20 || c == 0x2028 || c == 0x2029) {
            out.append("\\u").append(Integer.toHexString(0x10000 | c), 1, 5);
          } else {
            out.append(c);
          }
        }
      }
    }
    return out.append('"').toString();
  }

  @Override
  public String toString() {
    return members.toString();
  }
}
