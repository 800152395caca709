package assize.spreadsheet;

import java.util.Optional;

/**
 * A cell that holds something.
 *
 * @param row counted from 0
 * @param column counted from 0
 * @param text what it holds: a text as typed but for space around it, a number in its shortest
 *     form, a day as ISO 8601 writes it, {@code yes} or {@code no}, a formula with its sign, a
 *     fault's name
 */
record Cell(int row, int column, Kind kind, String text) {
  private static final int LETTERS = 26;

  /** What the spreadsheet takes it for. */
  enum Kind {
    TEXT,
    NUMBER,
    /** A number that is shown in another form: a percentage, a fraction, money. */
    SHAPED_NUMBER,
    DAY,
    YES_NO,
    FORMULA,
    FAULT
  }

  /** Returns a text without the space around it, those that spreadsheets put in included. */
  static String bare(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isSpace(text.charAt(from))) {
      from++;
    }
    while (to > from && isSpace(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }

  /** Returns its name, as in {@code F12}. */
  String name() {
    return name(row, column);
  }

  static String name(int row, int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column + 1; rest > 0; rest = (rest - 1) / LETTERS) {
      letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
    }
    return letters.append(row + 1).toString();
  }

  /** A place in a sheet, both counted from 0. */
  record Place(int row, int column) {
    private static final int MOST_LETTERS = 3;
    private static final int MOST_DIGITS = 7;

    /** Reads a cell's name. */
    static Optional<Place> of(String name) {
      int column = 0;
      int at = 0;
      while (at < name.length() && name.charAt(at) >= 'A' && name.charAt(at) <= 'Z') {
        column = column * LETTERS + (name.charAt(at) - 'A' + 1);
        at++;
        if (at > MOST_LETTERS) {
          return Optional.empty();
        }
      }
      String digits = name.substring(at);
      boolean good = at > 0 && digits.matches("[1-9][0-9]{0," + (MOST_DIGITS - 1) + "}");
      return good
          ? Optional.of(new Place(Integer.parseInt(digits) - 1, column - 1))
          : Optional.empty();
    }
  }
}
