package assize.clidoc;

import java.util.List;
import java.util.stream.Collectors;

/** Completion for PowerShell, from version 5. */
public final class PowerShell {
  private PowerShell() {}

  public static String completion(CommandLineModel program) {
    String commands =
        program.commands().stream()
            .map(it -> "    " + quoted(it.name()) + " = " + quoted(it.about()) + "\n")
            .collect(Collectors.joining());
    String options =
        "    '' = "
            + switches(program.switches())
            + program.commands().stream()
                .map(it -> "    " + quoted(it.name()) + " = " + switches(it.switches()))
                .collect(Collectors.joining());
    StringBuilder words = new StringBuilder();
    for (CommandModel command : program.commands()) {
      for (CommandModel.Switch one : command.switches()) {
        if (one.value().kind() == CommandModel.Kind.WORDS) {
          one.names()
              .forEach(it -> words.append(words(command.name() + " " + it, one.value().words())));
        }
      }
      if (command.first() == CommandModel.Kind.WORDS) {
        words.append(words(command.name() + " " + command.name(), command.words()));
      }
    }
    return """
        # Completes NAME in PowerShell. Made by: NAME completion powershell
        Register-ArgumentCompleter -Native -CommandName NAME -ScriptBlock {
          param($wordToComplete, $commandAst, $cursorPosition)
          $commands = [ordered]@{
        COMMANDS  }
          $options = @{
        OPTIONS  }
          $words = @{
        WORDS  }
          $typed = @($commandAst.CommandElements |
            Where-Object { $_.Extent.EndOffset -lt $cursorPosition } |
            ForEach-Object { $_.ToString() })
          $command = [string]($typed | Select-Object -Skip 1 |
            Where-Object { $commands.Contains($_) } | Select-Object -First 1)
          $found = [ordered]@{}
          $before = "$command $($typed[-1])"
          if ($words.ContainsKey($before)) {
            $words[$before] | ForEach-Object { $found[$_] = $_ }
          } elseif ($wordToComplete -like '-*') {
            $found = $options[$command]
          } elseif (-not $command) {
            $found = $commands
          }
          $found.GetEnumerator() | Where-Object { $_.Key -like "$wordToComplete*" } |
            ForEach-Object {
              [System.Management.Automation.CompletionResult]::new(
                $_.Key, $_.Key, 'ParameterValue', $_.Value)
            }
        }
        """
        .replace("NAME", program.name())
        .replace("COMMANDS", commands)
        .replace("OPTIONS", options)
        .replace("WORDS", words);
  }

  private static String switches(List<CommandModel.Switch> switches) {
    return switches.stream()
        .flatMap(one -> one.names().stream().map(it -> quoted(it) + " = " + quoted(one.about())))
        .collect(Collectors.joining("; ", "[ordered]@{ ", " }\n"));
  }

  private static String words(String key, List<String> words) {
    return "    "
        + quoted(key)
        + " = "
        + words.stream().map(PowerShell::quoted).collect(Collectors.joining(", ", "@(", ")\n"));
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "''") + "'";
  }
}
