package assize.merge;

import assize.yaml.FlowYamlWriter;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Makes records by {@link Samples}, written in every way that people write YAML in: lines and
 * brackets, all quotes, remarks everywhere, any line ends, with a last one or without.
 */
public final class RandomRecords {
  static final Map<String, Map<String, List<String>>> ITEMS = new LinkedHashMap<>();

  static {
    ITEMS.put(
        "horn-button",
        Map.of(
            "finish", List.of("nickel", "chrome", "other"),
            "part_number",
                List.of("A-41207", "0510", "7E4", "no", "12: 3", "#4", "ö 漢 \ud83d\ude9a"),
            "condition", List.of("sound")));
    ITEMS.put(
        "pinstripe",
        Map.of(
            "size", List.of("3/32 in", "2.4 mm ± 0.1 mm", "2.38 mm, to 0.02 mm"),
            "color", List.of("works-green", "black")));
    ITEMS.put(
        "rear-lamp",
        Map.of(
            "choice", List.of("left", "right"),
            "present", List.of("yes", "no"),
            "works", List.of("no"),
            "count", List.of("1", "12")));
    ITEMS.put("bed", Map.of("material", List.of("ash"), "gloss", List.of("satin", "41 ± 3")));
  }

  private static final List<String> NOTES =
      List.of(
          "Cleaned, not plated again.",
          "Rim: yellowish # or is it?",
          "It's \"nickel\", I think \\ hope",
          "Größe über 3 mm – 漢字 \ud83d\ude9a",
          "no",
          "- a list? {no}",
          "word ".repeat(60).strip(),
          "One line.\nAnother: with a colon.\n\n  # and this");

  private final Random random;
  private final List<String> lines = new ArrayList<>();
  private final int step;

  /** Begins a record of its own for each seed. */
  public RandomRecords(long seed) {
    this.random = new Random(seed);
    this.step = 1 + random.nextInt(4);
  }

  /** Returns a record's text. */
  public String text() {
    if (random.nextInt(4) == 0) {
      lines.add("# A record\tof one vehicle");
    }
    if (random.nextInt(8) == 0) {
      lines.add("---");
    }
    lines.add("record: " + quoted("our-x1") + remark());
    lines.add("rules: rules.yaml" + remark());
    lines.add(random.nextBoolean() ? "vehicle: {name: Ours}" : "vehicle: # ours\n  name: Ours ");
    space(0);
    if (random.nextBoolean()) {
      evidence();
      space(0);
    }
    List<String> items = new ArrayList<>(ITEMS.keySet());
    Collections.shuffle(items, random);
    List<String> told = items.subList(0, random.nextInt(items.size() + 1));
    if (!told.isEmpty()) {
      lines.add("observations:" + remark());
      told.forEach(this::observation);
    }
    space(0);
    if (random.nextInt(8) == 0) {
      lines.add("...");
    }
    return ended();
  }

  private void evidence() {
    lines.add("evidence:" + remark());
    String indent = " ".repeat(step);
    lines.add(indent + "rule: {measurement: Steel rule}" + remark());
    lines.add(indent + "invoice:");
    lines.add(indent + indent + "document: papers/invoice.pdf" + remark());
  }

  private void observation(String item) {
    Map<String, List<String>> aspects = ITEMS.getOrDefault(item, Map.of());
    Map<String, String> fields = new LinkedHashMap<>();
    List<String> keys = new ArrayList<>(new TreeSet<>(aspects.keySet()));
    Collections.shuffle(keys, random);
    for (String key : keys.subList(0, 1 + random.nextInt(keys.size()))) {
      List<String> values = aspects.getOrDefault(key, List.of());
      fields.put(key, values.get(random.nextInt(values.size())));
    }
    if (random.nextBoolean()) {
      fields.put("note", NOTES.get(random.nextInt(NOTES.size())));
    }
    space(step);
    if (random.nextInt(3) == 0) {
      brackets(item, fields);
    } else {
      lines.add(" ".repeat(step) + key(item) + ":" + remark());
      fields.forEach(this::field);
    }
  }

  private void brackets(String item, Map<String, String> fields) {
    boolean many = random.nextInt(3) == 0;
    String indent = " ".repeat(step * 2);
    List<String> parts = new ArrayList<>();
    fields.forEach(
        (key, value) ->
            parts.add(key(key) + ": " + RecordEditing.FLOW.of(key, YamlValue.text(value), true)));
    String head = " ".repeat(step) + item + ": ";
    if (!many) {
      lines.add(
          head + "{" + blank() + String.join("," + blank(), parts) + blank() + "}" + remark());
      return;
    }
    lines.add(head + "{" + remark());
    for (int i = 0; i < parts.size(); i++) {
      boolean comma = i + 1 < parts.size() || random.nextBoolean();
      lines.add(indent + parts.get(i) + (comma ? "," : "") + remark());
    }
    lines.add(" ".repeat(step) + "}" + remark());
  }

  private void field(String key, String value) {
    String indent = " ".repeat(step * 2);
    space(step * 2);
    if (value.indexOf('\n') > 0 && random.nextBoolean()) {
      lines.add(indent + key + ": |" + (random.nextBoolean() ? "-" : ""));
      value.lines().forEach(it -> lines.add(it.isEmpty() ? "" : indent + "  " + it));
      return;
    }
    lines.add(indent + key(key) + ":" + blank() + " " + written(key, value) + remark());
  }

  private String written(String key, String value) {
    return switch (random.nextInt(3)) {
      case 0 -> FlowYamlWriter.doubleQuoted(value);
      case 1 ->
          value.indexOf('\n') < 0
              ? "'" + value.replace("'", "''") + "'"
              : RecordEditing.FLOW.of(key, YamlValue.text(value), false);
      default -> RecordEditing.FLOW.of(key, YamlValue.text(value), false);
    };
  }

  private String quoted(String text) {
    return random.nextBoolean() ? text : "\"" + text + "\"";
  }

  private String key(String key) {
    return random.nextInt(6) == 0 ? "'" + key + "'" : key;
  }

  private String blank() {
    return " ".repeat(random.nextInt(3));
  }

  private String remark() {
    return switch (random.nextInt(6)) {
      case 0 -> "  # as found:\t\"so\" {and} [so] ü \ud83d\ude9a";
      case 1 -> "   ";
      case 2 -> " #\tx";
      default -> "";
    };
  }

  private void space(int indent) {
    switch (random.nextInt(6)) {
      case 0 -> lines.add("");
      case 1 -> lines.add(" ".repeat(indent) + "# a remark: of its own");
      case 2 -> lines.add("# \tto the left");
      default -> {}
    }
  }

  private String ended() {
    List<String> ends = List.of("\n", "\r\n", "\r");
    int kind = random.nextInt(6);
    StringBuilder text = new StringBuilder();
    List<String> all =
        lines.stream()
            .flatMap(it -> it.lines().findFirst().isEmpty() ? Stream.of("") : it.lines())
            .toList();
    for (int i = 0; i < all.size(); i++) {
      boolean last = i + 1 == all.size();
      String end = kind < 2 ? "\n" : kind < 4 ? "\r\n" : ends.get(random.nextInt(2));
      text.append(all.get(i)).append(last && random.nextBoolean() ? "" : end);
    }
    return text.toString();
  }
}
