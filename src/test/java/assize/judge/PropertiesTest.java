package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judgment.AspectJudgment;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds of every judgment, on seeded rule sets and records. */
class PropertiesTest {
  private static final List<String> GRADES = List.of("A", "B", "C", "D");
  private static final List<String> WORDS = List.of("one", "two", "three");

  private static String claim(Random random, int number) {
    String source = "s" + random.nextInt(6);
    String built =
        switch (random.nextInt(4)) {
          case 0 -> ", built: ../1934-0" + (1 + random.nextInt(9));
          case 1 -> ", built: 1934-0" + (1 + random.nextInt(9)) + "/..";
          default -> "";
        };
    String market = random.nextInt(8) == 0 ? ", market: [export]" : "";
    String first = WORDS.get(random.nextInt(3));
    String said =
        switch (number == 0 ? 0 : random.nextInt(4)) {
          case 1 -> "leaves_open: {finish: [one, " + (first.equals("one") ? "two" : first) + "]}";
          case 2 -> "rules_out: {finish: " + first + "}";
          default -> "says: {finish: " + first + "}";
        };
    return "{source: " + source + built + market + ", " + said + "}";
  }

  /** A rule set with claims in the order given by {@code shuffle}. */
  static String rules(long seed, Random shuffle) {
    Random random = new Random(seed);
    StringBuilder yaml =
        new StringBuilder(
            """
            rule_set: bench
            name: Bench
            edition: "1"
            models: {B1: {name: B, production: 1934-01-01/1934-12-31}}
            markets: {home: Home, export: Export}
            equipment: {heater: Heater}
            finishes: {one: {name: One}, two: {name: Two}, three: {name: Three}}
            conditions: {good: 1, fair: 0.6, poor: 0.2}
            """);
    yaml.append("scale: {method: ")
        .append(List.of("sum", "areas", "deductions").get(random.nextInt(3)))
        .append(", out_of: 100, not_assessed: ")
        .append(List.of("0", "1/3", "1").get(random.nextInt(3)))
        .append("}\nsources:\n");
    for (int i = 0; i < 6; i++) {
      yaml.append(
          "  s%d: {kind: drawing, grade: %s, title: S".formatted(i, GRADES.get(random.nextInt(4))));
      yaml.append(i > 3 ? i + ", copies: [s" + (i - 1) + "]}\n" : i + "}\n");
    }
    yaml.append("areas:\n");
    for (int a = 0; a < 2; a++) {
      yaml.append("  a%d:\n    name: A\n".formatted(a));
      if (random.nextInt(3) == 0) {
        yaml.append("    max_loss: ").append(1 + random.nextInt(6)).append('\n');
      }
      yaml.append("    items:\n");
      for (int i = 0; i < 3; i++) {
        yaml.append(
            "      i%d%d:\n        title: I\n        points: %d\n"
                .formatted(a, i, 1 + random.nextInt(7)));
        yaml.append(random.nextInt(4) == 0 ? "        equipment: [heater]\n" : "");
        yaml.append(random.nextInt(3) == 0 ? "        cause: c%d\n".formatted(a) : "");
        yaml.append("        expect: {condition: graded}\n        claims:\n");
        List<String> claims = new ArrayList<>();
        for (int c = 0; c < 1 + random.nextInt(4); c++) {
          claims.add("          - " + claim(random, c) + "\n");
        }
        Collections.shuffle(claims, shuffle);
        claims.forEach(yaml::append);
      }
    }
    return yaml.toString();
  }

  static String record(long seed, String condition) {
    Random random = new Random(seed);
    StringBuilder yaml =
        new StringBuilder("record: r\nrules: bench\nvehicle: {name: R, model: B1}\n");
    yaml.append(random.nextInt(2) == 0 ? "market: home\n" : "").append("observations:\n");
    for (int a = 0; a < 2; a++) {
      for (int i = 0; i < 3; i++) {
        yaml.append("  i%d%d: {condition: %s".formatted(a, i, condition));
        yaml.append(
            random.nextInt(4) == 0 ? "}\n" : ", finish: " + WORDS.get(random.nextInt(3)) + "}\n");
      }
    }
    return yaml.toString();
  }

  @Test
  void pointsAddUpAndStayWithinTheirBounds() {
    Seeds.each(150, this::pointsAddUpAndStayWithinTheirBounds);
  }

  private void pointsAddUpAndStayWithinTheirBounds(long seed) {
    Judgment judgment = Judging.judge(rules(seed, new Random(0)), record(seed, "fair"));
    assertThat(judgment.score().high()).isLessThanOrEqualTo(100_000);
    assertThat(judgment.score().low()).isNotNegative();
    for (ItemJudgment item : judgment.items()) {
      for (ItemInPeriod stretch : item.stretches()) {
        ScoreRange sum =
            stretch.aspects().stream()
                .map(AspectJudgment::earned)
                .reduce(ScoreRange.ZERO, ScoreRange::plus);
        assertThat(stretch.earned()).isEqualTo(sum);
        assertThat(sum.low()).isNotNegative();
        assertThat(sum.high()).isLessThanOrEqualTo(stretch.possible());
        assertThat(stretch.possible()).isLessThanOrEqualTo(item.item().points());
      }
    }
  }

  @Test
  void aBetterPartNeverLowersAScore() {
    Seeds.each(150, this::aBetterPartNeverLowersAScore);
  }

  private void aBetterPartNeverLowersAScore(long seed) {
    String rules = rules(seed, new Random(0));
    ScoreRange poor = Judging.judge(rules, record(seed, "poor")).score();
    ScoreRange fair = Judging.judge(rules, record(seed, "fair")).score();
    ScoreRange good = Judging.judge(rules, record(seed, "good")).score();
    assertThat(poor.low()).isLessThanOrEqualTo(fair.low());
    assertThat(fair.low()).isLessThanOrEqualTo(good.low());
    assertThat(poor.likely()).isLessThanOrEqualTo(fair.likely());
    assertThat(fair.likely()).isLessThanOrEqualTo(good.likely());
    assertThat(poor.high()).isLessThanOrEqualTo(fair.high());
    assertThat(fair.high()).isLessThanOrEqualTo(good.high());
  }

  @Test
  void theOrderOfSourcesNeverMatters() {
    Seeds.each(150, this::theOrderOfSourcesNeverMatters);
  }

  private void theOrderOfSourcesNeverMatters(long seed) {
    Judgment one = Judging.judge(rules(seed, new Random(1)), record(seed, "fair"));
    Judgment other = Judging.judge(rules(seed, new Random(2)), record(seed, "fair"));
    assertThat(other.score()).isEqualTo(one.score());
    assertThat(other.items().stream().map(ItemJudgment::earned))
        .containsExactlyElementsOf(one.items().stream().map(ItemJudgment::earned).toList());
    assertThat(other.items().stream().map(ItemJudgment::dispute))
        .containsExactlyElementsOf(one.items().stream().map(ItemJudgment::dispute).toList());
  }
}
