package assize.aspect;

import assize.measure.GlossRange;
import assize.measure.Limits;
import assize.measure.Thread;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One value that is held to be right for one aspect.
 *
 * <p>A source that accepts several values names several expectations.
 */
public sealed interface Expectation {

  /** Returns what makes two expectations of the same aspect the same; also how it is named. */
  String key();

  /** Returns the credit that the value earns, 0 to 1; 1 unless the rule set says otherwise. */
  default BigFraction credit() {
    return BigFraction.ONE;
  }

  /** Answers for each kind. */
  <R> R match(Cases<R> cases);

  /**
   * A word of the rule set: a finish, a material or a choice.
   *
   * @param id the word
   * @param credit 0 to 1
   */
  record Word(String id, BigFraction credit) implements Expectation {
    @Override
    public String key() {
      return id;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.word(this);
    }
  }

  /**
   * A color of the rule set.
   *
   * @param chip the color's name
   * @param tolerance greatest CIEDE2000 difference, where the item says its own
   */
  record Chip(String chip, OptionalDouble tolerance) implements Expectation {
    @Override
    public String key() {
      return chip;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.chip(this);
    }
  }

  /**
   * The color that was found on another item.
   *
   * @param item the other item
   * @param tolerance greatest CIEDE2000 difference, where the item says its own
   */
  record SameColor(String item, OptionalDouble tolerance) implements Expectation {
    @Override
    public String key() {
      return "same as " + item;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.sameColor(this);
    }
  }

  /** A range of gloss units at 60° (ISO 2813). */
  record Gloss(GlossRange range) implements Expectation {
    @Override
    public String key() {
      return range.text();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.gloss(this);
    }
  }

  /** A size between limits. */
  record Size(Limits limits) implements Expectation {
    @Override
    public String key() {
      return limits.text();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.size(this);
    }
  }

  /** A screw thread. */
  record ScrewThread(Thread thread) implements Expectation {
    @Override
    public String key() {
      return thread.text();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.screwThread(this);
    }
  }

  /**
   * A part number, or the pattern that part numbers fit.
   *
   * @param number the number or pattern
   * @param credit 0 to 1, less than 1 for a later or service number
   */
  record PartNumber(NumberPattern number, BigFraction credit) implements Expectation {
    /** Returns the same of another number. */
    public PartNumber with(String other) {
      return new PartNumber(NumberPattern.exactly(other), credit);
    }

    @Override
    public String key() {
      return number.text();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.partNumber(this);
    }
  }

  /** A code that tells when the part was made, and when it may have been. */
  record MadeCode(DateCodePattern code) implements Expectation {
    @Override
    public String key() {
      return code.text();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.madeCode(this);
    }
  }

  /**
   * A number of pieces.
   *
   * @param least the least number that is right
   * @param most the greatest
   * @param eachOff credit lost for each piece too few or too many; empty: all of it for any
   */
  record Pieces(int least, int most, Optional<BigFraction> eachOff) implements Expectation {
    @Override
    public String key() {
      return least == most ? Integer.toString(least) : least + " to " + most;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.pieces(this);
    }
  }

  /** Whether it is there, or works. */
  record YesNo(boolean yes) implements Expectation {
    @Override
    public String key() {
      return yes ? "yes" : "no";
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.yesNo(this);
    }
  }

  /**
   * An origin or a condition, worth what the rule set or the item says.
   *
   * @param credits the item's own credit for each word; empty: those of the rule set
   */
  record Graded(Map<String, BigFraction> credits) implements Expectation {
    public Graded {
      credits = Map.copyOf(credits);
    }

    @Override
    public String key() {
      return "graded";
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.graded(this);
    }
  }

  /** One answer for each kind of expectation. */
  interface Cases<R> {
    R word(Word expected);

    R chip(Chip expected);

    R sameColor(SameColor expected);

    R gloss(Gloss expected);

    R size(Size expected);

    R screwThread(ScrewThread expected);

    R partNumber(PartNumber expected);

    R madeCode(MadeCode expected);

    R pieces(Pieces expected);

    R yesNo(YesNo expected);

    R graded(Graded expected);
  }
}
