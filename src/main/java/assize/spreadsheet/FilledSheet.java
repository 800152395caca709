package assize.spreadsheet;

import assize.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * What a filled-in table says; every value has been read by the rules of records.
 *
 * @param madeFor what the table was made for, where it still says so
 * @param entries in the order of the rows; each item and key once; nothing for an empty cell
 */
public record FilledSheet(Optional<SheetOrigin> madeFor, List<SheetEntry> entries) {
  public FilledSheet {
    entries = List.copyOf(entries);
  }

  /**
   * One thing that the table says of one item.
   *
   * @param item the item's name in the rule set
   * @param key what stands before the colon in a record: the word of an aspect, {@code note} or
   *     {@code evidence}
   * @param yaml what is to stand behind the colon, on one line, quoted where it has to be
   * @param at the cell; as a place it reads {@code truck.xlsx, sheet "Inspection", cell F12}
   */
  public record SheetEntry(String item, String key, String yaml, Span at) {}
}
