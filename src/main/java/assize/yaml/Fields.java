package assize.yaml;

import assize.aspect.Aspect;
import assize.diagnostic.Code;
import assize.diagnostic.NearNames;
import assize.shape.Block;
import assize.shape.Key;
import assize.text.Span;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The names under one name, by the block that says which there may be: whoever reads them asks for
 * each by name, and what the block does not have is unknown.
 */
final class Fields {
  private final Map<String, Node.Entry> entries = new HashMap<>();
  private final List<Node.Entry> inOrder;
  private final Set<String> asked = new LinkedHashSet<>();
  private final String owner;
  private final Block block;
  private final Span at;
  private final Problems problems;

  /**
   * Takes a group of names.
   *
   * @param owner what they belong to, as in "a model"
   * @param block which names there may be
   * @param at where to say that something is missing
   */
  Fields(Node.Mapping mapping, String owner, Block block, Span at, Problems problems) {
    this.inOrder = mapping.entries();
    inOrder.forEach(entry -> entries.putIfAbsent(entry.name(), entry));
    this.owner = owner;
    this.block = block;
    this.at = at;
    this.problems = problems;
  }

  /** Returns what is written under a name, if it is there; says so if it is missing and needed. */
  Optional<Node.Entry> get(String name) {
    Key key =
        block
            .key(name)
            .orElseThrow(() -> new IllegalArgumentException(block.owner() + " has no " + name));
    boolean isFirst = asked.add(name);
    Optional<Node.Entry> entry = Optional.ofNullable(entries.get(name));
    if (isFirst && key.isNeeded() && entry.isEmpty()) {
      missing(name);
    }
    return entry;
  }

  /** Says that a name is missing. */
  void missing(String name) {
    problems.add(Code.MISSING_KEY, at, owner + " has no `" + name + "`", "add `" + name + ":`");
  }

  Span at() {
    return at;
  }

  boolean isEmpty() {
    return inOrder.isEmpty();
  }

  /** Reports every name that the block does not have; by now each that it has was asked for. */
  void done() {
    List<String> known = block.names();
    assert List.copyOf(asked).equals(known) : block.owner() + " reads " + asked + ", has " + known;
    for (Node.Entry entry : inOrder) {
      if (!known.contains(entry.name())) {
        problems.add(
            Code.UNKNOWN_KEY,
            entry.key().at(),
            owner + " has no `" + Words.brief(entry.name()) + "`" + foreign(entry.name()),
            problems.areMany() ? Optional.empty() : hint(entry, known));
      }
    }
  }

  private Optional<String> hint(Node.Entry entry, List<String> known) {
    Optional<String> near = NearNames.nearest(entry.name(), known).map(Fields::didYouMean);
    if (near.isPresent()) {
      return near;
    }
    if (known.contains("expect") && Aspect.of(entry.name()).isPresent()) {
      return Optional.of("an aspect belongs under `expect:`");
    }
    if (entry.isBare()) {
      return Optional.of("a comma within { } begins a new name; put the text in quotes");
    }
    return NearNames.hint(entry.name(), known);
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
