package assize.docs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The program as somebody runs it in a folder of their own. */
record Program(Path folder) {

  /** What it said, messages and results as they came, and how it ended. */
  record ProgramResult(int exit, String text) {}

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|\\S+");

  /** Runs a command line that begins with {@code assize}; a word may stand in double quotes. */
  ProgramResult run(String line) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xshare:auto"));
    words.addAll(List.of("-cp", System.getProperty("java.class.path", ""), "assize.cli.Main"));
    WORD.matcher(line)
        .results()
        .skip(1)
        .map(word -> word.group(1) == null ? word.group() : word.group(1))
        .forEach(words::add);
    ProcessBuilder builder =
        new ProcessBuilder(words).directory(folder.toFile()).redirectErrorStream(true);
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    Process process = builder.start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new ProgramResult(process.waitFor(), text);
  }
}
