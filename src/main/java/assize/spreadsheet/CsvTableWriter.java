package assize.spreadsheet;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategies;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Writes the table as CSV (RFC 4180): UTF-8 with a mark by which spreadsheets know it, every cell
 * in quotes, and none that a spreadsheet would take for a formula.
 */
final class CsvTableWriter {
  private static final char MARK = '\uFEFF';

  private CsvTableWriter() {}

  static byte[] write(InspectionTable table) {
    StringWriter out = new StringWriter();
    out.append(MARK);
    try (CsvWriter csv =
        CsvWriter.builder()
            .lineDelimiter(LineDelimiter.CRLF)
            .quoteStrategy(QuoteStrategies.ALWAYS)
            .build(out)) {
      List<String> headings = new ArrayList<>();
      Arrays.stream(Column.values()).map(Column::heading).forEach(headings::add);
      headings.add(table.madeFor().heading());
      csv.writeRecord(headings);
      for (InspectionTable.TableRow row : table.rows()) {
        List<String> cells = new ArrayList<>();
        row.cells().stream().map(FormulaGuard::on).forEach(cells::add);
        cells.add("");
        csv.writeRecord(cells);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }
}
