package assize.diagnostic;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the name that was probably meant. */
public final class NearNames {
  private static final int LISTED = 8;
  private static final int LONGEST = 60;
  private static final int LOOKED_AT = 1000;

  private NearNames() {}

  /** Returns the nearest of the valid names, if one is really near. */
  public static Optional<String> nearest(String wrong, Collection<String> valid) {
    if (wrong.isEmpty() || wrong.length() > LONGEST) {
      return Optional.empty();
    }
    String folded = fold(wrong);
    int allowed = wrong.length() <= 2 ? 0 : wrong.length() <= 4 ? 1 : wrong.length() <= 8 ? 2 : 3;
    record Near(String name, int distance) {}
    return valid.stream()
        .limit(LOOKED_AT)
        .filter(name -> Math.abs(name.length() - wrong.length()) <= allowed)
        .map(name -> new Near(name, distance(folded, fold(name))))
        .filter(near -> near.distance <= allowed && near.distance < near.name.length())
        .min(Comparator.comparingInt(Near::distance))
        .map(Near::name);
  }

  /** Returns the next step for a wrong name: the near one, else the valid ones. */
  public static Optional<String> hint(String wrong, Collection<String> valid) {
    Optional<String> near = nearest(wrong, valid).map(name -> "did you mean \"" + name + "\"?");
    return near.isPresent() || valid.isEmpty() ? near : Optional.of(list(valid));
  }

  /** Lists valid names, not too many of them. */
  public static String list(Collection<String> valid) {
    List<String> shown = valid.stream().filter(name -> name.length() <= LONGEST).toList();
    String names = shown.stream().limit(LISTED).collect(Collectors.joining(", "));
    int more = valid.size() - Math.min(LISTED, shown.size());
    return "known: " + names + (more > 0 ? " and " + more + " more" : "");
  }

  private static String fold(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
  }

  /**
   * Counts the letters to change, put in, leave out or swap with their neighbor (Damerau 1964, in
   * the restricted form, where no piece is edited twice).
   */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
