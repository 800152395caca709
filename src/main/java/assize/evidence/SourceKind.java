package assize.evidence;

import java.util.Arrays;
import java.util.Optional;

/** What kind of thing a source is. */
public enum SourceKind {
  DRAWING("drawing"),
  PARTS_LIST("parts list"),
  SERVICE_LETTER("service letter"),
  FACTORY_PHOTOGRAPH("factory photograph"),
  SALES_LITERATURE("sales literature"),
  UNRESTORED_SURVIVOR("unrestored survivor"),
  CLUB_GUIDE("club guide"),
  RECOLLECTION("recollection"),
  TRACE("trace on this vehicle");

  private final String word;

  SourceKind(String word) {
    this.word = word;
  }

  /** Returns the name that rule sets use. */
  public String word() {
    return word;
  }

  /** Returns the kind of that name. */
  public static Optional<SourceKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
  }
}
