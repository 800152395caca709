package assize.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Rule sets and records of any size that look like real ones; the same seed gives the same text.
 *
 * <p>An item is about 550 characters with two claims, 420 with one.
 */
public final class Generated {
  private static final int ITEMS_PER_AREA = 40;
  private static final String[] PLACES = {
    "frame", "axle", "spring", "engine", "gearbox", "hood", "cab", "bed", "lamp", "seat", "tank"
  };
  private static final String[] PARTS = {
    "bracket", "bolt", "plate", "cover", "flange", "rail", "clamp", "hinge", "button", "hose", "cap"
  };
  private static final String[] COLORS = {"works-green", "chassis-black", "maroon", "shop-gray"};
  private static final String[] FINISHES = {"nickel", "chrome", "cadmium", "oil-black", "tinned"};
  private static final String[] MATERIALS = {"ash", "oak", "elm", "brass", "steel"};
  private static final String[] KINDS = {
    "drawing", "parts list", "service letter", "factory photograph", "unrestored survivor"
  };
  private static final String[] LOOKS = {
    "Left side, below the second rail, where nothing ever rubbed. Wipe it with a dry cloth first.",
    "Underside, a hand's breadth from the end. Tell a color coat from the ground beneath it.",
    "Face toward the engine. Later ones have a raised rib and a second hole near the edge.",
    "Measure at three places and take the middle one, paint and dirt off or allowed for."
  };

  private final int items;
  private final int sources;
  private final Random random;

  /** The first item that a record answers. */
  private int from;

  /** How many claims each item has; 0: one to three, or none. */
  private int claims;

  private Generated(int items, int sources, long seed) {
    this.items = items;
    this.sources = sources;
    this.random = new Random(seed);
  }

  /** Returns a rule set, whole in one file. */
  public static String rules(int items, int sources) {
    return new Generated(items, sources, 1).rules();
  }

  /** Returns a rule set of about so many characters. */
  public static String rulesOfSize(int characters) {
    int tried = 400;
    int perItem = rules(tried, 40).length() / tried;
    return rules(characters / perItem, 40);
  }

  /**
   * Returns a record that answers every item of {@link #rules}, nine in ten of them rightly.
   *
   * @param rules how the record names its rule set
   * @param which tells one record from another
   */
  public static String record(int items, String rules, int which) {
    return new Generated(items, 0, which).record(rules, which);
  }

  /** Returns a record of which everything from one item on stands under its name. */
  public static String recordFrom(int from, int items, String rules, int which) {
    Generated generated = new Generated(items, 0, which);
    generated.from = from;
    return generated.record(rules, which);
  }

  /** Returns a record that shows so many photos, {@code photo-0.png} and so on beside it. */
  public static String recordWithPhotos(int items, String rules, int photos) {
    StringBuilder evidence = new StringBuilder("\nevidence:\n");
    for (int i = 0; i < photos; i++) {
      evidence.append("  photo-").append(i).append(": {photo: photo-").append(i);
      evidence.append(".png, caption: Seen from below}\n");
    }
    return record(items, rules, 1).replace("\nobservations:\n", evidence + "\nobservations:\n");
  }

  /** Returns a rule set with so many claims on each item, which hold with one of two values. */
  public static String disputed(int items, int claims) {
    Generated generated = new Generated(items, claims, 1);
    generated.claims = claims;
    return generated.rules();
  }

  /** Returns the name of an item. */
  public static String item(int i) {
    return PLACES[i % PLACES.length] + "-" + PARTS[i / PLACES.length % PARTS.length] + "-" + i;
  }

  private String rules() {
    StringBuilder text = new StringBuilder(items * 600 + 10_000);
    text.append(
        """
        # A standard that was made up to measure with.
        rule_set: measured
        name: Measured standard
        edition: "1"
        issued: 2026-03
        maker: Tarrowby Motor Company
        purpose: >-
          Nothing that ever was. It has as many items as are asked for, of the kinds that real
          standards have, in about their shares.

        scale:
          method: sum
          out_of: 1000
          not_assessed: 0

        awards:
          first: {name: First award, min_score: 80 %, min_area_share: 70 %}
          second: {name: Second award, min_score: 60 %}

        models:
          L41: {name: "L41 dropside, 30 cwt", production: 1932-03/1936-08}
          L45: {name: "L45 deluxe dropside, 30 cwt", production: 1933-11/1936-08}

        equipment:
          heater: Cab heater
          tilt: Canvas tilt

        number_tables:
          chassis:
            name: Chassis number
            series:
              - prefix: L45-
                models: [L45]
                first_numbers: {4001: 1933-11-13, 4290: 1934-03-19, 4800: 1935-05}
                last: {number: 5187, built: 1936-08-14}

        colors:
          works-green: {name: Works green, lab: [33.8, -17.2, 8.6], tolerance: 3}
          chassis-black: {name: Chassis black, lab: [11.8, 0.2, -0.4], tolerance: 3}
          maroon: {name: Deluxe maroon, lab: [24.6, 25.1, 9.8], tolerance: 3}
          shop-gray: {name: Shop gray}

        finishes:
          nickel: {name: nickel plate}
          chrome: {name: chromium plate}
          cadmium: {name: cadmium plate}
          oil-black: {name: oil-blackened}
          tinned: {name: hot tinned}

        materials:
          ash: ash
          oak: oak
          elm: elm
          brass: brass
          steel: sheet steel

        origins:
          original: 1
          new old stock: 1
          reproduction: 0.7
          unknown: 0.5

        conditions:
          as delivered: 1
          honest wear: 0.95
          worn: 0.5

        """);
    sources(text);
    areas(text);
    return text.toString();
  }

  private void sources(StringBuilder text) {
    text.append("sources:\n");
    for (int i = 0; i < sources; i++) {
      text.append("  source-").append(i).append(":\n");
      text.append("    kind: ").append(KINDS[i % KINDS.length]).append('\n');
      text.append("    grade: ").append("ABCD".charAt(i % 4)).append('\n');
      text.append("    title: Works paper ").append(100 + i).append(", sheet ").append(i % 9);
      text.append(", fittings and finishes\n");
      text.append("    date: 193").append(2 + i % 5).append("-0").append(1 + i % 9).append('\n');
      text.append("    held_by: the club's archive, linen tracing\n");
    }
  }

  private void areas(StringBuilder text) {
    List<String> areas = new ArrayList<>();
    for (int from = 0; from < items; from += ITEMS_PER_AREA) {
      StringBuilder area = new StringBuilder();
      int points = 0;
      for (int i = from; i < Math.min(items, from + ITEMS_PER_AREA); i++) {
        points += item(area, i);
      }
      String name = "area-" + from / ITEMS_PER_AREA;
      areas.add(
          "  "
              + name
              + ":\n    name: Area "
              + from / ITEMS_PER_AREA
              + "\n    points: "
              + points
              + "\n    items:\n"
              + area);
    }
    text.append("\nareas:\n");
    areas.forEach(text::append);
  }

  private int item(StringBuilder text, int i) {
    int points = 2 + i % 7;
    text.append("\n      ").append(item(i)).append(":\n");
    text.append("        title: ").append(title(i)).append('\n');
    text.append("        points: ").append(points).append('\n');
    if (random.nextInt(4) == 0) {
      text.append("        models: [L45]\n");
    }
    text.append("        look: >-\n          ").append(pick(LOOKS)).append('\n');
    if (random.nextInt(4) == 0) {
      text.append("        notes: |\n          What is known, in short:\n\n");
      text.append("          - The drawing of ").append(1932 + i % 5).append(" says so.\n");
      text.append("          - *Later ones* differ: ").append(pick(LOOKS)).append('\n');
    }
    int asked = kind(i);
    if (claims > 0 || sources > 0 && random.nextInt(2) == 0) {
      text.append("        claims:\n");
      int number = claims > 0 ? claims : 1 + random.nextInt(3);
      int first = random.nextInt(sources);
      for (int c = 0; c < Math.min(number, sources); c++) {
        text.append("          - source: source-").append((first + c) % sources).append('\n');
        text.append("            cite: plate ").append(i % 30).append(", figure ").append(c);
        text.append('\n');
        text.append("            says: {").append(expected(asked, i + (c % 3 == 2 ? 1 : 0)));
        text.append("}\n");
      }
    } else {
      text.append("        expect:\n          ").append(expected(asked, i)).append('\n');
      if (sources > 0) {
        text.append("        source: source-").append(random.nextInt(sources)).append('\n');
        text.append("        cite: section ").append(i % 30).append('\n');
      }
    }
    return points;
  }

  private static String title(int i) {
    return "Item "
        + i
        + ", "
        + PARTS[i / PLACES.length % PARTS.length]
        + " of the "
        + PLACES[i % PLACES.length];
  }

  /** Which aspect an item asks for; rule set and record agree on it. */
  private static int kind(int i) {
    return i * 7 % 10;
  }

  private static String expected(int kind, int i) {
    return switch (kind) {
      case 0, 1 -> "finish: " + FINISHES[i % FINISHES.length];
      case 2, 3 -> "color: " + COLORS[i % COLORS.length];
      case 4 -> "material: " + MATERIALS[i % MATERIALS.length];
      case 5 -> "size: " + (1 + i % 9) + " 1/4 in ± 1/16 in";
      case 6 -> "count: {of: " + (4 + i % 30) + ", loss_per_piece: 1/4}";
      case 7 -> "part_number: LE-" + (2000 + i % 700);
      case 8 -> "gloss: " + (10 + i % 20) + " to " + (35 + i % 20);
      default -> "present: yes";
    };
  }

  private String record(String rules, int which) {
    StringBuilder text = new StringBuilder(items * 60 + 1000);
    text.append("record: measured-").append(which).append('\n');
    text.append("rules: ").append(rules).append('\n');
    text.append("edition: \"1\"\nvehicle:\n  name: Measured vehicle ").append(which);
    text.append("\n  model: L45\nnumbers: {chassis: L45-").append(4001 + which % 1000);
    text.append("}\nequipment: {heater: yes, tilt: no}\n");
    text.append("inspected: {by: the owner, on: 2026-10-03}\n\nobservations:\n");
    for (int i = from; i < items; i++) {
      int found = random.nextInt(10) == 0 ? i + 1 : i;
      text.append("  ").append(item(i)).append(":\n    ").append(observed(kind(i), found));
      text.append('\n');
      if (random.nextInt(5) == 0) {
        text.append("    note: Seen from below, with a lamp. ").append(pick(LOOKS)).append('\n');
      }
    }
    return text.toString();
  }

  private static String observed(int kind, int i) {
    return switch (kind) {
      case 5 -> "size: " + (1 + i % 9) + " 1/4 in ± 1/64 in";
      case 6 -> "count: " + (4 + i % 30);
      case 8 -> "gloss: " + (20 + i % 20) + " ± 2";
      default -> expected(kind, i);
    };
  }

  private String pick(String[] from) {
    return from[random.nextInt(from.length)];
  }
}
