package assize.cli;

import assize.diagnostic.NameSuggestions;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Words what is wrong with a command line, with the nearest thing that would be right. */
final class UsageErrors {
  private UsageErrors() {}

  /** More than one thing that is wrong with a command line. */
  static final class Several extends ParameterException {
    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // a list of texts, unmodifiable
    private final List<String> each;

    Several(CommandLine line, List<String> each) {
      super(line, String.join("; ", each));
      this.each = List.copyOf(each);
    }
  }

  /** Returns what is wrong, each in a line. */
  static List<String> words(ParameterException problem) {
    return problem instanceof Several several ? several.each : List.of(single(problem));
  }

  private static String single(ParameterException problem) {
    if (problem instanceof UnmatchedArgumentException unmatched
        && !unmatched.getUnmatched().isEmpty()) {
      return unmatched(problem.getCommandLine(), unmatched.getUnmatched().get(0));
    }
    String command = problem.getCommandLine().getCommandSpec().name();
    Optional<String> former =
        FormerOptions.option(command, name(problem.getArgSpec()) + " " + problem.getValue());
    if (former.isPresent()) {
      return former.get();
    }
    if (problem.getCause() instanceof TypeConversionException cause) {
      return name(problem.getArgSpec()) + ": " + cause.getMessage();
    }
    return String.valueOf(problem.getMessage());
  }

  private static String unmatched(CommandLine line, String word) {
    boolean option = word.startsWith("-") && word.length() > 1;
    if (option) {
      String name = word.replaceFirst("=.*", "");
      Optional<String> former = FormerOptions.option(line.getCommandSpec().name(), name);
      if (former.isPresent()) {
        return former.get();
      }
      return "there is no option \"" + word + "\"" + hint(word, options(line));
    }
    Collection<String> commands = line.getSubcommands().keySet();
    return commands.isEmpty()
        ? "\"" + word + "\" is one too many"
        : "there is no command \""
            + word
            + "\""
            + FormerOptions.command(word)
                .map(it -> "; " + it)
                .orElseGet(() -> hint(word, commands));
  }

  private static Collection<String> options(CommandLine line) {
    return line.getCommandSpec().options().stream().map(OptionSpec::longestName).toList();
  }

  private static String hint(String word, Collection<String> valid) {
    return NameSuggestions.hint(word, valid).map(it -> "; " + it).orElse("");
  }

  private static String name(ArgSpec argument) {
    return argument instanceof OptionSpec option
        ? option.longestName()
        : Optional.ofNullable(argument).map(ArgSpec::paramLabel).orElse("");
  }
}
