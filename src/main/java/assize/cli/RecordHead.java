package assize.cli;

import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.yaml.FlowYamlWriter;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The beginning of a record as a text: what vehicle it is, and nothing yet of what was found. */
final class RecordHead {
  private static final int LONGEST = 64;

  private RecordHead() {}

  /** Makes a name for a record of what its vehicle is called; that of the rule set without one. */
  static String idOf(String name, RuleSet rules) {
    String letters =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+", "");
    String id = letters.substring(0, Math.min(LONGEST, letters.length())).replaceAll("-+$", "");
    return id.isEmpty() ? rules.id() : id;
  }

  static String of(VehicleRecord record) {
    List<String> lines = new ArrayList<>();
    lines.add("record: " + record.id());
    lines.add("rules: " + FlowYamlWriter.text(record.rules(), false));
    // An edition is often a bare number, which other readers of YAML would not take for a text.
    record.edition().ifPresent(it -> lines.add("edition: " + FlowYamlWriter.doubleQuoted(it)));
    lines.add("vehicle:");
    lines.add("  name: " + FlowYamlWriter.text(record.name(), false));
    record.model().ifPresent(it -> lines.add("  model: " + it));
    if (!record.numbers().isEmpty()) {
      lines.add("numbers:");
      record
          .numbers()
          .forEach(
              (table, number) ->
                  lines.add("  " + table + ": " + FlowYamlWriter.text(number, false)));
    }
    record
        .built()
        .ifPresent(it -> lines.add("built: " + FlowYamlWriter.text(it.date().text(), false)));
    record.plant().ifPresent(it -> lines.add("plant: " + it));
    record.market().ifPresent(it -> lines.add("market: " + it));
    if (!record.equipment().isEmpty()) {
      lines.add("equipment: {" + equipment(record.equipment()) + "}");
    }
    return String.join("\n", lines) + "\n";
  }

  private static String equipment(Map<String, Boolean> fitted) {
    return fitted.entrySet().stream()
        .map(it -> it.getKey() + ": " + (it.getValue() ? "yes" : "no"))
        .collect(Collectors.joining(", "));
  }
}
