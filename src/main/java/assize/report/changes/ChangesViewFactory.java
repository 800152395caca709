package assize.report.changes;

import assize.compare.Change;
import assize.compare.ChangedExpectation;
import assize.compare.EditionComparison;
import assize.compare.RuleSetPart;
import assize.compare.VehicleComparison;
import assize.date.DateRangeFormatter;
import assize.report.changes.ChangesView.ChangeLine;
import assize.report.changes.ChangesView.Group;
import assize.report.changes.ChangesView.Renamed;
import assize.report.changes.ChangesView.ShiftDays;
import assize.report.changes.ChangesView.ShiftView;
import assize.report.changes.ChangesView.Thing;
import assize.report.handbook.HandbookViewFactory;
import assize.report.view.AnchorIds;
import assize.report.view.FileView;
import assize.report.view.NumberFormatter;
import assize.ruleset.RuleSet;
import assize.text.FileChecksum;
import assize.timeline.ExpectationShift;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words what changed between two editions. */
public final class ChangesViewFactory {
  /** So many items are named; of more only the number is told. */
  private static final int NAMED = 12;

  private final EditionComparison editions;
  private final ChangeFormatter words;
  private final Map<String, List<Change>> altering;
  private final long items;

  private ChangesViewFactory(EditionComparison editions) {
    this.editions = editions;
    this.words = new ChangeFormatter(editions);
    this.altering = editions.altering();
    this.items = editions.after().items().count();
  }

  /**
   * Returns the changes, finished.
   *
   * @param vehicle what both editions come to for a vehicle
   * @param left what of its record an edition has no place for
   */
  public static ChangesView of(
      EditionComparison editions, Optional<VehicleComparison> vehicle, List<String> left) {
    return new ChangesViewFactory(editions).view(vehicle, left);
  }

  private ChangesView view(Optional<VehicleComparison> vehicle, List<String> left) {
    List<Group> altering = groups(true);
    List<Group> wording = groups(false);
    return new ChangesView(
        editions.after().name(),
        HandbookViewFactory.edition(editions.before()),
        HandbookViewFactory.edition(editions.after()),
        summary(),
        vehicle.map(it -> new ChangedVehicleViewFactory(words).view(it, left)),
        altering,
        wording,
        editions.renamings().stream()
            .map(one -> new Renamed(one.part().word(), one.before(), one.after(), one.name()))
            .toList(),
        editions.changes().stream().map(this::told).toList(),
        editions.shifted().stream().flatMap(this::expected).toList(),
        Stream.concat(
                files(editions.before(), "older edition"), files(editions.after(), "newer edition"))
            .toList());
  }

  private ChangesView.ChangeDetails told(Change change) {
    return new ChangesView.ChangeDetails(
        change.part().word(),
        change.kind().word(),
        change.id(),
        change.name(),
        change.what(),
        change.before().map(it -> words.of(false, it)),
        change.after().map(it -> words.of(true, it)),
        change.alters(),
        change.items());
  }

  private Stream<ChangesView.Expected> expected(ChangedExpectation shifted) {
    return shifts(shifted)
        .flatMap(
            shift ->
                shift.days().stream()
                    .map(
                        days ->
                            new ChangesView.Expected(
                                shifted.item().id(),
                                shift.aspect(),
                                shift.vehicles(),
                                days.days(),
                                days.before(),
                                days.after())));
  }

  private static Stream<FileView> files(RuleSet rules, String role) {
    return rules.files().stream()
        .map((FileChecksum file) -> new FileView(file.path(), file.sha256(), role));
  }

  private List<String> summary() {
    List<String> summary = new ArrayList<>();
    if (editions.isEmpty()) {
      summary.add("Both say the same, word for word.");
      return summary;
    }
    long altering = editions.changes().stream().filter(Change::alters).count();
    long wording = editions.changes().size() - altering;
    summary.add(
        altering == 0
            ? "Nothing that changed can alter a verdict, points or an award."
            : NumberFormatter.count(altering, "change", "changes")
                + " can alter a verdict, points or an award.");
    summary.add(
        wording == 0
            ? "Nothing changed in wording alone."
            : NumberFormatter.count(wording, "change is", "changes are") + " of wording alone.");
    long added = items(Change.Kind.ADDED);
    long removed = items(Change.Kind.REMOVED);
    long shifted = editions.shifted().stream().map(one -> one.item().id()).distinct().count();
    summary.add(
        NumberFormatter.count(added, "item is", "items are")
            + " new, "
            + NumberFormatter.count(removed, "item is", "items are")
            + " gone; of "
            + NumberFormatter.count(shifted, "item", "items")
            + " something else is expected, or the evidence stands otherwise, for some vehicles.");
    return summary;
  }

  private long items(Change.Kind kind) {
    return editions.changes().stream()
        .filter(one -> one.part() == RuleSetPart.ITEM && one.kind() == kind)
        .count();
  }

  private List<Group> groups(boolean altering) {
    Map<RuleSetPart, Map<String, List<Change>>> parts = new LinkedHashMap<>();
    editions.changes().stream()
        .filter(change -> change.alters() == altering)
        .forEach(
            change ->
                parts
                    .computeIfAbsent(change.part(), it -> new LinkedHashMap<>())
                    .computeIfAbsent(change.id(), it -> new ArrayList<>())
                    .add(change));
    Map<String, List<ChangedExpectation>> shifted = new LinkedHashMap<>();
    if (altering) {
      for (ChangedExpectation one : editions.shifted()) {
        String id = one.item().id();
        shifted.computeIfAbsent(id, it -> new ArrayList<>()).add(one);
        // what a source's new grade does is told at each item that cites it
        parts
            .computeIfAbsent(RuleSetPart.ITEM, it -> new LinkedHashMap<>())
            .computeIfAbsent(id, it -> new ArrayList<>());
      }
    }
    List<Group> groups = new ArrayList<>();
    parts.forEach(
        (part, things) -> {
          List<Thing> told = new ArrayList<>();
          things.forEach(
              (id, changes) ->
                  told.add(
                      thing(
                          part,
                          id,
                          changes,
                          part == RuleSetPart.ITEM
                              ? shifted.getOrDefault(id, List.of())
                              : List.of())));
          String anchor = (altering ? "altering-" : "wording-") + AnchorIds.safe(part.word());
          groups.add(new Group(anchor, heading(part), told));
        });
    return groups;
  }

  private static String heading(RuleSetPart part) {
    return switch (part) {
      case STANDARD -> "The standard";
      case SCORING -> "How it is scored";
      case AWARD -> "Awards";
      case MODEL -> "Models";
      case PLANT -> "Works";
      case MARKET -> "Markets";
      case EQUIPMENT -> "Equipment";
      case NUMBERS -> "Number tables";
      case SOURCE -> "Sources";
      case COLOR -> "Colors";
      case FINISH -> "Finishes";
      case MATERIAL -> "Materials";
      case ORIGIN -> "Origins";
      case CONDITION -> "Conditions";
      case AREA -> "Areas";
      case ITEM -> "Items";
    };
  }

  private Thing thing(
      RuleSetPart part, String id, List<Change> changes, List<ChangedExpectation> shifted) {
    String name =
        changes.stream()
            .map(Change::name)
            .findFirst()
            .or(() -> shifted.stream().map(one -> one.item().title()).findFirst())
            .orElse(id);
    String became =
        changes.stream()
            .map(Change::kind)
            .filter(kind -> kind == Change.Kind.ADDED || kind == Change.Kind.REMOVED)
            .map(Change.Kind::word)
            .findFirst()
            .orElse("");
    List<ChangeLine> lines =
        changes.stream()
            .filter(change -> !change.what().isEmpty())
            .map(words::line)
            .collect(Collectors.toCollection(ArrayList::new));
    if (changes.isEmpty()) {
      lines.addAll(because(id));
    }
    return new Thing(
        id,
        name,
        became,
        lines,
        shifted.stream().flatMap(this::shifts).toList(),
        part == RuleSetPart.ITEM || part == RuleSetPart.AREA ? "" : bears(changes));
  }

  /** Returns the changes of other things that bear on an item which says itself what it said. */
  private List<ChangeLine> because(String item) {
    List<Change> others =
        altering.getOrDefault(item, List.of()).stream()
            .filter(change -> change.part() != RuleSetPart.ITEM)
            .toList();
    return words.reasons(others).stream()
        .map(it -> new ChangeLine("because of " + it, "", ""))
        .toList();
  }

  private String bears(List<Change> changes) {
    Set<String> ids =
        changes.stream()
            .map(Change::items)
            .distinct()
            .flatMap(Set::stream)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    if (ids.isEmpty()) {
      return "";
    }
    return ids.size() > NAMED
        ? "Bears on " + (ids.size() >= items ? "all items." : ids.size() + " items.")
        : "Bears on " + ids.stream().map(words::title).collect(Collectors.joining("; ")) + ".";
  }

  private Stream<ShiftView> shifts(ChangedExpectation shifted) {
    if (shifted.shifts().isEmpty()) {
      return Stream.of(
          new ShiftView(
              shifted.aspect().spoken(),
              "",
              List.of(),
              "The sources ask for so many facts together that what this means is not laid out."));
    }
    return shifted.shifts().stream()
        .map(
            shift ->
                new ShiftView(
                    shifted.aspect().spoken(),
                    words.vehicles(shift),
                    shift.days().stream().map(days -> days(shifted, shift, days)).toList(),
                    ""));
  }

  private ShiftDays days(
      ChangedExpectation shifted, ExpectationShift shift, ExpectationShift.Days days) {
    return new ShiftDays(
        days.days().equals(shift.window()) ? "" : DateRangeFormatter.of(days.days()),
        words.held(false, shifted.old(), shifted.aspect(), days.before()),
        words.held(true, shifted.item(), shifted.aspect(), days.after()));
  }
}
