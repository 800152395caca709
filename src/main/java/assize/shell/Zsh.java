package assize.shell;

import java.util.List;
import java.util.stream.Collectors;

/** Completion for zsh. */
public final class Zsh {
  private Zsh() {}

  public static String completion(Program program) {
    String verbs =
        program.verbs().stream()
            .map(it -> "        " + quoted(it.name() + ":" + it.about()) + "\n")
            .collect(Collectors.joining());
    String cases = program.verbs().stream().map(Zsh::verb).collect(Collectors.joining());
    return """
        #compdef NAME
        # Completes NAME in zsh. Made by: NAME completion zsh
        _NAME() {
          local curcontext=$curcontext state line
          typeset -A opt_args
          _arguments -C \\
        TOP    '1:verb:->verb' \\
            '*::argument:->rest'
          case $state in
            verb)
              local -a verbs
              verbs=(
        VERBS      )
              _describe -t verbs verb verbs
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
        .replace("VERBS", verbs)
        .replace("CASES", cases);
  }

  private static String verb(Verb verb) {
    StringBuilder out =
        new StringBuilder("        " + verb.name() + ")\n          _arguments \\\n");
    out.append(switches(verb.switches(), "            "));
    int last = verb.values().size();
    for (int i = 0; i < last; i++) {
      Verb.Value value = verb.values().get(i);
      String place = i + 1 == last ? "*" : Integer.toString(i + 1);
      out.append(
          "            " + quoted(place + ":" + label(value) + ":" + action(value)) + " \\\n");
    }
    return out + "            && return 0\n          ;;\n";
  }

  private static String switches(List<Verb.Switch> switches, String indent) {
    StringBuilder out = new StringBuilder();
    for (Verb.Switch one : switches) {
      boolean takes = one.value().kind() != Verb.Kind.NOTHING;
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

  private static String label(Verb.Value value) {
    return value.label().replace(":", "\\:");
  }

  private static String action(Verb.Value value) {
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
