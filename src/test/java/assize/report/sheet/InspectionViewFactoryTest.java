package assize.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Control;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.measure.MeasuredSize;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView.ExpectedValue;
import assize.report.sheet.InspectionView.InspectedArea;
import assize.report.sheet.InspectionView.InspectedAspect;
import assize.report.sheet.InspectionView.InspectedItem;
import assize.report.view.HazardView;
import assize.report.view.ReportHeaderView;
import assize.ruleset.Hazard;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InspectionViewFactoryTest {
  private static final String RULES =
      """
      rule_set: test-x
      name: Test
      edition: "2"
      models:
        X1: {name: X1 dropside, production: 1934-01/1935-12}
        X2: {name: X2 van, production: 1934-01/1935-12}
      markets: {home: Home market, export: Export}
      plants: {north: North Works}
      equipment: {heater: Cab heater}
      sources:
        drawing: {kind: drawing, grade: A, title: Drawing 204}
        photo: {kind: factory photograph, grade: B, title: Photograph 11}
        letter: {kind: service letter, grade: B, title: Letter 9}
        guide: {kind: club guide, grade: C, title: The guide}
        guide-2: {kind: club guide, grade: C, title: The second guide, copies: [guide]}
      colors:
        green: {name: Works green, lab: [34.9, -17.8, 9.4]}
        black: {name: Black}
        maroon: {name: Maroon}
      finishes:
        nickel: {name: nickel plate}
        chrome: {name: chromium plate}
      conditions: {sound: 1, worn: 1/2}
      areas:
        cab:
          name: Cab
          items:
            van-door:
              title: Van door
              points: 1
              models: X2
              expect: {present: yes}
            button:
              title: Horn button
              points: 2.5
              look: The rim of the button.
              notes: Not the *switch*.
              expect: {finish: nickel, condition: graded}
              source: drawing
            heater:
              title: Heater
              points: 1
              equipment: heater
              hazards: [lead paint]
              expect: {works: yes}
            late:
              title: Late lamp
              points: 1
              built: 1935-03-12/1935-12
              expect: {count: 2}
            lever:
              title: Lever
              points: 2
              claims:
                - {source: drawing, built: 1934-01/1934-12, says: {size: 3/32 in ± 1/64 in}}
                - {source: drawing, built: 1935-01/1935-12, says: {size: 1/4-20 UNC}}
            wheel:
              title: Wheel
              points: 1
              claims:
                - {source: drawing, market: home, says: {choice: right}}
                - {source: drawing, market: export, says: {choice: left}}
              choices: {left: on the left, right: on the right}
        bed:
          name: Load bed
          items:
            bed-color:
              title: Color of the bed
              points: 5
              hazards: [lead paint, springs]
              claims:
                - {source: drawing, says: {color: green}}
                - {source: photo, leaves_open: {color: [green, black]}}
                - {source: letter, rules_out: {color: black}}
                - {source: guide, says: {color: black}}
                - {source: guide-2, says: {color: black}}
      """;

  private static RuleSet rules(String yaml) {
    return good(RuleSetReader.parse(List.of(new SourceFile("rules.yaml", yaml))));
  }

  private static InspectionView view(RuleSet rules, String record) {
    VehicleRecord vehicle = good(RecordReader.parse(new SourceFile("r.yaml", record), rules));
    return InspectionViewFactory.of(Judge.judge(rules, vehicle, Optional.empty()));
  }

  private static InspectionView view(String more) {
    return view(
        rules(RULES), "record: r\nrules: rules.yaml\nvehicle: {name: Ours, model: X1}\n" + more);
  }

  private static <T> T good(Result<T> read) {
    return read.value().orElseThrow(() -> new AssertionError(read.diagnostics().toString()));
  }

  private static Stream<InspectedItem> items(InspectionView view) {
    return view.areas().stream().flatMap(area -> area.items().stream());
  }

  private static InspectedItem item(InspectionView view, String id) {
    return items(view).filter(item -> item.id().equals(id)).findFirst().orElseThrow();
  }

  private static InspectedAspect aspect(InspectionView view, String item) {
    return item(view, item).aspects().get(0);
  }

  private static List<String> expected(InspectionView view, String item) {
    return aspect(view, item).expected().stream().map(ExpectedValue::line).toList();
  }

  @Test
  void whatDoesNotApplyIsLeftOutAndNumbersStay() {
    InspectionView view = view("");
    assertThat(items(view).map(InspectedItem::id))
        .containsExactly("button", "heater", "late", "lever", "wheel", "bed-color");
    assertThat(items(view).map(InspectedItem::number)).containsExactly(2, 3, 4, 5, 6, 7);
    assertThat(view.items()).isEqualTo(6);
    assertThat(view.aspects()).isEqualTo(7);
    assertThat(view("equipment: {heater: no}\n").items()).isEqualTo(5);
    assertThat(view("built: 1934\n").areas().get(0).items()).hasSize(4);
  }

  @Test
  void anAreaWithNothingToLookAtIsLeftOut() {
    assertThat(view("").areas()).extracting(InspectedArea::name).containsExactly("Cab", "Load bed");
    RuleSet narrowed =
        rules(RULES.replace("title: Color of the bed\n", "title: Color\n        models: X2\n"));
    assertThat(
            view(narrowed, "record: r\nrules: rules.yaml\nvehicle: {name: Ours, model: X1}\n")
                .areas())
        .extracting(InspectedArea::name)
        .containsExactly("Cab");
  }

  @Test
  void theHeadSaysWhatIsKnown() {
    InspectionView view = view("built: 1934-05\nplant: north\nequipment: {heater: no}\n");
    assertThat(view.standard()).isEqualTo("Test");
    assertThat(view.edition()).isEqualTo("edition 2");
    assertThat(view.facts())
        .containsExactly(
            new ReportHeaderView.Named("Model", "X1 dropside"),
            new ReportHeaderView.Named("Built", "May 1934, by what the record says"),
            new ReportHeaderView.Named("Plant", "North Works"),
            new ReportHeaderView.Named("Without", "Cab heater"));
  }

  @Test
  void anItemSaysWhereToLook() {
    InspectedItem button = item(view(""), "button");
    assertThat(button.points()).isEqualTo("2.5");
    assertThat(button.look()).isEqualTo("The rim of the button.");
    assertThat(button.notes()).isEqualTo("Not the *switch*.");
    assertThat(button.mayApply()).isEmpty();
  }

  @Test
  void whyItMayApply() {
    assertThat(item(view(""), "heater").mayApply()).isEqualTo("only a vehicle with ‘Cab heater’");
    assertThat(item(view("equipment: {heater: yes}\n"), "heater").mayApply()).isEmpty();
    assertThat(item(view(""), "late").mayApply())
        .isEqualTo("only a vehicle built from 12 March 1935 on");
    assertThat(item(view("built: 1935-06\n"), "late").mayApply()).isEmpty();
  }

  @Test
  void hazardsComeFromTheOnePlace() {
    InspectionView view = view("");
    assertThat(view.hazards())
        .extracting(HazardView::precaution)
        .containsExactly(Hazard.LEAD_PAINT.precaution(), Hazard.SPRINGS.precaution());
    assertThat(item(view, "heater").hazards())
        .extracting(HazardView::name)
        .containsExactly("lead paint");
    assertThat(view.afterHazards()).isEqualTo(Hazard.THEN);
  }

  @Test
  void whatIsExpectedOfAllDaysIsSaidOnce() {
    assertThat(expected(view(""), "button")).containsExactly("nickel plate");
    assertThat(expected(view(""), "late")).containsExactly("2");
  }

  @Test
  void whatDependsOnTheBuildDaySaysWhen() {
    assertThat(expected(view(""), "lever"))
        .containsExactly(
            "built before 1 January 1935: 3/32 in ± 1/64 in",
            "built from 1 January 1935 on: 1/4-20 UNC");
    assertThat(expected(view("built: 1934\n"), "lever")).containsExactly("3/32 in ± 1/64 in");
  }

  @Test
  void whatDependsOnAFactThatIsNotKnownSaysOnWhich() {
    assertThat(expected(view(""), "wheel"))
        .containsExactly(
            "for ‘Home market’: on the right (Drawing 204, grade A)",
            "for ‘Export’: on the left (Drawing 204, grade A)");
    assertThat(expected(view("market: home\n"), "wheel")).containsExactly("on the right");
  }

  @Test
  void whereSourcesDifferEachSaysItsOwn() {
    InspectedAspect color = aspect(view(""), "bed-color");
    assertThat(color.expected().stream().map(ExpectedValue::line))
        .containsExactly(
            "Works green (Drawing 204, grade A; left open by Photograph 11, grade B)",
            "Black (The guide, grade C; The second guide, grade C, repeating The guide;"
                + " left open by Photograph 11, grade B; ruled out by Letter 9, grade B)"
                + ", outweighed by the others");
    assertThat(color.expected().get(0).swatches()).hasSize(1);
  }

  @Test
  void wordsAreThoseOfTheRuleSet() {
    InspectionView view = view("");
    Control finish = aspect(view, "button").control();
    assertThat(finish.kind()).isEqualTo(Control.Kind.WORDS);
    assertThat(finish.choices())
        .extracting(Control.Choice::id)
        .containsExactly("nickel", "chrome", "other");
    assertThat(item(view, "button").aspects().get(1).control().choices())
        .extracting(Control.Choice::id)
        .containsExactly("sound", "worn");
    assertThat(aspect(view, "wheel").control().choices())
        .containsExactly(
            new Control.Choice("left", "on the left", ""),
            new Control.Choice("right", "on the right", ""),
            new Control.Choice("other", "none that the rule set names", ""));
    Control color = aspect(view, "bed-color").control();
    assertThat(color.kind()).isEqualTo(Control.Kind.COLOR);
    assertThat(color.choices().get(0).swatch()).matches("#[0-9a-f]{6}");
    assertThat(aspect(view, "lever").control().hint())
        .isEqualTo(
            "a length, as in 5/64 in, 2.38 mm ± 0.02 mm or 2.4 mm, to 0.1 mm; or a thread, as in"
                + " 1/4-20 UNC, 1/4 BSF, 2 BA or M6");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12 in",
        "2 lb",
        "3°",
        "2 imp pt",
        "40 psi",
        "20 lbf ft",
        "20 hp",
        "6 V",
        "10 A",
        "50 Ah",
        "40 mph"
      })
  void everyExampleOfASizeCanBeRead(String size) {
    InspectionView view =
        view(
            rules(RULES.replace("count: 2", "size: " + size)),
            "record: r\nrules: rules.yaml\nvehicle: {name: Ours, model: X1}\n");
    String hint = aspect(view, "late").control().hint();
    String examples = hint.substring(hint.indexOf(", as in ") + ", as in ".length());
    for (String example : examples.split(", (?!to )| or ", -1)) {
      MeasuredSize read = MeasuredSize.parse(example).toOptional().orElseThrow();
      assertThat(hint).startsWith(read.dimension().spoken());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "button | finish: chrome | chrome | chrome | chromium plate",
        "button | finish: other | other | other | other: none that the rule set names",
        "heater | works: no | no | no | does not work",
        "late | count: 1 | 1 | 1 | 1",
        "lever | size: 5/64 in ± 1/64 in | 5/64 in ± 1/64 in | 5/64 in ± 1/64 in | 5/64 in ± 1/64 in",
        "lever | size: 1/4-20 UNC | 1/4-20 UNC | 1/4-20 UNC | 1/4-20 UNC",
        "bed-color | color: black | black | black | Black by eye",
        "bed-color | color: {chip: black, light: north, by: me} | black"
            + " | {chip: black, light: north, by: me} | Black by eye in north (me)",
      })
  void whatARecordSaysIsGivenAsYamlHasIt(
      String item, String written, String typed, String yaml, String words) {
    InspectionView view = view("observations:\n  " + item + ":\n    " + written + "\n");
    InspectionView.FoundValue found = aspect(view, item).found();
    assertThat(found.typed()).isEqualTo(typed);
    assertThat(found.yaml()).isEqualTo(yaml);
    assertThat(found.words()).isEqualTo(words);
  }

  @Test
  void anInstrumentsReadingIsWrittenOut() {
    InspectionView view =
        view("observations:\n  bed-color: {color: {lab: [34.9, -17.8, 9], uncertainty: 0.4}}\n");
    assertThat(aspect(view, "bed-color").found().yaml())
        .isEqualTo("{lab: [34.9, -17.8, 9], uncertainty: 0.4}");
    assertThat(aspect(view, "bed-color").found().typed()).isEmpty();
  }

  @Test
  void anItemKeepsItsNote() {
    assertThat(item(view("observations:\n  late: {note: Two too many.}\n"), "late").note())
        .isEqualTo("Two too many.");
  }

  @ParameterizedTest
  @CsvSource({
    "1, about 5 minutes",
    "301, about 10 minutes",
    "5400, about 90 minutes",
    "5401, about 2 hours",
    "7201, about 2 1/2 hours"
  })
  void timeIsRoundedUp(int seconds, String words) {
    assertThat(InspectionTime.words(seconds)).isEqualTo(words);
  }

  @Test
  void timeAddsUp() {
    // six items 6 × 30 s; finish, condition, works, count, choice 5 × 15 s; size 60 s; color 30 s
    assertThat(view("").time()).isEqualTo(InspectionTime.words(180 + 75 + 60 + 30));
  }

  @ParameterizedTest
  @ValueSource(strings = {"rules/tarrowby-type-l", "rules/quillhurst-q.yaml"})
  void everythingExpectedOfTheDemonstrationIsWorded(String path) {
    RuleSet rules = good(RuleSetReader.read(Path.of(path)));
    for (String model : rules.models().keySet()) {
      InspectionView view =
          view(rules, "record: r\nrules: r\nvehicle: {name: Ours, model: " + model + "}\n");
      assertThat(view.items()).isGreaterThan(40);
      assertThat(items(view).flatMap(item -> item.aspects().stream()))
          .allSatisfy(
              aspect -> {
                assertThat(aspect.expected()).isNotEmpty();
                assertThat(aspect.control().choices().isEmpty())
                    .isEqualTo(!aspect.control().hint().isEmpty());
                assertThat(aspect.expected()).allSatisfy(it -> assertThat(it.words()).isNotBlank());
              });
    }
  }
}
