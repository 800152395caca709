package assize.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JsonTest {
  /** A soft hyphen, half a character, a whole one, and a tag that shows nothing. */
  private static final String ODD = "a\"\\\n\u0007\u00ad\ud800é\ud83d\ude9a\udb40\udc41<";

  @Test
  void escapesWhatCannotBeSeen() {
    assertThat(Json.quoted(ODD))
        .isEqualTo("\"a\\\"\\\\\\n\\u0007\\u00ad\\ud800é\ud83d\ude9a\\udb40\\udc41<\"");
  }

  @Test
  void aPageGetsPlainAsciiWithoutMarkup() {
    assertThat(Json.object().text("x", ODD).value("y", List.of(1, "&")).inPage())
        .isEqualTo(
            "{\"x\":\"a\\u0022\\u005c\\u000a\\u0007\\u00ad\\ud800\\u00e9\\ud83d\\ude9a"
                + "\\udb40\\udc41\\u003c\",\"y\":[1,\"\\u0026\"]}");
  }

  @Test
  void anObjectStandsOnOneLine() {
    assertThat(
            Json.object()
                .orNull("none", Optional.empty())
                .orNull("some", Optional.of("x"))
                .thousandths("points", 1500)
                .number("share", 0.25, 1)
                .whole("count", 0)
                .flag("right", true)
                .object("in", Json.object())
                .objects("list", "  ", List.of("a", "b"), (json, it) -> json.text("is", it)))
        .hasToString(
            "{\"none\": null, \"some\": \"x\", \"points\": 1.5, \"share\": 0.2, \"count\": 0,"
                + " \"right\": true, \"in\": {}, \"list\": [\n  {\"is\": \"a\"},\n  {\"is\": \"b\"}]}");
  }

  @Test
  void whatIsTooWideGoesIntoLines() {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("short", List.of(1, 2));
    object.put("long", List.of("x".repeat(60), "y".repeat(60)));
    assertThat(Json.inLines(object))
        .isEqualTo(
            "{\n  \"short\": [1, 2],\n  \"long\": [\n    \""
                + "x".repeat(60)
                + "\",\n    \""
                + "y".repeat(60)
                + "\"\n  ]\n}\n");
  }
}
