package assize.merge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Result;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.text.SourceFile;
import assize.text.Span;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CellValueReaderTest {
  private static final SourceFile TABLE =
      SourceFile.ofCells(
          "walk.csv", "chrome\nx: y\nwide\n", List.of("cell F2", "cell G3", "cell F4"));
  private static final LocatedRecord OURS =
      record(
          """
          record: our-x1
          rules: rules.yaml
          vehicle: {name: "Ours: the \\"green\\" one"}
          evidence: {rule: {measurement: Steel rule}}
          observations: {horn-button: {finish: nickel}}
          """);

  private static LocatedRecord record(String text) {
    SourceFile file = new SourceFile("ours.yaml", text);
    VehicleRecord record = RecordReader.parse(file, Samples.RULES).value().orElseThrow();
    return LocatedRecord.of(file, record).orElseThrow();
  }

  private static Span line(int line) {
    int start = TABLE.offset(line, 1);
    return TABLE.span(start, start + TABLE.line(line).length());
  }

  @Test
  void valuesAreMergedWithTheirOwnPlaces() {
    Result<LocatedRecord> read =
        CellValueReader.read(
            "walk.csv",
            OURS,
            Samples.RULES,
            List.of(
                new CellValueReader.Cell("horn-button", "finish", "chrome", line(1)),
                new CellValueReader.Cell("bed", "note", "'x: y'", line(2)),
                new CellValueReader.Cell("bed", "evidence", "[rule]", line(2))));
    assertThat(read.diagnostics()).isEmpty();
    MergeResult merge =
        Merger.merge(
            Samples.RULES,
            OURS,
            List.of(read.value().orElseThrow()),
            new TakeChoices(Map.of()),
            f -> true);
    assertThat(merge.conflicts()).hasSize(1);
    assertThat(merge.conflicts().get(0).theirs().get(0).at()).hasToString("walk.csv, cell F2");
    assertThat(merge.steps()).hasSize(2);
    assertThat(merge.steps().get(0).from().get(0).at()).hasToString("walk.csv, cell G3");
    assertThat(merge.asides()).isEmpty();
    String after = MergeApplier.apply(OURS, Samples.RULES, merge).edited().text();
    assertThat(after).contains("bed: {note: 'x: y', evidence: [rule]}");
  }

  @Test
  void whatIsWrongIsSaidOfItsCell() {
    Result<LocatedRecord> read =
        CellValueReader.read(
            "walk.csv",
            OURS,
            Samples.RULES,
            List.of(
                new CellValueReader.Cell("pinstripe", "size", "wide", line(3)),
                new CellValueReader.Cell("horn-buton", "finish", "chrome", line(1))));
    assertThat(read.value()).isEmpty();
    assertThat(read.diagnostics()).hasSize(2);
    assertThat(read.diagnostics().stream().map(it -> it.at().toString()))
        .containsExactlyInAnyOrder("walk.csv, cell F4", "walk.csv, cell F2");
  }
}
