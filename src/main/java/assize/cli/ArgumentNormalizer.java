package assize.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Puts what a person typed into the order that the commands read. */
final class ArgumentNormalizer {
  private static final String JSON = "--json";

  private ArgumentNormalizer() {}

  /**
   * Moves {@code --json} from before the command to behind it, and keeps it from taking a record
   * for the file that is to be written.
   */
  static String[] ordered(Collection<String> commands, String... typed) {
    List<String> words = new ArrayList<>(Arrays.asList(typed));
    if (words.size() > 1 && words.get(0).equals(JSON) && commands.contains(words.get(1))) {
      words.set(0, typed[1]);
      words.set(1, JSON);
    }
    int end = words.contains("--") ? words.indexOf("--") : words.size();
    for (int i = 0; i + 1 < end; i++) {
      if (words.get(i).equals(JSON) && isYaml(words.get(i + 1)) && words.get(0).equals("judge")) {
        words.set(i, JSON + "=-");
      }
    }
    return behindOptions(words).toArray(String[]::new);
  }

  /** Lets a value begin with a minus, as the date -1985-04 does, where no option takes a value. */
  private static List<String> behindOptions(List<String> words) {
    boolean plain = !words.isEmpty() && Set.of("date", "color").contains(words.get(0));
    if (!plain
        || words.contains("--")
        || words.stream().noneMatch(ArgumentNormalizer::isNegative)) {
      return words;
    }
    List<String> sorted = new ArrayList<>(List.of(words.get(0)));
    List<String> values = new ArrayList<>(List.of("--"));
    for (String word : words.subList(1, words.size())) {
      (word.startsWith("-") && !isNegative(word) ? sorted : values).add(word);
    }
    sorted.addAll(values);
    return sorted;
  }

  private static boolean isNegative(String word) {
    return word.length() > 1 && word.charAt(0) == '-' && Character.isDigit(word.charAt(1));
  }

  /** Says whether a file's name is that of a record or a rule set. */
  static boolean isYaml(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    return name.endsWith(".yaml") || name.endsWith(".yml");
  }

  /** Returns why a file can't take the machine's form, if it can't. */
  static Optional<String> refusedForJson(String file) {
    if (file.isEmpty()) {
      return Optional.of("--json: name a file, or - for standard output");
    }
    return isYaml(file)
        ? Optional.of("--json: " + file + " is named like a record; name a file that ends in .json")
        : Optional.empty();
  }
}
