package assize.cli;

import assize.diagnostic.AcceptedWarning;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.RelatedLocation;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.redaction.RedactedJudgment;
import assize.report.text.DiagnosticFormatter;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.FileChecksum;
import assize.text.Json;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what a command is given, each rule set once, and prints what is wrong with it. May be used
 * from several threads.
 */
final class InputLoader {
  /** How many rule sets are held at once; where there are more, one is read again. */
  private static final int HELD = 32;

  private static final Set<DiagnosticCode> UNREADABLE =
      EnumSet.of(
          DiagnosticCode.CANNOT_OPEN_FILE,
          DiagnosticCode.FILE_TOO_LARGE,
          DiagnosticCode.NOT_UTF8,
          DiagnosticCode.CONTROL_CHARACTER);

  private final Terminal terminal;
  private final Set<Path> read = Collections.synchronizedSet(new LinkedHashSet<>());
  private final Map<Path, LoadedRules> ruleSets =
      Collections.synchronizedMap(
          new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Path, LoadedRules> eldest) {
              return size() > HELD;
            }
          });

  InputLoader(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * A record and the rule set that it is judged by.
   *
   * @param judge judges by the rule set
   */
  record Read(RuleSet rules, Judge judge, VehicleRecord vehicle) {
    /**
     * Judges the vehicle.
     *
     * @param asOf the day on which departures with a date are looked at
     */
    Judged judged(Optional<LocalDate> asOf) {
      return new Judged(judge, asOf, judge.judge(vehicle, asOf));
    }
  }

  /** A judgment, and what it takes to judge the vehicle again by less. */
  record Judged(Judge judge, Optional<LocalDate> asOf, Judgment judgment) {
    /** Returns what others may see of it. */
    RedactedJudgment copy() {
      return RedactedJudgment.of(judge, judgment, asOf);
    }
  }

  /** A rule set as it was read, and who judges by it. */
  private record LoadedRules(Result<RuleSet> rules, Optional<Judge> judge) {
    static LoadedRules of(Result<RuleSet> rules) {
      return new LoadedRules(rules, rules.value().map(Judge::by));
    }
  }

  /** Returns what was read so far, and what was looked for: files, and folders of rule sets. */
  Set<Path> read() {
    return Set.copyOf(read);
  }

  Result<RuleSet> rules(Path path) {
    return noted(path).rules();
  }

  private LoadedRules noted(Path path) {
    read.add(path);
    LoadedRules held = held(path);
    Result<RuleSet> rules = held.rules();
    note(RuleSetReader.folderOf(path), rules.value().map(RuleSet::files), rules.diagnostics());
    return held;
  }

  /** Notes the files of a rule set or record, and those that it names and that are not there. */
  private void note(Path folder, Optional<List<FileChecksum>> files, List<Diagnostic> diagnostics) {
    files.orElse(List.of()).forEach(file -> read.add(folder.resolve(file.path())));
    diagnostics.stream()
        .filter(it -> it.code() == DiagnosticCode.FILE_NOT_FOUND && it.at().start() < it.at().end())
        .forEach(it -> read.add(folder.resolve(it.at().text().replaceAll("[\"']", ""))));
  }

  private LoadedRules held(Path path) {
    return ruleSets.computeIfAbsent(
        path.normalize(),
        it ->
            LoadedRules.of(
                isRecord(path)
                    ? Result.failed(
                        List.of(mistaken(path, "this is a record; name a rule set here")))
                    : RuleSetReader.read(path)));
  }

  private static Diagnostic mistaken(Path path, String message) {
    SourceFile file = new SourceFile(path.toString().replace('\\', '/'), "");
    return Diagnostic.of(DiagnosticCode.WRONG_STRUCTURE, file.span(0, 0), message);
  }

  /** Reads a record, and the rule set that it names unless another is given. */
  Result<Read> vehicle(Path path, Optional<Path> override) {
    read.add(path);
    List<Diagnostic> found = new ArrayList<>();
    Optional<Path> rulesAt = override;
    if (override.isEmpty()) {
      Result<Path> named = RecordReader.rulesOf(path);
      if (named.value().isEmpty() && rules(path).value().isPresent()) {
        return Result.failed(List.of(mistaken(path, "this is a rule set; name a record here")));
      }
      found.addAll(named.diagnostics());
      note(AtomicFileWriter.folderOf(path), Optional.empty(), named.diagnostics());
      rulesAt = named.value();
    }
    if (rulesAt.isEmpty()) {
      return Result.failed(found);
    }
    LoadedRules held = noted(rulesAt.get());
    found.addAll(held.rules().diagnostics());
    Optional<RuleSet> rules = held.rules().value();
    if (rules.isEmpty()) {
      return Result.failed(found);
    }
    Result<VehicleRecord> vehicle = RecordReader.read(path, rules.get());
    found.addAll(vehicle.diagnostics());
    note(
        AtomicFileWriter.folderOf(path),
        vehicle.value().map(VehicleRecord::files),
        vehicle.diagnostics());
    Optional<Read> whole =
        held.judge()
            .flatMap(it -> vehicle.value().map(record -> new Read(rules.get(), it, record)));
    Optional<Diagnostic> crowded =
        whole.flatMap(
            it ->
                it.judge()
                    .crowded(it.vehicle())
                    .map(
                        words ->
                            Diagnostic.of(
                                DiagnosticCode.TOO_MANY,
                                it.vehicle().at(),
                                words,
                                "say in the record when the vehicle was built")));
    crowded.ifPresent(found::add);
    return new Result<>(
        crowded.isPresent() ? Optional.empty() : whole, found.stream().distinct().toList());
  }

  /**
   * Reads records and judges them; where anything is wrong with one it is printed and none is
   * judged.
   *
   * @param override the rule set to judge by, whatever the records name
   * @param asOf the day on which departures with a date are looked at
   */
  Optional<Map<Path, Judged>> judge(
      List<Path> records, Optional<Path> override, Optional<LocalDate> asOf) {
    List<Diagnostic> found = new ArrayList<>();
    Map<Path, Read> both = new LinkedHashMap<>();
    for (Path path : records) {
      Result<Read> one = Bug.in(path, () -> vehicle(path, override));
      found.addAll(open(one));
      one.value().ifPresent(value -> both.put(path, value));
    }
    if (!report(found.stream().distinct().toList(), false)) {
      return Optional.empty();
    }
    Map<Path, Judged> judged = new LinkedHashMap<>();
    both.forEach((path, one) -> judged.put(path, Bug.in(path, () -> one.judged(asOf))));
    return Optional.of(judged);
  }

  /** Returns what was found but what the record accepts. */
  private static List<Diagnostic> open(Result<Read> one) {
    List<AcceptedWarning> accepted =
        one.value().map(it -> it.vehicle().accepted()).orElse(List.of());
    return one.diagnostics().stream()
        .filter(it -> it.isError() || accepted.stream().noneMatch(by -> by.covers(it)))
        .toList();
  }

  /** Returns what keeps anybody from telling whether a file is a record. */
  List<Diagnostic> unreadable(Path path) {
    return RecordReader.rulesOf(path).diagnostics().stream()
        .filter(it -> UNREADABLE.contains(it.code()))
        .toList();
  }

  boolean isRecord(Path path) {
    return RecordReader.isRecord(path);
  }

  /** Prints what was found; says whether nothing of it is an error. */
  boolean report(List<Diagnostic> found, boolean json) {
    if (json) {
      found.stream().sorted().map(it -> asJson(it, Optional.empty())).forEach(terminal::result);
    } else if (!found.isEmpty()) {
      terminal.err().print(DiagnosticFormatter.print(found, terminal.colored()));
    }
    return found.stream().noneMatch(Diagnostic::isError);
  }

  /**
   * Returns one thing that was found as an object on one line.
   *
   * @param because why it is accepted, where it is
   */
  static String asJson(Diagnostic one, Optional<String> because) {
    Json line =
        Json.object()
            .text("severity", one.code().severity().word())
            .text("code", one.code().id())
            .text("file", one.at().file().path())
            .whole("line", one.at().line())
            .whole("column", one.at().column())
            .text("message", one.message())
            .orNull("hint", one.hint());
    Optional<RelatedLocation> related = one.related().stream().findFirst();
    return line.orNull("related", related.map(label -> label.at() + ": " + label.words()))
        .texts("about", one.subjects())
        .orNull("accepted", because)
        .toString();
  }
}
