package assize.cli;

import java.util.ArrayList;
import java.util.List;

/** The help of the program itself: its commands, by what they are for. */
final class CommandOverview {
  private CommandOverview() {}

  /** Returns the commands, group by group, and with which one to start. */
  static String text(List<ProgramCommand> commands) {
    int width = commands.stream().mapToInt(it -> it.name().length()).max().orElse(0);
    List<String> lines = new ArrayList<>(List.of(""));
    for (CommandGroup group : CommandGroup.values()) {
      lines.add(group.title());
      List<ProgramCommand> members = commands.stream().filter(it -> it.group() == group).toList();
      members.stream()
          .filter(it -> !it.summary().isEmpty())
          .map(it -> "  " + it.name() + " ".repeat(width + 2 - it.name().length()) + it.summary())
          .forEach(lines::add);
      List<String> bare =
          members.stream().filter(it -> it.summary().isEmpty()).map(ProgramCommand::name).toList();
      if (!bare.isEmpty()) {
        lines.add("  " + String.join(", ", bare));
      }
    }
    lines.add("");
    lines.add("Start with: assize demo");
    return String.join("\n", lines) + "\n";
  }
}
