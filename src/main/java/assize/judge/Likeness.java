package assize.judge;

import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.aspect.NumberPattern;
import assize.measure.Ciede2000;
import assize.measure.ColorDifference;
import assize.measure.Conformity;
import assize.measure.Lab;
import assize.measure.ReadyLimits;
import assize.ruleset.RuleSet;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Tells which findings are judged alike, by the least that {@link Comparer} looks at: a word, a
 * number of pieces, which of the expected values a finding meets. What is neither plainly within
 * nor plainly without is like no other.
 */
final class Likeness implements Finding.Cases<Integer> {
  /** A finding that has to be judged by itself. */
  static final int ITSELF = -1;

  /** How many kinds are told apart; they are numbered from 0. */
  static final int KINDS = 128;

  /** The most values of which it is told which are met. */
  private static final int MOST_VALUES = 6;

  /** Where the words begin; before them stand numbers, or which values are met, as bits. */
  private static final int WORDS = 1 << MOST_VALUES;

  private final int values;
  private final boolean few;
  private final boolean chipsOnly;

  /** Of each value what it asks for, made ready; none where it asks for something else. */
  private final List<NumberPattern> numbers;

  private final List<ReadyLimits> limits;
  private final List<Aim> aims;
  private volatile String[] words = {};

  /** A color to come near to. */
  private record Aim(Lab target, double tolerance) {}

  /**
   * Prepares to tell.
   *
   * @param values all that a vehicle is judged by
   */
  Likeness(RuleSet rules, List<Expectation> values) {
    this.values = values.size();
    this.few = values.size() <= MOST_VALUES;
    this.chipsOnly = values.stream().allMatch(value -> value instanceof Expectation.Chip);
    this.numbers =
        values.stream()
            .filter(Expectation.PartNumber.class::isInstance)
            .map(value -> ((Expectation.PartNumber) value).number())
            .toList();
    this.limits =
        values.stream()
            .filter(Expectation.Size.class::isInstance)
            .map(value -> new ReadyLimits(((Expectation.Size) value).limits()))
            .toList();
    this.aims =
        values.stream()
            .filter(Expectation.Chip.class::isInstance)
            .flatMap(value -> aim(rules, (Expectation.Chip) value).stream())
            .toList();
  }

  private static Optional<Aim> aim(RuleSet rules, Expectation.Chip expected) {
    double tolerance = Colors.tolerance(rules, expected.chip(), expected.tolerance());
    return Colors.target(rules, expected.chip()).map(target -> new Aim(target, tolerance));
  }

  @Override
  public Integer word(Finding.Word found) {
    return ofWord(found.id());
  }

  private int ofWord(String word) {
    String[] known = words;
    for (int i = 0; i < known.length; i++) {
      if (known[i].equals(word)) {
        return WORDS + i;
      }
    }
    return add(word);
  }

  private synchronized int add(String word) {
    int at = Arrays.asList(words).indexOf(word);
    if (at >= 0) {
      return WORDS + at;
    }
    if (words.length == KINDS - WORDS) {
      return ITSELF;
    }
    String[] more = Arrays.copyOf(words, words.length + 1);
    more[words.length] = word;
    words = more;
    return WORDS + words.length - 1;
  }

  @Override
  public Integer yesNo(Finding.YesNo found) {
    return within(found.yes() ? 1 : 0);
  }

  @Override
  public Integer pieces(Finding.Pieces found) {
    return within(found.count());
  }

  private int within(int kind) {
    return kind < WORDS ? kind : ITSELF;
  }

  @Override
  public Integer screwThread(Finding.ScrewThread found) {
    return ITSELF;
  }

  @Override
  public Integer gloss(Finding.Gloss found) {
    return ITSELF;
  }

  @Override
  public Integer stamped(Finding.Stamped found) {
    if (!few || numbers.size() != values) {
      return ITSELF;
    }
    int met = 0;
    for (int i = 0; i < numbers.size(); i++) {
      met |= numbers.get(i).fits(found.text()) ? 1 << i : 0;
    }
    return met;
  }

  @Override
  public Integer size(Finding.Size found) {
    if (!few || limits.size() != values) {
      return ITSELF;
    }
    int met = 0;
    for (int i = 0; i < limits.size(); i++) {
      if (!limits.get(i).measures(found.measured())) {
        return ITSELF;
      }
      double probability = limits.get(i).probability(found.measured());
      if (isOpen(probability)) {
        return ITSELF;
      }
      met |= probability >= Conformity.MEETS ? 1 << i : 0;
    }
    return met;
  }

  @Override
  public Integer color(Finding.Color found) {
    if (found.lab().isEmpty()) {
      return chipsOnly && found.chip().isPresent() ? ofWord(found.chip().get()) : ITSELF;
    }
    if (!few || aims.size() != values) {
      return ITSELF;
    }
    int met = 0;
    for (int i = 0; i < aims.size(); i++) {
      Aim aim = aims.get(i);
      double difference = Ciede2000.of(found.lab().get(), aim.target()).de00();
      double probability =
          ColorDifference.withinTolerance(difference, found.uncertainty(), aim.tolerance());
      if (isOpen(probability)) {
        return ITSELF;
      }
      met |= probability >= Conformity.MEETS ? 1 << i : 0;
    }
    return met;
  }

  private static boolean isOpen(double probability) {
    return probability < Conformity.MEETS && probability > Conformity.DEPARTS;
  }
}
