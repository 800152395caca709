package assize.report.view;

import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.judgment.BuildDate;
import assize.judgment.Judgment;
import assize.record.Inspected;
import assize.record.VehicleRecord;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which vehicle, judged by what, by whom. */
public final class ReportHeaderViewFactory {
  private ReportHeaderViewFactory() {}

  public static ReportHeaderView of(Judgment judgment) {
    RuleSet rules = judgment.rules();
    VehicleRecord vehicle = judgment.vehicle();
    BuildDate build = judgment.build();
    return new ReportHeaderView(
        vehicle.name(),
        vehicle.id(),
        model(judgment),
        facts(rules, vehicle),
        DateRangeFormatter.of(build.days())
            + build
                .likely()
                .map(day -> ", most likely about " + DateRangeFormatter.of(day))
                .orElse(""),
        basis(build.basis()),
        build.statements().size() > 1 ? statements(build) : List.of(),
        contradiction(build),
        rules.name(),
        edition(rules),
        judged(vehicle),
        vehicle.notes().orElse(""));
  }

  public static String model(Judgment judgment) {
    return judgment
        .vehicle()
        .model()
        .map(
            id ->
                Optional.ofNullable(judgment.rules().models().get(id)).map(Model::name).orElse(id))
        .orElse("model not stated");
  }

  public static String edition(RuleSet rules) {
    return "edition "
        + rules.edition()
        + rules.issued().map(date -> ", issued " + EdtfFormatter.date(date)).orElse("");
  }

  private static String judged(VehicleRecord vehicle) {
    String by = vehicle.inspected().flatMap(Inspected::by).map(name -> "by " + name).orElse("");
    String on =
        vehicle
            .inspected()
            .flatMap(Inspected::on)
            .map(date -> "on " + EdtfFormatter.date(date))
            .orElse("");
    return (by + " " + on).strip();
  }

  public static List<ReportHeaderView.Named> facts(RuleSet rules, VehicleRecord vehicle) {
    List<ReportHeaderView.Named> facts = new ArrayList<>();
    vehicle
        .numbers()
        .forEach(
            (table, number) ->
                facts.add(
                    new ReportHeaderView.Named(
                        Optional.ofNullable(rules.numberTables().get(table))
                            .map(NumberTable::name)
                            .orElse(table),
                        number)));
    vehicle
        .plant()
        .ifPresent(
            id ->
                facts.add(
                    new ReportHeaderView.Named("Plant", rules.plants().getOrDefault(id, id))));
    vehicle
        .market()
        .ifPresent(
            id ->
                facts.add(
                    new ReportHeaderView.Named("Market", rules.markets().getOrDefault(id, id))));
    equipment(rules, vehicle, true)
        .ifPresent(words -> facts.add(new ReportHeaderView.Named("Equipment", words)));
    equipment(rules, vehicle, false)
        .ifPresent(words -> facts.add(new ReportHeaderView.Named("Without", words)));
    return facts;
  }

  private static Optional<String> equipment(RuleSet rules, VehicleRecord vehicle, boolean fitted) {
    String words =
        vehicle.equipment().entrySet().stream()
            .filter(entry -> entry.getValue() == fitted)
            .map(entry -> rules.equipment().getOrDefault(entry.getKey(), entry.getKey()))
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? Optional.empty() : Optional.of(words);
  }

  public static String basis(BuildDate.Basis basis) {
    return switch (basis) {
      case RECORD -> "what the record says";
      case NUMBER -> "its number";
      case MODEL -> "the days in which its model was made";
    };
  }

  private static List<ReportHeaderView.DatingStatementView> statements(BuildDate build) {
    List<ReportHeaderView.DatingStatementView> sayings = new ArrayList<>();
    for (BuildDate.DatingStatement saying : build.statements()) {
      sayings.add(
          new ReportHeaderView.DatingStatementView(
              saying.basis().word(),
              saying.words(),
              DateRangeFormatter.of(saying.days()),
              sayings.isEmpty()));
    }
    return sayings;
  }

  private static String contradiction(BuildDate build) {
    if (build.statements().isEmpty()) {
      return "";
    }
    BuildDate.DatingStatement followed = build.statements().get(0);
    String others =
        build.statements().stream()
            .filter(saying -> !meets(saying.days(), followed.days()))
            .map(
                saying -> "“" + saying.words() + "” (" + DateRangeFormatter.of(saying.days()) + ")")
            .collect(Collectors.joining(" and "));
    return others.isEmpty()
        ? ""
        : "“"
            + followed.words()
            + "” ("
            + DateRangeFormatter.of(followed.days())
            + ") is contradicted by "
            + others
            + ". The first was followed.";
  }

  private static boolean meets(DateRange a, DateRange b) {
    return !a.first().isAfter(b.last()) && !b.first().isAfter(a.last());
  }
}
