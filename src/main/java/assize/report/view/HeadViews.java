package assize.report.view;

import assize.date.DaySpan;
import assize.date.DayWords;
import assize.judgment.Build;
import assize.judgment.Judgment;
import assize.record.Judged;
import assize.record.VehicleRecord;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which vehicle, judged by what, by whom. */
final class HeadViews {
  private HeadViews() {}

  static HeadView of(Judgment judgment) {
    RuleSet rules = judgment.rules();
    VehicleRecord vehicle = judgment.vehicle();
    Build build = judgment.build();
    return new HeadView(
        vehicle.name(),
        vehicle.id(),
        model(judgment),
        facts(rules, vehicle),
        DayWords.of(build.days())
            + build.likely().map(day -> ", most likely about " + DayWords.of(day)).orElse(""),
        basis(build.basis()),
        build.sayings().size() > 1 ? sayings(build) : List.of(),
        contradiction(build),
        rules.name(),
        edition(rules),
        judged(vehicle),
        vehicle.notes().orElse(""));
  }

  static String model(Judgment judgment) {
    return judgment
        .vehicle()
        .model()
        .map(
            id ->
                Optional.ofNullable(judgment.rules().models().get(id)).map(Model::name).orElse(id))
        .orElse("model not stated");
  }

  static String edition(RuleSet rules) {
    return "edition "
        + rules.edition()
        + rules.issued().map(date -> ", issued " + DayTexts.date(date)).orElse("");
  }

  private static String judged(VehicleRecord vehicle) {
    String by = vehicle.judged().flatMap(Judged::by).map(name -> "by " + name).orElse("");
    String on =
        vehicle.judged().flatMap(Judged::on).map(date -> "on " + DayTexts.date(date)).orElse("");
    return (by + " " + on).strip();
  }

  static List<HeadView.Named> facts(RuleSet rules, VehicleRecord vehicle) {
    List<HeadView.Named> facts = new ArrayList<>();
    vehicle
        .numbers()
        .forEach(
            (table, number) ->
                facts.add(
                    new HeadView.Named(
                        Optional.ofNullable(rules.numbers().get(table))
                            .map(NumberTable::name)
                            .orElse(table),
                        number)));
    vehicle
        .plant()
        .ifPresent(
            id -> facts.add(new HeadView.Named("Plant", rules.plants().getOrDefault(id, id))));
    vehicle
        .market()
        .ifPresent(
            id -> facts.add(new HeadView.Named("Market", rules.markets().getOrDefault(id, id))));
    equipment(rules, vehicle, true)
        .ifPresent(words -> facts.add(new HeadView.Named("Equipment", words)));
    equipment(rules, vehicle, false)
        .ifPresent(words -> facts.add(new HeadView.Named("Without", words)));
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

  static String basis(Build.Basis basis) {
    return switch (basis) {
      case RECORD -> "what the record says";
      case NUMBER -> "its number";
      case MODEL -> "the days in which its model was made";
    };
  }

  private static List<HeadView.Saying> sayings(Build build) {
    List<HeadView.Saying> sayings = new ArrayList<>();
    for (Build.Saying saying : build.sayings()) {
      sayings.add(
          new HeadView.Saying(
              saying.basis().word(),
              saying.words(),
              DayWords.of(saying.days()),
              sayings.isEmpty()));
    }
    return sayings;
  }

  private static String contradiction(Build build) {
    if (build.sayings().isEmpty()) {
      return "";
    }
    Build.Saying followed = build.sayings().get(0);
    String others =
        build.sayings().stream()
            .filter(saying -> !meets(saying.days(), followed.days()))
            .map(saying -> "“" + saying.words() + "” (" + DayWords.of(saying.days()) + ")")
            .collect(Collectors.joining(" and "));
    return others.isEmpty()
        ? ""
        : "“"
            + followed.words()
            + "” ("
            + DayWords.of(followed.days())
            + ") is contradicted by "
            + others
            + ". The first was followed.";
  }

  private static boolean meets(DaySpan a, DaySpan b) {
    return !a.first().isAfter(b.last()) && !b.first().isAfter(a.last());
  }
}
