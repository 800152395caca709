package assize.judge;

import assize.evidence.Kleene;
import java.util.Arrays;

/** For each of a row of conditions whether a vehicle is within it. */
final class Answers {
  private static final Kleene[] KLEENE = Kleene.values();

  private final byte[] answers;
  private final int hash;

  private Answers(byte[] answers) {
    this.answers = answers;
    this.hash = Arrays.hashCode(answers);
  }

  /** Gathers answers, each once. */
  static final class Row {
    private final byte[] answers;
    private int filled;

    Row(int length) {
      this.answers = new byte[length];
    }

    void add(Kleene answer) {
      answers[filled++] = (byte) answer.ordinal();
    }

    /** Returns an answer that was added. */
    Kleene at(int place) {
      return KLEENE[answers[place]];
    }

    /** Returns the answers; the row is used up. */
    Answers done() {
      if (filled != answers.length) {
        throw new IllegalStateException(filled + " of " + answers.length + " answers");
      }
      return new Answers(answers);
    }
  }

  Kleene at(int place) {
    return KLEENE[answers[place]];
  }

  /** Returns the answers at some places, in their order. */
  Answers at(int[] places) {
    byte[] some = new byte[places.length];
    for (int i = 0; i < places.length; i++) {
      some[i] = answers[places[i]];
    }
    return new Answers(some);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Answers that && Arrays.equals(answers, that.answers);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
