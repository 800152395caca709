package assize.cli;

import assize.diagnostic.NameSuggestions;
import assize.merge.MergeReport;
import assize.merge.RecordField;
import assize.merge.TakeChoices;
import assize.record.Observation;
import assize.report.text.MergeJson;
import assize.report.text.MergeText;
import assize.schema.Field.Merging;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes what friends filled in into a record, and changes nothing that is there. */
@Command(
    name = "merge",
    description =
        "Shows what friends' records or filled-in tables would add to a record; with --write, adds"
            + " it.",
    mixinStandardHelpOptions = true)
final class MergeCommand implements Callable<Integer> {
  private static final List<String> KEYS =
      Stream.of(Merging.SAID, Merging.WITNESS).flatMap(Observation.TABLE::keys).toList();

  /** All of them are held at once, and each is compared with each where they differ. */
  private static final int MOST_FILES = 100;

  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record to add to.")
  private Path record = Path.of("");

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "FILE",
      description = "What friends filled in: records (.yaml) or tables (.xlsx, .csv).")
  private List<Path> files = List.of();

  @Option(names = "--write", description = "Write it; without, it is only shown.")
  private boolean write;

  @Option(
      names = "--take",
      paramLabel = "ITEM.ASPECT[=FILE]",
      description = "Use the other file's value; =FILE says whose, where several differ.")
  private List<String> take = List.of();

  @Option(
      names = "--rules",
      paramLabel = "RULESET",
      description = "Read all of them by this rule set, whatever the record names.")
  private Optional<Path> rules = Optional.empty();

  @Option(
      names = "--allow-other-vehicle",
      description = "Take from a file even if it seems to be about another vehicle.")
  private boolean otherVehicle;

  @Option(
      names = "--allow-other-edition",
      description = "Take from a file even if it was filled in for another edition.")
  private boolean otherEdition;

  @Option(names = "--json", description = "Print for other programs, as one object.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  MergeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (files.size() > MOST_FILES) {
      throw wrong(
          "merge takes at most " + MOST_FILES + " files at once; merge the others afterwards");
    }
    Map<RecordField, Optional<String>> taken = new LinkedHashMap<>();
    take.forEach(it -> taken(it, taken));
    MergeInputs.MergeOptions wanted =
        new MergeInputs.MergeOptions(rules, otherVehicle, otherEdition);
    InputLoader inputs = new InputLoader(terminal);
    Optional<MergeInputs.Read> read = new MergeInputs(inputs, wanted).read(record, files);
    if (read.isEmpty()) {
      return Exit.BAD_INPUT;
    }
    taken.keySet().forEach(part -> check(part, read.get()));
    MergeReport merged = read.get().merge(new TakeChoices(taken));
    if (write && !merged.applied().edited().pieces().isEmpty()) {
      if (!new RecordFile(record).replace(merged, inputs)) {
        return Exit.BAD_INPUT;
      }
      merged = merged.written();
    }
    terminal.out().print(json ? MergeJson.of(merged) + "\n" : MergeText.of(merged));
    return Exit.DONE;
  }

  private void taken(String typed, Map<RecordField, Optional<String>> taken) {
    int equals = typed.indexOf('=');
    String part = equals < 0 ? typed : typed.substring(0, equals);
    Optional<String> file =
        equals < 0 ? Optional.empty() : Optional.of(file(typed.substring(equals + 1)));
    int dot = part.indexOf('.');
    if (dot < 1 || dot == part.length() - 1) {
      throw wrong("--take: write an item, a dot and what is taken, as in horn-button.finish");
    }
    String key = part.substring(dot + 1);
    if (!KEYS.contains(key)) {
      throw wrong("--take: an item has no \"" + key + "\" that could be taken" + hint(key, KEYS));
    }
    taken.put(new RecordField(part.substring(0, dot), key), file);
  }

  private String file(String typed) {
    return files.stream()
        .map(RecordFileFinder::shown)
        .filter(it -> it.equals(typed.replace('\\', '/')) || it.endsWith("/" + typed))
        .findFirst()
        .orElseThrow(
            () ->
                wrong(
                    "--take: \""
                        + typed
                        + "\" is none of the files"
                        + hint(typed, files.stream().map(RecordFileFinder::shown).toList())));
  }

  private void check(RecordField part, MergeInputs.Read read) {
    if (read.says(part)) {
      return;
    }
    List<String> items = read.items();
    throw wrong(
        items.contains(part.item())
            ? "--take: none of the files says anything of " + part
            : "--take: none of the files has an item \""
                + part.item()
                + "\""
                + hint(part.item(), items));
  }

  private static String hint(String word, List<String> valid) {
    return NameSuggestions.hint(word, valid).map(it -> "; " + it).orElse("");
  }

  private ParameterException wrong(String reason) {
    return new ParameterException(spec.commandLine(), reason);
  }
}
