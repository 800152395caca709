package assize.editions;

import assize.aspect.Aspect;
import assize.evidence.Grade;
import assize.ruleset.Award;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What changed of the standard as a whole: its title page, its scoring, its awards. */
final class StandardChanges {
  static final String NOT_SHOWN = "credit of what is not shown";
  static final String KEEPS = "what a departure keeps for the reason";

  private final RuleSet before;
  private final RuleSet after;
  private final Bearing bearing;

  StandardChanges(RuleSet before, RuleSet after, Bearing bearing) {
    this.before = before;
    this.after = after;
    this.bearing = bearing;
  }

  void into(List<Change> changes) {
    Differences.Of title = new Differences(changes, Part.STANDARD).of("", after.name(), Set.of());
    title.words("name in records", true, before.id(), after.id());
    title.words("name", false, before.name(), after.name());
    title.words("edition", false, before.edition(), after.edition());
    title.words(
        "issued", false, before.issued().map(it -> it.text()), after.issued().map(it -> it.text()));
    title.words("maker", false, before.maker(), after.maker());
    title.words("purpose", false, before.purpose(), after.purpose());
    title.words("notes", false, before.notes(), after.notes());
    title.words("doubts let stand", false, accepted(before), accepted(after));
    scale(changes);
    new Differences(changes, Part.AWARD)
        .each(
            byId(before.awards()),
            byId(after.awards()),
            id -> id,
            Award::name,
            id -> Set.of(),
            (of, both) -> award(of, both.before(), both.after()));
  }

  private static Optional<String> accepted(RuleSet rules) {
    return rules.accepted().isEmpty()
        ? Optional.empty()
        : Optional.of(
            rules.accepted().stream()
                .map(
                    one ->
                        one.doubt().id()
                            + (one.of().isEmpty() ? "" : " of " + String.join(", ", one.of()))
                            + ": "
                            + one.because())
                .collect(Collectors.joining("; ")));
  }

  private static Map<String, Award> byId(List<Award> awards) {
    Map<String, Award> byId = new LinkedHashMap<>();
    awards.forEach(award -> byId.put(award.id(), award));
    return byId;
  }

  private static void award(Differences.Of of, Award before, Award after) {
    of.words("name", false, before.name(), after.name());
    of.check("from points", true, points(before.points()), points(after.points()));
    of.check(
        "least share of every area",
        true,
        before.noAreaUnder().map(Value.Share::new),
        after.noAreaUnder().map(Value.Share::new));
    of.check(
        "most that one item may lose",
        true,
        points(before.noItemOver()),
        points(after.noItemOver()));
  }

  private void scale(List<Change> changes) {
    Differences differences = new Differences(changes, Part.SCORING);
    Scale old = before.scale();
    Scale now = after.scale();
    Differences.Of score = differences.of("", "Scoring", Set.of());
    score.words("method", true, old.method().word(), now.method().word());
    score.check("full score", true, points(old.outOf()), points(now.outOf()));
    differences
        .of("", "Scoring", bearing.all())
        .check(NOT_SHOWN, true, share(old.notShown()), share(now.notShown()));
    differences
        .of("", "Scoring", bearing.weighed())
        .check(
            "belief that settles a matter", true, points(old.settledAt()), points(now.settledAt()));
    for (Grade grade : Arrays.asList(Grade.values())) {
      differences
          .of("", "Scoring", bearing.grade(grade))
          .check("weight of grade " + grade, true, weight(old, grade), weight(now, grade));
    }
    differences
        .of("", "Scoring", bearing.graded(Aspect.DATE_CODE))
        .check(
            "credit of a part made too early", true, share(old.tooEarly()), share(now.tooEarly()));
    Set<String> reasons = new TreeSet<>(old.allow().keySet());
    reasons.addAll(now.allow().keySet());
    for (String reason : reasons) {
      differences
          .of("", "Scoring", bearing.all())
          .check(
              KEEPS + " “" + reason + "”",
              true,
              Optional.ofNullable(old.allow().get(reason)).map(Value.Share::new),
              Optional.ofNullable(now.allow().get(reason)).map(Value.Share::new));
    }
  }

  private static Optional<Value> weight(Scale scale, Grade grade) {
    return Optional.ofNullable(scale.grades().get(grade)).map(it -> new Value.Points(it));
  }

  static Optional<Value> points(long thousandths) {
    return Optional.of(new Value.Points(thousandths));
  }

  static Optional<Value> points(OptionalLong thousandths) {
    return thousandths.isPresent() ? points(thousandths.getAsLong()) : Optional.empty();
  }

  private static Optional<Value> share(org.apache.commons.numbers.fraction.BigFraction share) {
    return Optional.of(new Value.Share(share));
  }
}
