package assize.judgment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import assize.judge.Judge;
import assize.record.RecordReader;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a judgment's figures say of themselves. */
class FiguresTest {
  private static final String RULES =
      """
      rule_set: one
      name: One
      edition: "1"
      models: {B1: {name: Bench one, production: 1934-01-01/1934-12-31}}
      scale: {method: sum, out_of: 4}
      finishes: {nickel: {name: Nickel}, black: {name: Black}}
      sources:
        drawing: {kind: drawing, grade: A, title: Drawing}
        tracing: {kind: drawing, grade: B, title: Tracing, copies: [drawing]}
      areas:
        front:
          name: Front
          items:
            horn:
              title: Horn
              points: 4
              claims:
                - {source: drawing, says: {finish: nickel}}
                - {source: tracing, says: {finish: nickel}}
      """;

  private static ItemJudgment horn(String found) {
    String record = "record: r\nrules: one\nvehicle: {name: R, model: B1}\n" + found;
    return RuleSetReader.parse(List.of(new SourceFile("rules.yaml", RULES)))
        .value()
        .flatMap(
            rules ->
                RecordReader.parse(new SourceFile("r.yaml", record), rules)
                    .value()
                    .map(it -> Judge.judge(rules, it, Optional.empty())))
        .orElseThrow()
        .items()
        .get(0);
  }

  @Test
  void whatIsLostIsWhatIsNotLikely() {
    assertThat(horn("observations: {horn: {finish: nickel}}").lost()).isZero();
    assertThat(horn("observations: {horn: {finish: black}}").lost()).isEqualTo(4000);
  }

  @Test
  void aRangeIsAPointWhereNothingIsOpen() {
    assertThat(horn("observations: {horn: {finish: nickel}}").earned().isPoint()).isTrue();
    assertThat(horn("").earned().isPoint()).isFalse();
    assertThat(new ScoreRange(1, 2, 3).plus(new ScoreRange(10, 20, 30)))
        .isEqualTo(new ScoreRange(11, 22, 33));
    assertThatThrownBy(() -> new ScoreRange(2, 1, 3)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new ScoreRange(1, 3, 2)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatCopiesIsNoWitness() {
    List<SourceJudgment> sources = horn("").stretches().get(0).aspects().get(0).sources();
    assertThat(sources).extracting(SourceJudgment::source).containsExactly("drawing", "tracing");
    assertThat(sources).extracting(SourceJudgment::isWitness).containsExactly(true, false);
  }

  @Test
  void eachBasisHasItsWord() {
    assertThat(Arrays.stream(BuildDate.Basis.values()).map(BuildDate.Basis::word))
        .containsExactly("record", "number", "model");
  }
}
