package assize.fuzz;

import assize.merge.LocatedRecord;
import assize.merge.MergeApplier;
import assize.merge.Merger;
import assize.merge.TakeChoices;
import assize.record.RecordReader;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A friend's answers merged into a record: two records, parted by a zero byte. */
public final class MergeTarget {
  private static final RuleSet RULES = Checks.rules();
  private static final String MINE = Checks.file("record.yaml");

  private MergeTarget() {}

  /** Reads the rule set before any time is taken. */
  public static void fuzzerInitialize() {
    Checks.demand(!RULES.id().isEmpty(), "no rule set");
  }

  /** Tries one input; a single record is a friend's. */
  public static void fuzzerTestOneInput(byte[] data) {
    String[] both = Checks.text(data).split("\0", 2);
    Optional<LocatedRecord> theirs = record("theirs.yaml", both[0]);
    Optional<LocatedRecord> mine = record("mine.yaml", both.length > 1 ? both[1] : MINE);
    if (theirs.isPresent() && mine.isPresent()) {
      MergeApplier.apply(
          mine.get(),
          RULES,
          Merger.merge(
              RULES,
              mine.get(),
              List.of(theirs.get()),
              new TakeChoices(Map.of()),
              name -> name.length() % 2 == 0));
    }
  }

  private static Optional<LocatedRecord> record(String name, String text) {
    SourceFile file = new SourceFile(name, text);
    return RecordReader.parse(file, RULES).value().flatMap(it -> LocatedRecord.of(file, it));
  }
}
