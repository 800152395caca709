package assize.share;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Makes a text fit for others: the endings of numbers become {@code x}, wherever the numbers stand
 * and however they are written, and private words become {@code xxx}. In which order they are given
 * makes no difference, and what is masked stays as it is when it is masked again.
 */
public final class Mask {
  private static final String WORD = "xxx";

  private final List<String> numbers;
  private final List<String> words;
  private final Map<String, String> standIns;
  private final List<Shape> shapes = new ArrayList<>();

  private Mask(List<Showing> numbers, Collection<String> words, Map<String, String> standIns) {
    this.standIns = Map.copyOf(standIns);
    this.numbers = numbers.stream().map(Showing::number).toList();
    this.words = List.copyOf(words);
    int owner = 0;
    for (Showing number : numbers) {
      shapes.addAll(Shapes.ofNumber(number, owner++));
    }
    for (String word : this.words) {
      shapes.add(Shapes.ofWord(word, owner++));
    }
  }

  /**
   * Begins a mask.
   *
   * @param words each with at least one letter or digit
   */
  public static Mask of(Collection<String> numbers, Collection<String> words) {
    return showing(numbers.stream().map(Showing::most).toList(), words);
  }

  /**
   * Begins a mask that shows as much of each number as it is told.
   *
   * @param words each with at least one letter or digit
   */
  public static Mask showing(List<Showing> numbers, Collection<String> words) {
    return new Mask(numbers, words, Map.of());
  }

  /**
   * Begins a mask of private words, which also shows masked numbers where stand-ins are marked.
   *
   * @param standIns what is shown, by what is marked
   */
  public static Mask of(Map<String, String> standIns, Collection<String> words) {
    return new Mask(List.of(), words, standIns);
  }

  /** Returns the numbers that it masks. */
  public List<String> numbers() {
    return numbers;
  }

  /** Returns the private words that it masks. */
  public List<String> words() {
    return words;
  }

  int size() {
    return numbers.size() + words.size();
  }

  /** Says whether a number is so short that it is masked only where nothing else is written. */
  public static boolean isTooShort(String number) {
    return Shapes.isTooShort(number);
  }

  /** Returns the text as others may see it. */
  public String text(String text) {
    return text(text, new Times(this));
  }

  /** Returns the text as others may see it, and counts what is masked. */
  public String text(String text, Times times) {
    String before = text;
    for (Map.Entry<String, String> one : standIns.entrySet()) {
      before = before.replace(one.getKey(), one.getValue());
    }
    String after = once(before, times);
    while (!after.equals(before)) {
      before = after;
      after = once(before, times);
    }
    return after;
  }

  /** A part of a text, and what it becomes. */
  private record Edit(int from, int to, String text) {}

  private String once(String text, Times times) {
    Folded folded = Folded.of(text);
    TreeMap<Integer, Edit> letters = new TreeMap<>();
    List<Edit> spans = new ArrayList<>();
    int[] counted = new int[size()];
    for (int start = 0; start < folded.length(); start++) {
      for (Shape shape : shapes) {
        if (!shape.isAt(folded, start)) {
          continue;
        }
        List<Edit> edits = edits(folded, start, shape);
        boolean changes = edits.stream().anyMatch(it -> !isThere(text, it));
        if (changes && start >= counted[shape.owner()]) {
          times.add(shape.owner(), 1);
          counted[shape.owner()] = start + shape.length();
        }
        if (shape.owner() >= numbers.size()) {
          spans.addAll(edits);
        } else {
          edits.forEach(it -> letters.putIfAbsent(it.from(), it));
        }
      }
    }
    return apply(text, letters, joined(spans));
  }

  private List<Edit> edits(Folded text, int start, Shape shape) {
    if (shape.owner() >= numbers.size()) {
      return List.of(new Edit(text.from(start), text.to(start + shape.length() - 1), WORD));
    }
    List<Edit> edits = new ArrayList<>();
    for (int i = 0; i < shape.length(); i++) {
      if (shape.isMasked(i)) {
        String shown = !shape.hidesLength() ? "x" : edits.isEmpty() ? WORD : "";
        edits.add(new Edit(text.from(start + i), text.to(start + i), shown));
      }
    }
    return edits;
  }

  private static boolean isThere(String text, Edit edit) {
    return text.substring(edit.from(), edit.to()).equals(edit.text());
  }

  /** Joins parts that overlap. */
  private static List<Edit> joined(List<Edit> spans) {
    List<Edit> joined = new ArrayList<>();
    for (Edit span : spans.stream().sorted(Comparator.comparing(Edit::from)).toList()) {
      int last = joined.size() - 1;
      if (last >= 0 && span.from() < joined.get(last).to()) {
        Edit before = joined.get(last);
        joined.set(last, new Edit(before.from(), Math.max(before.to(), span.to()), WORD));
      } else {
        joined.add(span);
      }
    }
    return joined;
  }

  private static String apply(String text, TreeMap<Integer, Edit> letters, List<Edit> spans) {
    for (Edit span : spans) {
      letters.subMap(span.from(), span.to()).clear();
      letters.put(span.from(), span);
    }
    StringBuilder changed = new StringBuilder(text.length());
    int at = 0;
    for (Edit edit : letters.values()) {
      changed.append(text, at, edit.from()).append(edit.text());
      at = edit.to();
    }
    return changed.append(text, at, text.length()).toString();
  }
}
