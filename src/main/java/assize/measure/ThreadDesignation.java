package assize.measure;

import assize.text.Parsed;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A screw thread, by its diameter, its pitch, and its series where one is known.
 *
 * @param series UNC, UNF, UNEF, BSW, BSF, BA or M; empty for a thread known by gauge alone
 * @param size its name in the series: {@code 1/4}, {@code #10}, {@code 2}
 * @param majorMm major diameter in millimeters
 * @param pitchMm distance from one turn to the next in millimeters
 * @param text in full, as a judge would write it: {@code 1/4-20 UNC}
 */
@SuppressWarnings("JavaLangClash") // Judges call it a thread.
public record ThreadDesignation(
    String series, String size, BigFraction majorMm, BigFraction pitchMm, String text) {
  public ThreadDesignation {
    if (majorMm.signum() <= 0 || pitchMm.signum() <= 0) {
      throw new IllegalArgumentException("a thread has a diameter and a pitch: " + text);
    }
  }

  /**
   * Reads {@code 1/4-20 UNC}, {@code 1/4 BSF}, {@code 2 BA}, {@code M6}, {@code M6x0.75}, {@code
   * #10-32 UNF}, or a thread as found by gauge: {@code 1/4 in x 20 tpi}.
   */
  public static Parsed<ThreadDesignation> parse(String text) {
    return ThreadDesignationReader.read(text);
  }

  /** Returns whether diameter and pitch are the same, and the series where both name one. */
  public boolean sameAs(ThreadDesignation other) {
    return difference(other).isEmpty();
  }

  /**
   * Says how this thread differs from the right one: {@code 26 threads to the inch, not 20}; empty
   * if it does not.
   */
  public String difference(ThreadDesignation right) {
    List<String> differences = new ArrayList<>();
    if (!majorMm.equals(right.majorMm)) {
      differences.add(diameter() + " across, not " + right.diameter());
    }
    if (!pitchMm.equals(right.pitchMm)) {
      differences.add(
          byInch() && right.byInch()
              ? turns() + " threads to the inch, not " + right.turns()
              : "pitch " + pitch() + ", not " + right.pitch());
    }
    if (!series.isEmpty() && !right.series.isEmpty() && !series.equals(right.series)) {
      differences.add(series + ", not " + right.series);
    }
    return String.join("; ", differences);
  }

  private boolean byInch() {
    return !series.equals("BA") && !series.equals("M");
  }

  private String diameter() {
    return new Quantity(majorMm, Unit.MM).in(byInch() ? Unit.IN : Unit.MM).text();
  }

  private String pitch() {
    return byInch() ? turns() + " to the inch" : new Quantity(pitchMm, Unit.MM).text();
  }

  private String turns() {
    return Quantity.number(Unit.IN.factor().divide(pitchMm), true);
  }
}
