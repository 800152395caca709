package assize.judge;

import assize.evidence.Ternary;
import java.util.Arrays;
import java.util.Iterator;
import java.util.stream.Stream;

/** For each of a row of conditions whether a vehicle is within it. */
final class ConditionResults {
  private static final Ternary[] KLEENE = Ternary.values();

  private final byte[] answers;
  private final int hash;

  private ConditionResults(byte[] answers) {
    this.answers = answers;
    this.hash = Arrays.hashCode(answers);
  }

  /** Gathers answers, each once. */
  static final class ConditionRow {
    private final byte[] answers;
    private int filled;

    ConditionRow(int length) {
      this.answers = new byte[length];
    }

    void add(Ternary answer) {
      answers[filled++] = (byte) answer.ordinal();
    }

    /** Returns an answer that was added. */
    Ternary at(int place) {
      return KLEENE[answers[place]];
    }

    /** Returns the answers; the row is used up. */
    ConditionResults done() {
      if (filled != answers.length) {
        throw new IllegalStateException(filled + " of " + answers.length + " answers");
      }
      return new ConditionResults(answers);
    }
  }

  /** Joins answers to the same conditions: each where all agree, else unknown. */
  static ConditionResults joined(Stream<ConditionResults> all) {
    Iterator<ConditionResults> each = all.iterator();
    ConditionResults first = each.next();
    if (!each.hasNext()) {
      return first;
    }
    byte[] joined = first.answers.clone();
    while (each.hasNext()) {
      byte[] other = each.next().answers;
      for (int i = 0; i < joined.length; i++) {
        joined[i] = joined[i] == other[i] ? joined[i] : (byte) Ternary.UNKNOWN.ordinal();
      }
    }
    return new ConditionResults(joined);
  }

  Ternary at(int place) {
    return KLEENE[answers[place]];
  }

  /** Returns the answers at some places, in their order. */
  ConditionResults at(int[] places) {
    byte[] some = new byte[places.length];
    for (int i = 0; i < places.length; i++) {
      some[i] = answers[places[i]];
    }
    return new ConditionResults(some);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ConditionResults that && Arrays.equals(answers, that.answers);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
