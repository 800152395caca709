package assize.redaction;

import assize.text.Parsed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * 32 bytes as letters and digits that can be read over the telephone: five bits each, four to a
 * group and a fifth that checks the group and its place. One wrong letter in a group, two that
 * changed places, and two groups that did are noticed.
 */
final class ProofCode {
  private static final int BYTES = 32;
  private static final int GROUPS = 13;
  static final int GROUP = 5;

  /** Neither I, L, O nor U: I and L are read as 1, O as 0. */
  private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

  private static final int MOST_SHOWN = 5;

  private ProofCode() {}

  static String of(byte[] bytes) {
    int[] fives = fives(bytes);
    List<String> groups = new ArrayList<>();
    for (int g = 0; g < GROUPS; g++) {
      StringBuilder group = new StringBuilder();
      for (int i = 0; i < GROUP - 1; i++) {
        group.append(LETTERS.charAt(fives[g * (GROUP - 1) + i]));
      }
      groups.add(group.append(LETTERS.charAt(check(fives, g * (GROUP - 1), g))).toString());
    }
    return String.join("-", groups);
  }

  private static int[] fives(byte[] bytes) {
    int[] fives = new int[GROUPS * (GROUP - 1)];
    for (int bit = 0; bit < bytes.length * 8; bit++) {
      int set = bytes[bit / 8] >> (7 - bit % 8) & 1;
      fives[bit / 5] |= set << (4 - bit % 5);
    }
    return fives;
  }

  /** A weighted sum in the field of 32 elements, each place with a weight of its own. */
  private static int check(int[] fives, int from, int group) {
    int sum = times(group, GROUP);
    for (int i = 0; i < GROUP - 1; i++) {
      sum ^= times(fives[from + i], i + 1);
    }
    return sum;
  }

  /** Multiplies by the field's element 2 so many times, modulo x^5 + x^2 + 1. */
  private static int times(int element, int doublings) {
    int product = element;
    for (int i = 0; i < doublings; i++) {
      product <<= 1;
      product ^= product > 31 ? 0b100101 : 0;
    }
    return product;
  }

  static Parsed<byte[]> read(String words) {
    String typed = words.replaceAll("[\\s\\p{Pd}.,;:]+", " ").strip();
    for (int i = 0; i < typed.length(); i++) {
      if (typed.charAt(i) != ' ' && value(typed.charAt(i)) < 0) {
        return bad("a key has no \"" + typed.substring(i, i + 1) + "\" in it");
      }
    }
    String letters = typed.replace(" ", "");
    if (letters.length() != GROUPS * GROUP) {
      return bad(length(typed.isEmpty() ? List.of() : List.of(typed.split(" ")), letters.length()));
    }
    int[] all = letters.chars().map(c -> value((char) c)).toArray();
    int[] fives = new int[GROUPS * (GROUP - 1)];
    for (int i = 0; i < fives.length; i++) {
      fives[i] = all[i / (GROUP - 1) * GROUP + i % (GROUP - 1)];
    }
    List<Integer> wrong =
        IntStream.range(0, GROUPS)
            .filter(g -> check(fives, g * (GROUP - 1), g) != all[g * GROUP + GROUP - 1])
            .boxed()
            .toList();
    if (!wrong.isEmpty()) {
      return bad(mistyped(wrong, letters));
    }
    byte[] bytes = new byte[BYTES];
    for (int bit = 0; bit < BYTES * 8; bit++) {
      bytes[bit / 8] |= (byte) ((fives[bit / 5] >> (4 - bit % 5) & 1) << (7 - bit % 8));
    }
    return Arrays.equals(fives(bytes), fives)
        ? Parsed.ok(bytes)
        : bad("this is no key: its last group says more than a key holds");
  }

  private static int value(char letter) {
    char upper = Character.toUpperCase(letter);
    return switch (upper) {
      case 'I', 'L' -> 1;
      case 'O' -> 0;
      default -> LETTERS.indexOf(upper);
    };
  }

  private static String length(List<String> groups, int letters) {
    String shape = "a key has " + GROUPS + " groups of " + GROUP + " letters and digits; ";
    for (int g = 0; groups.size() > 1 && g < groups.size(); g++) {
      if (groups.get(g).length() != GROUP) {
        return shape
            + "group "
            + (g + 1)
            + ", \""
            + brief(groups.get(g))
            + "\", has another length";
      }
    }
    return shape + "this has " + letters + " letters and digits";
  }

  private static String mistyped(List<Integer> wrong, String letters) {
    String groups =
        wrong.stream()
            .limit(MOST_SHOWN)
            .map(g -> (g + 1) + " (" + shown(letters, g) + ")")
            .collect(Collectors.joining(", "));
    if (wrong.size() == 1) {
      return "group " + groups + " is mistyped";
    }
    return "groups "
        + groups
        + (wrong.size() > MOST_SHOWN ? " and " + (wrong.size() - MOST_SHOWN) + " more" : "")
        + " are mistyped, or stand in each other's place";
  }

  private static String shown(String letters, int group) {
    return letters.substring(group * GROUP, (group + 1) * GROUP).toUpperCase(Locale.ROOT);
  }

  private static String brief(String group) {
    return group.length() <= 10 ? group : group.substring(0, 10) + "...";
  }

  private static <T> Parsed<T> bad(String reason) {
    return Parsed.bad(reason, 0, 0);
  }
}
