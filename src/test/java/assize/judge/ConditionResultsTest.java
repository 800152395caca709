package assize.judge;

import static assize.evidence.Ternary.NO;
import static assize.evidence.Ternary.UNKNOWN;
import static assize.evidence.Ternary.YES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import assize.evidence.Ternary;
import org.junit.jupiter.api.Test;

class ConditionResultsTest {
  private static ConditionResults answers(Ternary... answers) {
    ConditionResults.ConditionRow row = new ConditionResults.ConditionRow(answers.length);
    for (Ternary answer : answers) {
      row.add(answer);
    }
    return row.done();
  }

  @Test
  void areAsTheyWereGiven() {
    ConditionResults three = answers(YES, NO, UNKNOWN);
    assertThat(three.at(0)).isEqualTo(YES);
    assertThat(three.at(1)).isEqualTo(NO);
    assertThat(three.at(2)).isEqualTo(UNKNOWN);
    assertThat(three.at(new int[] {2, 0})).isEqualTo(answers(UNKNOWN, YES));
  }

  @Test
  void areAlikeWhereEachIs() {
    assertThat(answers(YES, NO)).isEqualTo(answers(YES, NO)).hasSameHashCodeAs(answers(YES, NO));
    assertThat(answers(YES, NO)).isNotEqualTo(answers(NO, YES)).isNotEqualTo(answers(YES));
    assertThat(answers(YES).equals("YES")).isFalse();
    assertThat(answers(YES, NO).hashCode()).isNotEqualTo(answers(NO, YES).hashCode());
  }

  @Test
  void aRowIsFilled() {
    ConditionResults.ConditionRow row = new ConditionResults.ConditionRow(2);
    row.add(YES);
    assertThat(row.at(0)).isEqualTo(YES);
    assertThatThrownBy(row::done).isInstanceOf(IllegalStateException.class);
  }
}
