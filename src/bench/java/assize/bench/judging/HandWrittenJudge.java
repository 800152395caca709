package assize.bench.judging;

import assize.bench.judging.Standard.Item;
import assize.bench.judging.Standard.Kind;
import assize.measure.Conformity;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What somebody would write who judges by this one standard alone: arrays, a loop, nothing that
 * tells why. Sources agree here, so each aspect has one value that is right.
 */
final class HandWrittenJudge {
  private static final long FULL = 500_000;

  private final Fleet fleet;
  private final Kind[] kinds = new Kind[Standard.ITEMS];
  private final int[] models = new int[Standard.ITEMS];
  private final int[] from = new int[Standard.ITEMS];
  private final int[] to = new int[Standard.ITEMS];
  private final long[] points = new long[Standard.ITEMS];

  /** Per item and word the credit in halves. */
  private final byte[][] credits = new byte[Standard.ITEMS][];

  /** Per item the three figures that a number has behind its letter. */
  private final byte[][] series = new byte[Standard.ITEMS][];

  private final double[] least = new double[Standard.ITEMS];
  private final double[] most = new double[Standard.ITEMS];
  private final Near[] near = new Near[Standard.COLORS.length];

  /** One color to compare with. */
  private record Near(double l, double a, double b, double chroma) {}

  HandWrittenJudge(Standard standard, Fleet fleet) {
    this.fleet = fleet;
    for (int i = 0; i < near.length; i++) {
      double[] lab = Standard.COLORS[i];
      near[i] = new Near(lab[0], lab[1], lab[2], Math.hypot(lab[1], lab[2]));
    }
    List<Item> items = standard.items();
    for (int i = 0; i < Standard.ITEMS; i++) {
      Item item = items.get(i);
      kinds[i] = item.kind();
      models[i] = item.models();
      from[i] = item.fromYear();
      to[i] = item.toYear();
      points[i] = 1000L * item.points();
      series[i] =
          Integer.toString(item.series()).getBytes(java.nio.charset.StandardCharsets.US_ASCII);
      least[i] = item.millimeters() - 20;
      most[i] = item.millimeters() + 20;
      credits[i] = new byte[Math.max(Standard.FINISHES.length, Standard.COLORS.length)];
      if (item.kind() == Kind.FINISH) {
        if (item.half() >= 0) {
          credits[i][item.half()] = 1;
        }
        credits[i][item.right()] = 2;
      } else if (item.kind() == Kind.COLOR) {
        for (int c = 0; c < Standard.COLORS.length; c++) {
          double[] lab = Standard.COLORS[c];
          boolean same =
              difference(lab[0], lab[1], lab[2], near[item.right()]) <= Standard.TOLERANCE;
          credits[i][c] = (byte) (same ? 2 : 0);
        }
        right[i] = item.right();
      }
    }
  }

  private final int[] right = new int[Standard.ITEMS];

  /**
   * What a fleet comes to.
   *
   * @param met how many findings meet
   * @param low the sum of all low scores, in thousandths; likely and high accordingly
   */
  record Sum(long met, long low, long likely, long high) {
    Sum plus(Sum other) {
      return new Sum(met + other.met, low + other.low, likely + other.likely, high + other.high);
    }
  }

  /** Judges some of the vehicles. */
  Sum judge(int first, int last) {
    long met = 0;
    long sumLow = 0;
    long sumLikely = 0;
    long sumHigh = 0;
    for (int v = first; v < last; v++) {
      int model = 1 << fleet.models[v];
      int year = fleet.firstYear[v];
      long possible = 0;
      long low = 0;
      long likely = 0;
      long high = 0;
      for (int i = 0; i < Standard.ITEMS; i++) {
        if ((models[i] & model) == 0 || year < from[i] || year > to[i]) {
          continue;
        }
        int at = v * Standard.ITEMS + i;
        long of = points[i];
        possible += of;
        if (!fleet.shown[at]) {
          high += of;
          continue;
        }
        double credit = credit(i, at);
        if (credit == 1) {
          met++;
          low += of;
          likely += of;
          high += of;
        } else if (credit > 0 && kinds[i] != Kind.FINISH) {
          likely += part(of, credit);
          high += of;
        } else {
          long earned = part(of, credit);
          low += earned;
          likely += earned;
          high += earned;
        }
      }
      sumLow += score(low, possible);
      sumLikely += score(likely, possible);
      sumHigh += score(high, possible);
    }
    return new Sum(met, sumLow, sumLikely, sumHigh);
  }

  /** Returns so much of the points, half to even; a credit has four decimals. */
  private static long part(long of, double credit) {
    return halfEven(of * Math.round(credit * 10_000), 10_000);
  }

  private static long score(long earned, long possible) {
    return possible == 0 ? 0 : halfEven(FULL * earned, possible);
  }

  private static long halfEven(long numerator, long denominator) {
    long rounded = numerator / denominator;
    long twice = 2 * (numerator % denominator);
    return twice > denominator || twice == denominator && (rounded & 1) == 1
        ? rounded + 1
        : rounded;
  }

  private double credit(int i, int at) {
    switch (kinds[i]) {
      case FINISH:
        return credits[i][fleet.words[at]] / 2.0;
      case PART_NUMBER:
        return fits(series[i], fleet.numbers[at], fleet.numbers[at + 1]) ? 1 : 0;
      case SIZE:
        double value = fleet.figures[3 * at];
        double u = fleet.uncertain[at];
        if (u == 0) {
          return value >= least[i] && value <= most[i] ? 1 : 0;
        }
        return decided(
            Conformity.probability(
                value, u, OptionalDouble.of(least[i]), OptionalDouble.of(most[i])));
      default:
        if (fleet.words[at] >= 0) {
          return credits[i][fleet.words[at]] / 2;
        }
        double[] figures = fleet.figures;
        double difference =
            difference(figures[3 * at], figures[3 * at + 1], figures[3 * at + 2], near[right[i]]);
        double uOfColor = fleet.uncertain[at];
        if (uOfColor == 0) {
          return difference <= Standard.TOLERANCE ? 1 : 0;
        }
        return decided(
            Conformity.probability(
                difference,
                uOfColor,
                OptionalDouble.empty(),
                OptionalDouble.of(Standard.TOLERANCE)));
    }
  }

  private static double decided(double probability) {
    return probability >= 0.95
        ? 1
        : probability <= 0.05 ? 0 : Math.round(probability * 10_000) / 10_000.0;
  }

  /** A letter A or B, three figures as given, three of any kind; spaces and dashes do not count. */
  private boolean fits(byte[] figures, int from, int to) {
    int place = 0;
    for (int i = from; i < to; i++) {
      int c = fleet.characters[i];
      if (c == ' ' || c == '-') {
        continue;
      }
      boolean good =
          switch (place) {
            case 0 -> (c | 32) == 'a' || (c | 32) == 'b';
            case 1, 2, 3 -> c == figures[place - 1];
            case 4, 5, 6 -> c >= '0' && c <= '9';
            default -> false;
          };
      if (!good) {
        return false;
      }
      place++;
    }
    return place == 7;
  }

  /** CIEDE2000 after Sharma, Wu and Dalal (2005), weights at 1. */
  private static double difference(double l1, double a, double b1, Near to) {
    double meanChroma = (Math.sqrt(a * a + b1 * b1) + to.chroma) / 2;
    double stretch = 1 + 0.5 * (1 - nearGray(meanChroma));
    double a1 = a * stretch;
    double a2 = to.a * stretch;
    double b2 = to.b;
    double c1 = Math.sqrt(a1 * a1 + b1 * b1);
    double c2 = Math.sqrt(a2 * a2 + b2 * b2);
    double h1 = hue(a1, b1);
    double h2 = hue(a2, b2);
    boolean gray = c1 * c2 == 0;
    double turn = gray ? 0 : h2 - h1;
    double sum = h1 + h2;
    double meanH = gray ? sum : sum / 2;
    if (!gray && Math.abs(turn) > Math.PI) {
      turn += turn > 0 ? -2 * Math.PI : 2 * Math.PI;
      meanH += sum < 2 * Math.PI ? Math.PI : -Math.PI;
    }
    double meanL = (l1 + to.l) / 2 - 50;
    double meanC = (c1 + c2) / 2;
    double t =
        1
            - 0.17 * Math.cos(meanH - Math.PI / 6)
            + 0.24 * Math.cos(2 * meanH)
            + 0.32 * Math.cos(3 * meanH + Math.PI / 30)
            - 0.20 * Math.cos(4 * meanH - 63 * Math.PI / 180);
    double l = (to.l - l1) / (1 + 0.015 * meanL * meanL / Math.sqrt(20 + meanL * meanL));
    double c = (c2 - c1) / (1 + 0.045 * meanC);
    double h = 2 * Math.sqrt(c1 * c2) * Math.sin(turn / 2) / (1 + 0.015 * meanC * t);
    double blue = (Math.toDegrees(meanH) - 275) / 25;
    double rotation = -Math.sin(Math.PI / 3 * Math.exp(-blue * blue)) * 2 * nearGray(meanC);
    return Math.sqrt(Math.max(0, l * l + c * c + h * h + rotation * c * h));
  }

  private static double nearGray(double chroma) {
    double cube = chroma * chroma * chroma;
    double seventh = cube * cube * chroma;
    return Math.sqrt(seventh / (seventh + 6103515625.0));
  }

  private static double hue(double a, double b) {
    double hue = Math.atan2(b, a);
    return hue < 0 ? hue + 2 * Math.PI : hue;
  }
}
