package assize.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ManyRowsTest {
  /** Were they put together anew at each row, they would come to 10^10 characters. */
  @Test
  void notesOfTenThousandRowsAreOneNote(@TempDir Path folder) throws Exception {
    Tables.Vehicle vehicle =
        Tables.Vehicle.of(
            "rule_set: one\nname: One\nedition: '1'\nscale: {method: sum, out_of: 10}\n"
                + "models: {X1: {name: X1, production: 1932/1936}}\n"
                + "areas: {a: {name: A, items: {"
                + "horn: {title: Horn, points: 1, expect: {present: yes}}}}}\n",
            "record: one\nrules: rules.yaml\nvehicle: {name: One, model: X1}\n"
                + "evidence: {rule: {measurement: Rule}, tape: {measurement: Tape}}\n");
    Path table =
        Files.writeString(
            folder.resolve("t.csv"),
            "Item,Aspect,Found,Note,Evidence\n"
                + IntStream.range(0, 10_000)
                    .mapToObj(
                        i ->
                            "horn,present,yes,"
                                + "x".repeat(300)
                                + i
                                + (i % 2 == 0 ? ",tape" : ",rule"))
                    .collect(Collectors.joining("\n")));
    FilledSheet filled =
        TableReader.read(table, "t.csv", vehicle.rules(), vehicle.record()).value().orElseThrow();
    assertThat(filled.entries())
        .extracting(FilledSheet.SheetEntry::key)
        .containsExactly("present", "note", "evidence");
    assertThat(filled.entries())
        .extracting(it -> it.at().toString())
        .containsExactly("t.csv, cell C2", "t.csv, cell D2", "t.csv, cell E2");
    assertThat(filled.entries().get(1).yaml()).contains("x0").contains("x9999");
    assertThat(filled.entries().get(2).yaml()).isEqualTo("[tape, rule]");
  }
}
