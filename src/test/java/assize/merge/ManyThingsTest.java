package assize.merge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.edit.ManualEdit;
import assize.record.RecordReader;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Records with thousands of things to merge. */
class ManyThingsTest {
  private static final int ITEMS = 330;
  private static final RuleSet RULES = rules();

  private static String lines(int count, IntFunction<String> line) {
    return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining());
  }

  private static RuleSet rules() {
    String text =
        "rule_set: many\nname: Many\nedition: '1'\nscale: {method: sum, out_of: 10}\n"
            + "models: {X1: {name: X1, production: 1932/1936}}\n"
            + "areas:\n  a:\n    name: A\n    items:\n"
            + lines(
                ITEMS, i -> "      i" + i + ": {title: I, points: 1, expect: {present: yes}}\n");
    return RuleSetReader.parse(List.of(new SourceFile("many.yaml", text))).value().orElseThrow();
  }

  private static LocatedRecord record(String name, String more) {
    String text = "record: one\nrules: many.yaml\nvehicle: {name: One, model: X1}\n" + more;
    SourceFile file = new SourceFile(name, text);
    var read = RecordReader.parse(file, RULES);
    return LocatedRecord.of(
            file, read.value().orElseThrow(() -> new AssertionError(read.diagnostics().get(0))))
        .orElseThrow();
  }

  private static MergeResult merge(LocatedRecord mine, LocatedRecord theirs) {
    return Merger.merge(RULES, mine, List.of(theirs), new TakeChoices(Map.of()), name -> true);
  }

  private static String evidence(int count) {
    return "evidence:\n" + lines(count, i -> "  e" + i + ": {measurement: Rule " + i + "}\n");
  }

  private static String traces(int each, String where) {
    return "traces:\n"
        + lines(
            each * ITEMS,
            i ->
                "  - {item: i"
                    + i / each
                    + ", grade: B, says: {present: yes}, where: "
                    + where
                    + i
                    + ", evidence: [e0]}\n");
  }

  /** A record by all that it says, for each piece of evidence, would be 10^9 pieces. */
  @Test
  void twentyThousandPiecesOfEvidenceAreTaken() {
    LocatedRecord theirs =
        record(
            "theirs.yaml",
            evidence(20_000)
                + "observations: {i0: {present: yes, evidence: ["
                + IntStream.range(0, 20_000)
                    .mapToObj(i -> "e" + i)
                    .collect(Collectors.joining(", "))
                + "]}}\n");
    MergeResult merge = merge(record("mine.yaml", ""), theirs);
    // and what was found, and what it cites
    assertThat(merge.steps()).hasSize(20_002);
    assertThat(merge.waiting()).isEmpty();
  }

  /** Were each step to hold the whole list, to look for each in it would take 10^10 steps. */
  @Test
  void thousandsOfTracesAreAddedToOneList() {
    LocatedRecord mine = record("mine.yaml", evidence(1));
    LocatedRecord theirs = record("theirs.yaml", evidence(1) + traces(3, "W"));
    MergeResult merge = merge(mine, theirs);
    assertThat(merge.steps()).hasSize(3 * ITEMS);
    assertThat(merge.steps()).allMatch(it -> it.isMore() && it.value().asItems().isPresent());
    assertThat(merge.steps()).allMatch(it -> it.value().asItems().orElseThrow().all().size() == 1);
    MergeApplier.Applied applied = MergeApplier.apply(mine, RULES, merge);
    assertThat(applied.undone()).isEmpty();
    MergeResult again = merge(record("mine.yaml", after(applied)), theirs);
    assertThat(again.steps()).isEmpty();
    assertThat(again.same()).isEqualTo(3 * ITEMS + 1);
  }

  private static String after(MergeApplier.Applied applied) {
    String text = applied.edited().text();
    return text.substring(text.indexOf("evidence:"));
  }

  /**
   * A fourth trace on an item makes a record that can't be read. To find each of them by itself
   * would take this record, of three million characters, thousands of times.
   */
  @Test
  void whatCannotBeWrittenIsLeftToBeWrittenByHand() {
    String remark = "# " + "x".repeat(98) + "\n";
    LocatedRecord mine = record("mine.yaml", remark.repeat(35_000) + evidence(1) + traces(3, "V"));
    LocatedRecord theirs = record("theirs.yaml", evidence(1) + traces(3, "W"));
    MergeResult merge = merge(mine, theirs);
    MergeApplier.Applied applied = MergeApplier.apply(mine, RULES, merge);
    assertThat(applied.done()).isEmpty();
    assertThat(applied.undone()).hasSize(3 * ITEMS);
    assertThat(applied.edited().text()).isEqualTo(mine.record().at().file().text());
    assertThat(applied.edited().byHand()).hasSize(1);
    ManualEdit all = applied.edited().byHand().get(0);
    assertThat(all.path()).containsExactly("traces");
    assertThat(all.write()).startsWith("traces: [").contains("V0,", "W0,", "W" + (3 * ITEMS - 1));
  }

  @Test
  void whatCanBeWrittenIsWrittenBesideWhatCannot() {
    LocatedRecord mine = record("mine.yaml", evidence(1) + traces(3, "V"));
    LocatedRecord theirs =
        record(
            "theirs.yaml",
            evidence(1)
                + "traces: [{item: i0, grade: B, says: {present: yes}, where: W, evidence: [e0]}]\n"
                + "observations:\n  i0: {present: yes}\n  i1: {present: yes}\n");
    MergeApplier.Applied applied = MergeApplier.apply(mine, RULES, merge(mine, theirs));
    assertThat(applied.done()).extracting(it -> it.path().get(1)).containsExactly("i0", "i1");
    assertThat(applied.undone()).hasSize(1);
    assertThat(applied.edited().byHand()).hasSize(1);
  }
}
