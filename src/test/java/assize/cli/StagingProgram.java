package assize.cli;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Stages pages again and again, all of one letter each time, and says what it does.
 *
 * <p>Run as a program of its own, to be killed from outside.
 */
final class StagingProgram {
  static final int PAGES = 40;
  static final int LENGTH = 20_000;

  private StagingProgram() {}

  static Path page(Path folder, int i) {
    return folder.resolve(i % 2 == 0 ? "even" : "odd").resolve("page-" + i + ".html");
  }

  /** Takes the folder and how often to write all pages; the last time it waits before placing. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    int times = Integer.parseInt(args[1]);
    for (int time = 0; time < times; time++) {
      try (OutputTransaction outputs = new OutputTransaction()) {
        String text = String.valueOf((char) ('a' + time)).repeat(LENGTH);
        for (int i = 0; i < PAGES; i++) {
          outputs.stage(page(folder, i), text);
          System.out.println("staged");
        }
        if (time == times - 1 && System.in.read() < 0) {
          return;
        }
        System.out.println("placing");
        outputs.commit();
      }
      System.out.println("placed");
    }
  }
}
