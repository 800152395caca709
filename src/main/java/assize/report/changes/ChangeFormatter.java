package assize.report.changes;

import assize.aspect.Aspect;
import assize.aspect.DateCodeFormatter;
import assize.aspect.DateCodes;
import assize.aspect.Expectation;
import assize.compare.Change;
import assize.compare.ChangedValue;
import assize.compare.EditionComparison;
import assize.date.DateRangeFormatter;
import assize.evidence.DisputeState;
import assize.evidence.Source;
import assize.report.changes.ChangesView.ChangeLine;
import assize.report.handbook.HandbookTimelines;
import assize.report.view.ExpectationFormatter;
import assize.report.view.NumberFormatter;
import assize.report.view.VehicleGroupFormatter;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.timeline.ExpectationShift;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What two editions say, in plain words: each in its own. */
final class ChangeFormatter {
  /** So many changes are told as the reasons of one thing. */
  private static final int REASONS = 20;

  /** Longer names are shortened where they are told of something else. */
  private static final int BRIEF = 400;

  private final EditionComparison editions;
  private final ExpectationFormatter before;
  private final ExpectationFormatter after;
  private final VehicleGroupFormatter vehiclesBefore;
  private final VehicleGroupFormatter vehiclesAfter;
  private final Map<String, String> titles = new HashMap<>();
  private final Map<Change, String> known = new IdentityHashMap<>();

  ChangeFormatter(EditionComparison editions) {
    this.editions = editions;
    this.before = new ExpectationFormatter(editions.before());
    this.after = new ExpectationFormatter(editions.after());
    this.vehiclesBefore = new VehicleGroupFormatter(editions.before());
    this.vehiclesAfter = new VehicleGroupFormatter(editions.after());
    Stream.of(editions.after(), editions.before())
        .flatMap(RuleSet::items)
        .forEach(item -> titles.putIfAbsent(item.id(), item.title()));
  }

  /** Words the changes that something follows from; of many, how many more there are. */
  List<String> reasons(List<Change> changes) {
    List<String> reasons =
        changes.stream()
            .limit(REASONS)
            .map(it -> known.computeIfAbsent(it, this::of))
            .collect(Collectors.toCollection(ArrayList::new));
    if (changes.size() > REASONS) {
      reasons.add(NumberFormatter.count(changes.size() - REASONS, "more change", "more changes"));
    }
    return reasons;
  }

  ChangeLine line(Change change) {
    return new ChangeLine(
        change.what(),
        change.before().map(it -> of(false, it)).orElse(""),
        change.after().map(it -> of(true, it)).orElse(""));
  }

  /** Returns a change as in "source ‘Guide for restorers’: grade". */
  String of(Change change) {
    String name = change.id().isEmpty() ? change.part().word() : "";
    String what = change.what().isEmpty() ? change.kind().word() : change.what() + sides(change);
    return (name.isEmpty() ? change.part().word() + " “" + brief(change.name()) + "”" : name)
        + ": "
        + what;
  }

  /** Shortens a name that is told at many places. */
  private static String brief(String name) {
    return name.length() <= BRIEF
        ? name
        : name.substring(0, name.offsetByCodePoints(0, BRIEF / 2)) + "…";
  }

  private String sides(Change change) {
    ChangeLine line = line(change);
    if (line.before().length() + line.after().length() > 120) {
      return "";
    }
    return " ("
        + (line.before().isEmpty() ? "nothing" : line.before())
        + " → "
        + (line.after().isEmpty() ? "nothing" : line.after())
        + ")";
  }

  /** Returns the title of an item of either edition. */
  String title(String id) {
    return brief(titles.getOrDefault(id, id));
  }

  String vehicles(ExpectationShift shift) {
    return vehiclesAfter.of(shift.vehicles());
  }

  /** Returns what is held of an aspect: the positions judged by, and how they stand. */
  String held(
      boolean newer, Item item, Aspect aspect, Optional<ExpectationShift.PositionState> held) {
    if (held.isEmpty()) {
      return "not asked for";
    }
    Optional<DisputeState> state = held.get().state();
    if (state.isEmpty()) {
      return "no source speaks";
    }
    ExpectationFormatter words = newer ? after : before;
    return held.get().positions().stream()
            .map(
                one ->
                    words.any(item, aspect, one.accepts())
                        + (one.belief().isPresent()
                            ? " (belief " + NumberFormatter.mass(one.belief().getAsDouble()) + ")"
                            : ""))
            .collect(Collectors.joining("; or else "))
        + " – "
        + HandbookTimelines.state(state.get());
  }

  String of(boolean newer, ChangedValue value) {
    RuleSet rules = newer ? editions.after() : editions.before();
    ExpectationFormatter words = newer ? after : before;
    VehicleGroupFormatter vehicles = newer ? vehiclesAfter : vehiclesBefore;
    return value.match(
        new ChangedValue.Cases<String>() {
          @Override
          public String words(ChangedValue.Words it) {
            return it.text();
          }

          @Override
          public String points(ChangedValue.Points it) {
            return NumberFormatter.points(it.thousandths());
          }

          @Override
          public String share(ChangedValue.Share it) {
            return NumberFormatter.number(it.share());
          }

          @Override
          public String days(ChangedValue.Days it) {
            return DateRangeFormatter.of(it.days());
          }

          @Override
          public String where(ChangedValue.Where it) {
            String where = vehicles.of(it.scope());
            return where.isEmpty() ? "all vehicles" : where;
          }

          @Override
          public String said(ChangedValue.ClaimValue it) {
            String manner =
                switch (it.claim().manner()) {
                  case SAYS -> "";
                  case LEAVES_OPEN -> "leaves open ";
                  case RULES_OUT -> "rules out ";
                };
            String who =
                it.claim()
                    .source()
                    .map(
                        id ->
                            Optional.ofNullable(rules.sources().get(id))
                                .map(Source::title)
                                .map(ChangeFormatter::brief)
                                .orElse(id))
                    .orElse("no source");
            String where = vehicles.of(it.claim().scope());
            return manner
                + it.claim().values().stream()
                    .map(value -> words.one(it.item(), it.aspect(), value) + code(value))
                    .collect(Collectors.joining(" or "))
                + ", by "
                + who
                + it.claim().citation().map(cite -> ", " + cite).orElse("")
                + (where.isEmpty() ? "" : " (" + where + ")")
                + it.claim()
                    .photo()
                    .map(
                        photo ->
                            "; shown: "
                                + photo.caption().map(words -> words + " ").orElse("")
                                + "("
                                + photo.file()
                                + ")")
                    .orElse("");
          }
        });
  }

  private static String code(Expectation value) {
    return value instanceof DateCodes.Right made
        ? " (as " + made.code().text() + DateCodeFormatter.letters(made.code().tables()) + ")"
        : "";
  }
}
