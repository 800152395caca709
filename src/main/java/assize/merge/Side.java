package assize.merge;

import assize.text.Span;
import assize.yaml.YamlValue;

/**
 * What one record says of one thing.
 *
 * @param from how messages name its file
 * @param at where it is written
 */
public record Side(String from, Span at, YamlValue value) {}
