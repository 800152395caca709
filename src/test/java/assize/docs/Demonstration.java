package assize.docs;

import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The records of the demonstration, judged as they stand and by rule sets that differ a little. */
final class Demonstration {
  private static final Path RULES = Path.of("rules");
  private static final Path TRUCKS = RULES.resolve("tarrowby-type-l");
  private static final Path MOTORCYCLES = RULES.resolve("quillhurst-q.yaml");

  private final Map<String, Judgment> judged = new TreeMap<>();

  Demonstration() throws IOException {
    RuleSet trucks = rules(TRUCKS, "", "");
    judge("l45-4388", "l45-4388", trucks);
    judge("l41-half-recorded", "l41-half-recorded", trucks);
    judge("q-1187", "q-1187", rules(MOTORCYCLES, "", ""));
    judge("l45-4388/areas", "l45-4388", rules(TRUCKS, "method: sum", "method: areas"));
    judge(
        "l45-4388/no-worth",
        "l45-4388",
        rules(TRUCKS, "    aspect_points: {finish: 1, material: 1, origin: 2}\n", ""));
  }

  /** Returns the judgment of a record, {@code RECORD} or {@code RECORD/VARIANT}. */
  Judgment of(String name) {
    return Optional.ofNullable(judged.get(name))
        .orElseThrow(() -> new AssertionError("no such record: " + name));
  }

  private void judge(String name, String record, RuleSet rules) {
    VehicleRecord vehicle = good(RecordReader.read(RULES.resolve(record + ".yaml"), rules));
    judged.put(name, Judge.judge(rules, vehicle, Optional.empty()));
  }

  private static RuleSet rules(Path path, String what, String instead) throws IOException {
    List<Path> paths;
    try (Stream<Path> found = Files.walk(path)) {
      paths = found.filter(it -> it.toString().endsWith(".yaml")).sorted().toList();
    }
    List<SourceFile> files = new ArrayList<>();
    boolean changed = what.isEmpty();
    for (Path file : paths) {
      String text = Files.readString(file);
      changed |= text.contains(what);
      files.add(
          new SourceFile(file.toString(), what.isEmpty() ? text : text.replace(what, instead)));
    }
    if (!changed) {
      throw new AssertionError("the rule set no longer says: " + what);
    }
    return good(RuleSetReader.parse(files));
  }

  private static <T> T good(Result<T> read) {
    return read.value().orElseThrow(() -> new AssertionError(read.diagnostics().toString()));
  }
}
