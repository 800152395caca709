package assize.record;

import assize.ruleset.Item;
import assize.schema.Reading;
import assize.schema.Values;

/** What reading an observation of an item needs. */
record AtItem(RecordReading record, Item item) implements Reading {
  @Override
  public Values values() {
    return record.values();
  }
}
