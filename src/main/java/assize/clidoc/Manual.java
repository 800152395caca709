package assize.clidoc;

import java.util.List;
import java.util.Locale;

/** The manual page, in the macros of man(7). */
public final class Manual {
  private Manual() {}

  public static String page(CommandLineModel program, List<String> exitCodes) {
    String name = program.name();
    StringBuilder out = new StringBuilder();
    out.append(
        ".TH " + name.toUpperCase(Locale.ROOT) + " 1 \"\" \"" + text(program.version()) + "\"\n");
    out.append(".SH NAME\n" + name + " \\- " + text(first(program.about())) + "\n");
    out.append(".SH SYNOPSIS\n.B " + name + "\n.I COMMAND\n\\&...\n");
    out.append(".SH DESCRIPTION\n" + line(program.about()));
    out.append("Results go to standard output, messages to standard error.\n");
    out.append("Nothing is written where something is wrong.\n");
    out.append(".SH OPTIONS\n");
    program.switches().forEach(it -> out.append(option(it)));
    out.append(".SH COMMANDS\n");
    for (CommandModel command : program.commands()) {
      out.append(".SS \"" + text(name + " " + command.synopsis()) + "\"\n" + line(command.about()));
      command.values().stream()
          .filter(it -> !it.about().isEmpty())
          .forEach(it -> out.append(".TP\n.I " + text(it.label()) + "\n" + line(it.about())));
      command.switches().stream()
          .filter(
              it -> program.switches().stream().noneMatch(top -> top.names().equals(it.names())))
          .forEach(it -> out.append(option(it)));
    }
    out.append(".SH \"EXIT STATUS\"\n");
    for (int i = 0; i < exitCodes.size(); i++) {
      out.append(".TP\n.B " + i + "\n" + line(exitCodes.get(i)));
    }
    return out.toString();
  }

  private static String option(CommandModel.Switch one) {
    String names = "\\fB" + text(String.join(", ", one.names())) + "\\fP";
    boolean takes = one.value().kind() != CommandModel.Kind.NOTHING;
    String value = "\\fI" + text(one.value().label()) + "\\fP";
    return ".TP\n"
        + names
        + (!takes ? "" : one.isValueOptional() ? "[=" + value + "]" : " " + value)
        + "\n"
        + line(one.about());
  }

  private static String first(String about) {
    String bare = about.endsWith(".") ? about.substring(0, about.length() - 1) : about;
    return bare.substring(0, 1).toLowerCase(Locale.ROOT) + bare.substring(1);
  }

  /** Returns a line of text that roff does not take for a request. */
  private static String line(String text) {
    String safe = text(text);
    return (safe.startsWith(".") || safe.startsWith("'") ? "\\&" : "") + safe + "\n";
  }

  private static String text(String text) {
    return text.replace("\\", "\\e")
        .replace("-", "\\-")
        .replace("\"", "\\(dq")
        .replace("'", "\\(aq")
        .replaceAll("\\s+", " ");
  }
}
