package assize.merge;

import java.util.List;

/**
 * One thing that a record can say of an item.
 *
 * @param key what stands before the colon: the word of an aspect, or another, such as {@code note}
 */
public record RecordField(String item, String key) {

  /** Returns the names that lead to it in a record. */
  List<String> path() {
    return List.of(LocatedRecord.OBSERVATIONS, item, key);
  }

  /** Returns it as it is typed: {@code horn-button.finish}. */
  @Override
  public String toString() {
    return item + "." + key;
  }
}
