package assize.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.spreadsheet.Tables.Vehicle;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written is a workbook to a reader that is not ours. */
class WorkbookWriterTest {
  @TempDir private Path folder = Path.of("");

  private static List<Row> rows(Sheet sheet) throws Exception {
    try (Stream<Row> rows = sheet.openStream()) {
      return rows.toList();
    }
  }

  @Test
  void anotherReaderFindsThreeSheetsOfTexts() throws Exception {
    Vehicle vehicle = Vehicle.demonstration("l45-4388");
    byte[] file = vehicle.table(".xlsx");
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(file))) {
      assertThat(book.getSheets().map(Sheet::getName))
          .containsExactly("Inspection", "Vehicle", "Words");
      List<Row> rows = rows(book.getFirstSheet());
      assertThat(rows).hasSize(1 + vehicle.view().aspects());
      assertThat(rows.get(0).getCellText(Column.FOUND.ordinal())).isEqualTo("Found");
      List<String> found = new ArrayList<>();
      for (Sheet sheet : book.getSheets().toList()) {
        rows(sheet)
            .forEach(
                row ->
                    row.forEach(
                        cell -> {
                          if (cell != null && cell.getType() != CellType.EMPTY) {
                            assertThat(cell.getType()).isEqualTo(CellType.STRING);
                          }
                        }));
      }
      rows.forEach(row -> found.add(row.getCellText(Column.FOUND.ordinal())));
      assertThat(found).contains("1/4 in", "58 ± 3", "4.90 mm ± 0.05 mm", "32", "C3", "09.34");
    }
  }

  @Test
  void hazardsAndWhatItWasMadeForStandInIt() throws Exception {
    Vehicle vehicle = Vehicle.demonstration("l45-4388");
    try (ReadableWorkbook book =
        new ReadableWorkbook(new ByteArrayInputStream(vehicle.table(".xlsx")))) {
      List<Row> rows = rows(book.getFirstSheet());
      assertThat(rows.get(0).getCellText(Column.values().length))
          .isEqualTo(SheetOrigin.of(vehicle.rules(), "l45-4388").heading());
      assertThat(rows.get(1).getCellText(Column.HAZARD.ordinal())).contains("Do not dry-sand");
      List<Row> facts = rows(book.findSheet("Vehicle").orElseThrow());
      assertThat(facts).extracting(it -> it.getCellText(0)).contains("Vehicle", "SHA-256");
      assertThat(facts).extracting(it -> it.getCellText(1)).contains("l45-4388");
    }
  }

  @Test
  void theSameRecordGivesTheSameBytesWithoutATime() throws Exception {
    Vehicle vehicle = Vehicle.demonstration("q-1187");
    byte[] file = vehicle.table(".xlsx");
    assertThat(vehicle.table(".xlsx")).isEqualTo(file);
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        assertThat(entry.getTimeLocal()).isEqualTo(LocalDateTime.of(1980, 1, 1, 0, 0));
        String text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        assertThat(text).doesNotContain("dcterms:created", "<f>");
      }
    }
  }

  /** Which parts a sheet may have, and in which order (ECMA-376 part 1, 18.3.1.99, from memory). */
  @Test
  void thePartsOfASheetStandInTheOrderOfTheStandard() throws Exception {
    ZipContainer.read(
        Vehicle.demonstration("q-1187").table(".xlsx"),
        Integer.MAX_VALUE,
        100,
        part -> {
          if (part.name().equals("xl/worksheets/sheet1.xml")) {
            String text = new String(part.bytes(), StandardCharsets.UTF_8);
            List<Integer> places =
                Stream.of(
                        "<sheetViews",
                        "<cols",
                        "<sheetData",
                        "<autoFilter",
                        "<dataValidations",
                        "<pageSetup",
                        "<headerFooter")
                    .map(text::indexOf)
                    .toList();
            assertThat(places).isSorted().doesNotContain(-1);
            assertThat(text).contains("topLeftCell=\"A2\"", "state=\"frozen\"", "'Words'!$B$");
          }
        });
  }
}
