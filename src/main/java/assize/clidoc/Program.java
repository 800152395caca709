package assize.clidoc;

import java.util.List;

/**
 * The program as its command line shows it.
 *
 * @param switches those that serve without a command
 */
public record Program(
    String name, String version, String about, List<Verb.Switch> switches, List<Verb> commands) {
  public Program {
    switches = List.copyOf(switches);
    commands = List.copyOf(commands);
  }
}
