package assize.merge;

import assize.diagnostic.Result;
import assize.record.Observation;
import assize.record.VehicleRecord;
import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.Node;
import assize.yaml.YamlTreeBuilder;
import assize.yaml.YamlValue;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A record with where each thing in it is written.
 *
 * @param name how messages name its file
 * @param content what is written under each name
 * @param places where the names stand that lead to a thing, the outermost first
 */
public record LocatedRecord(
    String name, VehicleRecord record, YamlValue.Group content, Map<List<String>, Span> places) {
  static final String OBSERVATIONS = VehicleRecord.OBSERVATIONS.name();
  static final String EVIDENCE = VehicleRecord.EVIDENCE.name();
  static final String TRACES = VehicleRecord.TRACES.name();
  static final String JUDGED = VehicleRecord.INSPECTED.name();
  static final String PRIVATE = VehicleRecord.PRIVATE.name();
  static final String PRIVATE_WORDS = VehicleRecord.PRIVATE_WORDS.name();

  public LocatedRecord {
    places = Collections.unmodifiableMap(new HashMap<>(places));
  }

  /** Keeps a record that was read from a text; empty only where the text is no record. */
  public static Optional<LocatedRecord> of(SourceFile text, VehicleRecord record) {
    Result<Node> tree = YamlTreeBuilder.read(text);
    Map<List<String>, Span> places = new HashMap<>();
    tree.value().ifPresent(root -> note(root, List.of(), places));
    return tree.value()
        .map(YamlValue::of)
        .flatMap(YamlValue::asGroup)
        .map(content -> new LocatedRecord(text.path(), record, content, places));
  }

  private static void note(Node node, List<String> path, Map<List<String>, Span> places) {
    if (node instanceof Node.Mapping mapping) {
      for (Node.Entry entry : mapping.entries()) {
        List<String> below = Stream.concat(path.stream(), Stream.of(entry.name())).toList();
        places.put(below, entry.key().at());
        note(entry.value(), below, places);
      }
    } else if (node instanceof Node.Sequence list) {
      for (int i = 0; i < list.nodes().size(); i++) {
        List<String> below = Stream.concat(path.stream(), Stream.of("" + i)).toList();
        places.put(below, list.nodes().get(i).at().part(0, 1));
        note(list.nodes().get(i), below, places);
      }
    }
  }

  /** Returns the same without white space behind its texts, fit to be written elsewhere. */
  LocatedRecord tidy() {
    return content
        .tidy()
        .asGroup()
        .map(it -> new LocatedRecord(name, record, it, places))
        .orElse(this);
  }

  /** Says whether a thing is written in its file: a table leaves out what it only cites. */
  boolean writes(List<String> path) {
    return places.containsKey(path);
  }

  /** Returns where a thing is written, or what it belongs to. */
  public Span at(List<String> path) {
    for (int length = path.size(); length > 0; length--) {
      Span at = places.get(path.subList(0, length));
      if (at != null) {
        return at;
      }
    }
    return record.at();
  }

  /** Says whether something is written under a key of an item, or holds for all of them. */
  public boolean says(RecordField part) {
    boolean forAll = IncomingValue.WITNESSED.contains(part.key());
    return observation(part.item())
            .get(part.key())
            .filter(it -> !isBlank(part.key(), it))
            .isPresent()
        || forAll && content.at(List.of(JUDGED, part.key())).isPresent();
  }

  /** Returns what is written of an item. */
  YamlValue.Group observation(String item) {
    return content
        .at(List.of(OBSERVATIONS, item))
        .flatMap(YamlValue::asGroup)
        .orElse(new YamlValue.Group(List.of()));
  }

  /** Says whether an aspect waits for what will be found. */
  static boolean isBlank(String key, YamlValue value) {
    return value.isBlank() && Observation.TABLE.block().mayBeBlank(key);
  }

  /** Says whether nothing was found of an item yet; a record to fill in names it all the same. */
  boolean saysNothingOf(String item) {
    return observation(item).fields().stream().allMatch(it -> isBlank(it.name(), it.value()));
  }

  @Override
  public String toString() {
    return name;
  }
}
