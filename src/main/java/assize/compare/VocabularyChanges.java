package assize.compare;

import assize.aspect.Aspect;
import assize.aspect.ColorChip;
import assize.aspect.Finish;
import assize.aspect.Origin;
import assize.measure.CieLab;
import assize.ruleset.RuleSet;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** What changed of colors, finishes, materials, origins and conditions. */
final class VocabularyChanges {
  private static final List<Property<ColorChip>> COLOR =
      List.of(
          Property.wording(ColorChip.NAME, "name"),
          Property.altering(
              ColorChip.LAB, "figures", it -> it.map(lab -> new ChangedValue.Words(lab(lab)))),
          Property.altering(
              ColorChip.TOLERANCE,
              "tolerance",
              it -> Optional.of(new ChangedValue.Words(plain(it)))));

  private static final List<Property<Finish>> FINISH =
      List.of(
          Property.wording(Finish.NAME, "name"),
          Property.altering(Finish.KIND_OF, "kind of", it -> it.map(ChangedValue.Words::new)));

  private final RuleSet before;
  private final RuleSet after;
  private final AffectedItems bearing;

  VocabularyChanges(RuleSet before, RuleSet after, AffectedItems bearing) {
    this.before = before;
    this.after = after;
    this.bearing = bearing;
  }

  void into(List<Change> changes) {
    new ChangeCollector(changes, RuleSetPart.COLOR)
        .each(
            before.colors(),
            after.colors(),
            id -> id,
            ColorChip::name,
            bearing::color,
            (of, both) -> Property.compare(COLOR, of, both.before(), both.after()));
    new ChangeCollector(changes, RuleSetPart.FINISH)
        .each(
            before.finishes(),
            after.finishes(),
            id -> id,
            Finish::name,
            bearing::finish,
            (of, both) -> Property.compare(FINISH, of, both.before(), both.after()));
    new ChangeCollector(changes, RuleSetPart.MATERIAL)
        .each(
            before.materials(),
            after.materials(),
            id -> id,
            name -> name,
            bearing::material,
            (of, both) -> of.words("name", false, both.before(), both.after()));
    credits(
        changes,
        RuleSetPart.ORIGIN,
        Aspect.ORIGIN,
        before.origins(),
        after.origins(),
        Origin::word);
    credits(
        changes,
        RuleSetPart.CONDITION,
        Aspect.CONDITION,
        before.conditions(),
        after.conditions(),
        word -> word);
  }

  private <K> void credits(
      List<Change> changes,
      RuleSetPart part,
      Aspect aspect,
      Map<K, BigFraction> old,
      Map<K, BigFraction> now,
      Function<K, String> word) {
    ChangeCollector differences = new ChangeCollector(changes, part);
    differences.each(
        named(old, word),
        named(now, word),
        id -> id,
        Credit::name,
        id -> bearing.graded(aspect),
        (of, both) ->
            of.check(
                "credit",
                true,
                Optional.of(new ChangedValue.Share(both.before().credit())),
                Optional.of(new ChangedValue.Share(both.after().credit()))));
  }

  private record Credit(String name, BigFraction credit) {}

  private static <K> Map<String, Credit> named(
      Map<K, BigFraction> credits, Function<K, String> word) {
    Map<String, Credit> named = new java.util.LinkedHashMap<>();
    credits.forEach(
        (key, credit) -> named.put(word.apply(key), new Credit(word.apply(key), credit)));
    return named;
  }

  private static String lab(CieLab lab) {
    return "L* " + plain(lab.l()) + ", a* " + plain(lab.a()) + ", b* " + plain(lab.b());
  }

  private static String plain(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }
}
