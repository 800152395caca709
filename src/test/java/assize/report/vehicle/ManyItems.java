package assize.report.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.Main;
import assize.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A report of very many items, of every verdict and every state of the sources. */
final class ManyItems {
  static final int AREAS = 20;

  private static final String HEAD =
      """
      rule_set: many
      name: A standard of very many items
      edition: "1"
      scale: {method: sum, out_of: 1000}
      models:
        X1: {name: Dropside, production: 1932-03/1936-08}
        X2: {name: Box van, production: 1932-03/1936-08}
      sources:
        drawing: {kind: drawing, grade: A, title: Works drawing 204}
        photo: {kind: factory photograph, grade: B, title: Works photograph of 1934}
        guide: {kind: club guide, grade: C, title: Guide for restorers}
      finishes:
        nickel: {name: nickel plate}
        chrome: {name: chromium plate}
        paint: {name: paint}
      equipment:
        heater: Cab heater
      areas:
      """;

  /** What the items differ in, one after another. */
  private static final String[] RULES = {
    "expect: {finish: nickel}\n    source: drawing",
    "expect: {finish: {nickel: 1, chrome: 1/2}}\n    source: drawing\n    hazards: [lead paint]",
    "expect: {finish: paint}\n    source: drawing",
    "claims: [{source: drawing, says: {finish: nickel}},"
        + " {source: guide, says: {finish: chrome}}]\n    hazards: [lifting]",
    "claims: [{source: drawing, says: {finish: chrome}}, {source: photo, says: {finish: chrome}},"
        + " {source: guide, says: {finish: nickel}}]",
    "expect: {finish: chrome}",
    "expect: {finish: nickel}\n    source: drawing\n    hazards: [asbestos, lifting]",
    "models: [X2]\n    expect: {finish: nickel}\n    source: drawing\n    hazards: [lifting]",
    "equipment: [heater]\n    expect: {finish: chrome}\n    source: drawing",
  };

  private static final String[] FOUND = {
    "finish: nickel",
    "finish: chrome",
    "finish: chrome",
    "finish: chrome",
    "finish: chrome",
    "finish: chrome",
    "",
    "",
    "finish: chrome",
  };

  private ManyItems() {}

  /** Writes and judges so many items in a folder, and returns the report. */
  static Path in(Path folder, int items) throws IOException {
    StringBuilder rules = new StringBuilder(HEAD);
    StringBuilder seen = new StringBuilder();
    for (int area = 0; area < AREAS; area++) {
      rules.append("  part-" + area + ":\n    name: Part " + (area + 1) + "\n    items:\n");
      for (int item = area; item < items; item += AREAS) {
        rules.append(rule(item).indent(6));
        if (!FOUND[item % FOUND.length].isEmpty()) {
          seen.append("  detail-" + item + ": {" + FOUND[item % FOUND.length] + ", note: ");
          seen.append("Cleaned and looked at with a lens by daylight on two days.}\n");
        }
      }
    }
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("many.yaml"), rules);
    Path record = folder.resolve("of-many.yaml");
    Files.writeString(
        record,
        "record: of-many\nrules: many.yaml\nvehicle: {name: Our dropside, model: X1}\n"
            + "built: {date: 1934-05, basis: build plate}\nobservations:\n"
            + seen);
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(messages, true, StandardCharsets.UTF_8);
    Path out = folder.resolve("reports");
    int exit =
        Main.run(
            new Terminal(stream, stream, false),
            "judge",
            record.toString(),
            "--out",
            out.toString());
    assertThat(exit).as(messages.toString(StandardCharsets.UTF_8)).isZero();
    return out.resolve("of-many.html");
  }

  private static String rule(int item) {
    return "detail-%d:\n  title: Detail %d, %s\n  points: 2\n".formatted(item, item, word(item))
        + "  look: The upper face and both edges; the rear face where no road dirt reaches it.\n"
        + "  notes: Seen from below with a lamp; the second issue of the drawing moved it.\n"
        + "  "
        + RULES[item % RULES.length].replace("\n    ", "\n  ")
        + "\n";
  }

  /** Returns a word that every seventh item shares, with letters that carry marks. */
  private static String word(int item) {
    return item % 7 == 0 ? "Émaillé" : "plain";
  }
}
