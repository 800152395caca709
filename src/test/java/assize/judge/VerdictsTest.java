package assize.judge;

import static assize.aspect.Verdict.DEPARTS;
import static assize.aspect.Verdict.DOES_NOT_APPLY;
import static assize.aspect.Verdict.MAY_APPLY;
import static assize.aspect.Verdict.MEETS;
import static assize.aspect.Verdict.NOT_SHOWN;
import static assize.aspect.Verdict.OPEN;
import static assize.aspect.Verdict.PARTLY;
import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How verdicts are joined: of aspects to an item's, of stretches to one over all build days. */
class VerdictsTest {
  private static void assertAspects(Verdict joined, Verdict... aspects) {
    List<Verdict> order = new ArrayList<>(Arrays.asList(aspects));
    assertThat(ItemJudge.ofAspects(order)).isEqualTo(joined);
    Collections.reverse(order);
    assertThat(ItemJudge.ofAspects(order)).isEqualTo(joined);
  }

  @Test
  void ofAspects() {
    assertAspects(MEETS, MEETS);
    assertAspects(MEETS, MEETS, MEETS);
    assertAspects(DEPARTS, DEPARTS);
    assertAspects(DEPARTS, DEPARTS, DEPARTS);
    assertAspects(PARTLY, PARTLY);
    assertAspects(PARTLY, MEETS, DEPARTS);
    assertAspects(PARTLY, MEETS, PARTLY);
    assertAspects(PARTLY, PARTLY, DEPARTS);
    assertAspects(OPEN, OPEN);
    assertAspects(OPEN, OPEN, DEPARTS);
    assertAspects(OPEN, OPEN, MEETS);
    assertAspects(OPEN, OPEN, PARTLY, NOT_SHOWN);
  }

  @Test
  void whatWasNotShownCountsOnlyWhereAllShownMeets() {
    assertAspects(NOT_SHOWN, NOT_SHOWN);
    assertAspects(NOT_SHOWN, NOT_SHOWN, NOT_SHOWN);
    assertAspects(NOT_SHOWN, NOT_SHOWN, MEETS);
    assertAspects(PARTLY, NOT_SHOWN, DEPARTS);
    assertAspects(PARTLY, NOT_SHOWN, PARTLY);
    assertAspects(PARTLY, NOT_SHOWN, MEETS, DEPARTS);
  }

  @Test
  void ofStretches() {
    assertThat(ItemJudge.overStretches(2, List.of())).isEqualTo(DOES_NOT_APPLY);
    assertThat(ItemJudge.overStretches(2, List.of(MEETS))).isEqualTo(MAY_APPLY);
    assertThat(ItemJudge.overStretches(2, List.of(MEETS, MEETS))).isEqualTo(MEETS);
    assertThat(ItemJudge.overStretches(2, List.of(DEPARTS, MEETS))).isEqualTo(OPEN);
    assertThat(ItemJudge.overStretches(3, List.of(DEPARTS, NOT_SHOWN, DEPARTS))).isEqualTo(OPEN);
    assertThat(ItemJudge.overStretches(2, List.of(MAY_APPLY, MEETS))).isEqualTo(MAY_APPLY);
    assertThat(ItemJudge.overStretches(2, List.of(MEETS, MAY_APPLY))).isEqualTo(MAY_APPLY);
  }

  @Test
  void whatWasFoundAndDoesNotMeetDeparts() {
    assertThat(Arrays.stream(Verdict.values()).filter(LargestLoss::departing))
        .containsExactlyInAnyOrder(DEPARTS, PARTLY, OPEN);
  }
}
