package assize.spreadsheet;

import assize.text.SourceFile;
import assize.text.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The texts of cells, one below the other, so that messages can show each where it stands. */
final class CellSourceText {
  private final SourceFile file;
  private final Map<Cell, Integer> starts = new HashMap<>();

  /**
   * Puts texts together.
   *
   * @param path how messages name the file
   * @param sheet the name of the sheet; empty where there is but one
   * @param cells in the order of rows
   */
  CellSourceText(String path, String sheet, Collection<Cell> cells) {
    StringBuilder text = new StringBuilder();
    List<String> places = new ArrayList<>();
    String before = sheet.isEmpty() ? "" : "sheet \"" + sheet + "\", ";
    for (Cell cell : cells) {
      starts.put(cell, text.length());
      text.append(cell.text()).append('\n');
      String place = before + "cell " + cell.name();
      // As many lines as SourceFile finds: a return and a line feed together end one.
      cell.text()
          .replace("\r\n", "\n")
          .chars()
          .filter(c -> c == '\n' || c == '\r')
          .forEach(c -> places.add(place));
      places.add(place);
    }
    this.file = SourceFile.ofCells(path, text.toString(), places);
  }

  SourceFile file() {
    return file;
  }

  /** Returns where the text of a cell stands. */
  Span at(Cell cell) {
    int start = starts.getOrDefault(cell, 0);
    return file.span(start, start + cell.text().length());
  }
}
