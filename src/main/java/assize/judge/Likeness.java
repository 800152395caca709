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

  /** The first of the findings that are open against the only value: by their credit, downward. */
  private static final int OPEN = -2;

  /** What a credit is rounded to, as {@link Exact#credit} does. */
  static final int CREDITS = 10_000;

  /** How close to the middle between two credits a probability is not trusted. */
  private static final double CLOSE = 1e-6;

  /** The most words that are told apart. */
  private static final int MOST_WORDS = 64;

  /** The most values of which it is told which are met. */
  private static final int MOST_VALUES = 6;

  /** The most numbers of pieces that are told apart. */
  private static final int MOST_PIECES = 64;

  private final int values;
  private final boolean few;
  private final boolean chipsOnly;

  /** Of each value what it asks for, made ready; none where it asks for something else. */
  private final NumberPattern[] numbers;

  private final ReadyLimits[] limits;
  private final Aim[] aims;

  /** Where words begin among the kinds; before them stands which values are met, as bits. */
  private final int firstWord;

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
    this.firstWord = chipsOnly(values) && few ? 1 << values.size() : 0;
    this.chipsOnly = chipsOnly(values);
    this.numbers =
        values.stream()
            .filter(Expectation.PartNumber.class::isInstance)
            .map(value -> ((Expectation.PartNumber) value).number())
            .toArray(NumberPattern[]::new);
    this.limits =
        values.stream()
            .filter(Expectation.Size.class::isInstance)
            .map(value -> new ReadyLimits(((Expectation.Size) value).limits()))
            .toArray(ReadyLimits[]::new);
    this.aims =
        values.stream()
            .filter(Expectation.Chip.class::isInstance)
            .flatMap(value -> aim(rules, (Expectation.Chip) value).stream())
            .toArray(Aim[]::new);
  }

  private static boolean chipsOnly(List<Expectation> values) {
    return values.stream().allMatch(value -> value instanceof Expectation.Chip);
  }

  private static Optional<Aim> aim(RuleSet rules, Expectation.Chip expected) {
    double tolerance = Colors.tolerance(rules, expected.chip(), expected.tolerance());
    return Colors.target(rules, expected.chip()).map(target -> new Aim(target, tolerance));
  }

  @Override
  public Integer word(Finding.Word found) {
    return ofWord(found.id());
  }

  /** Returns the credit, in {@link #CREDITS}, of a finding that is open; below zero for others. */
  static int openCredit(int kind) {
    return OPEN - kind;
  }

  /** Tells a finding that is neither plainly within nor plainly without. */
  private int open(double probability) {
    double credit = probability * CREDITS;
    boolean trusted = Math.abs(credit - Math.floor(credit) - 0.5) > CLOSE;
    return values == 1 && trusted ? OPEN - (int) Math.round(credit) : ITSELF;
  }

  /** A record has a rule set's own text for its words, mostly. */
  private int ofWord(String word) {
    String[] known = words;
    for (int i = 0; i < known.length; i++) {
      if (known[i] == word) {
        return firstWord + i;
      }
    }
    for (int i = 0; i < known.length; i++) {
      if (known[i].equals(word)) {
        return firstWord + i;
      }
    }
    return add(word);
  }

  private synchronized int add(String word) {
    int at = Arrays.asList(words).indexOf(word);
    if (at >= 0) {
      return firstWord + at;
    }
    if (words.length == MOST_WORDS) {
      return ITSELF;
    }
    String[] more = Arrays.copyOf(words, words.length + 1);
    more[words.length] = word;
    words = more;
    return firstWord + words.length - 1;
  }

  @Override
  public Integer yesNo(Finding.YesNo found) {
    return found.yes() ? 1 : 0;
  }

  @Override
  public Integer pieces(Finding.Pieces found) {
    return found.count() < MOST_PIECES ? found.count() : ITSELF;
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
    if (!few || numbers.length != values) {
      return ITSELF;
    }
    int met = 0;
    for (int i = 0; i < numbers.length; i++) {
      met |= numbers[i].fits(found.text()) ? 1 << i : 0;
    }
    return met;
  }

  @Override
  public Integer size(Finding.Size found) {
    if (!few || limits.length != values) {
      return ITSELF;
    }
    int met = 0;
    for (int i = 0; i < limits.length; i++) {
      if (!limits[i].measures(found.measured())) {
        return ITSELF;
      }
      double probability = limits[i].probability(found.measured());
      if (isOpen(probability)) {
        return open(probability);
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
    if (!few || aims.length != values) {
      return ITSELF;
    }
    int met = 0;
    for (int i = 0; i < aims.length; i++) {
      Aim aim = aims[i];
      double difference = Ciede2000.of(found.lab().get(), aim.target()).de00();
      double probability =
          ColorDifference.withinTolerance(difference, found.uncertainty(), aim.tolerance());
      if (isOpen(probability)) {
        return open(probability);
      }
      met |= probability >= Conformity.MEETS ? 1 << i : 0;
    }
    return met;
  }

  private static boolean isOpen(double probability) {
    return probability < Conformity.MEETS && probability > Conformity.DEPARTS;
  }
}
