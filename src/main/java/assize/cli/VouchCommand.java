package assize.cli;

import assize.record.VehicleRecord;
import assize.report.html.SharedPage;
import assize.report.text.Json;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import assize.share.Key;
import assize.share.Mask;
import assize.share.Secret;
import assize.text.Parsed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows an owner by what words masked numbers are opened, and checks them for anybody. */
@Command(
    name = "vouch",
    description =
        "Prints what opens a record's masked numbers; or checks a number and its opening words"
            + " against a copy for others.",
    mixinStandardHelpOptions = true)
final class VouchCommand implements Callable<Integer> {
  private static final long LONGEST = 200_000_000;

  private final Terminal terminal;

  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "The record; or the copy for others, a page, that is to be checked.")
  private Path file = Path.of("");

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "NUMBER",
      description = "The number as the owner told it; in quotes if it has spaces.")
  private Optional<String> number = Optional.empty();

  @Parameters(
      index = "2..*",
      arity = "0..*",
      paramLabel = "WORDS",
      description = "Its opening words: 13 groups of 5 letters and digits.")
  private List<String> words = List.of();

  @Option(names = "--json", description = "Print for other programs, one object a line.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  VouchCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (number.isPresent() && words.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "to check a number, name the page, the number and its opening words");
    }
    return number.isPresent() ? check(number.get()) : show();
  }

  private int show() {
    var read = new Inputs(terminal).vehicle(file, Optional.empty());
    if (!new Inputs(terminal).report(read.diagnostics(), false) || read.value().isEmpty()) {
      return Exit.BAD_INPUT;
    }
    Path kept = SecretFile.of(file);
    return SecretFile.read(kept)
        .orElseGet(
            () ->
                Parsed.bad(
                    "is not there: make a copy by assize judge --share, or put it back", 0, 0))
        .match(
            secret -> show(read.value().get(), secret),
            bad ->
                refuse(
                    Files.exists(kept)
                        ? SecretFile.damaged(kept, bad.reason())
                        : kept + " " + bad.reason()));
  }

  private int show(Inputs.Read read, Secret secret) {
    VehicleRecord vehicle = read.vehicle();
    if (vehicle.numbers().isEmpty()) {
      return refuse(file + ": this record has no numbers");
    }
    Mask mask = Mask.of(vehicle.numbers().values(), vehicle.unsharedWords());
    for (Map.Entry<String, String> one : vehicle.numbers().entrySet()) {
      Key key = secret.key(vehicle.id(), one.getKey());
      String name = name(read.rules(), one.getKey());
      terminal.result(
          json
              ? Json.object()
                  .text("table", one.getKey())
                  .text("number", one.getValue())
                  .text("masked", mask.text(one.getValue()))
                  .text("fingerprint", key.fingerprint(one.getValue()))
                  .text("words", key.words())
                  .toString()
              : String.join(
                  "\n",
                  name + " " + one.getValue() + ", masked " + mask.text(one.getValue()),
                  "  fingerprint    " + key.fingerprint(one.getValue()),
                  "  opening words  " + key.words()));
    }
    return Exit.DONE;
  }

  private static String name(RuleSet rules, String table) {
    return Optional.ofNullable(rules.numbers().get(table)).map(NumberTable::name).orElse(table);
  }

  private int check(String told) {
    return Key.read(String.join(" ", words))
        .match(key -> check(told, key), bad -> refuse("the opening words: " + bad.reason()));
  }

  private int check(String told, Key key) {
    Optional<String> page = page();
    if (page.isEmpty()) {
      return refuse(file + ": this page can't be read; name a copy for others, a file in .html");
    }
    List<SharedPage.Seal> seals = SharedPage.seals(page.get());
    if (seals.isEmpty()) {
      return refuse(file + ": this is no copy for others, or none with masked numbers");
    }
    String fingerprint = key.fingerprint(told);
    Optional<SharedPage.Seal> opened =
        seals.stream().filter(seal -> seal.fingerprint().equals(fingerprint)).findFirst();
    if (opened.isEmpty()) {
      return refuse(
          "no: the number \""
              + told
              + "\" with these words gives none of this page's fingerprints, those of "
              + seals.stream().map(SharedPage.Seal::number).collect(Collectors.joining(", "))
              + "; the words are well formed, so the number is another, or they open a number of"
              + " another copy");
    }
    terminal.result(
        json
            ? Json.object()
                .flag("vouched", true)
                .text("as", opened.get().number())
                .text("fingerprint", fingerprint)
                .toString()
            : "yes: " + told + " is the number that this page masks as " + opened.get().number());
    return Exit.DONE;
  }

  private Optional<String> page() {
    try {
      return Files.isRegularFile(file) && Files.size(file) <= LONGEST
          ? Optional.of(Files.readString(file, StandardCharsets.UTF_8))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private int refuse(String reason) {
    if (json) {
      terminal.result(Json.object().text("error", reason).toString());
    } else {
      terminal.error((reason.startsWith("no: ") ? "" : "error: ") + reason);
    }
    return Exit.BAD_INPUT;
  }
}
