package assize.clidoc;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Completion for bash, from version 3.2. */
public final class Bash {
  private Bash() {}

  public static String completion(CommandLineModel program) {
    String name = program.name();
    List<String> commands = program.commands().stream().map(CommandModel::name).toList();
    StringBuilder values = new StringBuilder();
    StringBuilder words = new StringBuilder();
    for (CommandModel command : program.commands()) {
      List<String> options = new ArrayList<>();
      for (CommandModel.Switch one : command.switches()) {
        options.addAll(one.names());
        if (one.takesNext()) {
          String keys =
              one.names().stream()
                  .map(it -> "'" + command.name() + " " + it + "'")
                  .collect(Collectors.joining("|"));
          values.append("    " + keys + ") " + offer(name, one.value()) + "; return ;;\n");
        }
      }
      words.append(
          "    "
              + command.name()
              + ") options='"
              + String.join(" ", options)
              + "'; [[ $cur == -* ]] || { "
              + (command.values().isEmpty() ? ":" : offer(name, command.values().get(0)))
              + "; return; } ;;\n");
    }
    String top =
        String.join(" ", commands)
            + " "
            + program.switches().stream()
                .flatMap(it -> it.names().stream())
                .collect(Collectors.joining(" "));
    return """
        # Completes NAME in bash. Made by: NAME completion bash
        _NAME_files() {
          local IFS=$'\\n'
          compopt -o filenames 2>/dev/null
          COMPREPLY=($(compgen "$@" -- "$cur"))
        }
        _NAME_yaml() {
          local IFS=$'\\n'
          compopt -o filenames 2>/dev/null
          COMPREPLY=($(compgen -d -- "$cur"; compgen -f -X '!*.y*ml' -- "$cur"))
        }
        _NAME() {
          local cur=${COMP_WORDS[COMP_CWORD]} prev='' command='' options='' i
          COMPREPLY=()
          ((COMP_CWORD > 0)) && prev=${COMP_WORDS[COMP_CWORD - 1]}
          if [[ $cur == = ]]; then
            cur=''
          elif [[ $prev == = ]] && ((COMP_CWORD > 1)); then
            prev=${COMP_WORDS[COMP_CWORD - 2]}
          fi
          for ((i = 1; i < COMP_CWORD; i++)); do
            case ${COMP_WORDS[i]} in
              COMMANDS)
                command=${COMP_WORDS[i]}
                break
                ;;
            esac
          done
          case "$command $prev" in
        VALUES  esac
          case $command in
            '') options='TOP' ;;
        WORDS  esac
          COMPREPLY=($(compgen -W "$options" -- "$cur"))
        }
        complete -F _NAME NAME
        """
        .replace("NAME", program.name())
        .replace("VALUES", values)
        .replace("WORDS  esac", words + "  esac")
        .replace("COMMANDS", String.join(" | ", commands))
        .replace("TOP", top);
  }

  private static String offer(String name, CommandModel.Value value) {
    return switch (value.kind()) {
      case NOTHING, TEXT -> ":";
      case WORDS ->
          "COMPREPLY=($(compgen -W '" + String.join(" ", value.words()) + "' -- \"$cur\"))";
      case YAML -> "_" + name + "_yaml";
      case FILE -> "_" + name + "_files -f";
      case FOLDER -> "_" + name + "_files -d";
    };
  }
}
