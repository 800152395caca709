package assize.measure;

import assize.text.Parsed;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A color in CIELAB (ISO/CIE 11664-4), for daylight D65 and the 2° observer unless said otherwise.
 *
 * @param l lightness L*, 0 to 100
 * @param a from green (below zero) to red, −200 to 200
 * @param b from blue (below zero) to yellow, −200 to 200
 */
public record CieLab(double l, double a, double b) {
  private static final double WIDEST = 200;
  private static final Pattern NUMBER =
      Pattern.compile("([-+−]?)([0-9]{1,9}(?:\\.[0-9]{1,15})?|\\.[0-9]{1,15})");

  public CieLab {
    if (!(l >= 0 && l <= 100) || !(Math.abs(a) <= WIDEST) || !(Math.abs(b) <= WIDEST)) {
      throw new IllegalArgumentException("no such color: " + l + "," + a + "," + b);
    }
  }

  /** Reads {@code 52.1,-8.4,3.0}: lightness, a and b, with points in the numbers. */
  public static Parsed<CieLab> parse(String text) {
    String[] parts = text.split(",", -1);
    if (parts.length != 3) {
      return Parsed.bad(
          "write three numbers with commas between and points within: 52.1,-8.4,3.0",
          0,
          text.length());
    }
    int second = parts[0].length() + 1;
    int third = second + parts[1].length() + 1;
    return number("L", parts[0], 0, 0, 100)
        .then(
            l ->
                number("a", parts[1], second, -WIDEST, WIDEST)
                    .then(
                        a ->
                            number("b", parts[2], third, -WIDEST, WIDEST)
                                .map(b -> new CieLab(l, a, b))));
  }

  private static Parsed<Double> number(
      String name, String part, int offset, double least, double most) {
    String written = part.strip();
    int at = offset + part.indexOf(written);
    Matcher match = NUMBER.matcher(written);
    if (!match.matches()) {
      String reason =
          written.isEmpty()
              ? name + " is missing here"
              : "\"" + Cursor.shown(written) + "\" is not a number: write " + name + " as 52.1";
      return Parsed.bad(reason, at, written.length());
    }
    double size = Double.parseDouble(match.group(2));
    double value = match.group(1).isEmpty() || match.group(1).equals("+") ? size : 0 - size;
    if (value < least || value > most) {
      String reason = name + " goes from " + (int) least + " to " + (int) most;
      return Parsed.bad(reason, at, written.length());
    }
    return Parsed.ok(value);
  }
}
