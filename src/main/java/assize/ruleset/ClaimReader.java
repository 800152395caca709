package assize.ruleset;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.Reader;
import assize.aspect.Vocabulary;
import assize.diagnostic.Code;
import assize.diagnostic.NearNames;
import assize.evidence.Claim;
import assize.evidence.Manner;
import assize.evidence.Scope;
import assize.schema.Fields;
import assize.schema.Names;
import assize.schema.Values;
import assize.text.Span;
import assize.yaml.Node;
import assize.yaml.Problems;
import assize.yaml.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what sources say of one item, in the short form and in the long one. */
public final class ClaimReader {
  private static final List<String> ASPECTS = AspectShapes.EXPECTED.names();

  private final Vocabulary names;
  private final Values values;
  private final ClaimPhotos photos;

  public ClaimReader(Vocabulary names, Values values, ClaimPhotos photos) {
    this.names = names;
    this.values = values;
    this.photos = photos;
  }

  /** Begins to read what a record says. */
  public ClaimReader(Vocabulary names, Values values) {
    this(names, values, new ClaimPhotos(Optional.empty(), values));
  }

  /** Reads {@code expect} with its one {@code source}, which may be missing. */
  public List<Told> expected(Fields item, Names choices) {
    Optional<Node.Entry> expect = item.get("expect");
    Optional<Node.Entry> source = item.get("source");
    Optional<Node.Entry> cite = item.get("cite");
    if (expect.isEmpty()) {
      source
          .or(() -> cite)
          .ifPresent(
              it ->
                  values
                      .problems()
                      .add(
                          Code.MISSING_KEY,
                          it.key().at(),
                          "`" + it.name() + "` belongs to `expect`, which is not here",
                          "write `expect:`, or put the source into a claim"));
      return List.of();
    }
    Optional<String> named = source.flatMap(it -> names.sources.find(it, values));
    return told(
        expect.get(),
        new Telling(named, values.text(cite), Scope.EVERY, Manner.SAYS, Optional.empty()),
        choices);
  }

  /** Reads {@code claims}, each with its source. */
  public List<Told> claimed(Fields item, Names choices) {
    List<Told> claimed = new ArrayList<>();
    for (Node.Entry one : values.list(item.get("claims"), "a list of claims")) {
      claimed.addAll(claim(one, choices));
    }
    return claimed;
  }

  private List<Told> claim(Node.Entry entry, Names choices) {
    Optional<Node.Mapping> mapping = values.mapping(entry, "a claim with its source");
    if (mapping.isEmpty()) {
      return List.of();
    }
    Fields fields = values.fields(mapping.get(), RuleSetShapes.CLAIM, firstKey(mapping.get()));
    Optional<Node.Entry> source = fields.get("source");
    if (source.isEmpty()) {
      values
          .problems()
          .add(
              Code.CLAIM_WITHOUT_SOURCE,
              fields.at(),
              "this claim does not say whose it is",
              "add `source:`");
    }
    Optional<String> named = source.flatMap(it -> names.sources.find(it, values));
    Optional<String> citation = values.text(fields.get("cite"));
    Scope scope = new ScopeReader(names, values).read(fields);
    Optional<Claim.Photo> photo = photos.read(fields);
    Optional<Manners.Said> said = Manners.read(fields, values);
    fields.done();
    return said.map(
            it ->
                told(it.entry(), new Telling(named, citation, scope, it.manner(), photo), choices))
        .orElse(List.of());
  }

  private static Span firstKey(Node.Mapping mapping) {
    return mapping.entries().isEmpty() ? mapping.at() : mapping.entries().get(0).key().at();
  }

  /** What the aspects of one claim have in common. */
  private record Telling(
      Optional<String> source,
      Optional<String> citation,
      Scope scope,
      Manner manner,
      Optional<Claim.Photo> photo) {
    Optional<Claim> claim(Valued valued) {
      return valued.values.isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Claim(source, citation, scope, manner, valued.values, photo, valued.entry.at()));
    }
  }

  private List<Told> told(Node.Entry entry, Telling telling, Names choices) {
    List<Told> told = new ArrayList<>();
    aspects(entry, choices)
        .forEach(
            (aspect, valued) -> told.add(new Told(aspect, telling.claim(valued), valued.entry)));
    return told;
  }

  /** Reads aspects with their values; an aspect whose values can't be read has none. */
  public Map<Aspect, Valued> aspects(Node.Entry entry, Names choices) {
    Map<Aspect, Valued> found = new LinkedHashMap<>();
    Reader reader = new Reader(names, choices, values);
    for (Node.Entry one : values.entries(Optional.of(entry), "aspects with their values")) {
      Optional<Aspect> aspect = aspect(one.key(), values.problems());
      aspect.ifPresent(it -> found.put(it, new Valued(it.kind().right(one, reader), one)));
    }
    return found;
  }

  /** Returns the aspect of that name, and reports a name that is none. */
  public static Optional<Aspect> aspect(Node.Scalar name, Problems problems) {
    Optional<Aspect> aspect = Aspect.of(name.text());
    if (aspect.isEmpty()) {
      problems.add(
          Code.UNKNOWN_KEY,
          name.at(),
          Words.quoted(name.text()) + " is not an aspect",
          NearNames.nearest(name.text(), ASPECTS)
              .map(near -> NearNames.question(name.text(), near))
              .or(() -> Optional.of("aspects: " + Words.list(ASPECTS))));
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
