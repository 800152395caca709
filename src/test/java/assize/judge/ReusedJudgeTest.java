package assize.judge;

import static assize.record.VehicleRecord.MARKET;
import static assize.record.VehicleRecord.PLANT;
import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Verdict;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.record.Named;
import assize.record.Observation;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A judgment is the same whatever was judged before it by the same rule set. */
@Tag("slow")
class ReusedJudgeTest {
  private static final Path RULES = Path.of("rules");

  static VehicleRecord record(RuleSet rules, String file) {
    return RecordReader.read(RULES.resolve(file), rules).value().orElseThrow();
  }

  static RuleSet rules(String place) {
    return RuleSetReader.read(RULES.resolve(place)).value().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"tarrowby-type-l, l45-4388.yaml", "quillhurst-q.yaml, q-1187.yaml"})
  void ofTheDemonstrationsRuleSetsAndAnyVehicles(String place, String file) {
    RuleSet rules = rules(place);
    VehicleRecord own = record(rules, file);
    RandomVehicles random = new RandomVehicles(rules, own, 7);
    List<VehicleRecord> vehicles = IntStream.range(0, 60).mapToObj(i -> random.next()).toList();
    Judge judge = Judge.by(rules);
    assertSame(judge, rules, own);
    for (VehicleRecord vehicle : vehicles) {
      assertSame(judge, rules, vehicle);
    }
    for (VehicleRecord vehicle : vehicles) {
      assertSame(judge, rules, vehicle);
    }
  }

  /** What the vehicles above are told by: every kind of finding, dispute and stretch. */
  @Test
  void theVehiclesAreOfEveryKind() {
    RuleSet rules = rules("tarrowby-type-l");
    RandomVehicles random = new RandomVehicles(rules, record(rules, "l45-4388.yaml"), 7);
    Set<Aspect> aspects = EnumSet.noneOf(Aspect.class);
    Set<Verdict> verdicts = EnumSet.noneOf(Verdict.class);
    int most = 0;
    for (int i = 0; i < 60; i++) {
      Judgment judgment = Judge.judge(rules, random.next(), Optional.empty());
      judgment
          .vehicle()
          .observations()
          .values()
          .forEach(it -> aspects.addAll(it.findings().keySet()));
      judgment.items().forEach(item -> verdicts.add(item.verdict()));
      most = Math.max(most, judgment.stretches().size());
    }
    assertThat(aspects).containsExactlyInAnyOrder(Aspect.values());
    assertThat(verdicts).containsExactlyInAnyOrder(Verdict.values());
    assertThat(most).isGreaterThan(3);
  }

  @Test
  void ofSmallRuleSetsFullOfDisputes() {
    Seeds.each(150, this::ofSmallRuleSetsFullOfDisputes);
  }

  private void ofSmallRuleSetsFullOfDisputes(long seed) {
    RuleSet rules = Judging.rules(PropertiesTest.rules(seed, new java.util.Random(0)));
    Judge judge = Judge.by(rules);
    for (String condition : List.of("good", "fair", "poor", "fair")) {
      assertSame(judge, rules, Judging.vehicle(rules, PropertiesTest.record(seed, condition)));
    }
  }

  static void assertSame(Judge judge, RuleSet rules, VehicleRecord vehicle) {
    Judgment alone = Judge.judge(rules, vehicle, Optional.empty());
    assertSame(judge.judge(vehicle, Optional.empty()), alone);
  }

  private static void assertSame(Judgment judgment, Judgment alone) {
    assertThat(judgment.score()).isEqualTo(alone.score());
    assertThat(judgment.stretches()).isEqualTo(alone.stretches());
    assertThat(judgment.areas()).isEqualTo(alone.areas());
    for (int i = 0; i < alone.items().size(); i++) {
      ItemJudgment one = judgment.items().get(i);
      ItemJudgment other = alone.items().get(i);
      assertThat(one.earned()).isEqualTo(other.earned());
      assertThat(one.verdict()).isEqualTo(other.verdict());
      assertThat(words(one)).isEqualTo(words(other));
    }
  }

  private static List<String> words(ItemJudgment item) {
    return item.stretches().stream()
        .flatMap(stretch -> stretch.aspects().stream())
        .flatMap(aspect -> aspect.positions().stream())
        .map(position -> position.accepts() + " " + position.comparison().reason())
        .toList();
  }

  /** Of each record of the demonstration every single change, then back again. */
  @ParameterizedTest
  @CsvSource({
    "tarrowby-type-l, l45-4388.yaml",
    "tarrowby-type-l, l41-half-recorded.yaml",
    "quillhurst-q.yaml, q-1187.yaml"
  })
  void aChangeIsJudgedAsIfAnew(String place, String file) {
    RuleSet rules = rules(place);
    VehicleRecord own = record(rules, file);
    Function<VehicleRecord, Judgment> suppose = Judge.by(rules).suppose();
    List<VehicleRecord> changed = changes(rules, own);
    assertThat(changed).hasSizeGreaterThan(80);
    assertSame(suppose.apply(own), Judge.judge(rules, own, Optional.empty()));
    for (VehicleRecord one : changed) {
      assertSame(suppose.apply(one), Judge.judge(rules, one, Optional.empty()));
    }
    assertSame(suppose.apply(own), Judge.judge(rules, own, Optional.empty()));
  }

  private static List<VehicleRecord> changes(RuleSet rules, VehicleRecord own) {
    List<VehicleRecord> changed = new ArrayList<>();
    rules.models().keySet().forEach(it -> changed.add(own.with(Named.MODEL, Optional.of(it))));
    rules.plants().keySet().forEach(it -> changed.add(own.with(PLANT, Optional.of(it))));
    rules.markets().keySet().forEach(it -> changed.add(own.with(MARKET, Optional.of(it))));
    changed.add(own.with(Named.MODEL, Optional.empty()));
    changed.add(own.with(PLANT, Optional.empty()));
    changed.add(own.with(MARKET, Optional.empty()));
    changed.add(own.with(VehicleRecord.NUMBERS, Map.of()));
    changed.add(own.with(VehicleRecord.BUILT, Optional.empty()));
    changed.add(own.with(VehicleRecord.TRACES, List.of()));
    changed.add(own.with(VehicleRecord.EQUIPMENT, Map.of()));
    for (String item : own.observations().keySet()) {
      Map<String, Observation> left = new LinkedHashMap<>(own.observations());
      left.remove(item);
      changed.add(own.with(VehicleRecord.OBSERVATIONS, left));
    }
    return changed;
  }
}
