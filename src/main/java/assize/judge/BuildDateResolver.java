package assize.judge;

import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.judge.NumberDating.Dated;
import assize.judgment.BuildDate;
import assize.judgment.BuildDate.Basis;
import assize.judgment.BuildDate.DatingStatement;
import assize.judgment.Notice;
import assize.record.VehicleRecord;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Reserved;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When a vehicle was built: by its record, else by its numbers, else by its model's production; and
 * where these contradict each other.
 */
final class BuildDateResolver {
  /** Where a rule set names no model: the twentieth century. */
  private static final DateRange UNKNOWN =
      DateRange.of(LocalDate.of(1900, 1, 1), LocalDate.of(1999, 12, 31));

  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final List<Notice> remarks;
  private final DateRange production;
  private final List<DatingStatement> sayings = new ArrayList<>();
  private Optional<LocalDate> estimate = Optional.empty();

  private BuildDateResolver(RuleSet rules, VehicleRecord vehicle, List<Notice> remarks) {
    this.rules = rules;
    this.vehicle = vehicle;
    this.remarks = remarks;
    this.production =
        vehicle
            .model()
            .flatMap(id -> Optional.ofNullable(rules.models().get(id)))
            .map(Model::production)
            .or(
                () ->
                    rules.models().values().stream().map(Model::production).reduce(DateRange::hull))
            .orElse(UNKNOWN);
  }

  static BuildDate of(RuleSet rules, VehicleRecord vehicle, List<Notice> remarks) {
    return new BuildDateResolver(rules, vehicle, remarks).build();
  }

  private BuildDate build() {
    vehicle
        .built()
        .ifPresent(
            built ->
                sayings.add(
                    new DatingStatement(
                        Basis.RECORD,
                        built.basis().map(basis -> "the record, by " + basis).orElse("the record"),
                        closed(built.date().span()))));
    vehicle.numbers().forEach(this::number);
    String model =
        vehicle
            .model()
            .flatMap(id -> Optional.ofNullable(rules.models().get(id)))
            .map(it -> "the production of model " + it.id())
            .orElse(
                rules.models().isEmpty()
                    ? "nothing: the rule set names no model"
                    : "the production of all models");
    if (sayings.isEmpty() || !rules.models().isEmpty()) {
      sayings.add(new DatingStatement(Basis.MODEL, model, production));
    }
    contradictions();
    DatingStatement first = sayings.get(0);
    Optional<LocalDate> likely =
        first.basis() == Basis.NUMBER ? estimate.filter(first.days()::contains) : Optional.empty();
    return new BuildDate(first.days(), first.basis(), likely, sayings);
  }

  /**
   * Dates one number. Of a masked one only what all numbers that it may be have in common is said;
   * its days are those of any of them.
   */
  private void number(String tableId, String number) {
    NumberTable table = rules.numberTables().get(tableId);
    if (table == null || vehicle.possibleNumbers(tableId).isEmpty()) {
      return;
    }
    List<Reading> readings =
        vehicle.possibleNumbers(tableId).stream().map(one -> reading(table, one)).toList();
    String name = table.name() + " " + number;
    if (readings.stream().allMatch(it -> it.used().isEmpty())) {
      remark(Notice.Kind.NUMBER, name + " fits no series of this rule set's table.");
      return;
    }
    if (readings.stream().noneMatch(Reading::fits)) {
      remark(Notice.Kind.NUMBER, name + " belongs to a series of another model or works.");
    }
    for (Reserved block : readings.get(0).blocks()) {
      if (readings.stream().allMatch(it -> it.blocks().contains(block))) {
        remark(
            Notice.Kind.NUMBER,
            name + " stands in a block that was set aside: " + block.purpose() + ".");
      }
    }
    if (readings.stream().allMatch(it -> it.days().isEmpty())) {
      if (readings.stream().allMatch(it -> it.blocks().isEmpty())) {
        remark(Notice.Kind.NUMBER, name + " lies outside the numbers that the table covers.");
      }
      return;
    }
    if (readings.stream().anyMatch(it -> it.days().isEmpty())) {
      return;
    }
    List<Dated> first = readings.get(0).used();
    if (readings.size() == 1 && first.size() == 1 && estimate.isEmpty()) {
      estimate = first.get(0).likely();
    }
    DateRange days =
        readings.stream().flatMap(it -> it.days().stream()).reduce(DateRange::hull).orElseThrow();
    sayings.add(new DatingStatement(Basis.NUMBER, name, closed(days)));
  }

  /**
   * What the table says of one number.
   *
   * @param used of the series that fit the vehicle; where none does, of all that fit the number
   */
  private record Reading(List<Dated> used, boolean fits) {
    List<Reserved> blocks() {
      return used.stream().flatMap(it -> it.reserved().stream()).toList();
    }

    Optional<DateRange> days() {
      return used.stream().flatMap(it -> it.days().stream()).reduce(DateRange::hull);
    }
  }

  private Reading reading(NumberTable table, String number) {
    List<Dated> all = NumberDating.of(table, number);
    List<Dated> fitting = all.stream().filter(this::fitsVehicle).toList();
    return new Reading(fitting.isEmpty() ? all : fitting, !fitting.isEmpty());
  }

  private boolean fitsVehicle(Dated dated) {
    boolean model =
        vehicle.model().isEmpty()
            || dated.series().models().isEmpty()
            || dated.series().models().contains(vehicle.model().get());
    boolean plant =
        vehicle.plant().isEmpty()
            || dated.series().plant().isEmpty()
            || dated.series().plant().equals(vehicle.plant());
    return model && plant;
  }

  /** Closes an open end with the model's production; a span wholly outside it is left as it is. */
  private DateRange closed(DateRange days) {
    if (!days.openStart() && !days.openEnd()) {
      return days;
    }
    return days.intersect(production)
        .orElseGet(
            () ->
                days.openStart()
                    ? DateRange.day(days.openEnd() ? production.last() : days.last())
                    : DateRange.day(days.first()));
  }

  private void contradictions() {
    for (int i = 0; i < sayings.size(); i++) {
      for (int j = i + 1; j < sayings.size(); j++) {
        DatingStatement one = sayings.get(i);
        DatingStatement other = sayings.get(j);
        if (!one.days().overlaps(other.days())) {
          remark(
              Notice.Kind.BUILD_DAYS,
              "The build day is contradicted: "
                  + one.words()
                  + " says "
                  + DateRangeFormatter.of(one.days())
                  + ", "
                  + other.words()
                  + " says "
                  + DateRangeFormatter.of(other.days())
                  + (i == 0 ? ". The first is followed." : "."));
        }
      }
    }
  }

  private void remark(Notice.Kind kind, String words) {
    remarks.add(new Notice(kind, words));
  }
}
