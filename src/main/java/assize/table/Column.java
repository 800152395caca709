package assize.table;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The columns of the walk-round table, in their order. */
enum Column {
  NUMBER("No.", 6, false),
  AREA("Area", 18, false),
  TITLE("Title", 26, false),
  ASPECT("Aspect", 13, true),
  LOOK("What to look at", 44, false),
  CAUTION("Caution", 30, false),
  RIGHT("Right", 36, false),
  FOUND("Found", 26, true),
  NOTE("Note", 34, true),
  EVIDENCE("Evidence", 20, true),
  HOW("How to write it", 34, false),
  ITEM("Item", 26, true);

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
