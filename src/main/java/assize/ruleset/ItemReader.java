package assize.ruleset;

import assize.aspect.Aspect;
import assize.aspect.Vocabulary;
import assize.diagnostic.Code;
import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.schema.Fields;
import assize.schema.FixedWords;
import assize.schema.Names;
import assize.schema.Values;
import assize.yaml.Node;
import assize.yaml.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads one item. */
final class ItemReader {
  private static final FixedWords<Caution> CAUTIONS =
      FixedWords.of("a caution", Code.UNKNOWN_CAUTION, Caution.values(), Caution::word);

  private final Vocabulary names;
  private final Values values;
  private final ClaimPhotos photos;

  ItemReader(Vocabulary names, Values values, ClaimPhotos photos) {
    this.names = names;
    this.values = values;
    this.photos = photos;
  }

  /** Reads an item; empty where something that an item must have is missing or can't be read. */
  Optional<Item> read(Node.Entry entry, String area) {
    return values.fields(entry, RuleSetShapes.ITEM).flatMap(it -> read(entry, it, area));
  }

  private Optional<Item> read(Node.Entry entry, Fields fields, String area) {
    Optional<String> title = values.name(fields.get("title"));
    Optional<Long> points = values.points(fields.get("points"));
    Optional<String> look = values.text(fields.get("look"));
    Optional<String> notes = values.text(fields.get("notes"));
    Optional<String> cause = values.word(fields.get("cause"));
    List<Caution> cautions = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(fields.get("cautions"))) {
      CAUTIONS.read(Optional.of(one), values).ifPresent(cautions::add);
    }
    Map<String, String> choices = choices(fields);
    Scope scope = new ScopeReader(names, values).read(fields);
    Map<Aspect, List<Claim>> claims = claims(entry, fields, choices);
    List<BigFraction> worth =
        new WorthReader(values).read(fields, points.orElse(0L), claims.keySet());
    fields.done();
    boolean unreadable = claims.isEmpty() || claims.containsValue(List.<Claim>of());
    if (unreadable || title.isEmpty() || points.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Item(
            entry.name(),
            area,
            title.get(),
            points.get(),
            look,
            notes,
            cautions,
            cause,
            scope,
            rules(points.get(), claims, worth),
            choices,
            entry.key().at()));
  }

  private Map<String, String> choices(Fields fields) {
    Map<String, String> choices = new LinkedHashMap<>();
    for (Node.Entry one : values.entries(fields.get("choices"), "words, each with its meaning,")) {
      ReservedWords.check(one.key(), values.problems());
      values.checkWord(one.key());
      choices.put(one.name(), values.name(Optional.of(one)).orElse(""));
    }
    return choices;
  }

  private Map<Aspect, List<Claim>> claims(
      Node.Entry entry, Fields fields, Map<String, String> choices) {
    Names words =
        new Names("choice", "this item", Code.UNKNOWN_CHOICE, fields.get("choices").isPresent());
    words.define(choices.keySet());
    ClaimReader reader = new ClaimReader(names, values, photos);
    List<ClaimReader.Told> expected = reader.expected(fields, words);
    List<ClaimReader.Told> claimed = reader.claimed(fields, words);
    new ExpectAndClaimsCheck(values.problems()).check(expected, claimed);
    List<ClaimReader.Told> all = new ArrayList<>(expected);
    all.addAll(claimed);
    if (fields.get("expect").isEmpty() && fields.get("claims").isEmpty()) {
      values
          .problems()
          .add(
              Code.NO_ASPECTS,
              entry.key().at(),
              "item " + Words.quoted(entry.name()) + " expects nothing",
              "add `expect:` or `claims:`");
    }
    new ChoicesCheck(values.problems()).check(all, fields.get("choices").isPresent());
    Map<Aspect, List<Claim>> claims = new LinkedHashMap<>();
    for (ClaimReader.Told one : all) {
      List<Claim> sofar = claims.computeIfAbsent(one.aspect(), it -> new ArrayList<>());
      one.claim().ifPresent(sofar::add);
    }
    return claims;
  }

  private static List<AspectRule> rules(
      long points, Map<Aspect, List<Claim>> claims, List<BigFraction> worth) {
    List<Long> shares = AspectRule.share(points, worth);
    List<AspectRule> rules = new ArrayList<>();
    for (Map.Entry<Aspect, List<Claim>> one : claims.entrySet()) {
      rules.add(new AspectRule(one.getKey(), shares.get(rules.size()), one.getValue()));
    }
    return rules;
  }
}
