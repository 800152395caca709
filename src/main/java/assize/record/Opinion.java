package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.ruleset.AspectSchemas;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Reading;
import assize.schema.Rewording;
import assize.schema.Table;
import assize.schema.Type;
import assize.yaml.Node;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the owner expects at an item where sources differ, and why. Reports show it beside the
 * evidence; it does not count as evidence.
 */
public final class Opinion extends Facts {
  /** For each aspect the values that the owner accepts as right, at least one. */
  public static final Field<AtItem, Map<Aspect, List<Expectation>>> EXPECTS =
      Field.need(
          "expects",
          Map.of(),
          Type.<AtItem, Map<Aspect, List<Expectation>>>of(
                  AspectSchemas.ASPECTS, (entry, in) -> entry.map(it -> expects(it, in)))
              .alike((one, other) -> keys(one).equals(keys(other)))
              .reworded(Opinion::reworded),
          "What the owner expects, as in a claim: {color: black}.");

  public static final Field<Reading, Optional<String>> REASON =
      Field.may("reason", Type.text(), "Why the owner expects it.");

  public static final Table<AtItem, Opinion> TABLE =
      Table.of("an owner's view", Opinion::new, List.of(EXPECTS, REASON));

  private Opinion(Drawn drawn) {
    super(drawn);
  }

  private static Map<Aspect, List<Expectation>> expects(Node.Entry entry, AtItem in) {
    return in.record().held(in.item(), entry);
  }

  private static List<List<String>> keys(Map<Aspect, List<Expectation>> expects) {
    return expects.entrySet().stream()
        .map(it -> it.getValue().stream().map(value -> it.getKey() + " " + value.key()).toList())
        .toList();
  }

  /** Returns the same expectations, their texts changed. */
  static Map<Aspect, List<Expectation>> reworded(
      Map<Aspect, List<Expectation>> expects, Rewording rewording) {
    Map<Aspect, List<Expectation>> changed = new LinkedHashMap<>(expects);
    changed.replaceAll(
        (aspect, all) -> all.stream().map(it -> it.reworded(aspect.word(), rewording)).toList());
    return changed;
  }

  /** Returns an opinion that nothing was read of. */
  public static Opinion of(Map<Aspect, List<Expectation>> expects, Optional<String> reason) {
    return TABLE.with(TABLE.with(TABLE.blank(), EXPECTS, expects), REASON, reason);
  }

  /** Returns for each aspect the values that the owner accepts as right, at least one. */
  public Map<Aspect, List<Expectation>> expects() {
    return get(EXPECTS);
  }

  public Optional<String> reason() {
    return get(REASON);
  }
}
