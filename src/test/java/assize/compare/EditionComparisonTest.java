package assize.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import assize.aspect.Aspect;
import assize.aspect.Verdict;
import assize.date.DateRange;
import assize.judge.Judge;
import assize.ruleset.RuleSet;
import assize.timeline.ExpectationShift;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The two editions of the yard's standard, compared by hand. */
class EditionComparisonTest {
  private final RuleSet older = EditionFixture.older();
  private final RuleSet newer = EditionFixture.newer();
  private final EditionComparison editions = EditionComparison.between(older, newer);

  private static DateRange days(String first, String last) {
    return DateRange.of(LocalDate.parse(first), LocalDate.parse(last));
  }

  @Test
  void tellsWordingApartFromWhatCanAlterAVerdict() {
    assertThat(editions.changes())
        .filteredOn(change -> change.part() != RuleSetPart.ITEM)
        .extracting(Change::part, Change::id, Change::what, Change::alters)
        .containsExactly(
            tuple(RuleSetPart.STANDARD, "", "edition", false),
            tuple(RuleSetPart.STANDARD, "", "issued", false),
            tuple(RuleSetPart.STANDARD, "", "notes", false),
            tuple(RuleSetPart.STANDARD, "", "warnings let stand", false),
            tuple(RuleSetPart.SCORING, "", "credit of what is not assessed", true),
            tuple(RuleSetPart.AWARD, "gold", "from points", true),
            tuple(RuleSetPart.NUMBERS, "chassis", "series X1-…: numbers", true),
            tuple(RuleSetPart.SOURCE, "survivor", "grade", true),
            tuple(RuleSetPart.COLOR, "green", "tolerance", true),
            // the score is a sum, so that what an area's items add up to alters nothing
            tuple(RuleSetPart.AREA, "front", "points", false),
            tuple(RuleSetPart.AREA, "bed", "points", false));
    assertThat(editions.changes())
        .filteredOn(change -> change.part() == RuleSetPart.ITEM)
        .extracting(Change::id, Change::kind, Change::what, Change::alters)
        .containsExactly(
            tuple("bracket", Change.Kind.CHANGED, "what to look at", false),
            tuple("bracket", Change.Kind.CHANGED, "what is said of the part number", true),
            tuple("bracket", Change.Kind.CHANGED, "what is said of the part number", true),
            tuple("bracket", Change.Kind.CHANGED, "what is said of the part number", true),
            tuple("horn-button", Change.Kind.CHANGED, "points", true),
            tuple("horn-button", Change.Kind.CHANGED, "what is said of the finish", true),
            tuple("horn-button", Change.Kind.CHANGED, "points of the origin", true),
            tuple("horn-button", Change.Kind.CHANGED, "what is said of the origin", true),
            tuple("heater-tap", Change.Kind.ADDED, "", true),
            tuple("stake", Change.Kind.ADDED, "", true),
            tuple("hoop", Change.Kind.CHANGED, "title", false),
            tuple("side-stake", Change.Kind.REMOVED, "", true));
  }

  @Test
  void saysWhichItemsAChangeBearsOn() {
    assertThat(editions.changes())
        .filteredOn(change -> change.part() == RuleSetPart.SOURCE)
        .flatExtracting(Change::items)
        .containsExactly("bed-color");
    assertThat(editions.changes())
        .filteredOn(change -> change.part() == RuleSetPart.NUMBERS)
        .flatExtracting(Change::items)
        // by build date, and by the window of a date code
        .containsExactly("bracket", "hoop");
  }

  @Test
  void proposesARenamingAndNeverTakesItForGranted() {
    assertThat(editions.renamings())
        .extracting(RenameCandidate::part, RenameCandidate::before, RenameCandidate::after)
        .containsExactly(tuple(RuleSetPart.ITEM, "side-stake", "stake"));
    assertThat(editions.changes())
        .filteredOn(change -> change.id().equals("stake") || change.id().equals("side-stake"))
        .extracting(Change::kind)
        .containsExactlyInAnyOrder(Change.Kind.ADDED, Change.Kind.REMOVED);
  }

  @Test
  void likenessIsThatOfNeighboringLetters() {
    // "night" and "nacht" share one of four pairs each: Dice's coefficient, from memory
    assertThat(RenameCandidate.alike("night", "nacht")).isEqualTo(0.25);
    assertThat(RenameCandidate.alike("same", "same")).isEqualTo(1);
    assertThat(RenameCandidate.alike("ab", "cd")).isZero();
  }

  @Test
  void saysFromWhenOnSomethingElseIsExpected() {
    ChangedExpectation bracket = editions.shifted().get(0);
    assertThat(bracket.item().id()).isEqualTo("bracket");
    assertThat(bracket.shifts()).hasSize(1);
    List<ExpectationShift.Days> shift = bracket.shifts().get(0).days();
    assertThat(shift)
        .extracting(ExpectationShift.Days::days)
        .containsExactly(days("1934-06-01", "1934-08-31"), days("1934-09-01", "1935-12-31"));
    assertThat(shift.get(0).after().orElseThrow().positions().get(0).accepts())
        .extracting(value -> value.key())
        .containsExactly("Y-10", "Y-20");
    assertThat(shift.get(1).before().orElseThrow().positions().get(0).accepts())
        .extracting(value -> value.key())
        .containsExactly("Y-10");
    assertThat(editions.shifted())
        .extracting(one -> one.item().id(), ChangedExpectation::aspect)
        .containsExactly(
            tuple("bracket", Aspect.PART_NUMBER),
            tuple("horn-button", Aspect.FINISH),
            tuple("horn-button", Aspect.ORIGIN));
  }

  private VehicleComparison truck() {
    return VehicleComparison.of(
        editions,
        Judge.judge(
            older, MigratedRecord.over(EditionFixture.truck(), older).vehicle(), Optional.empty()),
        Judge.judge(
            newer, MigratedRecord.over(EditionFixture.truck(), newer).vehicle(), Optional.empty()));
  }

  @Test
  void aVehicleIsJudgedByBothEditions() {
    VehicleComparison truck = truck();
    assertThat(truck.items())
        .extracting(VehicleComparison.ItemDifference::id)
        .containsExactly("bracket", "horn-button", "heater-tap", "stake", "hoop", "side-stake");
    VehicleComparison.ItemDifference bracket = truck.items().get(0);
    // July 1934: only Y-10 was right, now Y-20 is too
    assertThat(bracket.before().orElseThrow().verdict()).isEqualTo(Verdict.INCORRECT);
    assertThat(bracket.after().orElseThrow().verdict()).isEqualTo(Verdict.CORRECT);
    assertThat(bracket.because()).extracting(Change::id).containsOnly("bracket").hasSize(3);
    assertThat(truck.items())
        .filteredOn(VehicleComparison.ItemDifference::newlyApplies)
        .extracting(VehicleComparison.ItemDifference::id)
        .containsExactly("heater-tap", "stake");
    assertThat(truck.items())
        .filteredOn(VehicleComparison.ItemDifference::noLongerApplies)
        .extracting(VehicleComparison.ItemDifference::id)
        .containsExactly("side-stake");
  }

  /** Chromium plate on the horn button: nothing of 2, then 1/4 of 2 and 1/4 of 1 not shown. */
  @Test
  void whatIsNotShownIsNamedAsACauseOnlyWhereItIs() {
    VehicleComparison truck = truck();
    assertThat(truck.items().get(1).after().orElseThrow().earned().likely()).isEqualTo(750);
    assertThat(truck.items().get(1).because())
        .extracting(Change::part)
        .contains(RuleSetPart.SCORING, RuleSetPart.ITEM)
        .doesNotContain(RuleSetPart.NUMBERS);
    assertThat(truck.items().get(0).because())
        .extracting(Change::part)
        .doesNotContain(RuleSetPart.SCORING);
  }

  @Test
  void everyItemThatFaresDifferentlyHasAChangeThatBearsOnIt() {
    assertThat(truck().items()).allSatisfy(one -> assertThat(one.because()).isNotEmpty());
  }

  @Test
  void whatAnEditionHasNoPlaceForIsLeftOutAndTold() {
    MigratedRecord carried = MigratedRecord.over(EditionFixture.truck(), older);
    assertThat(carried.left()).containsExactly(new MigratedRecord.DroppedEntry("stake", ""));
    assertThat(carried.vehicle().observations())
        .containsOnlyKeys("bracket", "horn-button", "bed-color");
    assertThat(MigratedRecord.over(EditionFixture.truck(), newer).left()).isEmpty();
  }
}
