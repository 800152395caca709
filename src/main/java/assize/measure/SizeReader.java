package assize.measure;

import assize.text.Parsed;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads one size, expected or measured, from a short text. */
final class SizeReader {
  private static final BigFraction HUNDRED = BigFraction.of(100);
  private static final Pattern MINUS = Pattern.compile("[-−]");
  private static final Pattern COVERAGE =
      Pattern.compile("\\(\\s{0,3}k\\s{0,3}=\\s{0,3}([0-9]{1,2}(?:\\.[0-9]{1,4})?)\\s{0,3}\\)");

  /** Between feet and inches, as in {@code 5'-6"}; with spaces it would be a range. */
  private static final Pattern HYPHEN = Pattern.compile("[-‐‑](?=[0-9.½¼¾⅓⅔⅛⅜⅝⅞])");

  private static final Pattern DASH = Pattern.compile("[-−–—]|\\.\\.+|…");

  /** A number that may still lack its unit, and where it stood. */
  private record Amount(BigFraction value, Optional<Unit> unit, int start, int end) {
    Amount or(Optional<Unit> other) {
      return unit.isPresent() ? this : new Amount(value, other, start, end);
    }

    Parsed<Quantity> quantity() {
      if (unit.isEmpty()) {
        return Parsed.bad("a unit is missing here: write one such as mm, in or °", end, 0);
      }
      if (value.signum() < 0 && !unit.get().dimension().signed()) {
        String reason = unit.get().dimension().spoken() + " is never below zero";
        return Parsed.bad(reason, start, end - start);
      }
      return Parsed.ok(new Quantity(value, unit.get()));
    }
  }

  private static final String AFTER_GAUGE =
      "write a unit after each number: 18 SWG to 16 SWG, 18 SWG ± 0.002 in";

  private final Cursor cursor;

  /** Whether a gauge was read: a number beside it may be a gauge number or a thickness. */
  private boolean gauged;

  SizeReader(String text) {
    this.cursor = new Cursor(text);
  }

  Parsed<ToleranceLimits> limits() {
    return expectation().then(cursor::finish);
  }

  private Parsed<ToleranceLimits> expectation() {
    if (cursor.take("at least") || cursor.take("≥") || cursor.take(">=")) {
      return amount()
          .then(Amount::quantity)
          .map(q -> limits(Optional.of(q.inBase()), Optional.empty(), q.unit()));
    }
    if (cursor.take("at most") || cursor.take("≤") || cursor.take("<=")) {
      return amount()
          .then(Amount::quantity)
          .map(q -> limits(Optional.empty(), Optional.of(q.inBase()), q.unit()));
    }
    return amount().then(this::limitsFrom);
  }

  private Parsed<ToleranceLimits> limitsFrom(Amount first) {
    if (cursor.takePlusMinus()) {
      return tolerance(first).then(by -> around(first.or(by.unit()), by, by));
    }
    if (cursor.take("+")) {
      return tolerance(first).then(above -> minus(first, above));
    }
    if (cursor.take("to")) {
      return amount().then(second -> range(first, second));
    }
    int dash = cursor.at();
    if (cursor.take(DASH).isPresent()) {
      return cursor.atNumber()
          ? Parsed.bad("write \"to\" between two sizes: 2 mm to 3 mm", dash, 1)
          : Parsed.bad("something is missing after this", dash, 1);
    }
    return first
        .quantity()
        .map(q -> limits(Optional.of(q.inBase()), Optional.of(q.inBase()), q.unit()));
  }

  private Parsed<ToleranceLimits> minus(Amount first, Amount above) {
    cursor.take("/");
    if (cursor.take(MINUS).isEmpty()) {
      return Parsed.bad("say the other side too: 3/32 in +1/64 in -0 in", cursor.at(), 0);
    }
    return tolerance(first)
        .then(below -> around(first.or(above.unit()).or(below.unit()), below, above));
  }

  private Parsed<ToleranceLimits> range(Amount first, Amount second) {
    Amount bare = first.unit().isEmpty() ? first : second;
    if (gauged && bare.unit().isEmpty()) {
      return Parsed.bad(AFTER_GAUGE, bare.start(), bare.end() - bare.start());
    }
    return first
        .or(second.unit())
        .quantity()
        .then(
            least ->
                second
                    .or(first.unit())
                    .quantity()
                    .then(most -> same(least.unit(), most, second))
                    .then(most -> ordered(least, most, first, second)));
  }

  private Parsed<ToleranceLimits> ordered(
      Quantity least, Quantity most, Amount first, Amount second) {
    if (least.inBase().compareTo(most.inBase()) > 0) {
      String right = most.text() + " to " + least.text();
      int length = second.end() - first.start();
      return Parsed.bad("the larger comes last: " + right, first.start(), length);
    }
    return Parsed.ok(limits(Optional.of(least.inBase()), Optional.of(most.inBase()), least.unit()));
  }

  private Parsed<ToleranceLimits> around(Amount first, Amount below, Amount above) {
    return first
        .quantity()
        .then(
            nominal ->
                size(below, nominal.unit())
                    .then(
                        less ->
                            size(above, nominal.unit())
                                .map(
                                    more ->
                                        limits(
                                            Optional.of(nominal.inBase().subtract(less)),
                                            Optional.of(nominal.inBase().add(more)),
                                            nominal.unit()))));
  }

  private static Parsed<BigFraction> size(Amount tolerance, Unit unit) {
    return tolerance
        .or(Optional.of(unit))
        .quantity()
        .then(q -> same(unit, q, tolerance))
        .map(Quantity::inBase);
  }

  private static Parsed<Quantity> same(Unit unit, Quantity other, Amount where) {
    if (unit.dimension() == other.unit().dimension()) {
      return Parsed.ok(other);
    }
    String reason =
        other.unit().symbol()
            + " measures "
            + other.unit().dimension().spoken()
            + ", "
            + unit.symbol()
            + " "
            + unit.dimension().spoken();
    return Parsed.bad(reason, where.start(), where.end() - where.start());
  }

  private ToleranceLimits limits(
      Optional<BigFraction> lower, Optional<BigFraction> upper, Unit unit) {
    return new ToleranceLimits(lower, upper, unit.dimension(), unit, cursor.uniform());
  }

  Parsed<MeasuredSize> measured() {
    return amount().then(this::measuredAmount).then(cursor::finish);
  }

  /** Of {@code 2.38 ± 0.02 mm} both numbers are in the unit that comes last. */
  private Parsed<MeasuredSize> measuredAmount(Amount value) {
    if (value.unit().isPresent() || !cursor.takePlusMinus()) {
      return value.quantity().then(this::measuredFrom);
    }
    return tolerance(value).then(by -> value.or(by.unit()).quantity().then(q -> uncertain(q, by)));
  }

  private Parsed<MeasuredSize> measuredFrom(Quantity value) {
    Unit unit = value.unit();
    if (cursor.takePlusMinus()) {
      return tolerance(new Amount(value.value(), Optional.of(unit), 0, 0))
          .then(by -> uncertain(value, by));
    }
    int place = cursor.at();
    boolean comma = cursor.take(",");
    if (cursor.take("to")) {
      return comma
          ? amount()
              .then(step -> size(step, unit))
              .map(step -> measured(value, MeasuredSize.ofResolution(step)))
          : Parsed.bad(
              "write one size; how finely it was read comes after a comma: 2.4 mm, to 0.1 mm",
              place,
              2);
    }
    if (comma) {
      return Parsed.bad("say how finely it was read after the comma: 2.4 mm, to 0.1 mm", place, 1);
    }
    return Parsed.ok(measured(value, 0));
  }

  private Parsed<MeasuredSize> uncertain(Quantity value, Amount by) {
    return size(by, value.unit())
        .then(half -> coverage().map(k -> measured(value, half.doubleValue() / k)));
  }

  private Parsed<Double> coverage() {
    int start = cursor.at();
    return cursor
        .take(COVERAGE)
        .map(
            match -> {
              double k = Cursor.decimal(match.group(1)).doubleValue();
              return k > 0
                  ? Parsed.ok(k)
                  : Parsed.<Double>bad("k is above zero: write (k=2)", start, match.end() - start);
            })
        .orElse(Parsed.ok(2.0));
  }

  private MeasuredSize measured(Quantity value, double u) {
    return new MeasuredSize(
        value.inBase(), u, value.unit().dimension(), value.unit(), cursor.uniform());
  }

  /** A tolerance: a number, a unit or none, or a share of the nominal size in percent. */
  private Parsed<Amount> tolerance(Amount nominal) {
    int start = cursor.at();
    return cursor
        .number()
        .then(
            number -> {
              if (cursor.take("%") || cursor.take("percent")) {
                BigFraction part = nominal.value().abs().multiply(number).divide(HUNDRED);
                return Parsed.ok(new Amount(part, nominal.unit(), start, trimmedEnd()));
              }
              return UnitNames.read(cursor)
                  .then(
                      unit ->
                          gauged && unit.isEmpty() && number.signum() != 0
                              ? Parsed.bad(AFTER_GAUGE, start, trimmedEnd() - start)
                              : Parsed.ok(new Amount(number, unit, start, trimmedEnd())));
            });
  }

  /** A number with its unit or none yet, a gauge, or feet and inches and their like. */
  private Parsed<Amount> amount() {
    int start = cursor.at();
    Optional<Parsed<Gauge>> gauge = Gauge.read(cursor);
    if (gauge.isPresent()) {
      gauged = true;
      return gauge
          .get()
          .map(g -> new Amount(g.inches(), Optional.of(Unit.IN), start, trimmedEnd()));
    }
    boolean negative = cursor.take(MINUS).isPresent();
    return cursor
        .number()
        .then(
            number ->
                UnitNames.read(cursor).map(unit -> new Amount(number, unit, start, trimmedEnd())))
        .then(this::withSmaller)
        .map(
            amount ->
                negative
                    ? new Amount(amount.value().negate(), amount.unit(), start, amount.end())
                    : amount);
  }

  /** Adds {@code 6 in} to {@code 5 ft}, {@code 6"} to {@code 5'-}, {@code 30'} to {@code 1°}. */
  private Parsed<Amount> withSmaller(Amount large) {
    int place = cursor.at();
    if (large.unit().equals(Optional.of(Unit.FT)) && trimmedEnd() == place) {
      cursor.take(HYPHEN);
    }
    if (large.unit().isEmpty() || !cursor.atNumber()) {
      return stopAt(place, large);
    }
    Unit unit = large.unit().get();
    return cursor
        .number()
        .then(
            number ->
                smaller(unit)
                    .map(small -> withSmaller(sum(large, number, small)))
                    .orElseGet(() -> stopAt(place, large)));
  }

  private Amount sum(Amount large, BigFraction number, Unit small) {
    Quantity whole = new Quantity(large.value(), large.unit().orElse(small)).in(small);
    BigFraction value = whole.value().add(number);
    return new Amount(value, Optional.of(small), large.start(), trimmedEnd());
  }

  private Parsed<Amount> stopAt(int place, Amount read) {
    cursor.backTo(place);
    return Parsed.ok(read);
  }

  private Optional<Unit> smaller(Unit unit) {
    if (unit == Unit.DEG && (cursor.take("'") || cursor.take("′") || cursor.take("’"))) {
      return Optional.of(Unit.ARCMIN);
    }
    if (unit == Unit.ARCMIN && (cursor.take("\"") || cursor.take("″"))) {
      return Optional.of(Unit.ARCSEC);
    }
    return UnitNames.read(cursor)
        .toOptional()
        .flatMap(found -> found)
        .filter(found -> found.dimension() == unit.dimension())
        .filter(found -> found.factor().compareTo(unit.factor()) < 0);
  }

  private int trimmedEnd() {
    return cursor.text().substring(0, cursor.at()).stripTrailing().length();
  }
}
