package assize.ruleset;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.Reader;
import assize.aspect.Vocabulary;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.NameSuggestions;
import assize.evidence.Claim;
import assize.schema.DefinedNames;
import assize.schema.ScalarReader;
import assize.text.Span;
import assize.yaml.DiagnosticCollector;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads aspects with what is right for them. */
public final class ClaimReader {
  private static final List<String> ASPECTS = AspectSchemas.EXPECTED.names();

  private final Vocabulary names;
  private final ScalarReader values;

  public ClaimReader(Vocabulary names, ScalarReader values) {
    this.names = names;
    this.values = values;
  }

  /** Makes a claim of what one aspect is said to be. */
  interface Make {
    Claim claim(List<Expectation> values, Span at);
  }

  /** Reads what is said of aspects. */
  List<Told> told(Node.Entry entry, DefinedNames choices, Make make) {
    List<Told> told = new ArrayList<>();
    aspects(entry, choices)
        .forEach(
            (aspect, valued) -> {
              Optional<Claim> claim =
                  valued.values.isEmpty()
                      ? Optional.empty()
                      : Optional.of(make.claim(valued.values, valued.entry.at()));
              told.add(new Told(aspect, claim, valued.entry));
            });
    return told;
  }

  /** Reads aspects with their values; an aspect whose values can't be read has none. */
  public Map<Aspect, Valued> aspects(Node.Entry entry, DefinedNames choices) {
    Map<Aspect, Valued> found = new LinkedHashMap<>();
    Reader reader = new Reader(names, choices, values);
    for (Node.Entry one : values.entries(Optional.of(entry), "aspects with their values")) {
      Optional<Aspect> aspect = aspect(one.key(), values.problems());
      aspect.ifPresent(it -> found.put(it, new Valued(it.kind().right(one, reader), one)));
    }
    return found;
  }

  /** Returns the aspect of that name, and reports a name that is none. */
  public static Optional<Aspect> aspect(Node.Scalar name, DiagnosticCollector problems) {
    Optional<Aspect> aspect = Aspect.of(name.text());
    if (aspect.isEmpty()) {
      problems.add(
          DiagnosticCode.UNKNOWN_KEY,
          name.at(),
          MessageParts.quoted(name.text()) + " is not an aspect",
          NameSuggestions.nearest(name.text(), ASPECTS)
              .map(near -> NameSuggestions.question(name.text(), near))
              .or(() -> Optional.of("aspects: " + MessageParts.list(ASPECTS))));
    }
    return aspect;
  }

  /** The values of an aspect, and where they are written. */
  public record Valued(List<Expectation> values, Node.Entry entry) {}

  /**
   * What is said of one aspect.
   *
   * @param claim empty where the values could not be read
   * @param entry where it is written
   */
  public record Told(Aspect aspect, Optional<Claim> claim, Node.Entry entry) {}
}
