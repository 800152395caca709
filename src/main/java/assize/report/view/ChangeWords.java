package assize.report.view;

import assize.aspect.Aspect;
import assize.aspect.DateCodes;
import assize.aspect.Expectation;
import assize.aspect.MadeWords;
import assize.compare.Change;
import assize.compare.Editions;
import assize.compare.Value;
import assize.date.DayWords;
import assize.evidence.DisputeState;
import assize.evidence.Source;
import assize.report.view.ChangesView.Line;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.timeline.Shift;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What two editions say, in plain words: each in its own. */
final class ChangeWords {
  /** So many changes are told as the reasons of one thing. */
  private static final int REASONS = 20;

  /** Longer names are shortened where they are told of something else. */
  private static final int BRIEF = 400;

  private final Editions editions;
  private final RuleWords before;
  private final RuleWords after;
  private final VehicleWords vehiclesBefore;
  private final VehicleWords vehiclesAfter;
  private final Map<String, String> titles = new HashMap<>();
  private final Map<Change, String> known = new IdentityHashMap<>();

  ChangeWords(Editions editions) {
    this.editions = editions;
    this.before = new RuleWords(editions.before());
    this.after = new RuleWords(editions.after());
    this.vehiclesBefore = new VehicleWords(editions.before());
    this.vehiclesAfter = new VehicleWords(editions.after());
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
      reasons.add(Numbers.count(changes.size() - REASONS, "more change", "more changes"));
    }
    return reasons;
  }

  Line line(Change change) {
    return new Line(
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
    Line line = line(change);
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

  String vehicles(Shift shift) {
    return vehiclesAfter.of(shift.vehicles());
  }

  /** Returns what is held of an aspect: the positions judged by, and how they stand. */
  String held(boolean newer, Item item, Aspect aspect, Optional<Shift.Held> held) {
    if (held.isEmpty()) {
      return "not asked for";
    }
    Optional<DisputeState> state = held.get().state();
    if (state.isEmpty()) {
      return "no source speaks";
    }
    RuleWords words = newer ? after : before;
    return held.get().positions().stream()
            .map(
                one ->
                    words.any(item, aspect, one.accepts())
                        + (one.belief().isPresent()
                            ? " (belief " + Numbers.mass(one.belief().getAsDouble()) + ")"
                            : ""))
            .collect(Collectors.joining("; or else "))
        + " – "
        + GuideCourses.state(state.get());
  }

  String of(boolean newer, Value value) {
    RuleSet rules = newer ? editions.after() : editions.before();
    RuleWords words = newer ? after : before;
    VehicleWords vehicles = newer ? vehiclesAfter : vehiclesBefore;
    return value.match(
        new Value.Cases<String>() {
          @Override
          public String words(Value.Words it) {
            return it.text();
          }

          @Override
          public String points(Value.Points it) {
            return Numbers.points(it.thousandths());
          }

          @Override
          public String share(Value.Share it) {
            return Numbers.number(it.share());
          }

          @Override
          public String days(Value.Days it) {
            return DayWords.of(it.days());
          }

          @Override
          public String where(Value.Where it) {
            String where = vehicles.of(it.scope());
            return where.isEmpty() ? "all vehicles" : where;
          }

          @Override
          public String said(Value.Said it) {
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
                                .map(ChangeWords::brief)
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
        ? " (as " + made.code().text() + MadeWords.letters(made.code().tables()) + ")"
        : "";
  }
}
