package assize.bench.judging;

import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.List;
import java.util.Random;

/**
 * A standard that was made up to measure with: a quarter of its items each ask for a finish, a part
 * number, a size and a color. Half of them hold for some models only, half for some build days.
 *
 * <p>Here it stands as plain figures, from which everything that is measured is made.
 */
final class Standard {
  static final int ITEMS = 1000;
  static final int MODELS = 4;
  static final int AREAS = 10;
  static final int FIRST_YEAR = 1932;
  static final int YEARS = 5;
  static final String[] FINISHES = {"nickel", "chrome", "cadmium", "paint", "oil-black", "zinc"};

  /** L*, a*, b* of each color. */
  static final double[][] COLORS = {
    {34.2, -18.5, 9.1}, {61.0, 4.2, 38.7}, {28.4, 41.3, 22.8}, {45.5, -3.1, -27.6},
    {72.3, 1.8, 8.4}, {20.1, 2.2, 3.9}, {52.8, -7.7, 3.3}, {38.9, 15.6, 30.2}
  };

  static final double TOLERANCE = 3;

  enum Kind {
    FINISH,
    PART_NUMBER,
    SIZE,
    COLOR
  }

  /**
   * One item.
   *
   * @param models the models that it holds for, as bits
   * @param fromYear the first year it holds for
   * @param toYear the last
   * @param points in whole points
   * @param right the finish or color that is right
   * @param half the finish that earns half; -1 for none
   * @param series the figures that a part number begins with
   * @param millimeters the size in hundredths of a millimeter
   * @param disputed whether a second source holds another value to be right
   */
  record Item(
      Kind kind,
      int models,
      int fromYear,
      int toYear,
      int points,
      int right,
      int half,
      int series,
      int millimeters,
      boolean disputed) {}

  private final List<Item> items;

  /**
   * Makes it.
   *
   * @param disputed how many of a hundred items sources differ on
   */
  Standard(int disputed) {
    Random random = new Random(5);
    this.items =
        java.util.stream.IntStream.range(0, ITEMS)
            .mapToObj(i -> item(random, Kind.values()[i % 4], i % 100 < disputed))
            .toList();
  }

  private static Item item(Random random, Kind kind, boolean disputed) {
    int models = random.nextBoolean() ? (1 << MODELS) - 1 : 1 + random.nextInt((1 << MODELS) - 1);
    int from = random.nextBoolean() ? 0 : random.nextInt(YEARS);
    int to = random.nextBoolean() ? YEARS - 1 : from + random.nextInt(YEARS - from);
    int right = random.nextInt(kind == Kind.COLOR ? COLORS.length : FINISHES.length);
    int half = random.nextInt(4) == 0 ? (right + 1) % FINISHES.length : -1;
    return new Item(
        kind,
        models,
        FIRST_YEAR + from,
        FIRST_YEAR + to,
        1 + random.nextInt(9),
        right,
        half,
        100 + random.nextInt(900),
        200 + random.nextInt(4000),
        disputed);
  }

  List<Item> items() {
    return items;
  }

  static String id(int item) {
    return "item-" + item;
  }

  static String model(int model) {
    return "M" + model;
  }

  static String color(int color) {
    return "color-" + color;
  }

  /** Returns it as a person would have written it, read by the program. */
  RuleSet rules() {
    StringBuilder yaml = new StringBuilder();
    yaml.append(
        """
        rule_set: measured
        name: Measured
        edition: "1"
        scale: {method: sum, out_of: 500}
        awards: {first: {name: First, min_score: 450}, second: {name: Second, min_score: 400}}
        sources:
          drawing: {kind: drawing, grade: A, title: Drawings}
          letter: {kind: service letter, grade: B, title: Letters}
        """);
    yaml.append("models:\n");
    for (int i = 0; i < MODELS; i++) {
      int last = FIRST_YEAR + YEARS - 1;
      yaml.append("  %s: {name: Model, production: %d/%d}\n".formatted(model(i), FIRST_YEAR, last));
    }
    yaml.append("colors:\n");
    for (int i = 0; i < COLORS.length; i++) {
      double[] lab = COLORS[i];
      yaml.append(
          "  %s: {name: Color, lab: [%s, %s, %s], tolerance: %s}\n"
              .formatted(color(i), lab[0], lab[1], lab[2], TOLERANCE));
    }
    yaml.append("finishes:\n");
    for (String finish : FINISHES) {
      yaml.append("  %s: {name: Finish}\n".formatted(finish));
    }
    yaml.append("areas:\n");
    for (int area = 0; area < AREAS; area++) {
      yaml.append("  area-%d:\n    name: Area\n    items:\n".formatted(area));
      for (int i = area * ITEMS / AREAS; i < (area + 1) * ITEMS / AREAS; i++) {
        item(yaml, i);
      }
    }
    return RuleSetReader.parse(List.of(new SourceFile("rules.yaml", yaml.toString())))
        .value()
        .orElseThrow();
  }

  private void item(StringBuilder yaml, int number) {
    Item item = items.get(number);
    yaml.append("      %s:\n        title: Item\n".formatted(id(number)));
    yaml.append("        points: %d\n".formatted(item.points()));
    if (item.models() != (1 << MODELS) - 1) {
      yaml.append("        models: [");
      for (int i = 0; i < MODELS; i++) {
        yaml.append((item.models() >> i & 1) == 1 ? model(i) + ", " : "");
      }
      yaml.setLength(yaml.length() - 2);
      yaml.append("]\n");
    }
    yaml.append("        built: %d/%d\n".formatted(item.fromYear(), item.toYear()));
    yaml.append("        claims:\n");
    yaml.append("          - {source: drawing, says: {%s}}\n".formatted(value(item)));
    if (item.disputed()) {
      yaml.append("          - {source: letter, says: {%s}}\n".formatted(other(item)));
    }
  }

  private static String value(Item item) {
    return switch (item.kind()) {
      case FINISH ->
          item.half() < 0
              ? "finish: " + FINISHES[item.right()]
              : "finish: {%s: 1, %s: 1/2}".formatted(FINISHES[item.right()], FINISHES[item.half()]);
      case PART_NUMBER -> "part_number: '%s'".formatted(pattern(item.series()));
      case SIZE -> "size: %s mm ± 0.2 mm".formatted(item.millimeters() / 100.0);
      case COLOR -> "color: " + color(item.right());
    };
  }

  private static String other(Item item) {
    return switch (item.kind()) {
      case FINISH -> "finish: " + FINISHES[(item.right() + 2) % FINISHES.length];
      case PART_NUMBER -> "part_number: '%s'".formatted(pattern(item.series() + 1000));
      case SIZE -> "size: %s mm ± 0.2 mm".formatted((item.millimeters() + 40) / 100.0);
      case COLOR -> "color: " + color((item.right() + 1) % COLORS.length);
    };
  }

  /** Returns the pattern of the part numbers of a series. */
  static String pattern(int series) {
    return "[AB]-" + series + "[0-9]{3}";
  }
}
