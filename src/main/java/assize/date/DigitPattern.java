package assize.date;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Digits of which some may be X, for a digit not known.
 *
 * @param text digits and X, one to four of them
 */
record DigitPattern(String text) {

  /** Says whether no digit is known. */
  boolean unknown() {
    return text.chars().allMatch(c -> c == 'X');
  }

  /** Says whether every digit is known. */
  boolean known() {
    return text.indexOf('X') < 0;
  }

  /** Counts the digits not known at the end. */
  int unknownAtEnd() {
    int count = 0;
    while (count < text.length() && text.charAt(text.length() - 1 - count) == 'X') {
      count++;
    }
    return count;
  }

  /** Returns the numbers that fit, least first. */
  List<Integer> numbers() {
    List<Integer> numbers = List.of(0);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      List<Integer> longer = new ArrayList<>();
      for (int number : numbers) {
        IntStream.rangeClosed(c == 'X' ? 0 : c - '0', c == 'X' ? 9 : c - '0')
            .forEach(digit -> longer.add(number * 10 + digit));
      }
      numbers = longer;
    }
    return numbers;
  }

  /** Returns the numbers that fit between two others, both included. */
  List<Integer> numbers(int least, int most) {
    return numbers().stream().filter(number -> number >= least && number <= most).toList();
  }
}
