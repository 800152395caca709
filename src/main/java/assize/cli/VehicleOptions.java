package assize.cli;

import assize.date.Edtf;
import assize.diagnostic.NameSuggestions;
import assize.record.Built;
import assize.record.Named;
import assize.record.VehicleRecord;
import assize.report.text.TerminalEscaper;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import assize.text.Invisible;
import assize.text.Parsed;
import assize.text.SourceFile;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What is known of a vehicle, as it is typed; what is not known is left out. */
final class VehicleOptions {
  @Option(names = "--model", paramLabel = "MODEL", description = "Its model, as in X1.")
  private Optional<String> model = Optional.empty();

  @Option(
      names = "--built",
      paramLabel = "DATE",
      description = "When it was built, as in 1934-05 or 1934-03/1934-06.")
  private Optional<String> built = Optional.empty();

  @Option(names = "--plant", paramLabel = "PLANT", description = "The works it was built at.")
  private Optional<String> plant = Optional.empty();

  @Option(names = "--market", paramLabel = "MARKET", description = "The market it was built for.")
  private Optional<String> market = Optional.empty();

  @Option(
      names = "--equipment",
      paramLabel = "NAME[=yes|no]",
      description = "What it is fitted with, or =no: not; may be given again.")
  private List<String> equipment = List.of();

  @Option(
      names = "--number",
      paramLabel = "TABLE=NUMBER",
      description = "One of its numbers, as in chassis=X-4388; may be given again.")
  private List<String> numbers = List.of();

  @Option(names = "--name", paramLabel = "TEXT", description = "What it is called in the report.")
  private Optional<String> name = Optional.empty();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  /** Says whether anything is stated. */
  boolean areGiven() {
    return model.isPresent()
        || built.isPresent()
        || plant.isPresent()
        || market.isPresent()
        || name.isPresent()
        || !equipment.isEmpty()
        || !numbers.isEmpty();
  }

  /**
   * Returns a record of the vehicle without observations.
   *
   * @param id the record's name
   * @param named the rule set's file or folder, as the record names it
   * @throws UsageErrors.Several with everything that is wrong
   */
  VehicleRecord vehicle(RuleSet rules, String id, String named) {
    Checked checked = new Checked(rules);
    Optional<Built> date = built.flatMap(checked::date);
    model.ifPresent(it -> checked.isKnown("--model", "model", it, rules.models().keySet()));
    plant.ifPresent(it -> checked.isKnown("--plant", "plant", it, rules.plants().keySet()));
    market.ifPresent(it -> checked.isKnown("--market", "market", it, rules.markets().keySet()));
    Map<String, Boolean> fitted = checked.equipment(equipment);
    Map<String, String> stamped = checked.numbers(numbers);
    name.ifPresent(it -> checked.isLine("--name", it));
    if (!checked.wrong.isEmpty()) {
      throw new UsageErrors.Several(spec.commandLine(), checked.wrong);
    }
    VehicleRecord vehicle =
        VehicleRecord.of(id, named, name.map(String::strip).orElseGet(() -> usualName(rules)))
            .with(VehicleRecord.EDITION, Optional.of(rules.edition()))
            .with(Named.MODEL, model)
            .with(VehicleRecord.NUMBERS, stamped)
            .with(VehicleRecord.BUILT, date)
            .with(VehicleRecord.PLANT, plant)
            .with(VehicleRecord.MARKET, market)
            .with(VehicleRecord.EQUIPMENT, fitted);
    return VehicleRecord.TABLE.at(vehicle, new SourceFile(id + ".yaml", "").span(0, 0));
  }

  private String usualName(RuleSet rules) {
    return model
        .flatMap(it -> Optional.ofNullable(rules.models().get(it)))
        .map(Model::name)
        .orElse(rules.name());
  }

  /** Holds what was typed against a rule set, and gathers what is wrong. */
  private static final class Checked {
    private final RuleSet rules;
    private final List<String> wrong = new ArrayList<>();

    Checked(RuleSet rules) {
      this.rules = rules;
    }

    boolean isKnown(String option, String what, String id, Collection<String> known) {
      if (known.contains(id)) {
        return true;
      }
      wrong.add(
          option
              + ": this rule set has no "
              + what
              + " \""
              + TerminalEscaper.of(id)
              + "\""
              + NameSuggestions.hint(id, known)
                  .map(hint -> "; " + hint)
                  .orElse("; it names none: leave this out"));
      return false;
    }

    Optional<Built> date(String text) {
      Parsed<Edtf> date = Edtf.parse(text);
      return date.match(
          it -> Optional.of(Built.on(it)),
          bad -> {
            wrong.add("--built: " + bad.reason());
            return Optional.empty();
          });
    }

    Map<String, Boolean> equipment(List<String> typed) {
      Map<String, Boolean> fitted = new LinkedHashMap<>();
      for (String one : typed) {
        int equals = one.indexOf('=');
        String id = equals < 0 ? one : one.substring(0, equals);
        String answer = equals < 0 ? "yes" : one.substring(equals + 1);
        boolean known = isKnown("--equipment", "equipment", id, rules.equipment().keySet());
        if (!Set.of("yes", "no").contains(answer)) {
          wrong.add(
              "--equipment: write "
                  + TerminalEscaper.of(id)
                  + "=yes or "
                  + TerminalEscaper.of(id)
                  + "=no, not ="
                  + TerminalEscaper.of(answer));
        } else if (known) {
          Boolean before = fitted.put(id, answer.equals("yes"));
          if (before != null && before != answer.equals("yes")) {
            wrong.add("--equipment: " + id + " is given as yes and as no");
          }
        }
      }
      return fitted;
    }

    Map<String, String> numbers(List<String> typed) {
      Map<String, String> numbers = new LinkedHashMap<>();
      for (String one : typed) {
        int equals = one.indexOf('=');
        if (equals < 0) {
          String table = rules.numberTables().keySet().stream().findFirst().orElse("chassis");
          wrong.add(
              "--number: name the number table too, as in "
                  + table
                  + "="
                  + TerminalEscaper.of(one));
          continue;
        }
        String table = one.substring(0, equals);
        String number = one.substring(equals + 1).strip();
        if (isKnown("--number", "number table", table, rules.numberTables().keySet())) {
          if (number.isEmpty()) {
            wrong.add("--number: no number stands behind " + table + "=");
          } else if (isLine("--number", number)) {
            String before = numbers.put(table, number);
            if (before != null && !before.equals(number)) {
              wrong.add("--number: " + table + " is given twice, as " + before + " and " + number);
            }
          }
        }
      }
      return numbers;
    }

    boolean isLine(String option, String text) {
      if (Invisible.isAllOf(text)) {
        wrong.add(option + ": this is empty; leave it out");
        return false;
      }
      boolean seen = TerminalEscaper.of(text).equals(text);
      if (!seen) {
        wrong.add(option + ": this has a character that can't be seen or ends a line");
      }
      return seen;
    }
  }
}
