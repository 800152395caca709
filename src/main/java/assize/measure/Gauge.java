package assize.measure;

import assize.text.Parsed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A gauge number of wire or sheet, and the thickness it stands for.
 *
 * <p>SWG: Imperial Standard Wire Gauge (Order in Council, 1883). USG: standard gauge for sheet and
 * plate iron and steel (15 USC 206). AWG: 0.005 in × 92^((36−n)/39), which has no exact decimal and
 * is taken rounded to a billionth of an inch.
 *
 * @param kind SWG, USG or AWG
 * @param number as written in the tables: {@code 18}, {@code 4/0}
 * @param inches the thickness or diameter in inches
 */
public record Gauge(Kind kind, String number, BigFraction inches) {

  /** A way of numbering thicknesses. */
  public enum Kind {
    SWG,
    USG,
    AWG
  }

  private static final Pattern GAUGE =
      Pattern.compile(
          "(?:no\\.?\\s{0,3})?([0-9]{1,7}(?:/0)?)\\s{0,3}(swg|usg|awg)(?![a-z0-9])",
          Pattern.CASE_INSENSITIVE);
  private static final Map<String, BigFraction> SWG = table("swg.csv", Cursor::decimal);
  private static final Map<String, BigFraction> USG = table("usg.csv", BigFraction::parse);

  /** Reads {@code 18 SWG}, {@code 4/0 AWG} or {@code 0000 AWG}. */
  public static Parsed<Gauge> parse(String text) {
    Cursor cursor = new Cursor(text);
    Optional<Parsed<Gauge>> read = read(cursor);
    return read.map(gauge -> gauge.then(cursor::finish))
        .orElseGet(() -> cursor.expected("write a gauge such as 18 SWG, 16 USG or 10 AWG"));
  }

  /** Returns empty, and reads nothing, if no gauge stands here. */
  static Optional<Parsed<Gauge>> read(Cursor cursor) {
    int start = cursor.at();
    return cursor.take(GAUGE).map(match -> find(match, start));
  }

  private static Parsed<Gauge> find(Matcher match, int start) {
    Kind kind = Kind.valueOf(match.group(2).toUpperCase(Locale.ROOT));
    String number = match.group(1);
    if (number.matches("00{1,6}")) {
      number = number.length() + "/0";
    } else if (number.equals("1/0")) {
      number = "0";
    }
    String found = number;
    return inches(kind, found)
        .map(inches -> Parsed.ok(new Gauge(kind, found, inches)))
        .orElseGet(
            () -> Parsed.bad(kind + " has no " + found + range(kind), start, match.end() - start));
  }

  private static String range(Kind kind) {
    return switch (kind) {
      case SWG -> ": it goes from 7/0 to 50";
      case USG -> ": it goes from 7/0 to 38";
      case AWG -> ": it goes from 4/0 to 40";
    };
  }

  private static Optional<BigFraction> inches(Kind kind, String number) {
    return switch (kind) {
      case SWG -> Optional.ofNullable(SWG.get(number));
      case USG -> Optional.ofNullable(USG.get(number));
      case AWG -> awg(number);
    };
  }

  private static Optional<BigFraction> awg(String number) {
    // Written without a needless zero, 4/0 counts as -3, 3/0 as -2, 2/0 as -1.
    if (!number.matches("[2-4]/0|0|[1-3]?[0-9]|40") || number.matches("0[0-9]")) {
      return Optional.empty();
    }
    int n = number.endsWith("/0") ? '1' - number.charAt(0) : Integer.parseInt(number);
    BigDecimal inches =
        BigDecimal.valueOf(0.005 * Math.pow(92, (36 - n) / 39.0))
            .setScale(9, RoundingMode.HALF_EVEN);
    return Optional.of(Cursor.decimal(inches.toPlainString()));
  }

  private static Map<String, BigFraction> table(String name, Function<String, BigFraction> inches) {
    return ResourceTable.rows(name).stream()
        .collect(Collectors.toUnmodifiableMap(row -> row.get(0), row -> inches.apply(row.get(1))));
  }

  /** Returns the gauge with its thickness: {@code 18 SWG = 0.048 in}; rounded where it says ≈. */
  public String text() {
    String thickness = Quantity.number(inches, kind == Kind.USG);
    String sign = thickness.startsWith("≈") ? " " : " = ";
    return number + " " + kind + sign + thickness + " in";
  }
}
