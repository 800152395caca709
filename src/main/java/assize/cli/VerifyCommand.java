package assize.cli;

import static java.util.stream.Collectors.joining;

import assize.redaction.MaskedNumber;
import assize.redaction.ProofKey;
import assize.report.html.Seals;
import assize.report.text.TerminalEscaper;
import assize.text.Json;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks for anybody that a copy for others means a number. */
@Command(
    name = "verify",
    description = "Checks a number and its proof code against a copy for others.",
    mixinStandardHelpOptions = true)
final class VerifyCommand implements Callable<Integer> {
  private static final long MEGA = 1_000_000;
  private static final long LONGEST = 200 * MEGA;
  private static final int SHOWN = 10;

  private final Terminal terminal;

  @Parameters(
      index = "0",
      paramLabel = "PAGE",
      description = "The copy for others that is to be checked.")
  private Path file = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "NUMBER",
      description = "The number as the owner told it; in quotes if it has spaces.")
  private String number = "";

  @Parameters(
      index = "2..*",
      arity = "1..*",
      paramLabel = "CODE",
      description = "Its proof code: 13 groups of 5 letters and digits.")
  private List<String> code = List.of();

  @Option(names = "--json", description = "Print for other programs, as one object.")
  private boolean json;

  VerifyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Optional<String> strange = MaskedNumber.strange(number);
    if (strange.isPresent()) {
      return refuse(
          "the number has "
              + TerminalEscaper.of(strange.get())
              + " in it, which no number has; type it as its owner told it");
    }
    if (MaskedNumber.letters(number).isEmpty()) {
      return refuse("the number \"" + number + "\" has neither letters nor digits");
    }
    return ProofKey.read(String.join(" ", code))
        .match(key -> check(number, key), bad -> refuse("the proof code: " + bad.reason()));
  }

  private int check(String told, ProofKey key) {
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

  private int check(String told, ProofKey key, List<Seals.NumberHash> seals) {
    if (seals.isEmpty()) {
      return refuse(file + ": this is no copy for others, or none with masked numbers");
    }
    String fingerprint = key.hash(told);
    List<Seals.NumberHash> opened =
        seals.stream().filter(seal -> seal.hash().equals(fingerprint)).toList();
    if (opened.isEmpty()) {
      return refuse(
          "no: the number \""
              + told
              + "\" with this proof code gives none of this page's hashes, those of "
              + seals.stream().map(VerifyCommand::shown).limit(SHOWN).collect(joining(", "))
              + (seals.size() > SHOWN ? ", ..." : "")
              + "; the code is well formed, so the number is another, or the code belongs to a"
              + " number of another copy");
    }
    if (opened.size() > 1) {
      return refuse("no: this page has one hash for two numbers, so somebody changed it");
    }
    Seals.NumberHash seal = opened.get(0);
    String letters = MaskedNumber.letters(told);
    if (!MaskedNumber.isOf(seal.masked(), told)) {
      return refuse(
          "no: the letters and digits "
              + letters
              + " give a hash of this page, but the page shows "
              + shown(seal)
              + " beside it; if other letters or digits are shown, somebody changed the page; if"
              + " only dashes or spaces differ, type them as the page shows them");
    }
    terminal.result(
        json
            ? Json.object()
                .flag("verified", true)
                .text("letters", letters)
                .text("as", shown(seal))
                .text("hash", fingerprint)
                .toString()
            : TerminalEscaper.of(
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

  private static String shown(Seals.NumberHash seal) {
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
