package assize.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Folders of many small records that differ in what is found. */
public final class ResultsFixture {
  private static final Path RULES = Path.of("src/test/resources/assize/cli/small/rules.yaml");

  private ResultsFixture() {}

  /**
   * Writes a small standard and records of it, {@code v00000} and so on: every third has the wrong
   * button, every fifth does not show its key.
   *
   * @param edition the standard's edition
   */
  public static void write(Path folder, String edition, int from, int to) throws IOException {
    Files.createDirectories(folder);
    String rules = Files.readString(RULES);
    Files.writeString(
        folder.resolve("rules.yaml"),
        rules.replace("edition: \"1\"", "edition: \"" + edition + "\""));
    for (int i = from; i < to; i++) {
      Files.writeString(folder.resolve(id(i) + ".yaml"), record(i));
    }
  }

  static String id(int i) {
    return String.format(Locale.ROOT, "v%05d", i);
  }

  private static String record(int i) {
    return "record: "
        + id(i)
        + "\nrules: rules.yaml\nvehicle: {name: The dropside of member "
        + i
        + ", model: X1}\nnumbers: {chassis: X1-"
        + (100 + i % 150)
        + "}\n"
        + (i % 7 == 0 ? "" : "inspected: {on: 2026-0" + (1 + i % 9) + "-14}\n")
        + "observations:\n  horn-button: {finish: "
        + (i % 3 == 0 ? "chrome" : "nickel")
        + "}\n"
        + (i % 5 == 0 ? "" : "  door-key: {finish: " + (i % 2 == 0 ? "chrome" : "nickel") + "}\n");
  }
}
