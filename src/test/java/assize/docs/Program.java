package assize.docs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The program as somebody runs it in a folder of their own. */
record Program(Path folder) {

  /** What it said, messages and results as they came, and how it ended. */
  record Said(int exit, String text) {}

  /** Runs a command line that begins with {@code assize}; words are parted by single spaces. */
  Said run(String line) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xshare:auto"));
    words.addAll(List.of("-cp", System.getProperty("java.class.path", ""), "assize.cli.Main"));
    List<String> typed = List.of(line.split(" ", -1));
    words.addAll(typed.subList(1, typed.size()));
    ProcessBuilder builder =
        new ProcessBuilder(words).directory(folder.toFile()).redirectErrorStream(true);
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    Process process = builder.start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Said(process.waitFor(), text);
  }
}
