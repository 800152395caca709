package assize.ruleset;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.Sizes;
import assize.aspect.Worded;
import assize.aspect.YesNo;
import assize.date.DateRange;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.Scope;
import assize.report.text.DiagnosticFormatter;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RuleSetReaderTest {
  private static final String HEAD =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      scale: {out_of: 500, early_part_credit: 25 %}
      awards:
        first: {name: First award, min_score: 92 %, max_item_loss: 1.5}
      models:
        X1: {name: Dropside, production: 1932-03/1936-08}
      finishes: {nickel: {name: nickel plate}, "no": {name: none at all}}
      colors: {green: {name: Green}}
      conditions: {sound: 1}
      sources:
        drawing: {kind: drawing, grade: A, title: A drawing}
      areas:
        cab:
          name: Cab
          items:
      """;

  @Test
  void theShortFormMakesOneClaimForEachAspect() {
    Item item =
        item("expect: {finish: nickel, color: green}\nsource: drawing\ncite: sheet 2\npoints: 3");
    assertThat(item.aspects())
        .extracting(AspectRule::aspect)
        .containsExactly(Aspect.FINISH, Aspect.COLOR);
    assertThat(item.aspects()).extracting(AspectRule::possible).containsExactly(1500L, 1500L);
    Claim claim = item.aspects().get(0).claims().get(0);
    assertThat(claim.source()).contains("drawing");
    assertThat(claim.citation()).contains("sheet 2");
    assertThat(claim.manner()).isEqualTo(ClaimKind.SAYS);
    assertThat(claim.at().text()).isEqualTo("nickel");
    assertThat(item.scope()).isEqualTo(Scope.EVERY);
  }

  @Test
  void withoutASourceTheClaimHasNone() {
    Item item = item("expect: {finish: nickel}\npoints: 3");
    assertThat(item.aspects().get(0).claims().get(0).source()).isEmpty();
  }

  @Test
  void severalValuesAreSeveralExpectationsOfOneClaim() {
    Item item = item("expect: {finish: {nickel: 1, no: 1/3}}\npoints: 3");
    assertThat(item.aspects().get(0).claims().get(0).values())
        .containsExactly(
            new Worded.Right("nickel", BigFraction.ONE),
            new Worded.Right("no", BigFraction.of(1, 3)));
  }

  /**
   * What a program that knows YAML 1.1 takes for a truth value is a word where a word is wanted.
   */
  @Test
  void noStaysAWordWhereAWordIsWantedAndIsNoWhereYesOrNoIsWanted() {
    Item word = item("expect: {finish: no}\npoints: 1");
    assertThat(word.aspects().get(0).claims().get(0).values().get(0).key()).isEqualTo("no");
    Item truth = item("expect: {present: no, works: true}\npoints: 1");
    assertThat(truth.aspects())
        .extracting(it -> it.claims().get(0).values().get(0))
        .containsExactly(new YesNo.Right(false), new YesNo.Right(true));
  }

  @Test
  void numbersStayAsTyped() {
    Item item =
        item("expect: {part_number: [0510210600, 7E4, 0x1F, 1_000, 2.50, 12:30]}\npoints: 1");
    assertThat(item.aspects().get(0).claims().get(0).values())
        .extracting(Expectation::key)
        .containsExactly("0510210600", "7E4", "0x1F", "1_000", "2.50", "12:30");
  }

  @Test
  void pointsGoByWorthAndWhatIsLeftIsSharedByTheOthers() {
    Item all =
        item(
            "expect: {finish: nickel, color: green}\naspect_points: {finish: 3, color: 1}\npoints: 8");
    assertThat(all.aspects()).extracting(AspectRule::possible).containsExactly(6000L, 2000L);
    Item some =
        item("expect: {finish: nickel, color: green}\naspect_points: {finish: 3}\npoints: 4");
    assertThat(some.aspects()).extracting(AspectRule::possible).containsExactly(3000L, 1000L);
  }

  @Test
  void aspectsStandInTheOrderInWhichTheyAreFirstNamed() {
    Item item =
        item(
            """
            points: 1
            claims:
              - {source: drawing, built: ../1933, says: {color: green}}
              - {source: drawing, says: {finish: nickel, color: green}}
            """);
    assertThat(item.aspects())
        .extracting(AspectRule::aspect)
        .containsExactly(Aspect.COLOR, Aspect.FINISH);
    assertThat(item.aspects().get(0).claims()).hasSize(2);
  }

  @Test
  void allConditionsMustHold() {
    Item item =
        item(
            """
            points: 1
            models: [X1]
            none_of: [{built: 1933}]
            expect: {finish: nickel}
            """);
    assertThat(item.scope().buildDays())
        .containsExactly(DateRange.of(LocalDate.of(1933, 1, 1), LocalDate.of(1933, 12, 31)));
    assertThat(item.scope())
        .isInstanceOfSatisfying(
            Scope.All.class,
            all -> assertThat(all.parts()).contains(new Scope.Models(Set.of("X1"))).hasSize(2));
  }

  @Test
  void theScaleIsReadExactlyAndWhatItDoesNotSayIsUsual() {
    Scale scale = rules("points: 1\nexpect: {finish: nickel}").scale();
    assertThat(scale.outOf()).isEqualTo(500_000);
    assertThat(scale.earlyPartCredit()).isEqualTo(BigFraction.of(1, 4));
    assertThat(scale.settledAt()).isEqualTo(850);
    assertThat(scale.grades()).isEqualTo(Scale.usual().grades());
    assertThat(rules("points: 1\nexpect: {finish: nickel}").awards().get(0).minScore())
        .isEqualTo(460_000);
  }

  @Test
  void aThreadIsNoSize() {
    Item item = item("points: 1\nexpect: {size: [1/4-20 UNC, 1/4 in ± 1/64 in]}");
    assertThat(item.aspects().get(0).claims().get(0).values())
        .hasExactlyElementsOfTypes(Sizes.ThreadRight.class, Sizes.Right.class);
  }

  @Test
  void aFolderIsReadAsOneAndEachFileHasItsChecksum(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("rules.yaml"), HEAD + "      {}\n");
    Files.createDirectories(folder.resolve("areas"));
    Files.writeString(
        folder.resolve("areas/cab.yaml"),
        "area: cab\nitems:\n  horn: {title: Horn, points: 1, expect: {present: yes}}\n");
    var read = RuleSetReader.read(folder, "standard");
    assertThat(DiagnosticFormatter.print(read.diagnostics(), false)).isEmpty();
    RuleSet rules = read.value().orElseThrow();
    assertThat(rules.items().map(Item::id)).containsExactly("horn");
    assertThat(rules.files()).extracting("path").containsExactly("rules.yaml", "areas/cab.yaml");
    // Computed by sha256sum.
    assertThat(rules.files().get(1).sha256())
        .isEqualTo("09f9feb36b51fdf4d8e30c103284dd8db6898ccd1740450a551c2e909fe639ec");
  }

  @Test
  void aLinkOutOfTheFolderIsRefused(@TempDir Path folder) throws IOException {
    Path rules = Files.createDirectory(folder.resolve("standard"));
    Files.writeString(rules.resolve("rules.yaml"), HEAD + "      {}\n");
    Path outside = Files.writeString(folder.resolve("outside.yaml"), "notes: not yours\n");
    Files.createSymbolicLink(rules.resolve("inside.yaml"), outside);
    assertThat(
            DiagnosticFormatter.print(RuleSetReader.read(rules, "standard").diagnostics(), false))
        .contains("error[path-outside]")
        .contains("standard/inside.yaml")
        .doesNotContain("not yours");
  }

  @Test
  void aFolderWithoutAHeadSaysWhatIsMissing(@TempDir Path folder) {
    assertThat(
            DiagnosticFormatter.print(RuleSetReader.read(folder, "standard").diagnostics(), false))
        .contains("this folder has no rules.yaml");
  }

  private static Item item(String fields) {
    return rules(fields).items().findFirst().orElseThrow();
  }

  private static RuleSet rules(String fields) {
    String item = "horn:\n" + ("title: Horn\n" + fields).indent(2);
    var read = RuleSetReader.parse(List.of(new SourceFile("rules.yaml", HEAD + item.indent(6))));
    assertThat(DiagnosticFormatter.print(read.diagnostics(), false)).isEmpty();
    return read.value().orElseThrow();
  }
}
