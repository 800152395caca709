package assize.ruleset;

import assize.aspect.Definition;
import assize.aspect.Vocabulary;
import assize.schema.Reading;
import assize.schema.ScalarReader;

/**
 * What reading an item needs.
 *
 * @param area the area it stands in
 */
record ItemReading(Definition definition, String area, ClaimPhotos photos) implements Reading {
  String id() {
    return definition.id();
  }

  Vocabulary names() {
    return definition.names();
  }

  @Override
  public ScalarReader values() {
    return definition.values();
  }
}
