package assize.clidoc;

import java.util.List;

/**
 * The program as its command line shows it.
 *
 * @param switches those that serve without a command
 */
public record CommandLineModel(
    String name,
    String version,
    String about,
    List<CommandModel.Switch> switches,
    List<CommandModel> commands) {
  public CommandLineModel {
    switches = List.copyOf(switches);
    commands = List.copyOf(commands);
  }
}
