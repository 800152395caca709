package assize.cli;

import assize.record.VehicleRecord;
import assize.ruleset.RuleSetSchema;
import assize.schema.FileSchema;
import assize.schema.JsonSchemaWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes what an editor needs to help with rule sets and records. */
@Command(
    name = "schema",
    description = "Writes what lets an editor complete and check rule sets and records.",
    mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(
      arity = "0..1",
      paramLabel = "DIR",
      description = "The folder that rule sets and records lie in; default: this one.")
  private Path folder = Path.of("");

  SchemaCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Map<Path, FileSchema> files = new LinkedHashMap<>();
    files.put(folder.resolve(Modeline.RECORD), VehicleRecord.SCHEMA);
    files.put(folder.resolve(Modeline.RULE_SET), RuleSetSchema.SCHEMA);
    AtomicFileWriter.check(files.keySet());
    List<Path> taken =
        files.entrySet().stream()
            .filter(it -> !Modeline.isFree(it.getKey(), it.getValue()))
            .map(Map.Entry::getKey)
            .toList();
    if (!taken.isEmpty()) {
      taken.forEach(it -> terminal.error("error: " + it + " is there already and is no schema"));
      terminal.error("Nothing was written; move the file, or name another folder.");
      return Exit.BAD_INPUT;
    }
    try (OutputTransaction outputs = new OutputTransaction()) {
      files.forEach((path, schema) -> outputs.stage(path, JsonSchemaWriter.of(schema)));
      outputs.commit();
    }
    files.keySet().forEach(it -> terminal.result(it.toString()));
    terminal.result("Put this on top of a record in the same folder:");
    terminal.result("  " + Modeline.of(Modeline.RECORD));
    terminal.result("and this on top of a rule set:");
    terminal.result("  " + Modeline.of(Modeline.RULE_SET));
    return Exit.DONE;
  }
}
