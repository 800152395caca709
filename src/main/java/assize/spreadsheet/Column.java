package assize.spreadsheet;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The columns of the inspection table, in their order. */
enum Column {
  NUMBER("No.", 6, false),
  AREA("Area", 14, false),
  TITLE("Title", 22, false),
  ASPECT("Aspect", 12, true),
  LOOK("What to look at", 40, false),
  HAZARD("Hazard", 26, false),
  RIGHT("Right", 32, false),
  FOUND("Found", 24, true),
  NOTE("Note", 34, true),
  EVIDENCE("Evidence", 18, true),
  HOW("How to write it", 32, false),
  ITEM("Item", 24, true);

  private final String heading;
  private final int width;
  private final boolean read;

  Column(String heading, int width, boolean read) {
    this.heading = heading;
    this.width = width;
    this.read = read;
  }

  String heading() {
    return heading;
  }

  /** Returns its width, in digits. */
  int width() {
    return width;
  }

  /** Says whether it is read back. */
  boolean isRead() {
    return read;
  }

  /** Says whether nothing can be read without it. */
  boolean isNeeded() {
    return this == ASPECT || this == FOUND || this == ITEM;
  }

  /** Returns the column of a heading, capitals, colons and stars left aside. */
  static Optional<Column> of(String heading) {
    String folded = fold(heading);
    return Arrays.stream(values()).filter(it -> fold(it.heading).equals(folded)).findFirst();
  }

  private static String fold(String heading) {
    return Cell.bare(heading.replaceAll("[*:.]", "").replaceAll("\\s+", " "))
        .toLowerCase(Locale.ROOT);
  }
}
