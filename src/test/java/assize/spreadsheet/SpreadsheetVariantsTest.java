package assize.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.spreadsheet.Tables.Vehicle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A table says the same however a spreadsheet saved it, and wherever its columns and rows went. */
class SpreadsheetVariantsTest {
  private static final List<String> ROWS =
      List.of(
          "Item,Aspect,Found,Note",
          "data-plate,size,\"2.4 mm, to 0.1 mm\",\"said \"\"new\"\"\"",
          "horn-button,finish,nickel,",
          "data-plate,part number,0123-7,±");

  private static final Map<String, String> SAID =
      new TreeMap<>(
          Map.of(
              "data-plate size", "2.4 mm, to 0.1 mm",
              "data-plate note", "\"said \\\"new\\\"\\n±\"",
              "horn-button finish", "nickel",
              "data-plate part_number", "0123-7"));

  @TempDir private Path folder = Path.of("");

  private Map<String, String> said(byte[] bytes) throws Exception {
    Vehicle vehicle = BadTablesTest.vehicle();
    FilledSheet filled = Tables.good(vehicle.read(Tables.file(folder, "t.csv", bytes)));
    Map<String, String> said = new TreeMap<>();
    filled.entries().forEach(it -> said.put(it.item() + " " + it.key(), it.yaml()));
    return said;
  }

  private static String rows(String separator, String end) {
    return String.join(end, ROWS).replaceAll(",(?! to)", separator);
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void everySeparatorAndEveryLineEnd(String separator) throws Exception {
    for (String end : List.of("\r\n", "\n", "\r")) {
      String text = rows(separator, end);
      assertThat(said(text.getBytes(StandardCharsets.UTF_8))).isEqualTo(SAID);
      assertThat(said(("\uFEFF" + text).getBytes(StandardCharsets.UTF_8))).isEqualTo(SAID);
      assertThat(said(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE))).isEqualTo(SAID);
      assertThat(said(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE))).isEqualTo(SAID);
    }
  }

  @Test
  void headingsMayStandLowerAndInAnyOrder() throws Exception {
    String text =
        "sep=;\n\nInspection of May;;\n found: ;ASPECT;*Item\n\nnickel;Finish;horn-button\n";
    assertThat(said(text.getBytes(StandardCharsets.UTF_8)))
        .isEqualTo(Map.of("horn-button finish", "nickel"));
  }

  @Test
  void rowsWithNothingFilledInAreNotLookedAt() throws Exception {
    String text = "Item,Aspect,Found\nno such item,what,\nhorn-button,finish, nickel\u00A0 \n";
    assertThat(said(text.getBytes(StandardCharsets.UTF_8)))
        .isEqualTo(Map.of("horn-button finish", "nickel"));
  }
}
