package assize.redaction;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The numbers that stand in texts in the open. A masked number is none of them, since it would be
 * masked there too. It rather takes too much for a number than too little.
 */
final class Seen {
  /** Fewer digits than a mask looks for by themselves. */
  private static final int FEW = 3;

  private static final int MOST_OF_FEW = 999;

  private final List<String> texts = new ArrayList<>();
  private final Set<String> alone = new HashSet<>();
  private final List<String> rows = new ArrayList<>();
  private final Map<Integer, Set<String>> parts = new HashMap<>();

  Seen(Iterable<String> written) {
    for (String text : written) {
      NormalizedText folded = NormalizedText.of(text);
      texts.add(folded.toString());
      rows(folded, NormalizedText.Gap.NONE).forEach(alone::add);
      rows.addAll(rows(folded, NormalizedText.Gap.WIDE));
    }
  }

  /** Returns the digits in a row, with no more between two of them than that. */
  private static List<String> rows(NormalizedText text, NormalizedText.Gap widest) {
    List<String> rows = new ArrayList<>();
    StringBuilder row = new StringBuilder();
    for (int i = 0; i <= text.length(); i++) {
      boolean digit = i < text.length() && text.isDigit(i);
      if (!digit || i > 0 && text.gap(i).compareTo(widest) > 0) {
        if (row.length() > 0) {
          rows.add(row.toString());
        }
        row.setLength(0);
      }
      if (digit) {
        row.append((char) text.letter(i));
      }
    }
    return rows;
  }

  /**
   * Says whether a number stands anywhere.
   *
   * @param before the letters and digits before those that were counted on
   * @param after those behind
   */
  boolean has(String before, String digits, String after) {
    if (digits.length() > FEW) {
      return parts.computeIfAbsent(digits.length(), this::parts).contains(digits);
    }
    String number = before + digits + after;
    return alone.contains(digits)
        || number.length() > FEW && texts.stream().anyMatch(text -> text.contains(number));
  }

  /**
   * Returns the numbers of a range that stand anywhere.
   *
   * @param before the letters and digits before those that were counted on
   * @param after those behind
   */
  Set<Long> among(String before, long from, long to, String after) {
    Set<Long> among = new HashSet<>();
    long few = Math.min(to, MOST_OF_FEW);
    for (long number = from; number <= few; number++) {
      if (has(before, Long.toString(number), after)) {
        among.add(number);
      }
    }
    for (int digits = FEW + 1; digits <= Long.toString(to).length(); digits++) {
      for (String part : parts.computeIfAbsent(digits, this::parts)) {
        long number = part.startsWith("0") ? -1 : Long.parseLong(part);
        if (from <= number && number <= to) {
          among.add(number);
        }
      }
    }
    if (!before.isEmpty()) {
      texts.forEach(text -> behind(text, before, from, to, among));
    }
    return among;
  }

  /** Adds the numbers that stand behind some letters, with anything between their digits. */
  private static void behind(String text, String before, long from, long to, Set<Long> among) {
    for (int at = text.indexOf(before); at >= 0; at = text.indexOf(before, at + 1)) {
      long number = 0;
      for (int i = at + before.length(); i < text.length() && number <= to; i++) {
        int digit = text.charAt(i) - '0';
        if (digit < 0 || digit > 9) {
          break;
        }
        number = 10 * number + digit;
        if (from <= number && number <= to) {
          among.add(number);
        }
      }
    }
  }

  private Set<String> parts(int length) {
    Set<String> parts = new HashSet<>();
    for (String row : rows) {
      for (int from = 0; from + length <= row.length(); from++) {
        parts.add(row.substring(from, from + length));
      }
    }
    return parts;
  }
}
