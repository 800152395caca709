package assize.judge;

import static assize.aspect.Verdict.CORRECT;
import static assize.aspect.Verdict.INCORRECT;
import static assize.aspect.Verdict.MAY_APPLY;
import static assize.aspect.Verdict.NOT_APPLICABLE;
import static assize.aspect.Verdict.NOT_ASSESSED;
import static assize.aspect.Verdict.PARTLY_CORRECT;
import static assize.aspect.Verdict.UNDECIDED;
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
    assertAspects(CORRECT, CORRECT);
    assertAspects(CORRECT, CORRECT, CORRECT);
    assertAspects(INCORRECT, INCORRECT);
    assertAspects(INCORRECT, INCORRECT, INCORRECT);
    assertAspects(PARTLY_CORRECT, PARTLY_CORRECT);
    assertAspects(PARTLY_CORRECT, CORRECT, INCORRECT);
    assertAspects(PARTLY_CORRECT, CORRECT, PARTLY_CORRECT);
    assertAspects(PARTLY_CORRECT, PARTLY_CORRECT, INCORRECT);
    assertAspects(UNDECIDED, UNDECIDED);
    assertAspects(UNDECIDED, UNDECIDED, INCORRECT);
    assertAspects(UNDECIDED, UNDECIDED, CORRECT);
    assertAspects(UNDECIDED, UNDECIDED, PARTLY_CORRECT, NOT_ASSESSED);
  }

  @Test
  void whatWasNotShownCountsOnlyWhereAllShownMeets() {
    assertAspects(NOT_ASSESSED, NOT_ASSESSED);
    assertAspects(NOT_ASSESSED, NOT_ASSESSED, NOT_ASSESSED);
    assertAspects(NOT_ASSESSED, NOT_ASSESSED, CORRECT);
    assertAspects(PARTLY_CORRECT, NOT_ASSESSED, INCORRECT);
    assertAspects(PARTLY_CORRECT, NOT_ASSESSED, PARTLY_CORRECT);
    assertAspects(PARTLY_CORRECT, NOT_ASSESSED, CORRECT, INCORRECT);
  }

  @Test
  void ofStretches() {
    assertThat(ItemJudge.overStretches(2, List.of())).isEqualTo(NOT_APPLICABLE);
    assertThat(ItemJudge.overStretches(2, List.of(CORRECT))).isEqualTo(MAY_APPLY);
    assertThat(ItemJudge.overStretches(2, List.of(CORRECT, CORRECT))).isEqualTo(CORRECT);
    assertThat(ItemJudge.overStretches(2, List.of(INCORRECT, CORRECT))).isEqualTo(UNDECIDED);
    assertThat(ItemJudge.overStretches(3, List.of(INCORRECT, NOT_ASSESSED, INCORRECT)))
        .isEqualTo(UNDECIDED);
    assertThat(ItemJudge.overStretches(2, List.of(MAY_APPLY, CORRECT))).isEqualTo(MAY_APPLY);
    assertThat(ItemJudge.overStretches(2, List.of(CORRECT, MAY_APPLY))).isEqualTo(MAY_APPLY);
  }

  @Test
  void whatWasFoundAndDoesNotMeetDeparts() {
    assertThat(Arrays.stream(Verdict.values()).filter(LargestLoss::departing))
        .containsExactlyInAnyOrder(INCORRECT, PARTLY_CORRECT, UNDECIDED);
  }
}
