package assize.merge;

import assize.record.Evidence;
import assize.record.Trace;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.yaml.Content;
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
  private final WrittenRecord mine;
  private final List<WrittenRecord> theirs;
  private final Taken taken;
  private final Predicate<String> hasFile;
  private final List<Merge.Step> steps = new ArrayList<>();
  private final List<Merge.Conflict> conflicts = new ArrayList<>();
  private final List<Merge.Waiting> waiting = new ArrayList<>();

  /** Whose evidence was taken: each friend by who it is, not by all that the record says. */
  private final Map<WrittenRecord, Set<String>> shown = new IdentityHashMap<>();

  private boolean judgedIsTaken;
  private int same;

  private Merger(
      WrittenRecord mine, List<WrittenRecord> theirs, Taken taken, Predicate<String> hasFile) {
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
  public static Merge merge(
      RuleSet rules,
      WrittenRecord mine,
      List<WrittenRecord> theirs,
      Taken taken,
      Predicate<String> hasFile) {
    List<WrittenRecord> tidy = theirs.stream().map(WrittenRecord::tidy).toList();
    Merger merger = new Merger(mine, tidy, taken, hasFile);
    merger.judged();
    merger.privateWords();
    merger.evidence();
    merger.traces();
    Map<String, List<WrittenRecord>> telling = merger.telling(it -> it.observations().keySet());
    rules.items().map(Item::id).forEach(it -> merger.item(it, telling.getOrDefault(it, List.of())));
    List<Merge.Aside> asides = theirs.stream().flatMap(it -> Asides.of(mine, it).stream()).toList();
    return new Merge(merger.steps, merger.conflicts, merger.waiting, asides, merger.same);
  }

  /** Takes over who judged, where the record has nothing yet that somebody else has looked at. */
  private void judged() {
    List<String> path = List.of(WrittenRecord.JUDGED);
    List<Side> told = theirs.stream().flatMap(it -> side(it, path).stream()).toList();
    boolean one = told.stream().map(Side::value).distinct().count() == 1;
    if (one
        && told.size() == theirs.size()
        && mine.record().observations().keySet().stream().allMatch(mine::saysNothingOf)
        && mine.record().judged().isEmpty()) {
      judgedIsTaken = true;
      add(path, told.get(0).value(), told);
      keepJudged();
    }
  }

  /** Keeps from others who judged, where a friend keeps it from them. */
  private void keepJudged() {
    List<Side> from =
        theirs.stream()
            .filter(it -> it.record().unshared().contains(WrittenRecord.JUDGED))
            .flatMap(it -> side(it, List.of(WrittenRecord.PRIVATE)).stream())
            .toList();
    if (!from.isEmpty() && !mine.record().unshared().contains(WrittenRecord.JUDGED)) {
      boolean none = mine.record().unshared().isEmpty();
      goOn(WrittenRecord.PRIVATE, none, List.of(WrittenRecord.JUDGED), from);
    }
  }

  /** Keeps from others what friends keep from them, since it may stand in what is taken. */
  private void privateWords() {
    Set<String> known = new HashSet<>(mine.record().unsharedWords());
    List<String> added = new ArrayList<>();
    List<Side> from = new ArrayList<>();
    for (WrittenRecord one : theirs) {
      List<String> more =
          one.record().unsharedWords().stream().filter(known::add).distinct().toList();
      if (!more.isEmpty()) {
        added.addAll(more);
        side(one, List.of(WrittenRecord.PRIVATE_WORDS)).ifPresent(from::add);
      }
    }
    if (!added.isEmpty()) {
      goOn(WrittenRecord.PRIVATE_WORDS, false, added, from);
    }
  }

  /** Adds words to one word or a list of them. */
  private void goOn(String name, boolean anew, List<String> words, List<Side> from) {
    Optional<Content> own = anew ? Optional.empty() : mine.content().get(name);
    List<Content> added = words.stream().map(Content::text).toList();
    List<Content> all =
        new ArrayList<>(
            own.map(it -> it.asItems().map(Content.Items::all).orElse(List.of(it)))
                .orElse(List.of()));
    all.addAll(added);
    steps.add(
        new Merge.Step(
            List.of(name),
            new Content.Items(all),
            false,
            new Content.Items(added),
            Optional.empty(),
            from));
  }

  private static Optional<Side> side(WrittenRecord record, List<String> path) {
    return record.content().at(path).map(it -> new Side(record.name(), record.at(path), it));
  }

  private void add(List<String> path, Content value, List<Side> from) {
    steps.add(Merge.Step.put(path, value, Optional.empty(), from));
  }

  private void evidence() {
    telling(it -> it.evidence().keySet()).forEach(this::evidence);
  }

  /** Returns who says something under each name, names and friends in the order given. */
  private Map<String, List<WrittenRecord>> telling(Function<VehicleRecord, Set<String>> names) {
    Map<String, List<WrittenRecord>> telling = new LinkedHashMap<>();
    for (WrittenRecord one : theirs) {
      names
          .apply(one.record())
          .forEach(name -> telling.computeIfAbsent(name, it -> new ArrayList<>()).add(one));
    }
    return telling;
  }

  private void evidence(String id, List<WrittenRecord> telling) {
    List<String> path = List.of(WrittenRecord.EVIDENCE, id);
    Optional<Evidence> own = Optional.ofNullable(mine.record().evidence().get(id));
    Optional<Evidence> first = own;
    List<Side> from = new ArrayList<>();
    boolean clash = false;
    for (WrittenRecord one : telling) {
      Optional<Evidence> told = Optional.ofNullable(one.record().evidence().get(id));
      first = first.or(() -> told);
      boolean isSame = Evidence.TABLE.alike(first.orElseThrow(), told.orElseThrow());
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
    Evidence piece = first.orElseThrow();
    boolean missing = piece.kind() != Evidence.Kind.MEASUREMENT && !hasFile.test(piece.what());
    if (clash || missing) {
      telling.forEach(it -> shown(it).remove(id));
      if (clash) {
        wait(path, Optional.of(from.get(0)), "another piece of evidence has this name");
      } else {
        waiting.add(
            new Merge.Waiting(
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

  private Set<String> shown(WrittenRecord record) {
    return shown.computeIfAbsent(record, it -> new HashSet<>());
  }

  private void wait(List<String> path, Optional<Side> side, String why) {
    side.ifPresent(
        it -> waiting.add(new Merge.Waiting(path, it, Optional.empty(), why, side(mine, path))));
  }

  private void traces() {
    Set<Object> known = new HashSet<>();
    mine.record().traces().forEach(it -> known.add(Sameness.of(it)));
    List<String> path = List.of(WrittenRecord.TRACES);
    for (WrittenRecord one : theirs) {
      Optional<Content.Items> written =
          one.content().get(WrittenRecord.TRACES).flatMap(Content::asItems);
      for (int i = 0; i < one.record().traces().size(); i++) {
        Trace trace = one.record().traces().get(i);
        List<String> place = List.of(WrittenRecord.TRACES, "" + i);
        Side side = new Side(one.name(), one.at(place), written.orElseThrow().all().get(i));
        if (known.contains(Sameness.of(trace))) {
          same++;
        } else if (!shown(one).containsAll(trace.evidence())) {
          wait(place, Optional.of(side), "what it cites is not taken yet");
        } else {
          known.add(Sameness.of(trace));
          steps.add(Merge.Step.more(path, List.of(side.value()), side.value(), side));
        }
      }
    }
  }

  private void item(String item, List<WrittenRecord> telling) {
    if (telling.isEmpty()) {
      return;
    }
    int before = steps.size();
    Secrets secrets = new Secrets(mine, item);
    telling.stream()
        .flatMap(it -> it.observation(item).fields().stream())
        .map(Content.Field::name)
        .distinct()
        .filter(Offer.KEYS::contains)
        .forEach(key -> part(telling, new Part(item, key), secrets));
    cited(telling, item, secrets);
    if (steps.size() > before && mine.saysNothingOf(item)) {
      Set<String> helpers =
          steps.subList(before, steps.size()).stream()
              .flatMap(step -> step.from().stream())
              .map(Side::from)
              .collect(Collectors.toSet());
      List<WrittenRecord> helped =
          telling.stream().filter(it -> helpers.contains(it.name())).toList();
      Witness witness = new Witness(mine, judgedIsTaken);
      Offer.WITNESSED.forEach(key -> witness(witness, helped, new Part(item, key), secrets));
    }
    secrets
        .missing()
        .ifPresent(
            value ->
                add(
                    List.of(WrittenRecord.OBSERVATIONS, item, WrittenRecord.PRIVATE),
                    value,
                    secrets.from()));
  }

  private void part(List<WrittenRecord> telling, Part part, Secrets secrets) {
    List<Offer> offers = telling.stream().flatMap(it -> Offer.of(it, part).stream()).toList();
    if (offers.isEmpty()) {
      return;
    }
    Optional<Offer> own = Offer.of(mine, part);
    List<Offer> other = offers.stream().filter(it -> own.filter(it::saysWhat).isEmpty()).toList();
    List<Offer> different = Offer.different(other);
    boolean settled = offers.stream().anyMatch(it -> taken.names(it) && !other.contains(it));
    if (different.isEmpty() || settled) {
      same++;
      return;
    }
    Optional<Offer> chosen =
        own.isEmpty() && different.size() == 1
            ? Optional.of(different.get(0))
            : taken
                .of(part, sides(different, other, part))
                .flatMap(side -> find(other, side))
                .filter(it -> canReplace(own, it));
    if (chosen.isEmpty()) {
      conflicts.add(new Merge.Conflict(part, own.map(Offer::side), sides(other)));
      return;
    }
    Offer offer = chosen.get();
    List<Offer> agreeing = other.stream().filter(offer::saysWhat).toList();
    offer
        .fields()
        .forEach(
            (key, value) -> {
              List<String> path = new Part(part.item(), key).path();
              Optional<Side> before = own.isEmpty() ? Optional.empty() : side(mine, path);
              steps.add(Merge.Step.put(path, value, before, sides(agreeing)));
            });
    agreeing.forEach(it -> secrets.keep(it.from(), it.part().key()));
  }

  /** Returns one of each where nobody has to be named, all of them where somebody is. */
  private List<Side> sides(List<Offer> different, List<Offer> all, Part part) {
    boolean named = taken.parts().getOrDefault(part, Optional.empty()).isPresent();
    return sides(named ? all : different);
  }

  private static Optional<Offer> find(List<Offer> offers, Side side) {
    return offers.stream().filter(it -> it.side().equals(side)).findFirst();
  }

  /** Says whether nothing of the old is left that only made sense with it. */
  private boolean canReplace(Optional<Offer> own, Offer by) {
    return own.isEmpty() || by.fields().keySet().containsAll(own.get().fields().keySet());
  }

  private static List<Side> sides(List<Offer> offers) {
    return offers.stream().map(Offer::side).toList();
  }

  private void cited(List<WrittenRecord> telling, String item, Secrets secrets) {
    Part part = new Part(item, WrittenRecord.EVIDENCE);
    Set<String> all =
        new HashSet<>(Offer.observation(mine, item).map(it -> it.evidence()).orElse(List.of()));
    for (WrittenRecord one : telling) {
      List<String> cited = Offer.observation(one, item).orElseThrow().evidence();
      List<Content> added = new ArrayList<>();
      for (String id : cited) {
        if (!shown(one).contains(id)) {
          wait(
              part.path(),
              Optional.of(new Side(one.name(), one.at(part.path()), Content.text(id))),
              "what it cites is not taken yet");
        } else if (all.add(id)) {
          added.add(Content.text(id));
        } else {
          same++;
        }
      }
      if (!added.isEmpty()) {
        Side side = new Side(one.name(), one.at(part.path()), new Content.Items(added));
        steps.add(Merge.Step.more(part.path(), added, side.value(), side));
        secrets.keep(one, WrittenRecord.EVIDENCE);
      }
    }
  }

  /** Adds who looked, and when, to an observation that is new, if all who helped agree. */
  private void witness(Witness witness, List<WrittenRecord> helped, Part part, Secrets secrets) {
    List<Side> told = helped.stream().flatMap(it -> witness.told(it, part).stream()).toList();
    if (told.isEmpty()) {
      return;
    }
    List<Content> values = told.stream().map(Side::value).distinct().toList();
    boolean agreed = values.size() == 1 && told.size() == helped.size();
    Optional<Side> chosen = agreed ? Optional.of(told.get(0)) : taken.of(part, told);
    if (chosen.isEmpty()) {
      conflicts.add(new Merge.Conflict(part, Optional.empty(), told));
      return;
    }
    List<Side> agreeing =
        told.stream().filter(it -> it.value().equals(chosen.get().value())).toList();
    add(part.path(), chosen.get().value(), agreeing);
    helped.forEach(it -> secrets.keep(it, part.key()));
  }
}
