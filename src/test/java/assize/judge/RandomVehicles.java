package assize.judge;

import assize.aspect.ColorChip;
import assize.aspect.Colors;
import assize.aspect.Counts;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.aspect.Gloss;
import assize.aspect.PartNumbers;
import assize.aspect.Sizes;
import assize.aspect.Worded;
import assize.aspect.YesNo;
import assize.date.Edtf;
import assize.evidence.Claim;
import assize.measure.CieLab;
import assize.measure.GlossReading;
import assize.measure.MeasuredSize;
import assize.measure.ThreadDesignation;
import assize.record.Built;
import assize.record.Departure;
import assize.record.Named;
import assize.record.Observation;
import assize.record.VehicleRecord;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Seeded vehicles of a rule set: any facts, and findings near what is expected. */
final class RandomVehicles {
  private final RuleSet rules;
  private final VehicleRecord like;
  private final Random random;

  /**
   * Prepares to make vehicles.
   *
   * @param like a record of the rule set, whose traces some of them have
   */
  RandomVehicles(RuleSet rules, VehicleRecord like, long seed) {
    this.rules = rules;
    this.like = like;
    this.random = new Random(seed);
  }

  VehicleRecord next() {
    Map<String, Observation> observations = new LinkedHashMap<>();
    rules.items().filter(item -> random.nextInt(6) > 0).forEach(item -> add(observations, item));
    Map<String, Boolean> equipment = new LinkedHashMap<>();
    rules.equipment().keySet().stream()
        .filter(id -> random.nextInt(3) > 0)
        .forEach(id -> equipment.put(id, random.nextBoolean()));
    return VehicleRecord.of("r", "rules", "R")
        .with(Named.MODEL, sometimes(List.copyOf(rules.models().keySet())))
        .with(VehicleRecord.NUMBERS, random.nextInt(3) == 0 ? like.numbers() : Map.of())
        .with(VehicleRecord.BUILT, built())
        .with(VehicleRecord.PLANT, sometimes(List.copyOf(rules.plants().keySet())))
        .with(VehicleRecord.MARKET, sometimes(List.copyOf(rules.markets().keySet())))
        .with(VehicleRecord.EQUIPMENT, equipment)
        .with(VehicleRecord.OBSERVATIONS, observations)
        .with(VehicleRecord.TRACES, random.nextInt(3) == 0 ? like.traces() : List.of());
  }

  /** Returns the same vehicle, built on one day. */
  static VehicleRecord builtOn(VehicleRecord one, LocalDate day) {
    return one.with(
        VehicleRecord.BUILT, Edtf.parse(day.toString()).toOptional().map(edtf -> Built.on(edtf)));
  }

  private Optional<Built> built() {
    int year = 1931 + random.nextInt(7);
    String date =
        switch (random.nextInt(4)) {
          case 0 -> "%d-%02d".formatted(year, 1 + random.nextInt(12));
          case 1 -> "%d-%02d-%02d".formatted(year, 1 + random.nextInt(12), 1 + random.nextInt(28));
          case 2 -> "%d/%d".formatted(year, year + 1);
          default -> "";
        };
    return date.isEmpty()
        ? Optional.empty()
        : Edtf.parse(date).toOptional().map(edtf -> Built.on(edtf));
  }

  private void add(Map<String, Observation> observations, Item item) {
    Observation seen = Observation.of(item.id());
    for (AspectRule rule : item.aspects()) {
      if (random.nextInt(8) > 0) {
        Optional<Finding> found = finding(item, rule);
        if (found.isPresent()) {
          seen = seen.found(rule.aspect(), found.get());
        }
      }
    }
    List<String> reasons = new ArrayList<>(rules.scale().allowances().keySet());
    reasons.add("taste");
    Optional<Departure> departure =
        random.nextInt(12) == 0
            ? Optional.of(Departure.TABLE.blank().with(Departure.REASON, pick(reasons)))
            : Optional.empty();
    observations.put(item.id(), seen.with(Observation.DEPARTURE, departure));
  }

  private Optional<Finding> finding(Item item, AspectRule rule) {
    Claim claim = pick(rule.claims());
    Expectation value = pick(claim.values());
    return switch (rule.aspect()) {
      case FINISH -> word(List.copyOf(rules.finishes().keySet()), value);
      case MATERIAL -> word(List.copyOf(rules.materials().keySet()), value);
      case CHOICE -> word(List.copyOf(item.choices().keySet()), value);
      case CONDITION -> word(List.copyOf(rules.conditions().keySet()), value);
      case ORIGIN -> word(rules.origins().keySet().stream().map(it -> it.word()).toList(), value);
      case COLOR -> color(value);
      case GLOSS ->
          GlossReading.parse(random.nextInt(100) + (random.nextBoolean() ? "" : " ± 6"))
              .toOptional()
              .map(Gloss.Found::new);
      case SIZE -> size(value);
      case PART_NUMBER, DATE_CODE ->
          Optional.of(
              new PartNumbers.Found(
                  random.nextBoolean() ? value.key() : Integer.toString(random.nextInt(999))));
      case COUNT -> Optional.of(new Counts.Found(random.nextInt(12)));
      case PRESENT, WORKS -> Optional.of(new YesNo.Found(random.nextBoolean()));
    };
  }

  private Optional<Finding> word(List<String> words, Expectation value) {
    if (words.isEmpty() || random.nextInt(20) == 0) {
      return Optional.of(new Worded.Found(Finding.OTHER));
    }
    boolean right = value instanceof Worded.Right && random.nextBoolean();
    return Optional.of(new Worded.Found(right ? value.key() : pick(words)));
  }

  private Optional<Finding> color(Expectation value) {
    String chip =
        value instanceof Colors.Chip expected && random.nextBoolean()
            ? expected.chip()
            : pick(List.copyOf(rules.colors().keySet()));
    Optional<CieLab> near =
        random.nextBoolean()
            ? Optional.ofNullable(rules.colors().get(chip)).flatMap(ColorChip::lab).map(this::near)
            : Optional.empty();
    return Optional.of(
        new Colors.Found(
            near.isPresent() && random.nextBoolean() ? Optional.empty() : Optional.of(chip),
            near,
            near.isPresent() ? random.nextInt(3) / 2.0 : 0,
            Optional.empty(),
            Optional.empty()));
  }

  private CieLab near(CieLab lab) {
    return new CieLab(
        Math.max(0, Math.min(100, lab.l() + random.nextInt(60) / 10.0 - 3)),
        lab.a() + random.nextInt(60) / 10.0 - 3,
        lab.b() + random.nextInt(60) / 10.0 - 3);
  }

  private Optional<Finding> size(Expectation value) {
    if (value instanceof Sizes.ThreadRight) {
      return ThreadDesignation.parse(random.nextBoolean() ? value.key() : "M6")
          .toOptional()
          .map(Sizes.ThreadFound::new);
    }
    Sizes.Right size = (Sizes.Right) value;
    OptionalDouble limit =
        size.limits().lower().or(() -> size.limits().upper()).stream()
            .mapToDouble(it -> it.divide(size.limits().unit().factor()).doubleValue())
            .findFirst();
    String unit = size.limits().unit().symbol();
    String text = "%.3f %s".formatted(limit.orElse(1) * (0.9 + random.nextInt(30) / 100.0), unit);
    return MeasuredSize.parse(random.nextBoolean() ? text : text + " ± 0.05 " + unit)
        .toOptional()
        .map(Sizes.Found::new);
  }

  private Optional<String> sometimes(List<String> values) {
    return values.isEmpty() || random.nextInt(4) == 0
        ? Optional.empty()
        : Optional.of(pick(values));
  }

  private <T> T pick(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }
}
