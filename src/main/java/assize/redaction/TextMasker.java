package assize.redaction;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Makes a text fit for others: the endings of numbers become {@code x}, wherever the numbers stand
 * and however they are written, and private words become {@code xxx}. In which order they are given
 * makes no difference, and what is masked stays as it is when it is masked again.
 */
public final class TextMasker {
  private static final String WORD = "xxx";

  /**
   * How often a text is gone through again because what was masked made something new to mask. The
   * check of the finished page refuses what is left after that.
   */
  private static final int MOST_PASSES = 16;

  private final List<String> numbers;
  private final List<String> words;
  private final Map<String, String> standIns;
  private final Finder finder;

  private TextMasker(
      List<Showing> numbers, Collection<String> words, Map<String, String> standIns) {
    this.numbers = numbers.stream().map(Showing::number).toList();
    this.words = List.copyOf(words);
    this.standIns = Map.copyOf(standIns);
    List<MaskPattern> shapes = new ArrayList<>();
    int owner = 0;
    for (Showing number : numbers) {
      shapes.addAll(MaskPatterns.ofNumber(number, owner++));
    }
    for (String word : this.words) {
      shapes.add(MaskPatterns.ofWord(word, owner++));
    }
    this.finder = new Finder(shapes);
  }

  /**
   * Begins a mask.
   *
   * @param words each with at least one letter or digit
   */
  public static TextMasker of(Collection<String> numbers, Collection<String> words) {
    return showing(numbers.stream().map(Showing::most).toList(), words);
  }

  /**
   * Begins a mask that shows as much of each number as it is told.
   *
   * @param words each with at least one letter or digit
   */
  public static TextMasker showing(List<Showing> numbers, Collection<String> words) {
    return new TextMasker(numbers, words, Map.of());
  }

  /**
   * Begins a mask of private words, which also shows masked numbers where stand-ins are marked.
   *
   * @param standIns what is shown, by what is marked
   */
  public static TextMasker of(Map<String, String> standIns, Collection<String> words) {
    return new TextMasker(List.of(), words, standIns);
  }

  /** Returns the numbers that it masks. */
  public List<String> numbers() {
    return numbers;
  }

  /** Returns the private words that it masks. */
  public List<String> words() {
    return words;
  }

  /** Says whether a number is so short that it is masked only where nothing else is written. */
  public static boolean isTooShort(String number) {
    return MaskPatterns.isTooShort(number);
  }

  /** Returns the text as others may see it. */
  public String text(String text) {
    return text(text, new MaskCounts());
  }

  /** Returns the text as others may see it, and counts what is masked. */
  public String text(String text, MaskCounts times) {
    String before = text;
    for (Map.Entry<String, String> one : standIns.entrySet()) {
      before = before.replace(one.getKey(), one.getValue());
    }
    String after = once(before, times);
    for (int i = 1; i < MOST_PASSES && !after.equals(before); i++) {
      before = after;
      after = once(before, times);
    }
    return after;
  }

  private String once(String text, MaskCounts times) {
    String masked = masked(text, NormalizedText.of(text), times);
    if (Escapes.mayBeIn(masked)) {
      masked = masked(masked, NormalizedText.unescaped(masked), times);
    }
    return Escapes.hosts(masked, host -> masked(host, NormalizedText.of(host), times));
  }

  /** A part of a text, and what it becomes. */
  private record Edit(int from, int to, String text) {}

  /** What a letter becomes, and how many letters are masked along with it. */
  private record Letter(Edit edit, int together) {}

  private String masked(String text, NormalizedText folded, MaskCounts times) {
    Letter[] letters = new Letter[folded.length()];
    List<Edit> spans = new ArrayList<>();
    Map<Integer, Integer> counted = new HashMap<>();
    finder.find(
        folded,
        (start, shape) -> {
          if (!shape.isAt(folded, start)) {
            return;
          }
          boolean changes;
          if (shape.owner() < numbers.size()) {
            changes = mark(text, folded, start, shape, letters);
          } else {
            Edit word = new Edit(folded.from(start), folded.to(start + shape.length() - 1), WORD);
            changes = !isThere(text, word);
            spans.add(word);
          }
          if (changes && start >= counted.getOrDefault(shape.owner(), 0)) {
            times.add(shape.owner(), 1);
            counted.put(shape.owner(), start + shape.length());
          }
        });
    return apply(text, folded, letters, joined(spans));
  }

  /** Marks the letters of a number that are masked; says whether any of them is not x yet. */
  private static boolean mark(
      String text,
      NormalizedText folded,
      int start,
      MaskPattern shape,
      @Nullable Letter[] letters) {
    boolean changes = false;
    int before = -1;
    for (int i = 0; i < shape.length(); i++) {
      if (shape.isMasked(i)) {
        int at = start + i;
        boolean goesOn = shape.hidesLength() && before >= 0;
        // What stands between hidden letters would tell how many they are.
        int from = goesOn ? folded.to(before) : folded.from(at);
        String shown = goesOn ? "" : shape.hidesLength() ? WORD : "x";
        Edit edit = new Edit(from, folded.to(at), shown);
        letters[at] = longer(letters[at], new Letter(edit, shape.length()));
        changes |= !isThere(text, edit);
        before = at;
      }
    }
    return changes;
  }

  /** Of a number found whole and by its digits alone, what the whole says comes first. */
  private static Letter longer(@Nullable Letter before, Letter letter) {
    return before == null || before.together() < letter.together() ? letter : before;
  }

  private static boolean isThere(String text, Edit edit) {
    return text.startsWith(edit.text(), edit.from())
        && edit.to() - edit.from() == edit.text().length();
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

  /** Changes letters, but those within a word, and words. */
  private static String apply(
      String text, NormalizedText folded, @Nullable Letter[] letters, List<Edit> words) {
    StringBuilder changed = new StringBuilder(text.length());
    int at = 0;
    int word = 0;
    for (int i = 0; i <= folded.length(); i++) {
      int from = i < folded.length() ? folded.from(i) : text.length();
      for (; word < words.size() && words.get(word).from() <= from; word++) {
        at = put(text, words.get(word), at, changed);
      }
      Letter letter = i < folded.length() ? letters[i] : null;
      if (letter != null) {
        at = put(text, letter.edit(), at, changed);
      }
    }
    return changed.append(text, at, text.length()).toString();
  }

  private static int put(String text, Edit edit, int at, StringBuilder changed) {
    if (edit.from() < at) {
      return at;
    }
    changed.append(text, at, edit.from()).append(edit.text());
    return edit.to();
  }
}
