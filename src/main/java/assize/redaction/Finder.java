package assize.redaction;

import java.util.Arrays;
import java.util.List;

/**
 * Finds many shapes in one pass over a text (Aho and Corasick, Efficient String Matching, 1975), so
 * that the time grows with the text and with what is found, and not with what is looked for.
 *
 * <p>A state is a number; the letters that lead to it from 0 are the beginning of a shape.
 */
final class Finder {
  private static final int NONE = -1;

  private final List<MaskPattern> shapes;
  private final int[] sameEnd;
  private final Edges edges = new Edges();
  private final int[] before;
  private final int[] last;
  private final int[] ends;
  private final int[] shorter;
  private final int[] shorterEnd;

  /** What is told of each shape whose letters are found. */
  @FunctionalInterface
  interface MatchHandler {
    void at(int start, MaskPattern shape);
  }

  Finder(List<MaskPattern> shapes) {
    this.shapes = List.copyOf(shapes);
    int most = 1 + shapes.stream().mapToInt(MaskPattern::length).sum();
    this.sameEnd = new int[shapes.size()];
    this.before = new int[most];
    this.last = new int[most];
    this.ends = new int[most];
    this.shorter = new int[most];
    this.shorterEnd = new int[most];
    Arrays.fill(ends, NONE);
    int[] depths = new int[most];
    int states = 1;
    for (int i = 0; i < shapes.size(); i++) {
      int state = 0;
      for (int j = 0; j < shapes.get(i).length(); j++) {
        int letter = shapes.get(i).letter(j);
        int next = edges.get(state, letter);
        if (next == NONE) {
          next = states++;
          edges.put(state, letter, next);
          before[next] = state;
          last[next] = letter;
          depths[next] = j + 1;
        }
        state = next;
      }
      sameEnd[i] = ends[state];
      ends[state] = i;
    }
    link(byDepth(depths, states));
  }

  /** Returns the states but 0, those of fewer letters first. */
  private static int[] byDepth(int[] depths, int states) {
    int[] places = new int[states + 1];
    for (int state = 1; state < states; state++) {
      places[depths[state] + 1]++;
    }
    for (int depth = 1; depth < places.length; depth++) {
      places[depth] += places[depth - 1];
    }
    int[] sorted = new int[states - 1];
    for (int state = 1; state < states; state++) {
      sorted[places[depths[state]]++] = state;
    }
    return sorted;
  }

  /** Links each state to the longest ending of its letters that is a state too. */
  private void link(int[] states) {
    for (int state : states) {
      int parent = before[state];
      int link = parent == 0 ? 0 : step(shorter[parent], last[state]);
      shorter[state] = link;
      shorterEnd[state] = ends[link] == NONE ? shorterEnd[link] : link;
    }
  }

  private int step(int from, int letter) {
    int state = from;
    int next = edges.get(state, letter);
    while (next == NONE && state != 0) {
      state = shorter[state];
      next = edges.get(state, letter);
    }
    return next == NONE ? 0 : next;
  }

  /** Tells of each shape in a text, in the order in which they end; of those the longest first. */
  void find(NormalizedText text, MatchHandler found) {
    int state = 0;
    for (int i = 0; i < text.length(); i++) {
      state = step(state, text.letter(i));
      for (int end = state; end != 0; end = shorterEnd[end]) {
        for (int one = ends[end]; one != NONE; one = sameEnd[one]) {
          found.at(i + 1 - shapes.get(one).length(), shapes.get(one));
        }
      }
    }
  }

  /**
   * Where a letter leads from a state: a table with open addresses, since there may be millions.
   */
  private static final class Edges {
    private long[] keys = new long[64];
    private int[] states = new int[64];
    private int size;

    /** Never 0, which is a free place. */
    private static long key(int state, int letter) {
      return (long) state << 32 | letter;
    }

    private int place(long key) {
      int place = (int) (key * 0x9E3779B97F4A7C15L >>> 33) & keys.length - 1;
      while (keys[place] != 0 && keys[place] != key) {
        place = place + 1 & keys.length - 1;
      }
      return place;
    }

    int get(int state, int letter) {
      int place = place(key(state, letter));
      return keys[place] == 0 ? NONE : states[place];
    }

    void put(int state, int letter, int next) {
      if (2 * ++size > keys.length) {
        long[] old = keys;
        int[] oldStates = states;
        keys = new long[2 * old.length];
        states = new int[2 * old.length];
        for (int i = 0; i < old.length; i++) {
          if (old[i] != 0) {
            int place = place(old[i]);
            keys[place] = old[i];
            states[place] = oldStates[i];
          }
        }
      }
      int place = place(key(state, letter));
      keys[place] = key(state, letter);
      states[place] = next;
    }
  }
}
