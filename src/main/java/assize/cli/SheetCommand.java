package assize.cli;

import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.newrecord.RecordHead;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.sheet.HtmlSheet;
import assize.report.sheet.InspectionView;
import assize.report.sheet.InspectionViewFactory;
import assize.report.sheet.SheetViewFactory;
import assize.ruleset.RuleSet;
import assize.spreadsheet.TableWriter;
import assize.text.SourceFile;
import assize.yaml.Document;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes what there is to look at on one vehicle, to be filled in where it stands. */
@Command(
    name = "sheet",
    description = "Writes an inspection sheet to fill in on paper, a phone or in a spreadsheet.",
    mixinStandardHelpOptions = true)
final class SheetCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(
      index = "0",
      paramLabel = "RULESET|RECORD",
      description = "A rule set, for a vehicle not looked at yet; or a record to go on with.")
  private Path path = Path.of("");

  @Mixin private VehicleOptions vehicle = new VehicleOptions();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description =
          "The file to write, by its ending a page, a workbook or CSV: .html, .xlsx, .csv;"
              + " default: reports/NAME-sheet.html.")
  private Optional<Path> out = Optional.empty();

  @Spec private CommandSpec spec = CommandSpec.create();

  SheetCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** A vehicle to look at, and the record that answers go into. */
  private record Sheet(Judgment judgment, Document text, String file) {}

  /** What a sheet is written as: said by the ending of its file. */
  private enum Form {
    HTML,
    XLSX,
    CSV;

    static Optional<Form> of(Path file) {
      String name = nameOf(file).toLowerCase(Locale.ROOT);
      return Arrays.stream(values()).filter(it -> name.endsWith(it.ending())).findFirst();
    }

    String ending() {
      return "." + name().toLowerCase(Locale.ROOT);
    }
  }

  @Override
  public Integer call() {
    Form form = out.map(this::form).orElse(Form.HTML);
    Optional<Sheet> sheet = RecordReader.isRecord(path) ? ofRecord() : ofRuleSet();
    sheet.ifPresent(it -> write(it, form));
    return sheet.isPresent() ? Exit.DONE : Exit.BAD_INPUT;
  }

  private Form form(Path file) {
    return Form.of(file)
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(),
                    "--out: the name of a sheet's file ends in "
                        + Arrays.stream(Form.values())
                            .map(Form::ending)
                            .collect(Collectors.joining(", "))));
  }

  private void write(Sheet sheet, Form form) {
    String name = sheet.judgment().vehicle().id() + "-sheet" + form.ending();
    Path file = out.orElseGet(() -> AtomicFileWriter.reports().resolve(name));
    switch (form) {
      case HTML -> AtomicFileWriter.writePage(file, page(sheet));
      case XLSX -> writeNew(file, table(sheet, TableWriter::xlsx));
      case CSV -> writeNew(file, table(sheet, TableWriter::csv));
    }
    terminal.result("wrote " + RecordFileFinder.shown(file));
  }

  /** Somebody may have filled in the table that stands there. */
  private static void writeNew(Path file, byte[] bytes) {
    AtomicFileWriter.check(List.of(file));
    try {
      if (Files.exists(file)
          && !(Files.size(file) == bytes.length
              && Arrays.equals(Files.readAllBytes(file), bytes))) {
        throw AtomicFileWriter.cannotWrite(
            file, "it is there already, and may be filled in; name a new file");
      }
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(file, e);
    }
    AtomicFileWriter.write(file, bytes);
  }

  /** How a table is written. */
  @FunctionalInterface
  private interface Table {
    byte[] of(InspectionView view, RuleSet rules, VehicleRecord record);
  }

  private static byte[] table(Sheet sheet, Table table) {
    Judgment judgment = sheet.judgment();
    return table.of(InspectionViewFactory.of(judgment), judgment.rules(), judgment.vehicle());
  }

  private static String page(Sheet sheet) {
    Document text = sheet.text();
    return HtmlSheet.render(
        SheetViewFactory.of(
            sheet.judgment(), sheet.file(), text.text(), text.marked(), text.root()));
  }

  private Optional<Sheet> ofRecord() {
    if (vehicle.areGiven()) {
      throw new ParameterException(
          spec.commandLine(), "a record says itself what the vehicle is; leave those options out");
    }
    Optional<Judgment> judged =
        new InputLoader(terminal)
            .judge(List.of(path), Optional.empty(), Optional.empty())
            .flatMap(it -> it.values().stream().findFirst())
            .map(InputLoader.Judged::judgment);
    return judged.flatMap(
        it ->
            Document.read(path, RecordFileFinder.shown(path))
                .value()
                .map(text -> new Sheet(it, text, nameOf(path))));
  }

  private Optional<Sheet> ofRuleSet() {
    InputLoader inputs = new InputLoader(terminal);
    Result<RuleSet> read = inputs.rules(path);
    inputs.report(read.diagnostics(), false);
    return read.value().map(this::ofRuleSet);
  }

  private Sheet ofRuleSet(RuleSet rules) {
    String name = vehicle.vehicle(rules, rules.id(), named()).name();
    VehicleRecord record = vehicle.vehicle(rules, RecordHead.idOf(name, rules), named());
    String file = record.id() + ".yaml";
    SourceFile text = new SourceFile(file, RecordHead.of(record));
    return new Sheet(
        Judge.judge(rules, record, Optional.empty()),
        Document.parse(text).value().orElseThrow(),
        file);
  }

  /** Returns how a record beside the rule set names it. */
  private String named() {
    try {
      return nameOf(path.toRealPath());
    } catch (IOException e) {
      return nameOf(path);
    }
  }

  private static String nameOf(Path file) {
    Path name = file.getFileName();
    return name == null ? file.toString() : name.toString();
  }
}
