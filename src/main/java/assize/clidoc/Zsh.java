package assize.clidoc;

import java.util.List;
import java.util.stream.Collectors;

/** Completion for zsh. */
public final class Zsh {
  private Zsh() {}

  public static String completion(CommandLineModel program) {
    String commands =
        program.commands().stream()
            .map(it -> "        " + quoted(it.name() + ":" + it.about()) + "\n")
            .collect(Collectors.joining());
    String cases = program.commands().stream().map(Zsh::command).collect(Collectors.joining());
    return """
        #compdef NAME
        # Completes NAME in zsh. Made by: NAME completion zsh
        _NAME() {
          local curcontext=$curcontext state line
          typeset -A opt_args
          _arguments -C \\
        TOP    '1:command:->command' \\
            '*::argument:->rest'
          case $state in
            command)
              local -a commands
              commands=(
        COMMANDS      )
              _describe -t commands command commands
              ;;
            rest)
              case $words[1] in
        CASES      esac
              ;;
          esac
        }
        if [[ $funcstack[1] == _NAME ]]; then
          _NAME "$@"
        else
          compdef _NAME NAME
        fi
        """
        .replace("NAME", program.name())
        .replace("TOP", switches(program.switches(), "    "))
        .replace("COMMANDS", commands)
        .replace("CASES", cases);
  }

  private static String command(CommandModel command) {
    StringBuilder out =
        new StringBuilder("        " + command.name() + ")\n          _arguments \\\n");
    out.append(switches(command.switches(), "            "));
    int last = command.values().size();
    for (int i = 0; i < last; i++) {
      CommandModel.Value value = command.values().get(i);
      String place = i + 1 == last ? "*" : Integer.toString(i + 1);
      out.append(
          "            " + quoted(place + ":" + label(value) + ":" + action(value)) + " \\\n");
    }
    return out + "            && return 0\n          ;;\n";
  }

  private static String switches(List<CommandModel.Switch> switches, String indent) {
    StringBuilder out = new StringBuilder();
    for (CommandModel.Switch one : switches) {
      boolean takes = one.value().kind() != CommandModel.Kind.NOTHING;
      String value =
          takes
              ? (one.isValueOptional() ? "::" : ":")
                  + label(one.value())
                  + ":"
                  + action(one.value())
              : "";
      for (String name : one.names()) {
        String equals = !takes ? "" : one.isValueOptional() ? "=-" : "=";
        String about = one.about().replace("\\", "\\\\").replace("[", "\\[").replace("]", "\\]");
        out.append(indent + quoted("*" + name + equals + "[" + about + "]" + value) + " \\\n");
      }
    }
    return out.toString();
  }

  private static String label(CommandModel.Value value) {
    return value.label().replace(":", "\\:");
  }

  private static String action(CommandModel.Value value) {
    return switch (value.kind()) {
      case NOTHING, TEXT -> " ";
      case WORDS -> "(" + String.join(" ", value.words()) + ")";
      case YAML -> "_files -g \"*.y(a|)ml(-.)\"";
      case FILE -> "_files";
      case FOLDER -> "_files -/";
    };
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "'\\''") + "'";
  }
}
