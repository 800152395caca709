package assize.cli;

import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.diagnostic.NameSuggestions;
import assize.diagnostic.Result;
import assize.judge.NumberDating;
import assize.judge.NumberDating.Dated;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import assize.text.Json;
import assize.text.Parsed;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what chassis or engine numbers date to. */
@Command(
    name = "number",
    description = "Says what chassis or engine numbers date to.",
    mixinStandardHelpOptions = true)
final class NumberCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "RULESET", description = "A rule set: a file or folder.")
  private Path rules = Path.of("");

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "NUMBER",
      description = "For example L45-4388.")
  private List<String> numbers = List.of();

  @Option(
      names = "--table",
      paramLabel = "TABLE",
      description = "Only this number table of the rule set.")
  private Optional<String> table = Optional.empty();

  @Option(names = "--json", description = "One JSON object a line.")
  private boolean json;

  NumberCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** What one number dates to. */
  private record NumberMatch(
      NumberTable table, DateRange days, Optional<LocalDate> likely, Optional<String> remark) {}

  @Override
  public Integer call() {
    InputLoader inputs = new InputLoader(terminal);
    Result<RuleSet> read = inputs.rules(rules);
    if (!inputs.report(read.diagnostics(), false)) {
      return Exit.BAD_INPUT;
    }
    RuleSet ruleSet = read.value().orElseThrow();
    boolean allFound = true;
    for (String number : numbers) {
      Parsed<NumberMatch> found = find(ruleSet, number);
      allFound &= found.toOptional().isPresent();
      if (json) {
        terminal.result(found.match(NumberCommand::asJson, DateCommand::errorJson));
      } else {
        found.match(
            it -> {
              terminal.result(number + ": " + words(it));
              return true;
            },
            bad -> {
              terminal.error(number + ": " + bad.reason());
              return false;
            });
      }
    }
    return allFound ? Exit.DONE : Exit.BAD_INPUT;
  }

  private Parsed<NumberMatch> find(RuleSet ruleSet, String number) {
    List<NumberTable> tables =
        ruleSet.numberTables().values().stream()
            .filter(it -> table.isEmpty() || table.get().equals(it.id()))
            .toList();
    if (tables.isEmpty()) {
      return Parsed.bad(
          table.map(id -> noTable(ruleSet, id)).orElse("this rule set has no number table"), 0, 0);
    }
    Optional<String> reserved = Optional.empty();
    boolean outside = false;
    for (NumberTable one : tables) {
      List<Dated> dated = NumberDating.of(one, number);
      Optional<DateRange> days =
          dated.stream().flatMap(it -> it.days().stream()).reduce(DateRange::hull);
      reserved =
          reserved.or(
              () ->
                  dated.stream()
                      .flatMap(it -> it.reserved().stream())
                      .map(block -> "in a block that was set aside: " + block.purpose())
                      .findFirst());
      if (days.isPresent()) {
        Optional<LocalDate> likely = dated.size() == 1 ? dated.get(0).likely() : Optional.empty();
        return Parsed.ok(new NumberMatch(one, days.get(), likely, reserved));
      }
      outside |= !dated.isEmpty();
    }
    String reason =
        outside ? "outside the numbers that the table covers" : "fits no series of the table";
    return Parsed.bad(reserved.orElse(reason), 0, 0);
  }

  private static String noTable(RuleSet ruleSet, String id) {
    return "this rule set has no number table \""
        + id
        + "\""
        + NameSuggestions.hint(id, ruleSet.numberTables().keySet()).map(it -> "; " + it).orElse("");
  }

  private static String asJson(NumberMatch found) {
    DateRange days = found.days();
    return Json.object()
        .orNull(
            "first",
            days.openStart() ? Optional.empty() : Optional.of(DateRangeFormatter.iso(days.first())))
        .orNull(
            "last",
            days.openEnd() ? Optional.empty() : Optional.of(DateRangeFormatter.iso(days.last())))
        .orNull("likely", found.likely().map(DateRangeFormatter::iso))
        .text("table", found.table().id())
        .orNull("remark", found.remark())
        .toString();
  }

  private static String words(NumberMatch found) {
    return found.table().name()
        + ", "
        + DateRangeFormatter.of(found.days())
        + found.likely().map(day -> ", likely about " + DateRangeFormatter.of(day)).orElse("")
        + found.remark().map(remark -> "; " + remark).orElse("");
  }
}
