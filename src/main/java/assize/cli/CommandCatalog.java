package assize.cli;

import assize.clidoc.CommandLineModel;
import assize.clidoc.CommandModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * Describes the command line for other programs, from the same model that the help is made from.
 */
final class CommandCatalog {
  private static final Set<String> YAML = Set.of("RECORD", "RULESET", "PATH", "OLD", "NEW");

  private CommandCatalog() {}

  static CommandLineModel program(CommandSpec root) {
    List<CommandModel> commands =
        root.subcommands().values().stream().map(it -> command(it.getCommandSpec())).toList();
    return new CommandLineModel(
        root.name(),
        root.version()[0],
        about(root.usageMessage().description()),
        switches(root),
        commands);
  }

  private static CommandModel command(CommandSpec spec) {
    List<CommandModel.Value> values =
        spec.positionalParameters().stream()
            .filter(it -> !it.hidden())
            .map(CommandCatalog::value)
            .toList();
    return new CommandModel(
        spec.name(),
        synopsis(spec),
        about(spec.usageMessage().description()),
        switches(spec),
        values);
  }

  private static String synopsis(CommandSpec spec) {
    List<String> words = new ArrayList<>(List.of(spec.name()));
    for (PositionalParamSpec one : spec.positionalParameters()) {
      String label = one.paramLabel() + (one.arity().max() > 1 ? "..." : "");
      words.add(one.arity().min() == 0 ? "[" + label + "]" : label);
    }
    words.add("[options]");
    return String.join(" ", words);
  }

  private static List<CommandModel.Switch> switches(CommandSpec spec) {
    return spec.options().stream().filter(it -> !it.hidden()).map(CommandCatalog::option).toList();
  }

  private static CommandModel.Switch option(OptionSpec option) {
    return new CommandModel.Switch(
        Arrays.asList(option.names()),
        about(option.description()),
        value(option),
        option.arity().min() == 0 && option.arity().max() > 0);
  }

  private static CommandModel.Value value(ArgSpec arg) {
    List<String> words = words(arg);
    return new CommandModel.Value(
        arg.paramLabel(), kind(arg, words), words, about(arg.description()));
  }

  private static CommandModel.Kind kind(ArgSpec arg, List<String> words) {
    String label = arg.paramLabel();
    if (arg.arity().max() == 0) {
      return CommandModel.Kind.NOTHING;
    }
    if (!words.isEmpty()) {
      return CommandModel.Kind.WORDS;
    }
    if (YAML.stream().anyMatch(it -> label.equals(it) || label.startsWith(it + "|"))) {
      return CommandModel.Kind.YAML;
    }
    if (label.equals("DIR")) {
      return CommandModel.Kind.FOLDER;
    }
    boolean isPath = type(arg) == Path.class || label.toUpperCase(Locale.ROOT).startsWith("FILE");
    return isPath ? CommandModel.Kind.FILE : CommandModel.Kind.TEXT;
  }

  private static List<String> words(ArgSpec arg) {
    Class<?> type = type(arg);
    return type.isEnum()
        ? Arrays.stream(type.getEnumConstants()).map(Object::toString).toList()
        : List.of();
  }

  /** Returns what a value is read as, whether there may be one or several of it. */
  private static Class<?> type(ArgSpec arg) {
    Class<?>[] inner = arg.auxiliaryTypes();
    return inner.length > 0 ? inner[inner.length - 1] : arg.type();
  }

  private static String about(String[] lines) {
    return Arrays.stream(lines).collect(Collectors.joining(" ")).replace("%n", " ");
  }
}
