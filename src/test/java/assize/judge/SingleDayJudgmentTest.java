package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judgment.BuildPeriod;
import assize.judgment.Judgment;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A stretch stands for each of its days. */
class SingleDayJudgmentTest {
  /** Of vehicles of the demonstration's standards, whatever is known of them. */
  @ParameterizedTest
  @CsvSource({"tarrowby-type-l, l45-4388.yaml", "quillhurst-q.yaml, q-1187.yaml"})
  void eachDayOfAnyVehicleIsJudgedAsItIsAlone(String place, String file) {
    RuleSet rules = ReusedJudgeTest.rules(place);
    RandomVehicles random = new RandomVehicles(rules, ReusedJudgeTest.record(rules, file), 5);
    Random days = new Random(5);
    Judge judge = Judge.by(rules);
    int parted = 0;
    for (int i = 0; i < 40; i++) {
      VehicleRecord vehicle = random.next();
      List<BuildPeriod> stretches = judge.judge(vehicle, Optional.empty()).stretches();
      parted += stretches.size() - 1;
      for (BuildPeriod stretch : stretches) {
        LocalDate first = stretch.days().first();
        LocalDate any = first.plusDays(days.nextLong(stretch.days().days()));
        for (LocalDate day : List.of(first, any, stretch.days().last())) {
          Judgment alone = judge.judge(RandomVehicles.builtOn(vehicle, day), Optional.empty());
          assertThat(alone.score()).as("vehicle %d on %s", i, day).isEqualTo(stretch.score());
          assertThat(alone.withoutAllowances()).isEqualTo(stretch.withoutAllowances());
        }
      }
    }
    assertThat(parted).isGreaterThan(20);
  }
}
