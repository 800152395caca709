package assize.newrecord;

import assize.record.Named;
import assize.record.VehicleRecord;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import assize.yaml.FlowYamlWriter;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The beginning of a record as a text: what vehicle it is, and nothing yet of what was found. The
 * names stand in the order of {@link VehicleRecord#TABLE}.
 */
public final class RecordHead {
  private static final int LONGEST = 64;

  private final VehicleRecord vehicle;
  private final Optional<RuleSet> hints;
  private final List<String> lines = new ArrayList<>();

  private RecordHead(VehicleRecord vehicle, Optional<RuleSet> hints) {
    this.vehicle = vehicle;
    this.hints = hints;
  }

  /** Makes a name for a record of what its vehicle is called; that of the rule set without one. */
  public static String idOf(String name, RuleSet rules) {
    String letters =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+", "");
    String id = letters.substring(0, Math.min(LONGEST, letters.length())).replaceAll("-+$", "");
    return id.isEmpty() ? rules.id() : id;
  }

  /** Returns what is known of a vehicle, and nothing of what is not. */
  public static String of(VehicleRecord vehicle) {
    return String.join("\n", new RecordHead(vehicle, Optional.empty()).written()) + "\n";
  }

  /** Returns what is known of a vehicle, and as comments what else may be stated. */
  static List<String> withHints(VehicleRecord vehicle, RuleSet rules) {
    return new RecordHead(vehicle, Optional.of(rules)).written();
  }

  private List<String> written() {
    lines.add(VehicleRecord.ID.name() + ": " + text(vehicle.id()));
    lines.add(VehicleRecord.RULES.name() + ": " + text(vehicle.rules()));
    // An edition is often a bare number, which other readers of YAML would not take for a text.
    vehicle
        .edition()
        .ifPresent(
            it -> lines.add(VehicleRecord.EDITION.name() + ": " + FlowYamlWriter.doubleQuoted(it)));
    lines.add(VehicleRecord.VEHICLE.name() + ":");
    lines.add("  " + Named.NAME.name() + ": " + text(vehicle.name()));
    word("  ", Named.MODEL.name(), vehicle.model(), "Model", hints.map(RecordHead::models));
    numbers();
    built();
    word("", VehicleRecord.PLANT.name(), vehicle.plant(), "Works", hints.map(RuleSet::plants));
    word("", VehicleRecord.MARKET.name(), vehicle.market(), "Market", hints.map(RuleSet::markets));
    equipment();
    return lines;
  }

  private static String text(String text) {
    return FlowYamlWriter.text(text, false);
  }

  private static Map<String, String> models(RuleSet rules) {
    Map<String, String> models = new LinkedHashMap<>();
    rules.models().values().forEach((Model it) -> models.put(it.id(), it.name()));
    return models;
  }

  private static Map<String, String> tables(RuleSet rules) {
    Map<String, String> tables = new LinkedHashMap<>();
    rules.numberTables().values().forEach((NumberTable it) -> tables.put(it.id(), it.name()));
    return tables;
  }

  /** Writes a word of the rule set; where it is not known, which words there are. */
  private void word(
      String indent,
      String key,
      Optional<String> stated,
      String what,
      Optional<Map<String, String>> words) {
    stated.ifPresentOrElse(
        it -> lines.add(indent + key + ": " + text(it)),
        () ->
            words
                .filter(it -> !it.isEmpty())
                .ifPresent(
                    known -> {
                      comment(indent, what + ", if it is known, one of: " + explained(known));
                      lines.add(indent + "#" + key + ":");
                    }));
  }

  private void comment(String indent, String text) {
    lines.addAll(YamlComments.of(indent.length(), "", text));
  }

  private static String explained(Map<String, String> known) {
    return known.entrySet().stream()
        .map(entry -> entry.getKey() + " (" + entry.getValue() + ")")
        .collect(Collectors.joining("; "));
  }

  private void numbers() {
    Map<String, String> stated = new LinkedHashMap<>();
    vehicle.numbers().forEach((table, number) -> stated.put(table, text(number)));
    group(
        VehicleRecord.NUMBERS.name(),
        stated,
        "Its numbers, as stamped; they tell when it was built.",
        hints.map(RecordHead::tables));
  }

  private void equipment() {
    Map<String, String> stated = new LinkedHashMap<>();
    vehicle.equipment().forEach((id, fitted) -> stated.put(id, fitted ? "yes" : "no"));
    group(
        VehicleRecord.EQUIPMENT.name(),
        stated,
        "What it is fitted with, each yes or no; leave out what is not known.",
        hints.map(RuleSet::equipment));
  }

  /** Writes a name and a value a line; behind it those of the rule set that are not stated. */
  private void group(
      String key, Map<String, String> stated, String what, Optional<Map<String, String>> words) {
    Map<String, String> missing = new LinkedHashMap<>(words.orElse(Map.of()));
    missing.keySet().removeAll(stated.keySet());
    if (!stated.isEmpty()) {
      lines.add(key + ":");
      stated.forEach((id, value) -> lines.add("  " + id + ": " + value));
    } else if (!missing.isEmpty()) {
      comment("", what);
      lines.add("#" + key + ":");
    }
    missing.forEach(
        (id, name) -> {
          lines.addAll(YamlComments.of(0, "  ", name));
          lines.add("#  " + id + ":");
        });
  }

  private void built() {
    if (vehicle.built().isPresent()) {
      lines.add(VehicleRecord.BUILT.name() + ": " + text(vehicle.built().get().date().text()));
    } else if (hints.isPresent()) {
      comment("", "When it was built, if something says so.");
      lines.add("#" + VehicleRecord.BUILT.name() + ": {date: 1934-05, basis: build plate}");
    }
  }
}
