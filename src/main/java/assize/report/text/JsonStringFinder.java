package assize.report.text;

import assize.text.Json;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The texts in a piece of JSON (RFC 8259) as {@link Json} writes it. */
public final class JsonStringFinder {
  private final String json;
  private final UnaryOperator<String> change;
  private final StringBuilder out = new StringBuilder();
  private int at;

  private JsonStringFinder(String json, UnaryOperator<String> change) {
    this.json = json;
    this.change = change;
  }

  /** Returns it with each text changed; names of members and numbers stay. */
  public static String change(String json, UnaryOperator<String> change) {
    return new JsonStringFinder(json, change).changed();
  }

  /** Returns every text in it, in its order. */
  public static List<String> of(String json) {
    List<String> texts = new ArrayList<>();
    change(
        json,
        text -> {
          texts.add(text);
          return text;
        });
    return texts;
  }

  private String changed() {
    while (at < json.length()) {
      if (json.charAt(at) != '"') {
        out.append(json.charAt(at++));
        continue;
      }
      int start = at;
      String text = text();
      boolean name = at < json.length() && json.charAt(at) == ':';
      out.append(name ? json.substring(start, at) : Json.quoted(change.apply(text)));
    }
    return out.toString();
  }

  /** Reads the text that begins here, and moves behind it. */
  private String text() {
    StringBuilder text = new StringBuilder();
    for (at++; json.charAt(at) != '"'; at++) {
      if (json.charAt(at) != '\\') {
        text.append(json.charAt(at));
        continue;
      }
      at++;
      switch (json.charAt(at)) {
        case 'n' -> text.append('\n');
        case 'r' -> text.append('\r');
        case 't' -> text.append('\t');
        case 'b' -> text.append('\b');
        case 'f' -> text.append('\f');
        case 'u' -> {
          text.append((char) Integer.parseInt(json.substring(at + 1, at + 5), 16));
          at += 4;
        }
        default -> text.append(json.charAt(at));
      }
    }
    at++;
    return text.toString();
  }
}
