package assize.yaml;

import assize.aspect.Aspect;
import assize.diagnostic.Code;
import assize.diagnostic.NearNames;
import assize.text.Span;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The names under one name: whoever reads them asks for each by name, and what nobody asked for is
 * unknown.
 */
final class Fields {
  private final Map<String, Node.Entry> entries = new HashMap<>();
  private final List<Node.Entry> inOrder;
  private final Set<String> asked = new LinkedHashSet<>();
  private final String owner;
  private final Span at;
  private final Problems problems;

  /**
   * Takes a group of names.
   *
   * @param owner what they belong to, as in "a model"
   * @param at where to say that something is missing
   */
  Fields(Node.Mapping mapping, String owner, Span at, Problems problems) {
    this.inOrder = mapping.entries();
    inOrder.forEach(entry -> entries.putIfAbsent(entry.name(), entry));
    this.owner = owner;
    this.at = at;
    this.problems = problems;
  }

  /** Returns what is written under a name, if it is there. */
  Optional<Node.Entry> get(String name) {
    asked.add(name);
    return Optional.ofNullable(entries.get(name));
  }

  /** Returns what is written under a name, and says so if it is missing. */
  Optional<Node.Entry> need(String name) {
    Optional<Node.Entry> entry = get(name);
    if (entry.isEmpty()) {
      problems.add(Code.MISSING_KEY, at, owner + " has no `" + name + "`", "add `" + name + ":`");
    }
    return entry;
  }

  Span at() {
    return at;
  }

  boolean isEmpty() {
    return inOrder.isEmpty();
  }

  /** Reports every name that nobody asked for. */
  void done() {
    for (Node.Entry entry : inOrder) {
      if (!asked.contains(entry.name())) {
        problems.add(
            Code.UNKNOWN_KEY,
            entry.key().at(),
            owner + " has no `" + Words.brief(entry.name()) + "`" + foreign(entry.name()),
            problems.areMany() ? Optional.empty() : hint(entry));
      }
    }
  }

  private Optional<String> hint(Node.Entry entry) {
    Optional<String> near = NearNames.nearest(entry.name(), asked).map(Fields::didYouMean);
    if (near.isPresent()) {
      return near;
    }
    if (asked.contains("expect") && Aspect.of(entry.name()).isPresent()) {
      return Optional.of("an aspect belongs under `expect:`");
    }
    if (entry.isBare()) {
      return Optional.of("a comma within { } begins a new name; put the text in quotes");
    }
    return NearNames.hint(entry.name(), asked);
  }

  private static String didYouMean(String name) {
    return "did you mean \"" + name + "\"?";
  }

  /** Tells letters that only look like Latin ones. */
  private static String foreign(String name) {
    return name.codePoints()
        .filter(c -> c > 0x7F)
        .mapToObj(c -> String.format(Locale.ROOT, "U+%04X", c))
        .findFirst()
        .map(code -> " (it has the letter " + code + " in it)")
        .orElse("");
  }
}
