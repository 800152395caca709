package assize.judge;

import static assize.evidence.Kleene.NO;
import static assize.evidence.Kleene.UNKNOWN;
import static assize.evidence.Kleene.YES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import assize.evidence.Kleene;
import org.junit.jupiter.api.Test;

class AnswersTest {
  private static Answers answers(Kleene... answers) {
    Answers.Row row = new Answers.Row(answers.length);
    for (Kleene answer : answers) {
      row.add(answer);
    }
    return row.done();
  }

  @Test
  void areAsTheyWereGiven() {
    Answers three = answers(YES, NO, UNKNOWN);
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
    Answers.Row row = new Answers.Row(2);
    row.add(YES);
    assertThat(row.at(0)).isEqualTo(YES);
    assertThatThrownBy(row::done).isInstanceOf(IllegalStateException.class);
  }
}
