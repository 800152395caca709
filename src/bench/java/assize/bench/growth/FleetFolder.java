package assize.bench.growth;

import assize.bench.Generated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a folder of records and their rule set, for a results page. */
public final class FleetFolder {
  private static final int ITEMS = 20;
  private static final int SOURCES = 10;

  private FleetFolder() {}

  /** Takes the folder, which is made, and how many records go there. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    Files.writeString(folder.resolve("rules.yaml"), Generated.rules(ITEMS, SOURCES));
    for (int i = 0; i < Integer.parseInt(arguments[1]); i++) {
      Path record = folder.resolve("record-" + i + ".yaml");
      Files.writeString(record, Generated.record(ITEMS, "rules.yaml", i));
    }
  }
}
