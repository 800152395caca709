package assize.share;

import assize.record.Unshared;
import java.util.List;

/**
 * What the copy leaves out in one place.
 *
 * @param item the item's title; empty where it is the record's own
 * @param what at least one, in the order of {@link Unshared}
 */
public record Omission(String item, List<Unshared> what) {
  public Omission {
    what = List.copyOf(what);
  }
}
