package assize.production;

import assize.date.DateRange;
import assize.date.DateRangeSet;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One kind of vehicle, as far as some scopes tell kinds apart; what no scope asks for is unknown.
 *
 * @param model empty only where the rule set names none
 * @param days build days that no scope tells apart, or all
 * @param market empty where no scope asks for it, or where the rule set names none; so is the plant
 * @param equipment for each piece that a scope asks for, whether it is fitted
 * @param numbers by table that a scope asks for, the numbers it may bear, which lie in the same
 *     ranges; nothing where no series of the table can be such a vehicle's
 */
public record VehicleKind(
    Optional<String> model,
    DateRange days,
    Optional<String> market,
    Optional<String> plant,
    Map<String, Boolean> equipment,
    Map<String, List<NumberPart>> numbers)
    implements Scope.Facts {
  public VehicleKind {
    equipment = Collections.unmodifiableMap(new LinkedHashMap<>(equipment));
    numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
  }

  VehicleKind(Optional<String> model, DateRange days) {
    this(model, days, Optional.empty(), Optional.empty(), Map.of(), Map.of());
  }

  VehicleKind withMarket(String one) {
    return new VehicleKind(model, days, Optional.of(one), plant, equipment, numbers);
  }

  VehicleKind withPlant(String one) {
    return new VehicleKind(model, days, market, Optional.of(one), equipment, numbers);
  }

  VehicleKind withEquipment(String piece, boolean fitted) {
    Map<String, Boolean> more = new LinkedHashMap<>(equipment);
    more.put(piece, fitted);
    return new VehicleKind(model, days, market, plant, more, numbers);
  }

  VehicleKind withNumbers(String table, List<NumberPart> parts) {
    Map<String, List<NumberPart>> more = new LinkedHashMap<>(numbers);
    more.put(table, List.copyOf(parts));
    return new VehicleKind(model, days, market, plant, equipment, more);
  }

  /** Returns the first of the numbers that such a vehicle may bear. */
  public Optional<NumberPart> number(String table) {
    return Optional.ofNullable(numbers.get(table)).map(parts -> parts.get(0));
  }

  /** Returns what it has for these attributes, in their order; those it lacks are left out. */
  public Map<VehicleAttribute, AttributeValue> values(Collection<VehicleAttribute> attributes) {
    Map<VehicleAttribute, AttributeValue> values = new LinkedHashMap<>();
    attributes.forEach(one -> value(one).ifPresent(value -> values.put(one, value)));
    return values;
  }

  private Optional<AttributeValue> value(VehicleAttribute attribute) {
    return attribute.match(
        new VehicleAttribute.Cases<Optional<AttributeValue>>() {
          @Override
          public Optional<AttributeValue> ofModel(VehicleAttribute.OfModel it) {
            return model.map(AttributeValue.Named::new);
          }

          @Override
          public Optional<AttributeValue> ofMarket(VehicleAttribute.OfMarket it) {
            return market.map(AttributeValue.Named::new);
          }

          @Override
          public Optional<AttributeValue> ofPlant(VehicleAttribute.OfPlant it) {
            return plant.map(AttributeValue.Named::new);
          }

          @Override
          public Optional<AttributeValue> ofEquipment(VehicleAttribute.OfEquipment it) {
            return Optional.ofNullable(equipment.get(it.equipment()))
                .map(AttributeValue.Fitted::new);
          }

          @Override
          public Optional<AttributeValue> ofNumber(VehicleAttribute.OfNumber it) {
            return Optional.of(
                new AttributeValue.Within(
                    number(it.table()).map(NumberPart::ranges).orElse(List.of())));
          }
        });
  }

  /**
   * Returns such a vehicle, built on some day, of which everything that scopes ask for is known: it
   * is of no market, plant or series where the rule set has none for it.
   */
  public Scope.Facts builtOn(LocalDate day) {
    return new Known(this, DateRange.day(day));
  }

  @Override
  public Ternary isModel(Set<String> models) {
    return Ternary.of(model.map(models::contains).orElse(false));
  }

  @Override
  public Ternary isBuilt(DateRangeSet asked) {
    return Ternary.of(asked.overlaps(days));
  }

  @Override
  public Ternary hasNumber(String table, String from, String to) {
    return number(table)
        .map(it -> Ternary.of(it.ranges().contains(new Scope.Numbers(table, from, to))))
        .orElse(Ternary.UNKNOWN);
  }

  @Override
  public Ternary hasEquipment(String asked) {
    return Optional.ofNullable(equipment.get(asked)).map(Ternary::of).orElse(Ternary.UNKNOWN);
  }

  @Override
  public Ternary isForMarket(Set<String> markets) {
    return market.map(it -> Ternary.of(markets.contains(it))).orElse(Ternary.UNKNOWN);
  }

  @Override
  public Ternary isFromPlant(Set<String> plants) {
    return plant.map(it -> Ternary.of(plants.contains(it))).orElse(Ternary.UNKNOWN);
  }

  private record Known(VehicleKind kind, DateRange day) implements Scope.Facts {
    private static Ternary known(Ternary answer) {
      return Ternary.of(answer == Ternary.YES);
    }

    @Override
    public Ternary isModel(Set<String> models) {
      return kind.isModel(models);
    }

    @Override
    public Ternary isBuilt(DateRangeSet days) {
      return Ternary.of(days.overlaps(day));
    }

    @Override
    public Ternary hasNumber(String table, String from, String to) {
      return known(kind.hasNumber(table, from, to));
    }

    @Override
    public Ternary hasEquipment(String equipment) {
      return known(kind.hasEquipment(equipment));
    }

    @Override
    public Ternary isForMarket(Set<String> markets) {
      return known(kind.isForMarket(markets));
    }

    @Override
    public Ternary isFromPlant(Set<String> plants) {
      return known(kind.isFromPlant(plants));
    }
  }
}
