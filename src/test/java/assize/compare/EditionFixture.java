package assize.compare;

import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.nio.file.Path;

/** Two editions of a small standard, and a vehicle. */
public final class EditionFixture {
  public static final Path FOLDER = Path.of("src/test/resources/assize/handbook");

  private EditionFixture() {}

  public static RuleSet newer() {
    return RuleSetReader.read(FOLDER.resolve("newer.yaml")).value().orElseThrow();
  }

  public static RuleSet older() {
    return RuleSetReader.read(FOLDER.resolve("older.yaml")).value().orElseThrow();
  }

  static VehicleRecord truck() {
    return RecordReader.read(FOLDER.resolve("truck.yaml"), newer()).value().orElseThrow();
  }
}
