package assize.ruleset;

import assize.aspect.Aspect;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.Scope;
import assize.schema.DefinedNames;
import assize.schema.MappingReader;
import assize.schema.PropertyConstraint;
import assize.schema.PropertySchema;
import assize.schema.ScalarFormat;
import assize.schema.ValueSchema;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is held of an item, by one source or several, and how its points are shared.
 *
 * @param claims of each aspect, in the order written
 * @param worth points of aspects, in thousandths; the others share what these leave, and without
 *     any all weigh the same
 */
public record Held(Map<Aspect, List<Claim>> claims, Map<Aspect, Long> worth) {
  private static final PropertySchema EXPECT =
      PropertySchema.may(
          "expect",
          AspectSchemas.ASPECTS,
          "What is right, by one source or none: aspects with their values.");
  private static final PropertySchema SOURCE =
      PropertySchema.may(
          "source", ScalarFormat.name(), "Who says what is expected: a source of this rule set.");
  private static final PropertySchema CITE =
      PropertySchema.may(
          "cite", ScalarFormat.text(), "Where the source says so: plate 14, figure 3.");
  private static final PropertySchema CLAIMS =
      PropertySchema.may(
          "claims",
          ValueSchema.list(new ValueSchema.Group(Telling.TABLE.block())),
          "What several sources say is right, each with its source.");
  private static final PropertySchema WORTH =
      PropertySchema.may(
          "aspect_points",
          new ValueSchema.Named(
              ValueSchema.word(AspectSchemas.EXPECTED.names()), ScalarFormat.points()),
          "How the points are shared among the aspects, where not equally.");

  static final List<PropertySchema> KEYS = List.of(EXPECT, SOURCE, CITE, CLAIMS, WORTH);

  static final List<PropertyConstraint> RULES =
      List.of(
          PropertyConstraint.anyOf(EXPECT.name(), CLAIMS.name()),
          PropertyConstraint.needs(SOURCE.name(), EXPECT.name()),
          PropertyConstraint.needs(CITE.name(), EXPECT.name()));

  static final Held NOTHING = new Held(Map.of(), Map.of());

  public Held {
    claims = Collections.unmodifiableMap(new LinkedHashMap<>(claims));
    worth = Map.copyOf(worth);
  }

  /** Reads what is held; none where an aspect has no claim that can be read. */
  static Optional<Held> read(MappingReader item, ItemReading in) {
    Optional<Node.Entry> choices = item.peek(Item.CHOICES.name());
    DefinedNames words =
        new DefinedNames("choice", "this item", DiagnosticCode.UNKNOWN_CHOICE, choices.isPresent());
    words.define(Item.words(choices));
    ClaimReader reader = new ClaimReader(in.names(), in.values());
    List<ClaimReader.Told> expected = expected(item, words, reader, in);
    List<ClaimReader.Told> claimed = claimed(item, words, reader, in);
    new ExpectAndClaimsCheck(in.values().problems()).check(expected, claimed);
    List<ClaimReader.Told> all = new ArrayList<>(expected);
    all.addAll(claimed);
    if (item.get(EXPECT).isEmpty() && item.get(CLAIMS).isEmpty()) {
      in.values()
          .problems()
          .add(
              DiagnosticCode.NOTHING_EXPECTED,
              item.at(),
              "item " + MessageParts.quoted(in.id()) + " expects nothing",
              "add `expect:` or `claims:`");
    }
    new ChoicesCheck(in.values().problems()).check(all, choices.isPresent());
    Map<Aspect, List<Claim>> claims = new LinkedHashMap<>();
    for (ClaimReader.Told one : all) {
      List<Claim> sofar = claims.computeIfAbsent(one.aspect(), it -> new ArrayList<>());
      one.claim().ifPresent(sofar::add);
    }
    Held held = new Held(claims, worth(item.get(WORTH), claims.keySet(), in));
    return claims.isEmpty() || claims.containsValue(List.<Claim>of())
        ? Optional.empty()
        : Optional.of(held);
  }

  private static List<ClaimReader.Told> expected(
      MappingReader item, DefinedNames choices, ClaimReader reader, ItemReading in) {
    Optional<Node.Entry> expect = item.get(EXPECT);
    Optional<Node.Entry> source = item.get(SOURCE);
    Optional<Node.Entry> cite = item.get(CITE);
    if (expect.isEmpty()) {
      source
          .or(() -> cite)
          .ifPresent(
              it ->
                  in.values()
                      .problems()
                      .add(
                          DiagnosticCode.MISSING_KEY,
                          it.key().at(),
                          "`" + it.name() + "` belongs to `expect`, which is not here",
                          "write `expect:`, or put the source into a claim"));
      return List.of();
    }
    Optional<String> named = source.flatMap(it -> in.names().sources.find(it, in.values()));
    Optional<String> citation = in.values().text(cite);
    return reader.told(
        expect.get(),
        choices,
        (values, at) ->
            new Claim(named, citation, Scope.EVERY, ClaimKind.SAYS, values, Optional.empty(), at));
  }

  private static List<ClaimReader.Told> claimed(
      MappingReader item, DefinedNames choices, ClaimReader reader, ItemReading in) {
    List<ClaimReader.Told> claimed = new ArrayList<>();
    for (Node.Entry one : in.values().list(item.get(CLAIMS), "a list of claims")) {
      Optional<Telling> telling = Telling.read(one, in);
      telling
          .flatMap(it -> it.get(Telling.SAID))
          .ifPresent(it -> claimed.addAll(reader.told(it.entry(), choices, telling.get()::claim)));
    }
    return claimed;
  }

  private static Map<Aspect, Long> worth(
      Optional<Node.Entry> entry, Collection<Aspect> aspects, ItemReading in) {
    Map<Aspect, Long> written = new HashMap<>();
    for (Node.Entry one : in.values().entries(entry, "aspects with their points")) {
      Optional<Aspect> aspect = ClaimReader.aspect(one.key(), in.values().problems());
      Optional<Long> own = in.values().points(Optional.of(one));
      if (aspect.isPresent() && !aspects.contains(aspect.get())) {
        in.values()
            .problems()
            .add(
                DiagnosticCode.POINTS_FOR_MISSING_ASPECT,
                one.key().at(),
                "this item does not expect the aspect " + MessageParts.quoted(one.name()),
                "expected: " + MessageParts.list(aspects.stream().map(Aspect::word).toList()));
      } else if (aspect.isPresent() && own.isPresent()) {
        written.put(aspect.get(), own.get());
      }
    }
    if (!written.isEmpty() && written.values().stream().allMatch(it -> it == 0)) {
      in.values()
          .problems()
          .add(
              DiagnosticCode.POINTS_FOR_MISSING_ASPECT,
              entry.orElseThrow().at(),
              "no aspect of this item is worth anything");
    }
    return written;
  }

  /** Shares points among the aspects, in their order. */
  List<AspectRule> rules(long points) {
    if (claims.isEmpty()) {
      return List.of();
    }
    List<Long> shares = AspectRule.share(points, weights(points));
    List<AspectRule> rules = new ArrayList<>();
    claims.forEach(
        (aspect, all) -> rules.add(new AspectRule(aspect, shares.get(rules.size()), all)));
    return rules;
  }

  private List<BigFraction> weights(long points) {
    if (worth.values().stream().allMatch(it -> it == 0)) {
      return Collections.nCopies(claims.size(), BigFraction.ONE);
    }
    long left = points - worth.values().stream().mapToLong(it -> it).sum();
    int others = Math.max(1, claims.size() - worth.size());
    BigFraction rest = left > 0 ? BigFraction.of(left).divide(others) : BigFraction.ZERO;
    return claims.keySet().stream()
        .map(it -> Optional.ofNullable(worth.get(it)).map(BigFraction::of).orElse(rest))
        .toList();
  }
}
