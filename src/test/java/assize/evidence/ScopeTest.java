package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import assize.date.DateRange;
import assize.date.DateRangeSet;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a condition leaves open for a vehicle, and which of its days matter. */
class ScopeTest {
  private static final DateRange EARLY = year(1932);
  private static final DateRange LATE = year(1935);
  private static final Scope DROPSIDE = new Scope.Models(Set.of("dropside"));
  private static final Scope VAN = new Scope.Models(Set.of("van"));
  private static final Scope HEATER = new Scope.Equipment("heater");

  private static DateRange year(int year) {
    return new DateRange(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
  }

  private static Scope built(DateRange days) {
    return new Scope.Built(DateRangeSet.of(days));
  }

  /** A dropside, built in 1932, of which nobody knows whether it had a heater. */
  private static final Scope.Facts FACTS =
      new Scope.Facts() {
        @Override
        public Ternary isModel(Set<String> models) {
          return models.contains("dropside") ? Ternary.YES : Ternary.NO;
        }

        @Override
        public Ternary isBuilt(DateRangeSet days) {
          return days.spans().contains(EARLY) ? Ternary.YES : Ternary.NO;
        }

        @Override
        public Ternary hasNumber(String table, String from, String to) {
          return Ternary.UNKNOWN;
        }

        @Override
        public Ternary hasEquipment(String equipment) {
          return Ternary.UNKNOWN;
        }

        @Override
        public Ternary isForMarket(Set<String> markets) {
          return Ternary.UNKNOWN;
        }

        @Override
        public Ternary isFromPlant(Set<String> plants) {
          return Ternary.UNKNOWN;
        }
      };

  @Test
  void onlyWhatTheVehicleDoesNotAnswerStaysOpen() {
    Scope condition = new Scope.All(List.of(DROPSIDE, HEATER, built(EARLY)));
    assertThat(condition.holds(FACTS)).isEqualTo(Ternary.UNKNOWN);
    assertThat(condition.open(FACTS)).isEqualTo(new Scope.All(List.of(HEATER)));
    Scope either = new Scope.Any(List.of(VAN, HEATER));
    assertThat(either.open(FACTS)).isEqualTo(new Scope.Any(List.of(HEATER)));
    Scope nested = new Scope.All(List.of(DROPSIDE, new Scope.Not(either)));
    assertThat(nested.open(FACTS))
        .isEqualTo(new Scope.All(List.of(new Scope.Not(new Scope.Any(List.of(HEATER))))));
    assertThat(HEATER.open(FACTS)).isEqualTo(HEATER);
  }

  @Test
  void everyDateWithinAConditionCutsTheProduction() {
    Scope condition =
        new Scope.All(
            List.of(
                DROPSIDE,
                new Scope.Any(List.of(built(EARLY), HEATER)),
                new Scope.Not(built(LATE))));
    assertThat(condition.buildDays()).containsExactly(EARLY, LATE);
    assertThat(DROPSIDE.buildDays()).isEmpty();
  }

  /** The words of rule sets; each is the kind that bears it, and no other word is any. */
  @Test
  void kindsOfSourcesAreFoundByTheirWords() {
    assertThat(Arrays.stream(SourceKind.values()).map(SourceKind::word))
        .doesNotHaveDuplicates()
        .contains("drawing", "parts list", "club guide", "recollection")
        .allSatisfy(word -> assertThat(SourceKind.of(word).orElseThrow().word()).isEqualTo(word));
    assertThat(SourceKind.of("Drawing")).isEmpty();
    assertThat(SourceKind.of("drawings")).isEmpty();
  }

  /**
   * The more there is to say of a state, the higher it ranks, and the summary tells the highest.
   */
  @Test
  void aDisputeIsMoreToSayThanAnAgreement() {
    assertThat(
            List.of(
                DisputeState.AGREED.rank(),
                DisputeState.UNSOURCED.rank(),
                DisputeState.SETTLED.rank(),
                DisputeState.DISPUTED.rank()))
        .isSorted()
        .doesNotHaveDuplicates();
  }

  @Test
  void asManyPositionsAreWeighedAsThereIsRoomFor() {
    assertThat(DempsterCombination.frame(DempsterCombination.MOST_POSITIONS))
        .isEqualTo(Long.MAX_VALUE);
    assertThat(DempsterCombination.frame(0)).isEqualTo(1);
  }
}
