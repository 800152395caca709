package assize.record;

import assize.ruleset.Item;
import assize.schema.Reading;
import assize.schema.ScalarReader;

/** What reading an observation of an item needs. */
record AtItem(RecordReading record, Item item) implements Reading {
  @Override
  public ScalarReader values() {
    return record.values();
  }
}
