package assize.merge;

import assize.aspect.Finding;
import assize.aspect.NumberPattern;
import assize.date.Edtf;
import assize.measure.GlossReading;
import assize.measure.Measured;
import assize.record.Evidence;
import assize.record.Observation;
import assize.record.Opinion;
import assize.record.Trace;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Says whether two records say the same, however they write it: {@code 3/32 in} is {@code 0.09375
 * in}, and a number is the same with dashes and without.
 */
final class Sameness {
  /** What is left of rounding where two ways of writing an uncertainty are turned into one unit. */
  private static final double ROUNDING = 1e-9;

  private static final Pattern SPACE = Pattern.compile("\\s+");

  private Sameness() {}

  static boolean ofFindings(Finding one, Finding other) {
    return one.match(new Compared(other));
  }

  static boolean ofTexts(Optional<String> one, Optional<String> other) {
    return one.map(Sameness::spaced).equals(other.map(Sameness::spaced));
  }

  private static String spaced(String text) {
    return SPACE.matcher(text.strip()).replaceAll(" ");
  }

  private static boolean ofDates(Optional<Edtf> one, Optional<Edtf> other) {
    return one.map(Edtf::text).map(String::strip).equals(other.map(Edtf::text).map(String::strip));
  }

  static boolean ofDepartures(Observation.Departure one, Observation.Departure other) {
    return spaced(one.reason()).equals(spaced(other.reason()))
        && ofTexts(one.why(), other.why())
        && ofDates(one.until(), other.until());
  }

  static boolean ofOpinions(Opinion one, Opinion other) {
    return keys(one).equals(keys(other)) && ofTexts(one.because(), other.because());
  }

  private static List<List<String>> keys(Opinion opinion) {
    return opinion.holds().entrySet().stream()
        .map(it -> it.getValue().stream().map(value -> it.getKey() + " " + value.key()).toList())
        .toList();
  }

  static boolean ofEvidence(Evidence one, Evidence other) {
    return one.kind() == other.kind()
        && spaced(one.what()).equals(spaced(other.what()))
        && ofTexts(one.caption(), other.caption())
        && ofTexts(one.by(), other.by())
        && ofDates(one.taken(), other.taken())
        && one.covers().equals(other.covers())
        && one.isUnshared() == other.isUnshared();
  }

  /** Returns what is equal for two traces that say the same. */
  static Object of(Trace trace) {
    return List.of(
        trace.item(),
        trace.grade(),
        trace.manner(),
        values(trace),
        trace.where().map(Sameness::spaced),
        trace.evidence());
  }

  private static List<List<String>> values(Trace trace) {
    return trace.values().entrySet().stream()
        .map(it -> it.getValue().stream().map(value -> it.getKey() + " " + value.key()).toList())
        .toList();
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) <= ROUNDING * Math.max(Math.abs(one), Math.abs(other));
  }

  /** Compares a finding with another of the same aspect. */
  private record Compared(Finding other) implements Finding.Cases<Boolean> {
    @Override
    public Boolean word(Finding.Word found) {
      return found.equals(other);
    }

    @Override
    public Boolean color(Finding.Color found) {
      return found.equals(other);
    }

    @Override
    public Boolean gloss(Finding.Gloss found) {
      if (!(other instanceof Finding.Gloss gloss)) {
        return false;
      }
      GlossReading one = found.reading();
      GlossReading two = gloss.reading();
      return one.units().equals(two.units())
          && one.band().equals(two.band())
          && near(one.u(), two.u());
    }

    @Override
    public Boolean size(Finding.Size found) {
      if (!(other instanceof Finding.Size size)) {
        return false;
      }
      Measured one = found.measured();
      Measured two = size.measured();
      return one.dimension() == two.dimension()
          && one.value().equals(two.value())
          && near(one.u(), two.u());
    }

    @Override
    public Boolean screwThread(Finding.ScrewThread found) {
      return other instanceof Finding.ScrewThread thread && found.thread().sameAs(thread.thread());
    }

    @Override
    public Boolean stamped(Finding.Stamped found) {
      return other instanceof Finding.Stamped stamped
          && NumberPattern.fold(found.text()).equals(NumberPattern.fold(stamped.text()));
    }

    @Override
    public Boolean pieces(Finding.Pieces found) {
      return found.equals(other);
    }

    @Override
    public Boolean yesNo(Finding.YesNo found) {
      return found.equals(other);
    }
  }
}
