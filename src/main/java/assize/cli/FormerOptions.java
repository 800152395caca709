package assize.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What commands and options were called before. For one release each is answered with its name of
 * today, which edit distance would not find.
 */
final class FormerOptions {
  /** Commands, each with what it is called now. */
  static final Map<String, String> COMMANDS =
      Map.of(
          "start", "it is called \"new\" now",
          "roster", "it is called \"results\" now",
          "lint", "it is called \"check\" now",
          "guide", "it is called \"handbook\" now, and \"compare\" where it took --since",
          "vouch", "it is called \"prove\" now, and \"verify\" where it took a page");

  /** Options, with the commands that had them. */
  static final List<Former> OPTIONS =
      List.of(
          Former.of(List.of("judge", "dossier", "results"), "--share", "--redact"),
          Former.of(List.of("judge", "results"), "--without-bad-photos", "--skip-bad-photos"),
          Former.of(List.of("judge", "results"), "--photos inside", "--photos embed"),
          Former.of(List.of("judge", "results"), "--photos beside", "--photos folder"),
          Former.of(List.of("results"), "--leave-out-faulty", "--skip-invalid"),
          Former.of(List.of("results"), "--index-only", "--no-reports"),
          Former.of(List.of("merge"), "--other-vehicle", "--allow-other-vehicle"),
          Former.of(List.of("merge"), "--other-edition", "--allow-other-edition"),
          new Former(
              List.of("check"),
              "--all",
              "--show-accepted",
              "--all is called --show-accepted now, and --all-items with --coverage"),
          Former.of(List.of("compare"), "--for", "--record"),
          new Former(
              List.of("handbook"),
              "--since",
              "compare",
              "--since is a command of its own now: assize compare OLD NEW"));

  private FormerOptions() {}

  /**
   * An option, or an option with its value.
   *
   * @param commands those that had it
   * @param now the option of today, or the command
   * @param answer what is said to somebody who types it
   */
  record Former(List<String> commands, String name, String now, String answer) {
    Former {
      commands = List.copyOf(commands);
    }

    static Former of(List<String> commands, String name, String now) {
      return new Former(commands, name, now, name + " is called " + now + " now");
    }
  }

  /** Returns what a command that is no longer there is called now. */
  static Optional<String> command(String name) {
    return Optional.ofNullable(COMMANDS.get(name));
  }

  /**
   * Returns what an option of a command is called now.
   *
   * @param option as it was typed, or with its value behind a space
   */
  static Optional<String> option(String command, String option) {
    return OPTIONS.stream()
        .filter(it -> it.commands().contains(command) && it.name().equals(option))
        .map(Former::answer)
        .findFirst();
  }
}
