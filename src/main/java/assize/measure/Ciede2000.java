package assize.measure;

/**
 * The color difference CIEDE2000 (ISO/CIE 11664-6) with its weights at 1, as in G. Sharma, W. Wu,
 * E. N. Dalal, "The CIEDE2000 color-difference formula", Color Research and Application 30 (2005).
 */
public final class Ciede2000 {
  private static final double POW_25_7 = Math.pow(25, 7);

  /** Hues this close to opposite are opposite: the rest is rounding, in degrees. */
  private static final double OPPOSITE = 1e-10;

  private Ciede2000() {}

  /** Returns the difference from the first color to the second. */
  public static ColorDifference of(CieLab first, CieLab second) {
    double meanChroma = (chroma(first.a(), first.b()) + chroma(second.a(), second.b())) / 2;
    double stretch = 1 + 0.5 * (1 - nearGray(meanChroma));
    double a1 = first.a() * stretch;
    double a2 = second.a() * stretch;
    double c1 = chroma(a1, first.b());
    double c2 = chroma(a2, second.b());
    double h1 = hue(a1, first.b());
    double h2 = hue(a2, second.b());

    boolean gray = c1 * c2 == 0;
    double turn = gray ? 0 : turn(h1, h2);
    double dL = second.l() - first.l();
    double dC = c2 - c1;
    double dH = 2 * Math.sqrt(c1 * c2) * sin(turn / 2);

    double meanL = (first.l() + second.l()) / 2;
    double meanC = (c1 + c2) / 2;
    double meanH = gray ? h1 + h2 : meanHue(h1, h2);

    double t =
        1
            - 0.17 * cos(meanH - 30)
            + 0.24 * cos(2 * meanH)
            + 0.32 * cos(3 * meanH + 6)
            - 0.20 * cos(4 * meanH - 63);
    double fromGray = (meanL - 50) * (meanL - 50);
    double sL = 1 + 0.015 * fromGray / Math.sqrt(20 + fromGray);
    double sC = 1 + 0.045 * meanC;
    double sH = 1 + 0.015 * meanC * t;
    double blue = (meanH - 275) / 25;
    double rotation = -sin(60 * Math.exp(-blue * blue)) * 2 * nearGray(meanC);

    double l = dL / sL;
    double c = dC / sC;
    double h = dH / sH;
    double sum = l * l + c * c + h * h + rotation * c * h;
    return new ColorDifference(Math.sqrt(Math.max(0, sum)), dL, dC, dH);
  }

  /** The figures are far from any that could not be squared. */
  private static double chroma(double a, double b) {
    return Math.sqrt(a * a + b * b);
  }

  private static double nearGray(double chroma) {
    double third = chroma * chroma * chroma;
    double seventh = third * third * chroma;
    return Math.sqrt(seventh / (seventh + POW_25_7));
  }

  /** Hue in degrees, 0 up to 360; zero for gray. */
  private static double hue(double a, double b) {
    if (a == 0 && b == 0) {
      return 0;
    }
    double degrees = Math.toDegrees(Math.atan2(b, a));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private static boolean withinHalfTurn(double h1, double h2) {
    return Math.abs(h2 - h1) <= 180 + OPPOSITE;
  }

  private static double turn(double h1, double h2) {
    double turn = h2 - h1;
    if (withinHalfTurn(h1, h2)) {
      return turn;
    }
    return turn > 0 ? turn - 360 : turn + 360;
  }

  private static double meanHue(double h1, double h2) {
    double sum = h1 + h2;
    if (withinHalfTurn(h1, h2)) {
      return sum / 2;
    }
    return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  }

  private static double sin(double degrees) {
    return Math.sin(Math.toRadians(degrees));
  }

  private static double cos(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }
}
