package assize.redaction;

import java.util.List;

/**
 * What the copy leaves out in one place.
 *
 * @param item the item's title; empty where it is the record's own
 * @param what at least one, in words
 */
public record Omission(String item, List<String> what) {
  public Omission {
    what = List.copyOf(what);
  }
}
