package assize.record;

import assize.schema.Reading;
import assize.schema.ScalarReader;
import assize.yaml.Node;

/** What reading a piece of evidence needs: its name too. */
record AtEvidence(RecordReading record, Node.Entry entry) implements Reading {
  @Override
  public ScalarReader values() {
    return record.values();
  }
}
