package assize.spreadsheet;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** Reads a CSV file (RFC 4180) with commas, semicolons or tabs: those that give known headings. */
final class CsvTable {
  private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

  /**
   * One way to read the file.
   *
   * @param grid the rows up to the one that can't be read, if there is one
   * @param bad the number of that row, from 1
   */
  private record Reading(SheetGrid grid, Optional<Integer> bad) {
    int headings() {
      return HeaderRow.best(grid).map(HeaderRow.HeaderCells::known).orElse(0);
    }
  }

  private CsvTable() {}

  static SheetGrid read(byte[] bytes) throws UnreadableTableException {
    String text = CsvText.of(bytes);
    Reading best = reading(text, SEPARATORS.get(0));
    for (char separator : SEPARATORS.subList(1, SEPARATORS.size())) {
      Reading other = reading(text, separator);
      best = other.headings() > best.headings() ? other : best;
    }
    if (best.bad().isPresent()) {
      throw UnreadableTableException.notATable(
          "row "
              + best.bad().get()
              + " of this table can't be read: a quote in it is not closed, or something stands"
              + " behind one",
          "put the text of the cell in double quotes, and double those inside of it");
    }
    return best.grid();
  }

  private static Reading reading(String text, char separator) {
    SheetGrid.Builder grid = new SheetGrid.Builder("");
    int row = 0;
    try (CsvReader<CsvRecord> reader =
            CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(false)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text);
        CloseableIterator<CsvRecord> records = reader.iterator()) {
      while (records.hasNext()) {
        List<String> fields = records.next().getFields();
        for (int column = 0; column < fields.size(); column++) {
          grid.put(row, column, Cell.Kind.TEXT, FormulaGuard.off(fields.get(column)));
        }
        row++;
      }
      return new Reading(grid.build(List.of()), Optional.empty());
    } catch (CsvParseException e) {
      return new Reading(grid.build(List.of()), Optional.of(row + 1));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
