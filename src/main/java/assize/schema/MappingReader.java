package assize.schema;

import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.NameSuggestions;
import assize.text.Span;
import assize.yaml.DiagnosticCollector;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The names under one name, by the block that says which there may be: whoever reads them asks for
 * each by name, and what the block does not have is unknown.
 */
public final class MappingReader {
  private final Node.@Nullable Entry[] entries;
  private final List<Node.Entry> inOrder;
  private final boolean[] asked;

  /** How many names were asked for, each behind those that the block has before it. */
  private int askedInOrder;

  private boolean unknown;
  private final String owner;
  private final ObjectSchema block;
  private final Span at;
  private final DiagnosticCollector problems;

  /**
   * Takes a group of names.
   *
   * @param owner what they belong to, as in "a model"
   * @param block which names there may be
   * @param at where to say that something is missing
   */
  public MappingReader(
      Node.Mapping mapping,
      String owner,
      ObjectSchema block,
      Span at,
      DiagnosticCollector problems) {
    this.inOrder = mapping.entries();
    this.entries = new Node.Entry[block.names().size()];
    this.asked = new boolean[entries.length];
    for (Node.Entry entry : inOrder) {
      int place = block.place(entry.name());
      if (place < 0) {
        unknown = true;
      } else if (entries[place] == null) {
        entries[place] = entry;
      }
    }
    this.owner = owner;
    this.block = block;
    this.at = at;
    this.problems = problems;
  }

  /** Returns what is written under a name, if it is there; says so if it is missing and needed. */
  public Optional<Node.Entry> get(String name) {
    int place = place(name);
    if (place < 0) {
      throw new IllegalArgumentException(block.owner() + " has no " + name);
    }
    Node.Entry entry = entries[place];
    if (!asked[place]) {
      asked[place] = true;
      askedInOrder += place == askedInOrder ? 1 : 0;
      if (entry == null && block.keys().get(place).isNeeded()) {
        missing(name);
      }
    }
    return Optional.ofNullable(entry);
  }

  /** Returns what is written under a name, as {@link #get(String)} does. */
  public Optional<Node.Entry> get(PropertySchema key) {
    return get(key.name());
  }

  /** Returns what is written under a name that will be asked for later. */
  public Optional<Node.Entry> peek(String name) {
    return Optional.ofNullable(entries[block.place(name)]);
  }

  /** Names are asked for in their order, so that the next one mostly is the one. */
  private int place(String name) {
    boolean isNext = askedInOrder < asked.length && block.names().get(askedInOrder).equals(name);
    return isNext ? askedInOrder : block.place(name);
  }

  /** Says that a name is missing. */
  public void missing(String name) {
    problems.add(
        DiagnosticCode.MISSING_KEY, at, owner + " has no `" + name + "`", "add `" + name + ":`");
  }

  public Span at() {
    return at;
  }

  public boolean isEmpty() {
    return inOrder.isEmpty();
  }

  /** Reports every name that the block does not have; by now each that it has was asked for. */
  public void done() {
    List<String> known = block.names();
    assert askedInOrder == known.size()
        : block.owner() + " is not asked for " + known.get(askedInOrder) + " in its turn";
    if (!unknown) {
      return;
    }
    for (Node.Entry entry : inOrder) {
      if (block.place(entry.name()) < 0) {
        problems.add(
            DiagnosticCode.UNKNOWN_KEY,
            entry.key().at(),
            owner + " has no `" + MessageParts.brief(entry.name()) + "`" + foreign(entry.name()),
            problems.areMany() ? Optional.empty() : hint(entry, known));
      }
    }
  }

  private Optional<String> hint(Node.Entry entry, List<String> known) {
    Optional<String> near =
        NameSuggestions.nearest(entry.name(), known).map(MappingReader::didYouMean);
    if (near.isPresent()) {
      return near;
    }
    Optional<String> elsewhere = block.elsewhere(entry.name());
    if (elsewhere.isPresent()) {
      return elsewhere;
    }
    if (entry.isBare()) {
      return Optional.of("a comma within { } begins a new name; put the text in quotes");
    }
    return NameSuggestions.hint(entry.name(), known);
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
