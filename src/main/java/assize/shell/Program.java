package assize.shell;

import java.util.List;

/**
 * The program as its command line shows it.
 *
 * @param switches those that serve without a verb
 */
public record Program(
    String name, String version, String about, List<Verb.Switch> switches, List<Verb> verbs) {
  public Program {
    switches = List.copyOf(switches);
    verbs = List.copyOf(verbs);
  }
}
