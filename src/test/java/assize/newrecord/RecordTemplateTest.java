package assize.newrecord;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Verdict;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.SampleJudgments;
import assize.report.sheet.InspectionView;
import assize.report.sheet.InspectionView.InspectedAspect;
import assize.report.sheet.InspectionView.InspectedItem;
import assize.report.sheet.InspectionViewFactory;
import assize.ruleset.Hazard;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordTemplateTest {
  private static final RuleSet TRUCK = rules("rules/tarrowby-type-l");
  private static final RuleSet MOTORCYCLE = rules("rules/quillhurst-q.yaml");

  private static RuleSet rules(String path) {
    return RuleSetReader.read(Path.of(path)).value().orElseThrow();
  }

  /** A rule set, and what is known of a vehicle in YAML. */
  private record Known(RuleSet rules, String yaml) {
    @Override
    public String toString() {
      return yaml.replace("\n", " ");
    }
  }

  /** Every model of both rule sets, of days that do not matter, of one month, of one year. */
  static Stream<Known> vehicles() {
    List<Known> all = new ArrayList<>(List.of(new Known(TRUCK, ""), new Known(MOTORCYCLE, "")));
    for (RuleSet rules : List.of(TRUCK, MOTORCYCLE)) {
      String fitted = rules.equipment().keySet().iterator().next();
      for (String model : rules.models().keySet()) {
        int year = rules.models().get(model).production().first().getYear() + 1;
        all.add(new Known(rules, "model: " + model));
        all.add(new Known(rules, "model: " + model + "\nbuilt: " + year));
        all.add(
            new Known(
                rules,
                "model: " + model + "\nbuilt: " + year + "-06\nequipment: {" + fitted + ": yes}"));
      }
    }
    return all.stream();
  }

  private static VehicleRecord vehicle(Known known) {
    String model = known.yaml().lines().findFirst().filter(it -> !it.isEmpty()).orElse("notes: x");
    String rest = known.yaml().lines().skip(1).reduce("", (a, b) -> a + b + "\n");
    String text = "record: r\nrules: r\nvehicle:\n  name: Ours\n  " + model + "\n" + rest;
    return read(text, known.rules()).value().orElseThrow();
  }

  private static Result<VehicleRecord> read(String text, RuleSet rules) {
    return RecordReader.parse(new SourceFile("record.yaml", text), rules);
  }

  private static InspectionView view(Known known) {
    return InspectionViewFactory.of(Judge.judge(known.rules(), vehicle(known), Optional.empty()));
  }

  private static String text(Known known) {
    return RecordTemplate.text(view(known), vehicle(known), known.rules(), "r.yaml");
  }

  @ParameterizedTest
  @MethodSource("vehicles")
  void asWrittenItReadsWithoutFaultAndSaysNothingYet(Known known) {
    Result<VehicleRecord> read = read(text(known), known.rules());
    assertThat(read.diagnostics()).isEmpty();
    VehicleRecord record = read.value().orElseThrow();
    VehicleRecord vehicle = vehicle(known);
    assertThat(record.observations().values()).allMatch(it -> it.findings().isEmpty());
    assertThat(record.model()).isEqualTo(vehicle.model());
    assertThat(record.built()).isEqualTo(vehicle.built());
    assertThat(record.equipment()).isEqualTo(vehicle.equipment());
    Judgment judged = Judge.judge(known.rules(), record, Optional.empty());
    Judgment empty = Judge.judge(known.rules(), vehicle, Optional.empty());
    assertThat(judged.score()).isEqualTo(empty.score());
    assertThat(judged.items()).isEqualTo(empty.items());
  }

  @ParameterizedTest
  @MethodSource("vehicles")
  void hasTheItemsThatApplyAndNoOthers(Known known) {
    VehicleRecord record = read(text(known), known.rules()).value().orElseThrow();
    List<String> apply =
        Judge.judge(known.rules(), vehicle(known), Optional.empty()).items().stream()
            .filter(one -> one.verdict() != Verdict.NOT_APPLICABLE)
            .map(one -> one.item().id())
            .toList();
    assertThat(record.observations().keySet()).containsExactlyElementsOf(apply);
  }

  @ParameterizedTest
  @MethodSource("vehicles")
  void aValueBehindEachColonIsJudged(Known known) {
    String filled = text(known);
    List<InspectedItem> items =
        view(known).areas().stream().flatMap(area -> area.items().stream()).toList();
    for (InspectedItem item : items) {
      int at = filled.indexOf("\n  " + item.id() + ":\n");
      assertThat(at).as(item.id()).isPositive();
      for (InspectedAspect aspect : item.aspects()) {
        String empty = "\n    " + aspect.word() + ":\n";
        int here = filled.indexOf(empty, at);
        String value = "\n    " + aspect.word() + ": " + value(aspect) + "\n";
        filled = filled.substring(0, here) + value + filled.substring(here + empty.length());
      }
    }
    Result<VehicleRecord> read = read(filled, known.rules());
    assertThat(read.diagnostics()).isEmpty();
    VehicleRecord record = read.value().orElseThrow();
    assertThat(record.observations().values().stream().mapToInt(it -> it.findings().size()).sum())
        .isEqualTo(items.stream().mapToInt(item -> item.aspects().size()).sum());
    assertThat(
            Judge.judge(known.rules(), record, Optional.empty()).items().stream()
                .map(one -> one.verdict()))
        .doesNotContain(Verdict.NOT_ASSESSED);
  }

  /** What a person types, by what the remark over it says. */
  private static String value(InspectedAspect aspect) {
    String example = aspect.control().hint();
    return switch (aspect.control().kind()) {
      case WORDS, COLOR, YES_NO -> aspect.control().choices().get(0).id();
      case GLOSS -> "41 ± 3";
      case SIZE -> example.substring(example.indexOf(", as in ") + 8).split(",| or ", 2)[0];
      case STAMPED -> "7";
      case PIECES -> "3";
    };
  }

  @Test
  void saysWhereToLookAndWhatMayBeWritten() {
    String text = text(new Known(TRUCK, "model: L45"));
    assertThat(text)
        .contains("\n  # 119. Planks of the floor (3 points)\n")
        .contains("\n  #   Look: From the rear, tailboard down.")
        .contains("\n    # Expected: 9 (each piece off costs 1/3 of the credit)\n")
        .contains("\n    # Write one of: original; correct donor part; new old stock;");
  }

  @Test
  void hazardsStandWholeAtEachItem() {
    String text = text(new Known(TRUCK, "model: L45")).replaceAll("\\s*\\n\\s*#\\s*", " ");
    int at = text.indexOf("Color of the load bed");
    assertThat(text.indexOf("Hazard, lead paint: " + Hazard.LEAD_PAINT.precaution(), at))
        .isBetween(at, text.indexOf("bed-color:", at));
    assertThat(text).contains(Hazard.THEN);
  }

  /** Texts that would be names, ends of the file or settings if they stood outside a remark. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\nobservations: {}",
        "\r\n--- \r\nrecord: other",
        "\rrules: /etc",
        "\u2028x: y\u2029z: \u0085w: v",
        " # {a: [b, *c, &d, !e]} : ",
        "\n\tx:\n  - \"",
        "\n%YAML 1.2\n---\n...",
        "<script>alert(1)</script>\n<!-- ' -->",
        "\n# yaml-language-server: $schema=https://example.org/",
        "\u0007\u202E\uFEFF\u0000"
      })
  void noTextBreaksOutOfItsRemark(String hostile) {
    Judgment tame = SampleJudgments.hostile("");
    Judgment judgment = SampleJudgments.hostile(hostile);
    String text =
        RecordTemplate.text(
            InspectionViewFactory.of(judgment),
            tame.vehicle(),
            judgment.rules(),
            "r" + hostile + ".yaml");
    String plain =
        RecordTemplate.text(InspectionViewFactory.of(tame), tame.vehicle(), tame.rules(), "r.yaml");
    assertThat(names(text)).isEqualTo(names(plain));
    assertThat(text).matches("[^\\x00\\x07\\r]*");
    assertThat(text.lines().filter(line -> line.strip().startsWith("#")))
        .noneMatch(line -> line.contains("yaml-language-server"));
  }

  /** Every line that is no remark, without what stands behind its colon. */
  private static List<String> names(String text) {
    return text.split("\\R", -1).length == text.split("\n", -1).length
        ? text.lines()
            .filter(line -> !line.isBlank() && !line.strip().startsWith("#"))
            .map(line -> line.replaceFirst(":.*", ""))
            .toList()
        : List.of("some line ends otherwise");
  }
}
