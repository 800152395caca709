package assize.diagnostic;

import assize.text.Invisible;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the name that was probably meant. */
public final class NameSuggestions {
  private static final int LISTED = 8;
  private static final int LONGEST = 60;
  private static final int LOOKED_AT = 1000;

  /** Letters up to this one look like themselves; those of other scripts may look like them. */
  private static final int LAST_LATIN = 0x24F;

  private NameSuggestions() {}

  /** Returns the valid name that a former one has become, or the nearest, if one is really near. */
  public static Optional<String> nearest(String wrong, Collection<String> valid) {
    Optional<String> now = FormerNames.now(wrong, valid);
    if (now.isPresent()) {
      return now;
    }
    if (wrong.length() > LONGEST) {
      return Optional.empty();
    }
    String folded = fold(wrong);
    int length = folded.length();
    if (length == 0) {
      return Optional.empty();
    }
    int allowed = length <= 2 ? 0 : length <= 4 ? 1 : length <= 8 ? 2 : 3;
    record Near(String name, String folded, int distance) {}
    return valid.stream()
        .limit(LOOKED_AT)
        .map(name -> new Near(name, fold(name), 0))
        .filter(near -> Math.abs(near.folded.length() - length) <= allowed)
        .map(near -> new Near(near.name, near.folded, distance(folded, near.folded)))
        .filter(near -> near.distance <= allowed && near.distance < near.folded.length())
        .min(Comparator.comparingInt(Near::distance))
        .map(Near::name);
  }

  /**
   * Asks whether a near name was meant, and says by which characters two differ that may look the
   * same.
   */
  public static String question(String wrong, String near) {
    return question(wrong, near, "");
  }

  /**
   * Asks whether a near name was meant.
   *
   * @param where where that one is, as in ", defined at line 3"; empty for nothing
   */
  public static String question(String wrong, String near, String where) {
    String with = odd(near, wrong).map(it -> " with " + it).orElse("");
    String without = odd(wrong, near).map(it -> " without " + it).orElse("");
    String and = with.isEmpty() || without.isEmpty() ? "" : " and";
    return "did you mean \"" + near + "\"" + with + and + without + where + "?";
  }

  /** Returns the first character of one text that another lacks and that may look like another. */
  private static Optional<String> odd(String text, String other) {
    return text.codePoints()
        .filter(c -> c > LAST_LATIN || c > '~' && !Character.isLetter(c))
        .filter(c -> other.indexOf(c) < 0)
        .mapToObj(Invisible::number)
        .findFirst();
  }

  /** Returns the next step for a wrong name: the near one, else the valid ones. */
  public static Optional<String> hint(String wrong, Collection<String> valid) {
    Optional<String> near = nearest(wrong, valid).map(name -> question(wrong, name));
    return near.isPresent() || valid.isEmpty() ? near : Optional.of(list(valid));
  }

  /** Lists valid names, not too many of them. */
  public static String list(Collection<String> valid) {
    List<String> shown = valid.stream().filter(name -> name.length() <= LONGEST).toList();
    String names = shown.stream().limit(LISTED).collect(Collectors.joining(", "));
    int more = valid.size() - Math.min(LISTED, shown.size());
    return "known: " + names + (more > 0 ? " and " + more + " more" : "");
  }

  /** Makes one of what is told apart last: capitals, dashes, spaces, and what can't be seen. */
  private static String fold(String name) {
    StringBuilder folded = new StringBuilder();
    name.toLowerCase(Locale.ROOT)
        .codePoints()
        .filter(c -> !Invisible.isHidden(c))
        .map(c -> c == '_' || Invisible.isSpace(c) ? '-' : c)
        .forEach(folded::appendCodePoint);
    return folded.toString();
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
