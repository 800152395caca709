package assize.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.record.RecordReader;
import assize.report.view.CiteView;
import assize.report.view.CombinationStepsView;
import assize.report.view.CopyTreeView;
import assize.report.view.DisputeView;
import assize.report.view.EvidenceView;
import assize.report.view.OwnerView;
import assize.report.view.SourceStatementView;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One dispute written up: figures worked by hand, and the same words for both sides. */
class DossierViewFactoryTest {
  private static final String HEAD =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      models:
        X1: {name: Dropside, production: 1932-03/1936-08}
      sources:
        drawing: {kind: drawing, grade: A, title: Works drawing 204, date: 1933-10}
        guide: {kind: club guide, grade: C, title: Guide for restorers}
        reprint: {kind: club guide, grade: C, title: The guide reprinted, copies: [guide]}
        leaflet: {kind: sales literature, grade: D, title: A leaflet, copies: [guide, reprint]}
        photo: {kind: factory photograph, grade: B, title: Works photograph 11}
        letter: {kind: service letter, grade: B, title: Service letter 9}
        silent: {kind: parts list, grade: A, title: Parts list}
      finishes:
        green: {name: works green}
        body: {name: body color}
        black: {name: chassis black}
      areas:
        bed:
          name: Load bed
          items:
            bed-color:
              title: Color of the load bed
              points: 8
              claims:
      """;
  private static final String RECORD =
      """
      record: ours
      rules: rules.yaml
      vehicle: {name: The owner's dropside, model: X1}
      built: 1934-05
      observations:
        bed-color:
          finish: green
      """;
  private static final String A_AGAINST_C =
      """
      - {source: drawing, cite: note 7, says: {finish: green}}
      - {source: guide, cite: page 31, says: {finish: body}}
      """;

  private static Judgment judge(String rules, String record) {
    RuleSet read = good(RuleSetReader.parse(List.of(new SourceFile("rules.yaml", rules))));
    return Judge.judge(
        read,
        good(RecordReader.parse(new SourceFile("record.yaml", record), read)),
        Optional.empty());
  }

  private static <T> T good(Result<T> read) {
    return read.value().orElseThrow(() -> new AssertionError(read.diagnostics().toString()));
  }

  private static DossierView dossier(String claims, String record) {
    return DossierViewFactory.of(judge(HEAD + claims.indent(14), record), "bed-color", Map.of())
        .orElseThrow();
  }

  private static DisputeView.Span span(DossierView view) {
    assertThat(view.parts()).hasSize(1);
    assertThat(view.parts().get(0).dispute().spans()).hasSize(1);
    return view.parts().get(0).dispute().spans().get(0);
  }

  private static List<String> rows(List<CombinationStepsView.CombinationRow> rows) {
    return rows.stream().map(it -> it.set() + ": " + it.sum() + " = " + it.value()).toList();
  }

  /**
   * A drawing (A) says green, a club guide (C) body color: K = 0.45, beliefs 0.818, 0.091 and 0.091
   * unassigned (Shafer's rule of 1976, worked by hand).
   */
  @Test
  void everyFigureCanBeCheckedByHand() {
    DisputeView.Span span = span(dossier(A_AGAINST_C, RECORD));
    CombinationStepsView working = span.working().orElseThrow();

    assertThat(working.names())
        .containsExactly(
            new CombinationStepsView.Named("1", "works green"),
            new CombinationStepsView.Named("2", "body color"),
            new CombinationStepsView.Named("else", "a value that nobody mentions"),
            new CombinationStepsView.Named("any", "all of these together: nothing is ruled out"));
    assertThat(working.witnesses())
        .containsExactly(
            new CombinationStepsView.Witness("Works drawing 204", "A", "1", "0.9", "0.1"),
            new CombinationStepsView.Witness("Guide for restorers", "C", "2", "0.5", "0.5"));
    assertThat(working.pooled()).isEmpty();
    assertThat(rows(working.steps().get(0).rows()))
        .containsExactly("1: 0.9 = 0.9", "any: 0.1 = 0.1");
    assertThat(rows(working.steps().get(1).rows()))
        .containsExactly(
            "1: 0.9 × 0.5 = 0.45",
            "2: 0.1 × 0.5 = 0.05",
            "any: 0.1 × 0.5 = 0.05",
            "nothing (conflict): 0.9 × 0.5 = 0.45");
    assertThat(working.conflict())
        .isEqualTo(
            "Conflict K = 0.45. What is left is 1 − 0.45 = 0.55; each mass is divided by it.");
    assertThat(rows(working.masses()))
        .containsExactly(
            "1: 0.45 ÷ 0.55 = 0.818", "2: 0.05 ÷ 0.55 = 0.091", "any: 0.05 ÷ 0.55 = 0.091");
    // bets by hand: 0.45 + 0.05/3 = 0.466667 and 0.05 + 0.05/3 = 0.066667; 0.466667/0.533334 =
    // 0.875
    assertThat(working.positions())
        .containsExactly(
            new CombinationStepsView.Figures(
                "1",
                "0.45 ÷ 0.55 = 0.818",
                "(0.45 + 0.05) ÷ 0.55 = 0.909",
                "0.466667 ÷ (0.466667 + 0.066667) = 0.875"),
            new CombinationStepsView.Figures(
                "2",
                "0.05 ÷ 0.55 = 0.091",
                "(0.05 + 0.05) ÷ 0.55 = 0.182",
                "0.066667 ÷ (0.466667 + 0.066667) = 0.125"));
    assertThat(span.state()).isEqualTo("disputed");
    // with one more of grade B for green: 0.485 ÷ 0.515 = 0.942, by hand
    assertThat(span.positions().get(0).settling()).contains("1 of grade B");
  }

  /** The factory photograph (B) for green: 0.485 ÷ 0.515 = 0.942, settled against dissent. */
  @Test
  void aThirdWitnessSettlesIt() {
    DisputeView.Span span =
        span(dossier(A_AGAINST_C + "- {source: photo, says: {finish: green}}\n", RECORD));
    CombinationStepsView working = span.working().orElseThrow();

    assertThat(span.state()).isEqualTo("settled against dissent");
    assertThat(rows(working.pooled())).containsExactly("1: 1 − 0.1 × 0.3 = 0.97");
    assertThat(rows(working.masses())).startsWith("1: 0.485 ÷ 0.515 = 0.942");
    assertThat(span.positions().get(1).scored()).isFalse();
    assertThat(DossierViewFactory.disputed(judge(HEAD + A_AGAINST_C.indent(14), RECORD)))
        .containsExactly("bed-color");
  }

  @Test
  void eachPositionIsToldInTheSameForm() {
    DisputeView.Span span = span(dossier(A_AGAINST_C, RECORD));

    DisputeView.PositionView green = span.positions().get(0);
    DisputeView.PositionView body = span.positions().get(1);
    assertThat(green.testimony())
        .containsExactly(
            new SourceStatementView(
                new CiteView("", "Works drawing 204", "A", "", ""),
                "drawing",
                "0.9",
                "October 1933",
                "",
                true,
                "counts as a witness",
                List.of(
                    new SourceStatementView.StatementLine(
                        "says works green", "note 7", "all build days"))));
    assertThat(body.testimony().get(0).lines())
        .containsExactly(
            new SourceStatementView.StatementLine("says body color", "page 31", "all build days"));
    assertThat(green.earns()).isEqualTo("8 of 8");
    assertThat(body.earns()).isEqualTo("0 of 8");
    assertThat(green.settling()).isNotEmpty();
    assertThat(body.settling()).isNotEmpty();
  }

  /** The leaflet copies the guide through its reprint; what repeats adds nothing. */
  @Test
  void copiesAreTracedToTheirRoot() {
    DisputeView.Span span =
        span(
            dossier(
                A_AGAINST_C
                    + """
                    - {source: reprint, says: {finish: body}}
                    - {source: leaflet, says: {finish: black}}
                    """,
                RECORD));

    assertThat(span.copies()).hasSize(1);
    CopyTreeView root = span.copies().get(0);
    assertThat(root.source().title()).isEqualTo("Guide for restorers");
    assertThat(root.counts()).isEqualTo("counts as a witness");
    assertThat(root.copies())
        .extracting(one -> one.source().title(), CopyTreeView::witness, CopyTreeView::counts)
        .containsExactly(
            tuple("The guide reprinted", false, "adds nothing: it repeats Guide for restorers"),
            tuple("A leaflet", true, "counts as a witness, since it differs from what it copies"));
    assertThat(span.witnesses())
        .isEqualTo("4 sources speak here; 3 of them count as a witness of its own.");
    assertThat(span.working().orElseThrow().witnesses())
        .extracting(CombinationStepsView.Witness::who)
        .doesNotContain("The guide reprinted");
  }

  /** What lies between says nothing here, and is named all the same. */
  @Test
  void aSourceBetweenThatSaysNothingIsNamed() {
    String chain =
        HEAD.replace("copies: [guide, reprint]}", "copies: [reprint]}")
            + (A_AGAINST_C + "- {source: leaflet, says: {finish: body}}\n").indent(14);
    DossierView view =
        DossierViewFactory.of(judge(chain, RECORD), "bed-color", Map.of()).orElseThrow();

    CopyTreeView root = span(view).copies().get(0);
    assertThat(root.copies().get(0).says()).isEqualTo("says nothing of this");
    assertThat(root.copies().get(0).counts()).isEmpty();
    assertThat(root.copies().get(0).copies().get(0).counts())
        .isEqualTo("adds nothing: it repeats Guide for restorers");
  }

  @Test
  void sourcesThatLeaveOpenOrRuleOutStandApart() {
    DisputeView.Span span =
        span(
            dossier(
                A_AGAINST_C
                    + """
                    - {source: photo, leaves_open: {finish: [green, black]}}
                    - {source: letter, rules_out: {finish: black}}
                    """,
                RECORD));

    assertThat(span.between())
        .extracting(one -> one.lines().get(0).says())
        .containsExactly("leaves open: works green or chassis black", "rules out: chassis black");
    assertThat(span.working().orElseThrow().witnesses())
        .extracting(CombinationStepsView.Witness::set)
        .containsExactly("1", "2", "1 or 3", "1 or 2 or else");
  }

  @Test
  void saysWhatNoSourceSpeaksOf() {
    DossierView view =
        dossier(A_AGAINST_C + "- {source: photo, built: 1936, says: {finish: black}}\n", RECORD);

    assertThat(view.parts().get(0).unheard())
        .containsExactly(
            "Kinds of source that were not heard on it: parts list, service letter,"
                + " factory photograph, sales literature, unrestored survivor, recollection,"
                + " trace on this vehicle.",
            "Speak of it, but not of a vehicle like this one: Works photograph 11.",
            "Say nothing of it, as far as the standard knows: The guide reprinted; A leaflet;"
                + " Service letter 9; Parts list.");
  }

  @Test
  void theOwnersPositionIsTheOwnersAndWeighsNothing() {
    String held = "    owner_view: {expects: {finish: black}, reason: It was *always* so.}\n";
    DossierView with = dossier(A_AGAINST_C, RECORD + held);

    OwnerView owner = with.parts().get(0).dispute().owner().orElseThrow();
    assertThat(owner)
        .isEqualTo(
            new OwnerView(
                "finish",
                "chassis black",
                "It was *always* so.",
                "No source here holds just this."));
    assertThat(span(with)).isEqualTo(span(dossier(A_AGAINST_C, RECORD)));
    assertThat(
            dossier(A_AGAINST_C, RECORD + "    owner_view: {expects: {finish: body}}\n")
                .parts()
                .get(0)
                .dispute()
                .owner()
                .orElseThrow()
                .stands())
        .isEqualTo("Some sources hold the same.");
  }

  /** Swapping what two witnesses of one grade say swaps the page and changes nothing else. */
  @Test
  void neitherSideIsFavored() {
    String claims =
        """
        - {source: photo, cite: left, says: {finish: green}}
        - {source: letter, cite: left, says: {finish: black}}
        """;
    String record = RECORD.replace("    finish: green\n", "    note: Not seen.\n");
    String page = dossier(claims, record).parts().toString();
    String swapped =
        dossier(
                claims
                    .replace("finish: green", "finish: GREEN")
                    .replace("finish: black", "finish: green")
                    .replace("finish: GREEN", "finish: black"),
                record)
            .parts()
            .toString();

    assertThat(page).contains("works green").isNotEqualTo(swapped);
    assertThat(
            swapped
                .replace("works green", "WORKS GREEN")
                .replace("chassis black", "works green")
                .replace("WORKS GREEN", "chassis black"))
        .isEqualTo(page);
  }

  /** Which side is written first decides nothing but the order of what is believed alike. */
  @Test
  void theOrderOfClaimsChangesNoFigure() {
    String green = "- {source: drawing, cite: note 7, says: {finish: green}}\n";
    String body = "- {source: guide, cite: page 31, says: {finish: body}}\n";

    assertThat(span(dossier(body + green, RECORD))).isEqualTo(span(dossier(green + body, RECORD)));
  }

  @Test
  void eachStretchStandsByItself() {
    DossierView view =
        dossier(
            A_AGAINST_C + "- {source: letter, built: 1934-05-16/.., says: {finish: body}}\n",
            RECORD);

    List<DisputeView.Span> spans = view.parts().get(0).dispute().spans();
    assertThat(spans)
        .extracting(DisputeView.Span::days)
        .containsExactly("1 May to 15 May 1934", "16 May to 31 May 1934");
    assertThat(spans.get(0).positions().get(1).testimony()).hasSize(1);
    assertThat(spans.get(1).positions().stream().flatMap(it -> it.testimony().stream())).hasSize(3);
    assertThat(spans.get(0).working()).isNotEqualTo(spans.get(1).working());
  }

  @Test
  void whatTheSourceShowsStandsBesideItsName() {
    DossierView view =
        dossier(
            """
            - source: drawing
              says: {finish: green}
              photo: pictures/note.png
              caption: Note 7
            - {source: guide, says: {finish: body}}
            """,
            RECORD);

    assertThat(view.parts().get(0).dispute().pictures())
        .extracting(EvidenceView::id, EvidenceView::caption, EvidenceView::here)
        .containsExactly(tuple("source/pictures/note.png", "Works drawing 204: Note 7", true));
  }

  @Test
  void nothingIsWrittenUpWhereSourcesAgree() {
    String agreed = HEAD + "- {source: drawing, says: {finish: green}}\n".indent(14);

    assertThat(DossierViewFactory.of(judge(agreed, RECORD), "bed-color", Map.of())).isEmpty();
    assertThat(DossierViewFactory.disputed(judge(agreed, RECORD))).isEmpty();
  }

  @Test
  void relatedItemsShareWitnesses() {
    String two =
        HEAD
            + A_AGAINST_C.indent(14)
            + """
                  tailboard:
                    title: Tailboard
                    points: 2
                    claims:
            """
                .indent(0)
            + A_AGAINST_C.indent(14);

    assertThat(
            DossierViewFactory.of(judge(two, RECORD), "bed-color", Map.of())
                .orElseThrow()
                .related())
        .containsExactly(
            new DossierView.Related("Tailboard", "finish", "disputed", "2 of the same witnesses"));
  }
}
