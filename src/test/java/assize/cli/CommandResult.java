package assize.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What one command said, and how it ended. */
record CommandResult(int exit, String out, String err) {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  static CommandResult of(Object... words) {
    return onTerminal(false, words);
  }

  static CommandResult onTerminal(boolean colored, Object... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    String[] args = java.util.Arrays.stream(words).map(String::valueOf).toArray(String[]::new);
    int exit = Main.run(new Terminal(stream(out), stream(err), colored), args);
    return new CommandResult(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, false, StandardCharsets.UTF_8);
  }

  /** Returns standard output as the one JSON value that it is. */
  JsonNode json() {
    return JSON.readTree(out);
  }

  /** Returns standard output as JSON, one value a line. */
  List<JsonNode> jsonLines() {
    return out.lines().map(JSON::readTree).toList();
  }

  static JsonNode json(String text) {
    return JSON.readTree(text);
  }
}
