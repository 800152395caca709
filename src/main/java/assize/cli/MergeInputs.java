package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.merge.CellValueReader;
import assize.merge.LocatedRecord;
import assize.merge.MergeApplier;
import assize.merge.MergeReport;
import assize.merge.MergeResult;
import assize.merge.Merger;
import assize.merge.RecordField;
import assize.merge.SameVehicleCheck;
import assize.merge.TakeChoices;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.spreadsheet.FilledSheet;
import assize.spreadsheet.TableReader;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads a record and what friends filled in, all by the record's rule set. */
final class MergeInputs {
  /** What is wrong with files that a friend's record names, seen from the owner's folder. */
  private static final Set<DiagnosticCode> OF_FILES =
      EnumSet.of(DiagnosticCode.PATH_OUTSIDE, DiagnosticCode.CANNOT_OPEN_FILE);

  private final InputLoader inputs;
  private final MergeOptions wanted;
  private final List<Diagnostic> found = new ArrayList<>();

  MergeInputs(InputLoader inputs, MergeOptions wanted) {
    this.inputs = inputs;
    this.wanted = wanted;
  }

  /**
   * What is asked for.
   *
   * @param rules the rule set to read by, whatever the record names
   */
  record MergeOptions(Optional<Path> rules, boolean otherVehicle, boolean otherEdition) {}

  /** A record and what is to be held against it. */
  record Read(RuleSet rules, LocatedRecord mine, List<LocatedRecord> theirs, Path folder) {

    MergeReport merge(TakeChoices taken) {
      MergeResult merge = Merger.merge(rules, mine, theirs, taken, this::hasFile);
      MergeApplier.Applied applied = MergeApplier.apply(mine, rules, merge);
      List<String> names = theirs.stream().map(LocatedRecord::name).toList();
      return new MergeReport(rules, mine, names, merge, applied, false);
    }

    private boolean hasFile(String name) {
      try {
        return Files.isRegularFile(folder.resolve(name));
      } catch (InvalidPathException e) {
        return false;
      }
    }

    boolean says(RecordField part) {
      return theirs.stream().anyMatch(it -> it.says(part));
    }

    List<String> items() {
      return theirs.stream()
          .flatMap(it -> it.record().observations().keySet().stream())
          .distinct()
          .toList();
    }
  }

  /** Reads all; where anything is wrong with one it is printed and nothing is given. */
  Optional<Read> read(Path record, List<Path> files) {
    Result<InputLoader.Read> own = inputs.vehicle(record, wanted.rules());
    found.addAll(own.diagnostics());
    Path folder = AtomicFileWriter.folderOf(record);
    Optional<Read> read =
        own.value()
            .flatMap(
                it ->
                    LocatedRecord.of(it.vehicle().at().file(), it.vehicle())
                        .map(mine -> new Read(it.rules(), mine, List.of(), folder)));
    List<LocatedRecord> theirs = new ArrayList<>();
    for (Path file : files) {
      read.flatMap(it -> theirs(file, record, it)).ifPresent(theirs::add);
    }
    boolean good = inputs.report(found.stream().distinct().toList(), false);
    return read.filter(it -> good).map(it -> new Read(it.rules(), it.mine(), theirs, folder));
  }

  private Optional<LocatedRecord> theirs(Path file, Path record, Read read) {
    if (isSame(file, record)) {
      return refuse(
          file,
          DiagnosticCode.WRONG_STRUCTURE,
          "this is the record itself; name a friend's file here");
    }
    if (TableReader.isTable(file)) {
      return table(file, read);
    }
    Optional<RuleSet> named = rulesOf(file);
    if (named.isPresent() && !named.get().id().equals(read.rules().id())) {
      return refuse(
          file,
          DiagnosticCode.DIFFERENT_EDITION,
          "this was filled in for rule set \""
              + named.get().id()
              + "\"; the record's is \""
              + read.rules().id()
              + "\"");
    }
    Result<VehicleRecord> told = RecordReader.readAlone(file, read.rules());
    if (told.value().isEmpty() && !RecordReader.isRecord(file) && isRuleSet(file)) {
      return refuse(
          file, DiagnosticCode.WRONG_STRUCTURE, "this is a rule set; name a friend's record here");
    }
    told.diagnostics().stream()
        .filter(it -> it.code() != DiagnosticCode.RECORD_FOR_OTHER_EDITION || wanted.otherEdition())
        .forEach(found::add);
    return told.value().flatMap(it -> accepted(it, read));
  }

  private Optional<LocatedRecord> table(Path file, Read read) {
    String shown = RecordFileFinder.shown(file);
    Result<FilledSheet> filled = TableReader.read(file, shown, read.rules(), read.mine().record());
    List<Diagnostic> said = filled.diagnostics().stream().map(this::asWanted).toList();
    found.addAll(said);
    if (filled.value().isEmpty() || said.stream().anyMatch(Diagnostic::isError)) {
      return Optional.empty();
    }
    List<CellValueReader.Cell> cells =
        filled.value().get().entries().stream()
            .map(it -> new CellValueReader.Cell(it.item(), it.key(), it.yaml(), it.at()))
            .toList();
    Result<LocatedRecord> told = CellValueReader.read(shown, read.mine(), read.rules(), cells);
    found.addAll(told.diagnostics());
    return told.value();
  }

  /** Refuses a table that was made for something else, unless it is to be taken all the same. */
  private Diagnostic asWanted(Diagnostic it) {
    if (it.code() == DiagnosticCode.SHEET_FOR_OTHER_RECORD && !wanted.otherVehicle()) {
      return as(DiagnosticCode.DIFFERENT_VEHICLE, it, SameVehicleCheck.OTHER_VEHICLE);
    }
    return it.code() == DiagnosticCode.RECORD_FOR_OTHER_EDITION && !wanted.otherEdition()
        ? as(DiagnosticCode.DIFFERENT_EDITION, it, SameVehicleCheck.OTHER_EDITION)
        : it;
  }

  private static Diagnostic as(DiagnosticCode code, Diagnostic it, String hint) {
    return new Diagnostic(
        code, it.at(), it.message(), Optional.of(hint), it.related(), it.subjects());
  }

  private Optional<LocatedRecord> accepted(VehicleRecord told, Read read) {
    SourceFile text = told.at().file();
    List<Diagnostic> faults = new ArrayList<>();
    RecordReader.parse(text, read.rules(), read.folder()).diagnostics().stream()
        .filter(it -> OF_FILES.contains(it.code()))
        .forEach(faults::add);
    Optional<LocatedRecord> theirs = LocatedRecord.of(text, told);
    theirs.ifPresent(
        it -> {
          SameVehicleCheck vehicles = new SameVehicleCheck(read.rules(), read.mine(), it);
          if (!wanted.otherVehicle()) {
            vehicles.otherVehicle().ifPresent(faults::add);
          }
          if (!wanted.otherEdition()) {
            vehicles.otherEdition().ifPresent(faults::add);
          }
        });
    found.addAll(faults);
    return theirs.filter(it -> faults.isEmpty());
  }

  /** Returns the rule set that a friend's record names, if it lies beside it. */
  private Optional<RuleSet> rulesOf(Path file) {
    return RecordReader.rulesOf(file).value().flatMap(it -> inputs.rules(it).value());
  }

  private static boolean isRuleSet(Path file) {
    return RuleSetReader.read(file).value().isPresent();
  }

  private static boolean isSame(Path one, Path other) {
    try {
      return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
    } catch (IOException e) {
      return false;
    }
  }

  private <T> Optional<T> refuse(Path file, DiagnosticCode code, String message) {
    SourceFile shown = new SourceFile(RecordFileFinder.shown(file), "");
    found.add(Diagnostic.of(code, shown.span(0, 0), message));
    return Optional.empty();
  }
}
