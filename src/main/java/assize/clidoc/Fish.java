package assize.clidoc;

import java.util.stream.Collectors;

/** Completion for fish. */
public final class Fish {
  private Fish() {}

  public static String completion(CommandLineModel program) {
    String name = program.name();
    String commands =
        program.commands().stream().map(CommandModel::name).collect(Collectors.joining(" "));
    StringBuilder out = new StringBuilder();
    out.append("# Completes " + name + " in fish. Made by: " + name + " completion fish\n");
    out.append("complete -c " + name + " -e\n");
    String none = "complete -c " + name + " -n 'not __fish_seen_subcommand_from " + commands + "'";
    out.append(none + " -f\n");
    program.switches().forEach(it -> out.append(none + names(it) + about(it.about())));
    program.commands().forEach(it -> out.append(none + " -a " + it.name() + about(it.about())));
    for (CommandModel command : program.commands()) {
      String behind =
          "complete -c " + name + " -n '__fish_seen_subcommand_from " + command.name() + "'";
      out.append(
          behind
              + offer(
                  command.values().isEmpty() ? CommandModel.Kind.TEXT : command.first(), command));
      for (CommandModel.Switch one : command.switches()) {
        out.append(behind + names(one) + value(one) + about(one.about()));
      }
    }
    return out.toString();
  }

  private static String names(CommandModel.Switch one) {
    return one.names().stream()
        .map(it -> it.startsWith("--") ? " -l " + it.substring(2) : " -s " + it.substring(1))
        .collect(Collectors.joining());
  }

  private static String about(String about) {
    return " -d " + quoted(about) + "\n";
  }

  private static String offer(CommandModel.Kind kind, CommandModel command) {
    return switch (kind) {
      case NOTHING, TEXT -> " -f\n";
      case WORDS -> " -f -a " + quoted(String.join(" ", command.words())) + "\n";
      case YAML -> " -f -k -a '(__fish_complete_suffix .yaml)'\n";
      case FILE -> " -F\n";
      case FOLDER -> " -f -a '(__fish_complete_directories)'\n";
    };
  }

  private static String value(CommandModel.Switch one) {
    if (!one.takesNext()) {
      return "";
    }
    return switch (one.value().kind()) {
      case NOTHING -> "";
      case TEXT -> " -x";
      case WORDS -> " -x -a " + quoted(String.join(" ", one.value().words()));
      case YAML -> " -x -k -a '(__fish_complete_suffix .yaml)'";
      case FILE -> " -r -F";
      case FOLDER -> " -x -a '(__fish_complete_directories)'";
    };
  }

  private static String quoted(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
