package assize.measure;

import assize.text.Parsed;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads gloss, expected or observed: units at 60° or the name of a band. */
final class GlossReader {
  private static final BigFraction MOST = BigFraction.of(GlossReading.MOST);

  private final Cursor cursor;

  GlossReader(String text) {
    this.cursor = new Cursor(text);
  }

  Parsed<GlossRange> range() {
    return rangeStart().then(cursor::finish);
  }

  private Parsed<GlossRange> rangeStart() {
    if (cursor.take("at least") || cursor.take("≥") || cursor.take(">=")) {
      return units().map(from -> range(from.doubleValue(), OptionalDouble.empty()));
    }
    if (cursor.take("at most") || cursor.take("≤") || cursor.take("<=")) {
      return units().map(to -> range(0, OptionalDouble.of(to.doubleValue())));
    }
    Optional<GlossBand> band = GlossBand.read(cursor);
    if (band.isPresent()) {
      return bands(band.get());
    }
    int start = cursor.at();
    return units().then(first -> rangeFrom(first, start));
  }

  private Parsed<GlossRange> bands(GlossBand first) {
    if (!cursor.take("to")) {
      return Parsed.ok(range(first.from(), first.to()));
    }
    Optional<GlossBand> last = GlossBand.read(cursor);
    if (last.isEmpty()) {
      return cursor.expected("a gloss band is missing here, such as satin");
    }
    return last.get().compareTo(first) < 0
        ? Parsed.bad("the glossier comes last", 0, cursor.text().length())
        : Parsed.ok(range(first.from(), last.get().to()));
  }

  private Parsed<GlossRange> rangeFrom(BigFraction first, int start) {
    if (cursor.take("to")) {
      return units()
          .then(
              last ->
                  first.compareTo(last) <= 0
                      ? Parsed.ok(between(first, last))
                      : Parsed.bad("the larger comes last", start, cursor.at() - start));
    }
    if (cursor.takePlusMinus()) {
      return units().map(by -> between(first.subtract(by), first.add(by)));
    }
    return cursor.atEnd()
        ? Parsed.bad("say a range of units, such as 30 to 50 or 40 ± 5", start, cursor.at() - start)
        : cursor.expected("write a range, such as 30 to 50 or 40 ± 5");
  }

  Parsed<GlossReading> reading() {
    Optional<GlossBand> band = GlossBand.read(cursor);
    if (band.isPresent()) {
      return cursor.finish(new GlossReading(OptionalDouble.empty(), 0, band, cursor.uniform()));
    }
    return units().then(this::readingFrom).then(cursor::finish);
  }

  private Parsed<GlossReading> readingFrom(BigFraction value) {
    if (cursor.takePlusMinus()) {
      return units().map(by -> reading(value.doubleValue(), by.doubleValue() / 2));
    }
    return Parsed.ok(reading(value.doubleValue(), 0));
  }

  private GlossReading reading(double value, double u) {
    return new GlossReading(OptionalDouble.of(value), u, Optional.empty(), cursor.uniform());
  }

  private GlossRange between(BigFraction from, BigFraction to) {
    return range(Math.max(0, from.doubleValue()), OptionalDouble.of(to.doubleValue()));
  }

  private GlossRange range(double from, OptionalDouble to) {
    return new GlossRange(from, to, cursor.uniform());
  }

  private Parsed<BigFraction> units() {
    int start = cursor.at();
    if (!cursor.atNumber() && !cursor.letters().isEmpty()) {
      return cursor.expected(
          "write gloss units, or flat, velvet, eggshell, satin, semi-gloss, gloss or high gloss");
    }
    return cursor
        .number()
        .then(
            number -> {
              if (number.compareTo(MOST) > 0) {
                return Parsed.bad("gloss goes from 0 to 2000 units", start, cursor.at() - start);
              }
              if (!cursor.take("GU")) {
                cursor.take("units");
              }
              return Parsed.ok(number);
            });
  }
}
