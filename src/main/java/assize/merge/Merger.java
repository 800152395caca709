package assize.merge;

import assize.record.EvidenceItem;
import assize.record.PhysicalTrace;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Holds friends' records of a vehicle against the record of its owner. */
public final class Merger {
  private final LocatedRecord mine;
  private final List<LocatedRecord> theirs;
  private final TakeChoices taken;
  private final Predicate<String> hasFile;
  private final List<MergeResult.Step> steps = new ArrayList<>();
  private final List<MergeResult.Conflict> conflicts = new ArrayList<>();
  private final List<MergeResult.Waiting> waiting = new ArrayList<>();

  /** Whose evidence was taken: each friend by who it is, not by all that the record says. */
  private final Map<LocatedRecord, Set<String>> shown = new IdentityHashMap<>();

  private boolean judgedIsTaken;
  private int same;

  private Merger(
      LocatedRecord mine,
      List<LocatedRecord> theirs,
      TakeChoices taken,
      Predicate<String> hasFile) {
    this.mine = mine;
    this.theirs = theirs;
    this.taken = taken;
    this.hasFile = hasFile;
  }

  /**
   * Finds what friends' records have that a record has not, and where they differ.
   *
   * @param theirs read by the same rules, of the same vehicle
   * @param hasFile whether a file, named as records name it, lies beside the record or below
   */
  public static MergeResult merge(
      RuleSet rules,
      LocatedRecord mine,
      List<LocatedRecord> theirs,
      TakeChoices taken,
      Predicate<String> hasFile) {
    List<LocatedRecord> tidy = theirs.stream().map(LocatedRecord::tidy).toList();
    Merger merger = new Merger(mine, tidy, taken, hasFile);
    merger.judged();
    merger.privateWords();
    merger.evidence();
    merger.traces();
    Map<String, List<LocatedRecord>> telling = merger.telling(it -> it.observations().keySet());
    rules.items().map(Item::id).forEach(it -> merger.item(it, telling.getOrDefault(it, List.of())));
    List<MergeResult.Aside> asides =
        theirs.stream().flatMap(it -> VehicleFactDifferences.of(mine, it).stream()).toList();
    return new MergeResult(merger.steps, merger.conflicts, merger.waiting, asides, merger.same);
  }

  /** Takes over who judged, where the record has nothing yet that somebody else has looked at. */
  private void judged() {
    List<String> path = List.of(LocatedRecord.JUDGED);
    List<Side> told = theirs.stream().flatMap(it -> side(it, path).stream()).toList();
    boolean one = told.stream().map(Side::value).distinct().count() == 1;
    if (one
        && told.size() == theirs.size()
        && mine.record().observations().keySet().stream().allMatch(mine::saysNothingOf)
        && mine.record().inspected().isEmpty()) {
      judgedIsTaken = true;
      add(path, told.get(0).value(), told);
      keepJudged();
    }
  }

  /** Keeps from others who judged, where a friend keeps it from them. */
  private void keepJudged() {
    List<Side> from =
        theirs.stream()
            .filter(it -> it.record().unshared().contains(LocatedRecord.JUDGED))
            .flatMap(it -> side(it, List.of(LocatedRecord.PRIVATE)).stream())
            .toList();
    if (!from.isEmpty() && !mine.record().unshared().contains(LocatedRecord.JUDGED)) {
      boolean none = mine.record().unshared().isEmpty();
      goOn(LocatedRecord.PRIVATE, none, List.of(LocatedRecord.JUDGED), from);
    }
  }

  /** Keeps from others what friends keep from them, since it may stand in what is taken. */
  private void privateWords() {
    Set<String> known = new HashSet<>(mine.record().unsharedWords());
    List<String> added = new ArrayList<>();
    List<Side> from = new ArrayList<>();
    for (LocatedRecord one : theirs) {
      List<String> more =
          one.record().unsharedWords().stream().filter(known::add).distinct().toList();
      if (!more.isEmpty()) {
        added.addAll(more);
        side(one, List.of(LocatedRecord.PRIVATE_WORDS)).ifPresent(from::add);
      }
    }
    if (!added.isEmpty()) {
      goOn(LocatedRecord.PRIVATE_WORDS, false, added, from);
    }
  }

  /** Adds words to one word or a list of them. */
  private void goOn(String name, boolean anew, List<String> words, List<Side> from) {
    Optional<YamlValue> own = anew ? Optional.empty() : mine.content().get(name);
    List<YamlValue> added = words.stream().map(YamlValue::text).toList();
    List<YamlValue> all =
        new ArrayList<>(
            own.map(it -> it.asItems().map(YamlValue.Items::all).orElse(List.of(it)))
                .orElse(List.of()));
    all.addAll(added);
    steps.add(
        new MergeResult.Step(
            List.of(name),
            new YamlValue.Items(all),
            false,
            new YamlValue.Items(added),
            Optional.empty(),
            from));
  }

  private static Optional<Side> side(LocatedRecord record, List<String> path) {
    return record.content().at(path).map(it -> new Side(record.name(), record.at(path), it));
  }

  private void add(List<String> path, YamlValue value, List<Side> from) {
    steps.add(MergeResult.Step.put(path, value, Optional.empty(), from));
  }

  private void evidence() {
    telling(it -> it.evidence().keySet()).forEach(this::evidence);
  }

  /** Returns who says something under each name, names and friends in the order given. */
  private Map<String, List<LocatedRecord>> telling(Function<VehicleRecord, Set<String>> names) {
    Map<String, List<LocatedRecord>> telling = new LinkedHashMap<>();
    for (LocatedRecord one : theirs) {
      names
          .apply(one.record())
          .forEach(name -> telling.computeIfAbsent(name, it -> new ArrayList<>()).add(one));
    }
    return telling;
  }

  private void evidence(String id, List<LocatedRecord> telling) {
    List<String> path = List.of(LocatedRecord.EVIDENCE, id);
    Optional<EvidenceItem> own = Optional.ofNullable(mine.record().evidence().get(id));
    Optional<EvidenceItem> first = own;
    List<Side> from = new ArrayList<>();
    boolean clash = false;
    for (LocatedRecord one : telling) {
      Optional<EvidenceItem> told = Optional.ofNullable(one.record().evidence().get(id));
      first = first.or(() -> told);
      boolean isSame = EvidenceItem.TABLE.alike(first.orElseThrow(), told.orElseThrow());
      clash |= !isSame && own.isEmpty();
      side(one, path).ifPresent(from::add);
      if (isSame) {
        shown(one).add(id);
      } else {
        wait(path, side(one, path), "another piece of evidence has this name");
      }
    }
    if (own.isPresent()) {
      boolean isSame = telling.stream().anyMatch(it -> shown(it).contains(id) && it.writes(path));
      same += isSame ? 1 : 0;
      return;
    }
    EvidenceItem piece = first.orElseThrow();
    boolean missing = piece.kind() != EvidenceItem.Kind.MEASUREMENT && !hasFile.test(piece.what());
    if (clash || missing) {
      telling.forEach(it -> shown(it).remove(id));
      if (clash) {
        wait(path, Optional.of(from.get(0)), "another piece of evidence has this name");
      } else {
        waiting.add(
            new MergeResult.Waiting(
                path,
                from.get(0),
                Optional.of(piece.what()),
                "its file is missing",
                Optional.empty()));
      }
      return;
    }
    add(path, from.get(0).value(), from);
  }

  private Set<String> shown(LocatedRecord record) {
    return shown.computeIfAbsent(record, it -> new HashSet<>());
  }

  private void wait(List<String> path, Optional<Side> side, String why) {
    side.ifPresent(
        it ->
            waiting.add(
                new MergeResult.Waiting(path, it, Optional.empty(), why, side(mine, path))));
  }

  private void traces() {
    Set<Object> known = new HashSet<>();
    mine.record().traces().forEach(it -> known.add(ValueEquality.of(it)));
    List<String> path = List.of(LocatedRecord.TRACES);
    for (LocatedRecord one : theirs) {
      Optional<YamlValue.Items> written =
          one.content().get(LocatedRecord.TRACES).flatMap(YamlValue::asItems);
      for (int i = 0; i < one.record().traces().size(); i++) {
        PhysicalTrace trace = one.record().traces().get(i);
        List<String> place = List.of(LocatedRecord.TRACES, "" + i);
        Side side = new Side(one.name(), one.at(place), written.orElseThrow().all().get(i));
        if (known.contains(ValueEquality.of(trace))) {
          same++;
        } else if (!shown(one).containsAll(trace.evidence())) {
          wait(place, Optional.of(side), "what it cites is not taken yet");
        } else {
          known.add(ValueEquality.of(trace));
          steps.add(MergeResult.Step.more(path, List.of(side.value()), side.value(), side));
        }
      }
    }
  }

  private void item(String item, List<LocatedRecord> telling) {
    if (telling.isEmpty()) {
      return;
    }
    int before = steps.size();
    PrivacyMarks secrets = new PrivacyMarks(mine, item);
    telling.stream()
        .flatMap(it -> it.observation(item).fields().stream())
        .map(YamlValue.Field::name)
        .distinct()
        .filter(IncomingValue.KEYS::contains)
        .forEach(key -> part(telling, new RecordField(item, key), secrets));
    cited(telling, item, secrets);
    if (steps.size() > before && mine.saysNothingOf(item)) {
      Set<String> helpers =
          steps.subList(before, steps.size()).stream()
              .flatMap(step -> step.from().stream())
              .map(Side::from)
              .collect(Collectors.toSet());
      List<LocatedRecord> helped =
          telling.stream().filter(it -> helpers.contains(it.name())).toList();
      Observer witness = new Observer(mine, judgedIsTaken);
      IncomingValue.WITNESSED.forEach(
          key -> witness(witness, helped, new RecordField(item, key), secrets));
    }
    secrets
        .missing()
        .ifPresent(
            value ->
                add(
                    List.of(LocatedRecord.OBSERVATIONS, item, LocatedRecord.PRIVATE),
                    value,
                    secrets.from()));
  }

  private void part(List<LocatedRecord> telling, RecordField part, PrivacyMarks secrets) {
    List<IncomingValue> offers =
        telling.stream().flatMap(it -> IncomingValue.of(it, part).stream()).toList();
    if (offers.isEmpty()) {
      return;
    }
    Optional<IncomingValue> own = IncomingValue.of(mine, part);
    List<IncomingValue> other =
        offers.stream().filter(it -> own.filter(it::saysWhat).isEmpty()).toList();
    List<IncomingValue> different = IncomingValue.different(other);
    boolean settled = offers.stream().anyMatch(it -> taken.names(it) && !other.contains(it));
    if (different.isEmpty() || settled) {
      same++;
      return;
    }
    Optional<IncomingValue> chosen =
        own.isEmpty() && different.size() == 1
            ? Optional.of(different.get(0))
            : taken.of(part, sides(different, other, part)).flatMap(side -> find(other, side));
    if (chosen.isEmpty()) {
      conflicts.add(new MergeResult.Conflict(part, own.map(IncomingValue::side), sides(other)));
      return;
    }
    IncomingValue offer = chosen.get();
    List<IncomingValue> agreeing = other.stream().filter(offer::saysWhat).toList();
    List<String> path = part.path();
    Optional<Side> before = own.isEmpty() ? Optional.empty() : side(mine, path);
    steps.add(MergeResult.Step.put(path, offer.value(), before, sides(agreeing)));
    agreeing.forEach(it -> secrets.keep(it.from(), it.part().key()));
  }

  /** Returns one of each where nobody has to be named, all of them where somebody is. */
  private List<Side> sides(
      List<IncomingValue> different, List<IncomingValue> all, RecordField part) {
    boolean named = taken.parts().getOrDefault(part, Optional.empty()).isPresent();
    return sides(named ? all : different);
  }

  private static Optional<IncomingValue> find(List<IncomingValue> offers, Side side) {
    return offers.stream().filter(it -> it.side().equals(side)).findFirst();
  }

  private static List<Side> sides(List<IncomingValue> offers) {
    return offers.stream().map(IncomingValue::side).toList();
  }

  private void cited(List<LocatedRecord> telling, String item, PrivacyMarks secrets) {
    RecordField part = new RecordField(item, LocatedRecord.EVIDENCE);
    Set<String> all =
        new HashSet<>(
            IncomingValue.observation(mine, item).map(it -> it.evidence()).orElse(List.of()));
    for (LocatedRecord one : telling) {
      List<String> cited = IncomingValue.observation(one, item).orElseThrow().evidence();
      List<YamlValue> added = new ArrayList<>();
      for (String id : cited) {
        if (!shown(one).contains(id)) {
          wait(
              part.path(),
              Optional.of(new Side(one.name(), one.at(part.path()), YamlValue.text(id))),
              "what it cites is not taken yet");
        } else if (all.add(id)) {
          added.add(YamlValue.text(id));
        } else {
          same++;
        }
      }
      if (!added.isEmpty()) {
        Side side = new Side(one.name(), one.at(part.path()), new YamlValue.Items(added));
        steps.add(MergeResult.Step.more(part.path(), added, side.value(), side));
        secrets.keep(one, LocatedRecord.EVIDENCE);
      }
    }
  }

  /** Adds who looked, and when, to an observation that is new, if all who helped agree. */
  private void witness(
      Observer witness, List<LocatedRecord> helped, RecordField part, PrivacyMarks secrets) {
    List<Side> told = helped.stream().flatMap(it -> witness.told(it, part).stream()).toList();
    if (told.isEmpty()) {
      return;
    }
    List<YamlValue> values = told.stream().map(Side::value).distinct().toList();
    boolean agreed = values.size() == 1 && told.size() == helped.size();
    Optional<Side> chosen = agreed ? Optional.of(told.get(0)) : taken.of(part, told);
    if (chosen.isEmpty()) {
      conflicts.add(new MergeResult.Conflict(part, Optional.empty(), told));
      return;
    }
    List<Side> agreeing =
        told.stream().filter(it -> it.value().equals(chosen.get().value())).toList();
    add(part.path(), chosen.get().value(), agreeing);
    helped.forEach(it -> secrets.keep(it, part.key()));
  }
}
