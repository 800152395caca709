package assize.schema;

import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.NameSuggestions;
import assize.text.Span;
import assize.yaml.DiagnosticCollector;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The names of one kind that a rule set or record defines. */
public final class DefinedNames {
  private final String kind;
  private final String owner;
  private final DiagnosticCode unknown;
  private final boolean complete;
  private final Map<String, Defined> defined = new LinkedHashMap<>();

  /**
   * A name.
   *
   * @param name the text that is kept for it, however often it is written
   */
  private record Defined(String name, Optional<Span> at) {}

  /**
   * Begins with no name.
   *
   * @param kind what they name, as in "finish"
   * @param owner what defines them, as in "this rule set"
   * @param unknown the code for a name that is not among them
   * @param complete whether all names are known; if not, none is called unknown
   */
  public DefinedNames(String kind, String owner, DiagnosticCode unknown, boolean complete) {
    this.kind = kind;
    this.owner = owner;
    this.unknown = unknown;
    this.complete = complete;
  }

  public void define(String name, Optional<Span> at) {
    defined.putIfAbsent(name, new Defined(name, at));
  }

  public void define(Iterable<String> names) {
    names.forEach(name -> define(name, Optional.empty()));
  }

  public boolean has(String name) {
    return defined.containsKey(name);
  }

  public Set<String> all() {
    return defined.keySet();
  }

  /** Reads one of the names. */
  public Optional<String> find(Node.Entry entry, ScalarReader values) {
    return values
        .scalar(entry, "the name of one " + kind)
        .flatMap(it -> find(it, values.problems()));
  }

  /** Returns the name if it is defined, and reports it if not. */
  public Optional<String> find(Node.Scalar name, DiagnosticCollector problems) {
    Optional<String> known = Optional.ofNullable(defined.get(name.text())).map(Defined::name);
    if (known.isPresent()) {
      return known;
    }
    if (complete) {
      problems.add(
          unknown,
          name.at(),
          owner + " has no " + kind + " " + MessageParts.quoted(name.text()),
          problems.areMany() ? Optional.empty() : hint(name));
    }
    return Optional.empty();
  }

  private Optional<String> hint(Node.Scalar name) {
    Optional<String> near = NameSuggestions.nearest(name.text(), all());
    if (near.isEmpty()) {
      return all().isEmpty() ? Optional.empty() : Optional.of(NameSuggestions.list(all()));
    }
    String where =
        Optional.ofNullable(defined.get(near.get()))
            .flatMap(Defined::at)
            .map(at -> ", defined at line " + at.line() + other(at, name.at()))
            .orElse("");
    return Optional.of(NameSuggestions.question(name.text(), near.get(), where));
  }

  private static String other(Span defined, Span used) {
    String path = defined.file().path();
    return path.equals(used.file().path())
        ? ""
        : " of " + path.substring(path.lastIndexOf('/') + 1);
  }
}
