package assize.cli;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Label;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.record.VehicleRecord;
import assize.report.text.DiagnosticPrinter;
import assize.report.text.Json;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import assize.yaml.RecordReader;
import assize.yaml.RuleSetReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what a command is given, each rule set once, and prints what is wrong with it. May be used
 * from several threads.
 */
final class Inputs {
  /** How many rule sets are held at once; where there are more, one is read again. */
  private static final int HELD = 32;

  private static final Set<Code> UNREADABLE =
      EnumSet.of(Code.NOT_READABLE, Code.FILE_TOO_LARGE, Code.NOT_UTF8, Code.CONTROL_CHARACTER);

  private final Terminal terminal;
  private final Map<Path, Result<RuleSet>> ruleSets =
      Collections.synchronizedMap(
          new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Path, Result<RuleSet>> eldest) {
              return size() > HELD;
            }
          });

  Inputs(Terminal terminal) {
    this.terminal = terminal;
  }

  /** A record and the rule set that it is judged by. */
  record Read(RuleSet rules, VehicleRecord vehicle) {}

  Result<RuleSet> rules(Path path) {
    return ruleSets.computeIfAbsent(
        path.normalize(),
        it ->
            isRecord(path)
                ? Result.failed(List.of(mistaken(path, "this is a record; name a rule set here")))
                : RuleSetReader.read(path));
  }

  private static Diagnostic mistaken(Path path, String message) {
    SourceFile file = new SourceFile(path.toString().replace('\\', '/'), "");
    return Diagnostic.of(Code.WRONG_SHAPE, file.span(0, 0), message);
  }

  /** Reads a record, and the rule set that it names unless another is given. */
  Result<Read> vehicle(Path path, Optional<Path> override) {
    List<Diagnostic> found = new ArrayList<>();
    Optional<Path> rulesAt = override;
    if (override.isEmpty()) {
      Result<Path> named = RecordReader.rulesOf(path);
      if (named.value().isEmpty() && rules(path).value().isPresent()) {
        return Result.failed(List.of(mistaken(path, "this is a rule set; name a record here")));
      }
      found.addAll(named.diagnostics());
      rulesAt = named.value();
    }
    if (rulesAt.isEmpty()) {
      return Result.failed(found);
    }
    Result<RuleSet> rules = rules(rulesAt.get());
    found.addAll(rules.diagnostics());
    if (rules.value().isEmpty()) {
      return Result.failed(found);
    }
    Result<VehicleRecord> vehicle = RecordReader.read(path, rules.value().get());
    found.addAll(vehicle.diagnostics());
    return new Result<>(
        vehicle.value().map(record -> new Read(rules.value().get(), record)),
        found.stream().distinct().toList());
  }

  /**
   * Reads records and judges them; where anything is wrong with one it is printed and none is
   * judged.
   *
   * @param override the rule set to judge by, whatever the records name
   * @param asOf the day on which departures with a date are looked at
   */
  Optional<Map<Path, Judgment>> judge(
      List<Path> records, Optional<Path> override, Optional<LocalDate> asOf) {
    List<Diagnostic> found = new ArrayList<>();
    Map<Path, Read> read = new LinkedHashMap<>();
    for (Path path : records) {
      Result<Read> one = vehicle(path, override);
      found.addAll(one.diagnostics());
      one.value().ifPresent(value -> read.put(path, value));
    }
    if (!report(found.stream().distinct().toList(), false)) {
      return Optional.empty();
    }
    Map<Path, Judgment> judged = new LinkedHashMap<>();
    read.forEach((path, one) -> judged.put(path, Judge.judge(one.rules(), one.vehicle(), asOf)));
    return Optional.of(judged);
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
      found.stream().sorted().map(Inputs::asJson).forEach(terminal::result);
    } else if (!found.isEmpty()) {
      terminal.err().print(DiagnosticPrinter.print(found, terminal.colored()));
    }
    return found.stream().noneMatch(Diagnostic::isError);
  }

  private static String asJson(Diagnostic one) {
    Json line =
        Json.object()
            .text("severity", one.code().severity().word())
            .text("code", one.code().id())
            .text("file", one.at().file().path())
            .whole("line", one.at().line())
            .whole("column", one.at().column())
            .text("message", one.message())
            .orNull("hint", one.hint());
    Optional<Label> related = one.related().stream().findFirst();
    return line.orNull("related", related.map(label -> label.at() + ": " + label.words()))
        .toString();
  }
}
