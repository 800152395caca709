package assize.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import assize.report.SampleJudgments;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The names that others rely on, and numbers that are not blurred; read back by another program's
 * parser.
 */
class JudgmentJsonTest {
  private final JsonNode three = read(JudgmentJson.of(SampleJudgments.threeStretches()));

  private static JsonNode read(String json) {
    return new JsonMapper().readTree(json);
  }

  private static void has(JsonNode node, String... names) {
    assertThat(node.propertyNames()).contains(names);
  }

  @Test
  void everyNameIsThere() {
    has(
        three,
        "rule_set",
        "edition",
        "record",
        "built",
        "score",
        "award",
        "by_build_day",
        "areas",
        "items");
    has(three.get("built"), "first", "last", "basis");
    has(three.get("score"), "low", "likely", "high", "of");
    has(three.get("award"), "certain", "likely", "possible");
    has(three.get("by_build_day").get(0), "first", "last", "low", "likely", "high");
    has(three.get("areas").get(0), "id", "low", "likely", "high", "possible");
    JsonNode item = three.get("items").get(0);
    has(item, "id", "area", "verdict", "agreement", "low", "likely", "high", "possible", "aspects");
    JsonNode aspect = item.get("aspects").get(0);
    has(aspect, "aspect", "verdict", "agreement", "conflict", "positions");
    has(aspect.get("positions").get(0), "expects", "sources", "belief", "plausibility", "credit");
  }

  @Test
  void thousandthsAreExactAndDaysAreIso() {
    assertThat(three.get("built").get("first").asString()).isEqualTo("1935-01-07");
    assertThat(three.get("built").get("basis").asString()).isEqualTo("number");
    assertThat(three.get("by_build_day").get(0).get("likely").toString()).isEqualTo("49.706");
    assertThat(three.get("score").get("of").toString()).isEqualTo("100");
  }

  @Test
  void anAwardThatIsNotThereIsNull() {
    assertThat(three.get("award").get("certain").isNull()).isTrue();
    assertThat(three.get("award").get("likely").asString()).isEqualTo("second");
  }

  @Test
  void verdictsAreTheWordsOfTheReport() {
    assertThat(three.get("items").findValuesAsString("verdict"))
        .contains(
            "undecided", "incorrect", "not-assessed", "may-apply", "not-applicable", "correct")
        .isSubsetOf(
            "correct",
            "partly-correct",
            "incorrect",
            "undecided",
            "not-assessed",
            "not-applicable",
            "may-apply");
  }

  @Test
  void conflictIsTheMeanOverTheDays() {
    // 64 days at 0.45 and 101 days at 0: 28.8 / 165
    assertThat(three.get("items").get(0).get("aspects").get(0).get("conflict").asDouble())
        .isEqualTo(0.174545);
  }

  @Test
  void anyTextComesBackAsItWas() {
    for (String hostile : List.of("\"\\\u0000\u001f\n\t</script>", "\u2028é\ud83d\ude9a")) {
      JsonNode read = read(JudgmentJson.of(SampleJudgments.hostile(hostile)));
      assertThat(read.get("remarks").get(0).asString())
          .isEqualTo("The number and the model do not agree." + hostile);
    }
  }
}
