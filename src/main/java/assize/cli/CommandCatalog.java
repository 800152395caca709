package assize.cli;

import assize.clidoc.Program;
import assize.clidoc.Verb;
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

  static Program program(CommandSpec root) {
    List<Verb> commands =
        root.subcommands().values().stream().map(it -> command(it.getCommandSpec())).toList();
    return new Program(
        root.name(),
        root.version()[0],
        about(root.usageMessage().description()),
        switches(root),
        commands);
  }

  private static Verb command(CommandSpec spec) {
    List<Verb.Value> values =
        spec.positionalParameters().stream()
            .filter(it -> !it.hidden())
            .map(CommandCatalog::value)
            .toList();
    return new Verb(
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

  private static List<Verb.Switch> switches(CommandSpec spec) {
    return spec.options().stream().filter(it -> !it.hidden()).map(CommandCatalog::option).toList();
  }

  private static Verb.Switch option(OptionSpec option) {
    return new Verb.Switch(
        Arrays.asList(option.names()),
        about(option.description()),
        value(option),
        option.arity().min() == 0 && option.arity().max() > 0);
  }

  private static Verb.Value value(ArgSpec arg) {
    List<String> words = words(arg);
    return new Verb.Value(arg.paramLabel(), kind(arg, words), words, about(arg.description()));
  }

  private static Verb.Kind kind(ArgSpec arg, List<String> words) {
    String label = arg.paramLabel();
    if (arg.arity().max() == 0) {
      return Verb.Kind.NOTHING;
    }
    if (!words.isEmpty()) {
      return Verb.Kind.WORDS;
    }
    if (YAML.stream().anyMatch(it -> label.equals(it) || label.startsWith(it + "|"))) {
      return Verb.Kind.YAML;
    }
    if (label.equals("DIR")) {
      return Verb.Kind.FOLDER;
    }
    boolean isPath = type(arg) == Path.class || label.toUpperCase(Locale.ROOT).startsWith("FILE");
    return isPath ? Verb.Kind.FILE : Verb.Kind.TEXT;
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
