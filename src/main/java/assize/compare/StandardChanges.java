package assize.compare;

import assize.aspect.Aspect;
import assize.diagnostic.AcceptedWarning;
import assize.evidence.Grade;
import assize.ruleset.Award;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** What changed of the standard as a whole: its title page, its scoring, its awards. */
final class StandardChanges {
  private static final List<Property<RuleSet>> TITLE =
      List.of(
          Property.altering(RuleSet.ID, "name in records", Property.words()),
          Property.wording(RuleSet.NAME, "name"),
          Property.wording(RuleSet.EDITION, "edition"),
          Property.wording(
              RuleSet.ISSUED, "issued", it -> it.map(date -> new ChangedValue.Words(date.text()))),
          Property.note(RuleSet.MAKER, "maker"),
          Property.note(RuleSet.PURPOSE, "purpose"),
          Property.note(RuleSet.NOTES, "notes"),
          Property.wording(
              RuleSet.ACCEPTED_WARNINGS, "warnings let stand", StandardChanges::accepted));

  private static final List<Property<Scale>> SCORE =
      List.of(
          Property.altering(
              Scale.METHOD, "method", it -> Optional.of(new ChangedValue.Words(it.word()))),
          Property.altering(Scale.OUT_OF, "full score", Property::points));
  private static final Property<Scale> NOT_SHOWN =
      Property.altering(Scale.NOT_ASSESSED, "credit of what is not assessed", Property::share);
  private static final Property<Scale> SETTLED_AT =
      Property.altering(
          Scale.SETTLED_AT, "belief that settles a matter", it -> Property.points((long) it));
  private static final Property<Scale> TOO_EARLY =
      Property.altering(
          Scale.EARLY_PART_CREDIT, "credit of a part made too early", Property::share);

  private static final List<Property<Award>> AWARD =
      List.of(
          Property.wording(Award.NAME, "name"),
          Property.altering(Award.MIN_SCORE, "from points", Property::points),
          Property.altering(
              Award.MIN_AREA_SHARE,
              "least share of every area",
              it -> it.map(ChangedValue.Share::new)),
          Property.altering(Award.MAX_ITEM_LOSS, "most that one item may lose", Property::points));

  private final RuleSet before;
  private final RuleSet after;
  private final AffectedItems bearing;

  StandardChanges(RuleSet before, RuleSet after, AffectedItems bearing) {
    this.before = before;
    this.after = after;
    this.bearing = bearing;
  }

  void into(List<Change> changes) {
    ChangeCollector.Of title =
        new ChangeCollector(changes, RuleSetPart.STANDARD).of("", after.name(), Set.of());
    Property.compare(TITLE, title, before, after);
    scale(changes);
    new ChangeCollector(changes, RuleSetPart.AWARD)
        .each(
            byId(before.awards()),
            byId(after.awards()),
            id -> id,
            Award::name,
            id -> Set.of(),
            (of, both) -> Property.compare(AWARD, of, both.before(), both.after()));
  }

  private static Optional<ChangedValue> accepted(List<AcceptedWarning> accepted) {
    return accepted.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ChangedValue.Words(
                accepted.stream()
                    .map(
                        one ->
                            one.warning().id()
                                + (one.of().isEmpty() ? "" : " of " + String.join(", ", one.of()))
                                + ": "
                                + one.reason())
                    .collect(Collectors.joining("; "))));
  }

  private static Map<String, Award> byId(List<Award> awards) {
    Map<String, Award> byId = new LinkedHashMap<>();
    awards.forEach(award -> byId.put(award.id(), award));
    return byId;
  }

  private void scale(List<Change> changes) {
    ChangeCollector differences = new ChangeCollector(changes, RuleSetPart.SCORING);
    Scale old = before.scale();
    Scale now = after.scale();
    Property.compare(SCORE, of(differences, Set.of()), old, now);
    NOT_SHOWN.compare(
        of(new ChangeCollector(changes, RuleSetPart.SCORING, Effect.NOT_ASSESSED), bearing.all()),
        old,
        now);
    SETTLED_AT.compare(of(differences, bearing.weighed()), old, now);
    for (Grade grade : Grade.values()) {
      Property.<Scale, Map<Grade, Integer>>altering(
              Scale.GRADES, "weight of grade " + grade, it -> weight(it, grade))
          .compare(of(differences, bearing.grade(grade)), old, now);
    }
    TOO_EARLY.compare(of(differences, bearing.graded(Aspect.DATE_CODE)), old, now);
    ChangeCollector departures =
        new ChangeCollector(changes, RuleSetPart.SCORING, Effect.DEPARTURES);
    Set<String> reasons = new TreeSet<>(old.allowances().keySet());
    reasons.addAll(now.allowances().keySet());
    for (String reason : reasons) {
      Property.<Scale, Map<String, BigFraction>>altering(
              Scale.ALLOWANCES,
              "what a departure keeps for the reason “" + reason + "”",
              it -> Optional.ofNullable(it.get(reason)).map(ChangedValue.Share::new))
          .compare(of(departures, bearing.all()), old, now);
    }
  }

  private static ChangeCollector.Of of(ChangeCollector differences, Set<String> items) {
    return differences.of("", "Scoring", items);
  }

  private static Optional<ChangedValue> weight(Map<Grade, Integer> grades, Grade grade) {
    return Optional.ofNullable(grades.get(grade)).map(it -> new ChangedValue.Points(it));
  }
}
