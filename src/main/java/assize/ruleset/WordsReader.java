package assize.ruleset;

import assize.aspect.ColorChip;
import assize.aspect.Colors;
import assize.aspect.Finish;
import assize.aspect.Graded;
import assize.aspect.Origin;
import assize.aspect.Vocabulary;
import assize.date.DaySpan;
import assize.diagnostic.Code;
import assize.measure.Lab;
import assize.schema.Fields;
import assize.schema.Values;
import assize.yaml.Node;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads what a rule set has words for: models, colors, finishes, materials, grades of credit. */
final class WordsReader {
  private final Vocabulary names;
  private final Values values;
  private final Places places;

  WordsReader(Vocabulary names, Values values, Places places) {
    this.names = names;
    this.values = values;
    this.places = places;
  }

  Map<String, Model> models(List<Node.Entry> entries) {
    Map<String, Model> models = new LinkedHashMap<>();
    for (Node.Entry entry : entries) {
      Optional<Fields> fields = values.fields(entry, RuleSetShapes.MODEL);
      if (fields.isPresent()) {
        Optional<String> name = values.name(fields.get().get("name"));
        Optional<Node.Entry> builtEntry = fields.get().get("built");
        Optional<DaySpan> built =
            values.parsed(builtEntry, Code.BAD_DATE, "a span of dates", Dates::span);
        builtEntry.ifPresent(it -> places.put(it.at(), "models", entry.name()));
        fields.get().done();
        if (name.isPresent() && built.isPresent()) {
          models.put(entry.name(), new Model(entry.name(), name.get(), built.get()));
        }
      }
    }
    return models;
  }

  /** Reads names with what they mean: plants, markets, equipment, materials. */
  Map<String, String> meanings(List<Node.Entry> entries) {
    Map<String, String> meanings = new LinkedHashMap<>();
    for (Node.Entry entry : entries) {
      values.name(Optional.of(entry)).ifPresent(it -> meanings.put(entry.name(), it));
    }
    return meanings;
  }

  Map<String, ColorChip> colors(List<Node.Entry> entries) {
    Map<String, ColorChip> colors = new LinkedHashMap<>();
    for (Node.Entry entry : entries) {
      Optional<Fields> fields = values.fields(entry, RuleSetShapes.COLOR);
      if (fields.isPresent()) {
        Optional<String> name = values.name(fields.get().get("name"));
        Optional<Lab> lab = fields.get().get("lab").flatMap(it -> Colors.lab(it, values));
        Optional<Double> tolerance =
            values.decimal(fields.get().get("tolerance"), 0, 100, "a tolerance");
        fields.get().done();
        name.ifPresent(
            it ->
                colors.put(
                    entry.name(),
                    new ColorChip(
                        entry.name(), it, lab, tolerance.orElse(ColorChip.USUAL_TOLERANCE))));
      }
    }
    return colors;
  }

  Map<String, Finish> finishes(List<Node.Entry> entries) {
    Map<String, Finish> finishes = new LinkedHashMap<>();
    for (Node.Entry entry : entries) {
      Optional<Fields> fields = values.fields(entry, RuleSetShapes.FINISH);
      if (fields.isPresent()) {
        Optional<String> name = values.name(fields.get().get("name"));
        Optional<Node.Entry> kindOf = fields.get().get("kind_of");
        kindOf.ifPresent(it -> places.put(it.at(), "finishes", entry.name()));
        Optional<String> kind = kindOf.flatMap(it -> names.finishes.find(it, values));
        fields.get().done();
        name.ifPresent(it -> finishes.put(entry.name(), new Finish(entry.name(), it, kind)));
      }
    }
    return finishes;
  }

  Map<Origin, BigFraction> origins(List<Node.Entry> entries) {
    Map<Origin, BigFraction> origins = new LinkedHashMap<>();
    for (Node.Entry entry : entries) {
      Optional<Origin> origin = Graded.ORIGINS.find(entry.key(), values.problems());
      Optional<BigFraction> credit = values.credit(Optional.of(entry));
      if (origin.isPresent() && credit.isPresent()) {
        origins.put(origin.get(), credit.get());
      }
    }
    return origins;
  }

  Map<String, BigFraction> conditions(List<Node.Entry> entries) {
    Map<String, BigFraction> conditions = new LinkedHashMap<>();
    for (Node.Entry entry : entries) {
      values.credit(Optional.of(entry)).ifPresent(it -> conditions.put(entry.name(), it));
    }
    return conditions;
  }
}
