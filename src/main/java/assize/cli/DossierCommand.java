package assize.cli;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes up what sources differ on, each item as a page of its own. */
@Command(
    name = "dossier",
    description = "Writes up disputed items, each as a page that both sides can sign.",
    mixinStandardHelpOptions = true)
final class DossierCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record of one vehicle.")
  private Path path = Path.of("");

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "ITEM",
      description = "Items on which sources differ; default: every disputed item.")
  private List<String> items = List.of();

  @Option(
      names = "--rules",
      paramLabel = "RULESET",
      description = "Judge by this rule set, whatever the record names.")
  private Optional<Path> rules = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where to write the pages; default: reports.")
  private Optional<Path> out = Optional.empty();

  @Mixin private AsOfOption asOf = new AsOfOption();

  @Option(
      names = "--redact",
      description =
          "Write the copies for others: without what is private, ends of numbers masked, checked.")
  private boolean redact;

  DossierCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Path folder = out.orElseGet(AtomicFileWriter::reports);
    return new InputLoader(terminal)
        .judge(List.of(path), rules, asOf.day())
        .flatMap(judged -> judged.values().stream().findFirst())
        .map(
            it ->
                redact
                    ? DossierWriter.shared(terminal, path, it, folder)
                    : DossierWriter.own(terminal, path, it, folder))
        .map(pages -> pages.write(new LinkedHashSet<>(items)))
        .filter(written -> written)
        .map(written -> Exit.DONE)
        .orElse(Exit.BAD_INPUT);
  }
}
