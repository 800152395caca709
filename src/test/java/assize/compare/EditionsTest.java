package assize.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import assize.aspect.Aspect;
import assize.aspect.Verdict;
import assize.date.DaySpan;
import assize.judge.Judge;
import assize.ruleset.RuleSet;
import assize.timeline.Shift;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The two editions of the yard's standard, compared by hand. */
class EditionsTest {
  private final RuleSet older = Yard.older();
  private final RuleSet newer = Yard.newer();
  private final Editions editions = Editions.between(older, newer);

  private static DaySpan days(String first, String last) {
    return DaySpan.of(LocalDate.parse(first), LocalDate.parse(last));
  }

  @Test
  void tellsWordingApartFromWhatCanAlterAVerdict() {
    assertThat(editions.changes())
        .filteredOn(change -> change.part() != Part.ITEM)
        .extracting(Change::part, Change::id, Change::what, Change::alters)
        .containsExactly(
            tuple(Part.STANDARD, "", "edition", false),
            tuple(Part.STANDARD, "", "issued", false),
            tuple(Part.STANDARD, "", "notes", false),
            tuple(Part.STANDARD, "", "doubts let stand", false),
            tuple(Part.SCORING, "", "credit of what is not shown", true),
            tuple(Part.AWARD, "gold", "from points", true),
            tuple(Part.NUMBERS, "chassis", "series X1-…: numbers", true),
            tuple(Part.SOURCE, "survivor", "grade", true),
            tuple(Part.COLOR, "green", "tolerance", true),
            // the score is a sum, so that what an area's items add up to alters nothing
            tuple(Part.AREA, "front", "points", false),
            tuple(Part.AREA, "bed", "points", false));
    assertThat(editions.changes())
        .filteredOn(change -> change.part() == Part.ITEM)
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
        .filteredOn(change -> change.part() == Part.SOURCE)
        .flatExtracting(Change::items)
        .containsExactly("bed-color");
    assertThat(editions.changes())
        .filteredOn(change -> change.part() == Part.NUMBERS)
        .flatExtracting(Change::items)
        // by build date, and by the window of a date code
        .containsExactly("bracket", "hoop");
  }

  @Test
  void proposesARenamingAndNeverTakesItForGranted() {
    assertThat(editions.renamings())
        .extracting(Renaming::part, Renaming::before, Renaming::after)
        .containsExactly(tuple(Part.ITEM, "side-stake", "stake"));
    assertThat(editions.changes())
        .filteredOn(change -> change.id().equals("stake") || change.id().equals("side-stake"))
        .extracting(Change::kind)
        .containsExactlyInAnyOrder(Change.Kind.ADDED, Change.Kind.REMOVED);
  }

  @Test
  void likenessIsThatOfNeighboringLetters() {
    // "night" and "nacht" share one of four pairs each: Dice's coefficient, from memory
    assertThat(Renaming.alike("night", "nacht")).isEqualTo(0.25);
    assertThat(Renaming.alike("same", "same")).isEqualTo(1);
    assertThat(Renaming.alike("ab", "cd")).isZero();
  }

  @Test
  void saysFromWhenOnSomethingElseIsExpected() {
    Shifted bracket = editions.shifted().get(0);
    assertThat(bracket.item().id()).isEqualTo("bracket");
    assertThat(bracket.shifts()).hasSize(1);
    List<Shift.Days> shift = bracket.shifts().get(0).days();
    assertThat(shift)
        .extracting(Shift.Days::days)
        .containsExactly(days("1934-06-01", "1934-08-31"), days("1934-09-01", "1935-12-31"));
    assertThat(shift.get(0).after().orElseThrow().positions().get(0).accepts())
        .extracting(value -> value.key())
        .containsExactly("Y-10", "Y-20");
    assertThat(shift.get(1).before().orElseThrow().positions().get(0).accepts())
        .extracting(value -> value.key())
        .containsExactly("Y-10");
    assertThat(editions.shifted())
        .extracting(one -> one.item().id(), Shifted::aspect)
        .containsExactly(
            tuple("bracket", Aspect.PART_NUMBER),
            tuple("horn-button", Aspect.FINISH),
            tuple("horn-button", Aspect.ORIGIN));
  }

  private VehicleDifference truck() {
    return VehicleDifference.of(
        editions,
        Judge.judge(older, Carried.over(Yard.truck(), older).vehicle(), Optional.empty()),
        Judge.judge(newer, Carried.over(Yard.truck(), newer).vehicle(), Optional.empty()));
  }

  @Test
  void aVehicleIsJudgedByBothEditions() {
    VehicleDifference truck = truck();
    assertThat(truck.items())
        .extracting(VehicleDifference.ItemDifference::id)
        .containsExactly("bracket", "horn-button", "heater-tap", "stake", "hoop", "side-stake");
    VehicleDifference.ItemDifference bracket = truck.items().get(0);
    // July 1934: only Y-10 was right, now Y-20 is too
    assertThat(bracket.before().orElseThrow().verdict()).isEqualTo(Verdict.DEPARTS);
    assertThat(bracket.after().orElseThrow().verdict()).isEqualTo(Verdict.MEETS);
    assertThat(bracket.because()).extracting(Change::id).containsOnly("bracket").hasSize(3);
    assertThat(truck.items())
        .filteredOn(VehicleDifference.ItemDifference::newlyApplies)
        .extracting(VehicleDifference.ItemDifference::id)
        .containsExactly("heater-tap", "stake");
    assertThat(truck.items())
        .filteredOn(VehicleDifference.ItemDifference::noLongerApplies)
        .extracting(VehicleDifference.ItemDifference::id)
        .containsExactly("side-stake");
  }

  /** Chromium plate on the horn button: nothing of 2, then 1/4 of 2 and 1/4 of 1 not shown. */
  @Test
  void whatIsNotShownIsNamedAsACauseOnlyWhereItIs() {
    VehicleDifference truck = truck();
    assertThat(truck.items().get(1).after().orElseThrow().earned().likely()).isEqualTo(750);
    assertThat(truck.items().get(1).because())
        .extracting(Change::part)
        .contains(Part.SCORING, Part.ITEM)
        .doesNotContain(Part.NUMBERS);
    assertThat(truck.items().get(0).because())
        .extracting(Change::part)
        .doesNotContain(Part.SCORING);
  }

  @Test
  void everyItemThatFaresDifferentlyHasAChangeThatBearsOnIt() {
    assertThat(truck().items()).allSatisfy(one -> assertThat(one.because()).isNotEmpty());
  }

  @Test
  void whatAnEditionHasNoPlaceForIsLeftOutAndTold() {
    Carried carried = Carried.over(Yard.truck(), older);
    assertThat(carried.left()).containsExactly(new Carried.Left("stake", ""));
    assertThat(carried.vehicle().observations())
        .containsOnlyKeys("bracket", "horn-button", "bed-color");
    assertThat(Carried.over(Yard.truck(), newer).left()).isEmpty();
  }
}
