package assize.cli;

import static java.util.stream.Collectors.joining;

import assize.record.VehicleRecord;
import assize.report.html.Seals;
import assize.report.text.Visible;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import assize.share.Hidden;
import assize.share.Key;
import assize.share.Mask;
import assize.share.MaskedNumber;
import assize.share.Masking;
import assize.share.Secret;
import assize.text.Json;
import assize.text.Parsed;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
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
  private static final long MEGA = 1_000_000;
  private static final long LONGEST = 200 * MEGA;
  private static final int SHOWN = 10;

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

  @Option(
      names = "--new-secret",
      description =
          "Make a new secret for the record's next copies; the one before is kept beside it.")
  private boolean renewed;

  @Option(names = "--json", description = "Print for other programs, one object a line.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  VouchCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (number.isPresent() && words.isEmpty()) {
      throw wrong("to check a number, name the page, the number and its opening words");
    }
    if (number.isPresent() && renewed) {
      throw wrong("--new-secret: name a record alone");
    }
    return number.isPresent() ? check(number.get()) : show();
  }

  private ParameterException wrong(String reason) {
    return new ParameterException(spec.commandLine(), reason);
  }

  private int show() {
    var read = new Inputs(terminal).vehicle(file, Optional.empty());
    if (!new Inputs(terminal).report(read.diagnostics(), false) || read.value().isEmpty()) {
      return Exit.BAD_INPUT;
    }
    Path kept = SecretFile.of(file);
    Optional<Parsed<Secret>> secret = SecretFile.read(kept);
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

  private int show(Inputs.Read read, Path kept, Parsed<Secret> secret) {
    return secret.match(good -> show(read, kept, good), bad -> refuse(kept + ": " + bad.reason()));
  }

  private int show(Inputs.Read read, Path kept, Secret secret) {
    VehicleRecord vehicle = read.vehicle();
    Masking masking = Masking.of(read.judge(), read.rules(), vehicle);
    Mask words = masking.ofWords();
    Iterator<Hidden> hidden = masking.numbers().iterator();
    for (Map.Entry<String, String> one : vehicle.numbers().entrySet()) {
      String masked = words.text(hidden.next().masked());
      Key key = secret.key(vehicle.id(), one.getKey());
      String name = name(read.rules(), one.getKey());
      terminal.result(
          json
              ? Json.object()
                  .text("table", one.getKey())
                  .text("number", one.getValue())
                  .text("masked", masked)
                  .text("fingerprint", key.fingerprint(one.getValue()))
                  .text("words", key.words())
                  .text("secret", kept.toString())
                  .orNull("made", secret.made().map(LocalDate::toString))
                  .text("mark", secret.mark())
                  .toString()
              : String.join(
                  "\n",
                  name + " " + one.getValue() + ", masked " + masked,
                  "  fingerprint    " + key.fingerprint(one.getValue()),
                  "  opening words  " + key.words(),
                  "  secret         " + Visible.of(SecretFile.words(kept, secret))));
    }
    SecretFile.name(kept, file, vehicle.id(), secret).ifPresent(terminal::error);
    return Exit.DONE;
  }

  private static String name(RuleSet rules, String table) {
    return Optional.ofNullable(rules.numbers().get(table)).map(NumberTable::name).orElse(table);
  }

  private int renew(String id, Path kept, Optional<Parsed<Secret>> before) {
    if (before.isEmpty()) {
      Secret now = SecretFile.begin(id);
      SecretFile.keep(kept, file, now);
      return renewed(kept, now, Optional.empty());
    }
    return before
        .get()
        .match(
            old -> {
              Secret now = SecretFile.begin(id);
              SecretFile.replace(file, old, now);
              return renewed(kept, now, Optional.of(old));
            },
            bad -> refuse(kept + ": " + bad.reason()));
  }

  private int renewed(Path kept, Secret now, Optional<Secret> old) {
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
    lines.forEach(line -> terminal.result(Visible.of(line)));
    return Exit.DONE;
  }

  private int check(String told) {
    Optional<String> strange = MaskedNumber.strange(told);
    if (strange.isPresent()) {
      return refuse(
          "the number has "
              + Visible.of(strange.get())
              + " in it, which no number has; type it as its owner told it");
    }
    if (MaskedNumber.letters(told).isEmpty()) {
      return refuse("the number \"" + told + "\" has neither letters nor digits");
    }
    return Key.read(String.join(" ", words))
        .match(key -> check(told, key), bad -> refuse("the opening words: " + bad.reason()));
  }

  private int check(String told, Key key) {
    try {
      if (!Files.isRegularFile(file)) {
        return unreadable();
      }
      long bytes = Files.size(file);
      if (bytes > LONGEST) {
        return refuse(
            file
                + ": this page has "
                + (bytes + MEGA - 1) / MEGA
                + " MB; at most "
                + LONGEST / MEGA
                + " are read");
      }
      CharsetDecoder strict = StandardCharsets.UTF_8.newDecoder();
      try (Reader page = new InputStreamReader(Files.newInputStream(file), strict)) {
        return Seals.of(page)
            .match(
                seals -> check(told, key, seals),
                bad ->
                    refuse(
                        file
                            + ": this is no copy for others as Assize writes it: "
                            + bad.reason()));
      }
    } catch (IOException e) {
      return unreadable();
    }
  }

  private int unreadable() {
    return refuse(file + ": this page can't be read; name a copy for others, a file in .html");
  }

  private int check(String told, Key key, List<Seals.Seal> seals) {
    if (seals.isEmpty()) {
      return refuse(file + ": this is no copy for others, or none with masked numbers");
    }
    String fingerprint = key.fingerprint(told);
    List<Seals.Seal> opened =
        seals.stream().filter(seal -> seal.fingerprint().equals(fingerprint)).toList();
    if (opened.isEmpty()) {
      return refuse(
          "no: the number \""
              + told
              + "\" with these words gives none of this page's fingerprints, those of "
              + seals.stream().map(VouchCommand::shown).limit(SHOWN).collect(joining(", "))
              + (seals.size() > SHOWN ? ", ..." : "")
              + "; the words are well formed, so the number is another, or they open a number of"
              + " another copy");
    }
    if (opened.size() > 1) {
      return refuse("no: this page has one fingerprint for two numbers, so somebody changed it");
    }
    Seals.Seal seal = opened.get(0);
    String letters = MaskedNumber.letters(told);
    if (!MaskedNumber.isOf(seal.masked(), told)) {
      return refuse(
          "no: the letters and digits "
              + letters
              + " give a fingerprint of this page, but the page shows "
              + shown(seal)
              + " beside it; if other letters or digits are shown, somebody changed the page; if"
              + " only dashes or spaces differ, type them as the page shows them");
    }
    terminal.result(
        json
            ? Json.object()
                .flag("vouched", true)
                .text("letters", letters)
                .text("as", shown(seal))
                .text("fingerprint", fingerprint)
                .toString()
            : Visible.of(
                    "yes: the letters and digits "
                        + letters
                        + " are those of the number that this page masks as "
                        + shown(seal))
                + "\n  This counts only if you had this page before you asked: whoever has the"
                + " secret can make such a page today.\n"
                + "  Nothing else in the page is proved. Open it and look whether it shows the"
                + " number so.");
    return Exit.DONE;
  }

  private static String shown(Seals.Seal seal) {
    return seal.name() + " " + seal.masked();
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
