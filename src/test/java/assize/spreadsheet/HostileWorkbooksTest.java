package assize.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.spreadsheet.Tables.Vehicle;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody made to use up memory or time is refused at a bound. */
class HostileWorkbooksTest {
  @TempDir private Path folder = Path.of("");

  private List<DiagnosticCode> said(byte[] bytes) throws Exception {
    Vehicle vehicle = BadTablesTest.vehicle();
    Path file = Tables.file(folder, "t.xlsx", bytes);
    return vehicle.read(file).diagnostics().stream().map(Diagnostic::code).toList();
  }

  @Test
  void aPartThatUnpacksToTooMuch() throws Exception {
    byte[] bomb =
        BadWorkbooks.zip(Map.of("xl/media/a.png", "0".repeat(WorkbookParts.MOST_INFLATED + 1)));
    assertThat(bomb.length).isLessThan(100_000);
    assertThat(said(bomb)).containsExactly(DiagnosticCode.FILE_TOO_LARGE);
  }

  @Test
  void cellsThatUnpackToTooMuch() throws Exception {
    byte[] bomb = BadWorkbooks.workbook("<a>" + " ".repeat(WorkbookParts.MOST_KEPT) + "</a>");
    assertThat(said(bomb)).containsExactly(DiagnosticCode.FILE_TOO_LARGE);
  }

  @Test
  void tooManyCells() throws Exception {
    String row = "<row>" + "<c/>".repeat(1000) + "</row>";
    String rows = row.repeat(SheetReader.MOST_CELLS / 1000) + "<row><c/></row>";
    assertThat(said(BadWorkbooks.sheet(rows))).containsExactly(DiagnosticCode.TOO_MANY_ENTRIES);
  }

  @Test
  void tooManyTexts() throws Exception {
    String texts = "<sst>" + "<si/>".repeat(Xml.MOST_EVENTS / 2) + "</sst>";
    assertThat(said(BadWorkbooks.workbook("<worksheet/>", texts)))
        .containsExactly(DiagnosticCode.FILE_TOO_LARGE);
  }

  @Test
  void manyCellsThatAreOneLongText() throws Exception {
    StringBuilder rows =
        new StringBuilder(
            BadWorkbooks.row(
                1,
                BadWorkbooks.text("A1", "Item"),
                BadWorkbooks.text("B1", "Aspect"),
                BadWorkbooks.text("C1", "Found")));
    for (int row = 2; row < 200; row++) {
      rows.append(BadWorkbooks.row(row, "<c r='C" + row + "' t='s'><v>0</v></c>"));
    }
    String sheet = "<worksheet><sheetData>" + rows + "</sheetData></worksheet>";
    String texts = "<sst><si><t>" + "x".repeat(100_000) + "</t></si></sst>";
    assertThat(said(BadWorkbooks.workbook(sheet, texts)))
        .containsExactly(DiagnosticCode.FILE_TOO_LARGE);
  }

  @Test
  void tooManyParts() throws Exception {
    Map<String, String> parts = new TreeMap<>();
    for (int i = 0; i <= WorkbookParts.MOST_PARTS; i++) {
      parts.put("xl/" + i + ".xml", "");
    }
    assertThat(said(BadWorkbooks.zip(parts))).containsExactly(DiagnosticCode.FILE_TOO_LARGE);
  }

  @Test
  void aFileThatIsTooLong() throws Exception {
    assertThat(said(new byte[TableReader.LARGEST + 1]))
        .containsExactly(DiagnosticCode.FILE_TOO_LARGE);
  }
}
