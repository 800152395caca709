package assize.report.handbook;

import assize.aspect.Aspect;
import assize.aspect.ColorChip;
import assize.aspect.Colors;
import assize.aspect.Finish;
import assize.date.DateRangeFormatter;
import assize.evidence.Scope;
import assize.measure.CieLab;
import assize.measure.Swatch;
import assize.production.ScopeAttributes;
import assize.production.VehicleAttribute;
import assize.report.handbook.HandbookView.ColorEntry;
import assize.report.handbook.HandbookView.Fact;
import assize.report.handbook.HandbookView.WordEntry;
import assize.report.view.LinkView;
import assize.report.view.NumberFormatter;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The words of the rule set, and where each of them matters. */
final class HandbookVocabularyViewFactory {
  private final HandbookContext reading;
  private final RuleSet rules;

  HandbookVocabularyViewFactory(HandbookContext reading) {
    this.reading = reading;
    this.rules = reading.rules();
  }

  HandbookView.Vehicles vehicles() {
    return new HandbookView.Vehicles(
        rules.models().values().stream()
            .map(
                model ->
                    new WordEntry(
                        model.id(),
                        model.name(),
                        DateRangeFormatter.of(model.production()),
                        List.of()))
            .toList(),
        asked(rules.equipment(), VehicleAttribute.OfEquipment::new),
        named(rules.plants()),
        named(rules.markets()));
  }

  private static List<WordEntry> named(Map<String, String> names) {
    return names.entrySet().stream()
        .map(one -> new WordEntry(one.getKey(), one.getValue(), "", List.of()))
        .toList();
  }

  private List<WordEntry> asked(
      Map<String, String> names, java.util.function.Function<String, VehicleAttribute> question) {
    return names.entrySet().stream()
        .map(
            one ->
                new WordEntry(
                    one.getKey(),
                    one.getValue(),
                    "",
                    reading.items(
                        item ->
                            scopes(item)
                                .anyMatch(
                                    scope ->
                                        ScopeAttributes.of(scope)
                                            .contains(question.apply(one.getKey()))))))
        .toList();
  }

  private static Stream<Scope> scopes(Item item) {
    return Stream.concat(
        Stream.of(item.scope()), HandbookContext.claims(item).stream().map(claim -> claim.scope()));
  }

  HandbookView.Words words() {
    return new HandbookView.Words(
        rules.colors().values().stream().map(this::color).toList(),
        rules.finishes().values().stream().map(this::finish).toList(),
        rules.materials().entrySet().stream()
            .map(
                one ->
                    new WordEntry(
                        one.getKey(), one.getValue(), "", worded(Aspect.MATERIAL, one.getKey())))
            .toList(),
        rules.origins().entrySet().stream()
            .map(one -> new Fact(one.getKey().word(), NumberFormatter.number(one.getValue())))
            .toList(),
        rules.conditions().entrySet().stream()
            .map(one -> new Fact(one.getKey(), NumberFormatter.number(one.getValue())))
            .toList());
  }

  private List<LinkView> worded(Aspect aspect, String id) {
    return reading.items(
        item ->
            item.aspects().stream()
                .filter(rule -> rule.aspect() == aspect)
                .flatMap(rule -> rule.claims().stream())
                .flatMap(claim -> claim.values().stream())
                .anyMatch(value -> value.key().equals(id)));
  }

  private ColorEntry color(ColorChip color) {
    return new ColorEntry(
        color.id(),
        color.name(),
        color.lab().map(lab -> Swatch.of(lab).hex()).stream().toList(),
        color.lab().map(HandbookVocabularyViewFactory::lab).orElse(""),
        color.lab().isPresent() ? NumberFormatter.measure(color.tolerance()) : "",
        reading.expecting(
            value -> value instanceof Colors.Chip chip && chip.chip().equals(color.id())));
  }

  private static String lab(CieLab lab) {
    return "L* "
        + NumberFormatter.measure(lab.l())
        + ", a* "
        + NumberFormatter.measure(lab.a())
        + ", b* "
        + NumberFormatter.measure(lab.b())
        + (Swatch.of(lab).clipped() ? "; no screen can show it" : "");
  }

  private WordEntry finish(Finish finish) {
    String kind =
        finish
            .kindOf()
            .map(id -> Optional.ofNullable(rules.finishes().get(id)).map(Finish::name).orElse(id))
            .map(name -> "a kind of " + name)
            .orElse("");
    return new WordEntry(finish.id(), finish.name(), kind, worded(Aspect.FINISH, finish.id()));
  }
}
