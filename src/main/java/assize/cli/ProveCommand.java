package assize.cli;

import assize.record.VehicleRecord;
import assize.redaction.Hidden;
import assize.redaction.Masking;
import assize.redaction.OwnerSecret;
import assize.redaction.ProofKey;
import assize.redaction.TextMasker;
import assize.report.text.TerminalEscaper;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import assize.text.Json;
import assize.text.Parsed;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows an owner the proof codes of masked numbers. */
@Command(
    name = "prove",
    description = "Prints the proof code of each masked number of a record.",
    mixinStandardHelpOptions = true)
final class ProveCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "RECORD", description = "The record.")
  private Path file = Path.of("");

  @Option(
      names = "--new-secret",
      description =
          "Make a new secret for the record's next copies; the one before is kept beside it.")
  private boolean renewed;

  @Option(names = "--json", description = "Print for other programs, one object a line.")
  private boolean json;

  ProveCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    var read = new InputLoader(terminal).vehicle(file, Optional.empty());
    if (!new InputLoader(terminal).report(read.diagnostics(), false) || read.value().isEmpty()) {
      return Exit.BAD_INPUT;
    }
    Path kept = SecretFile.of(file);
    Optional<Parsed<OwnerSecret>> secret = SecretFile.read(kept);
    if (renewed) {
      return renew(read.value().get().vehicle().id(), kept, secret);
    }
    List<Path> earlier = SecretFile.earlier(file);
    if (secret.isEmpty() && earlier.isEmpty()) {
      return refuse(kept + " is not there: make a copy by assize judge --redact, or put it back");
    }
    VehicleRecord vehicle = read.value().get().vehicle();
    if (vehicle.numbers().isEmpty()) {
      return refuse(file + ": this record has no numbers");
    }
    int exit = secret.map(it -> show(read.value().get(), kept, it)).orElse(Exit.DONE);
    for (Path one : earlier) {
      int ended = SecretFile.read(one).map(it -> show(read.value().get(), one, it)).orElse(exit);
      exit = Math.max(exit, ended);
    }
    return exit;
  }

  private int show(InputLoader.Read read, Path kept, Parsed<OwnerSecret> secret) {
    return secret.match(good -> show(read, kept, good), bad -> refuse(kept + ": " + bad.reason()));
  }

  private int show(InputLoader.Read read, Path kept, OwnerSecret secret) {
    VehicleRecord vehicle = read.vehicle();
    Masking masking = Masking.of(read.judge(), read.rules(), vehicle);
    TextMasker words = masking.ofWords();
    Iterator<Hidden> hidden = masking.numbers().iterator();
    for (Map.Entry<String, String> one : vehicle.numbers().entrySet()) {
      String masked = words.text(hidden.next().masked());
      ProofKey key = secret.key(vehicle.id(), one.getKey());
      String name = name(read.rules(), one.getKey());
      terminal.result(
          json
              ? Json.object()
                  .text("table", one.getKey())
                  .text("number", one.getValue())
                  .text("masked", masked)
                  .text("hash", key.hash(one.getValue()))
                  .text("proof_code", key.proofCode())
                  .text("secret", kept.toString())
                  .orNull("made", secret.made().map(LocalDate::toString))
                  .text("mark", secret.mark())
                  .toString()
              : String.join(
                  "\n",
                  name + " " + one.getValue() + ", masked " + masked,
                  "  hash        " + key.hash(one.getValue()),
                  "  proof code  " + key.proofCode(),
                  "  secret      " + TerminalEscaper.of(SecretFile.words(kept, secret))));
    }
    SecretFile.name(kept, file, vehicle.id(), secret).ifPresent(terminal::error);
    return Exit.DONE;
  }

  private static String name(RuleSet rules, String table) {
    return Optional.ofNullable(rules.numberTables().get(table))
        .map(NumberTable::name)
        .orElse(table);
  }

  private int renew(String id, Path kept, Optional<Parsed<OwnerSecret>> before) {
    if (before.isEmpty()) {
      OwnerSecret now = SecretFile.begin(id);
      SecretFile.keep(kept, file, now);
      return renewed(kept, now, Optional.empty());
    }
    return before
        .get()
        .match(
            old -> {
              OwnerSecret now = SecretFile.begin(id);
              SecretFile.replace(file, old, now);
              return renewed(kept, now, Optional.of(old));
            },
            bad -> refuse(kept + ": " + bad.reason()));
  }

  private int renewed(Path kept, OwnerSecret now, Optional<OwnerSecret> old) {
    Optional<Path> earlier = old.map(it -> SecretFile.earlier(file, it));
    if (json) {
      terminal.result(
          Json.object()
              .text("secret", kept.toString())
              .orNull("made", now.made().map(LocalDate::toString))
              .text("mark", now.mark())
              .orNull("before", earlier.map(Path::toString))
              .toString());
      return Exit.DONE;
    }
    List<String> lines = new ArrayList<>();
    lines.add(SecretFile.words(kept, now) + " is new: keep it, give it to nobody");
    old.ifPresent(
        it ->
            lines.add(
                "  Keep "
                    + SecretFile.words(SecretFile.earlier(file, it), it)
                    + " too: copies made with it need it."));
    lines.add("  Make the copies for others again: assize judge " + file + " --redact");
    lines.forEach(line -> terminal.result(TerminalEscaper.of(line)));
    return Exit.DONE;
  }

  private int refuse(String reason) {
    if (json) {
      terminal.result(Json.object().text("error", reason).toString());
    } else {
      terminal.error("error: " + reason);
    }
    return Exit.BAD_INPUT;
  }
}
