package assize.merge;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.schema.Field;
import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.FlowYamlWriter;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads single values, each with a place of its own, as the record of the vehicle that they were
 * filled in for. They may cite the evidence that its record has.
 */
public final class CellValueReader {
  private static final List<String> HEAD =
      Stream.of(
              VehicleRecord.ID, VehicleRecord.RULES, VehicleRecord.VEHICLE, VehicleRecord.EVIDENCE)
          .map(Field::name)
          .toList();

  private final StringBuilder text = new StringBuilder();
  private final Map<Integer, Span> lines = new HashMap<>();
  private int line = 1;

  private CellValueReader() {}

  /**
   * One value.
   *
   * @param key what stands before the colon in a record
   * @param yaml what stands behind it, on one line
   * @param at where it is filled in
   */
  public record Cell(String item, String key, String yaml, Span at) {}

  /**
   * Reads values by a record's rule set; what is wrong is said of their own places.
   *
   * @param name how messages name the file that they come from
   * @param mine the record of the vehicle
   */
  public static Result<LocatedRecord> read(
      String name, LocatedRecord mine, RuleSet rules, List<Cell> cells) {
    CellValueReader written = new CellValueReader();
    written.head(mine);
    Map<List<String>, Span> places = written.observations(cells);
    SourceFile file = new SourceFile(name, written.text.toString());
    Result<VehicleRecord> read = RecordReader.parse(file, rules);
    Optional<LocatedRecord> record =
        read.value()
            .flatMap(it -> LocatedRecord.of(file, it))
            .map(it -> new LocatedRecord(name, it.record(), it.content(), places));
    return new Result<>(record, read.diagnostics().stream().map(written::placed).toList());
  }

  private void head(LocatedRecord mine) {
    for (String key : HEAD) {
      Optional<YamlValue> value = mine.content().get(key);
      value.ifPresent(it -> put(key + ": " + FlowYamlWriter.JSON.of(key, it, false)));
    }
  }

  private Map<List<String>, Span> observations(List<Cell> cells) {
    Map<List<String>, Span> places = new HashMap<>();
    Map<String, List<Cell>> items = new LinkedHashMap<>();
    cells.forEach(it -> items.computeIfAbsent(it.item(), item -> new ArrayList<>()).add(it));
    if (!items.isEmpty()) {
      put(LocatedRecord.OBSERVATIONS + ":");
    }
    items.forEach(
        (item, values) -> {
          lines.put(line, values.get(0).at());
          put("  " + FlowYamlWriter.JSON.name(item) + ":");
          for (Cell one : values) {
            lines.put(line, one.at());
            put("    " + one.key() + ": " + one.yaml());
            places.put(new RecordField(item, one.key()).path(), one.at());
          }
        });
    return places;
  }

  private void put(String written) {
    text.append(written).append('\n');
    line++;
  }

  private Diagnostic placed(Diagnostic it) {
    Span at = lines.getOrDefault(it.at().line(), it.at());
    return new Diagnostic(it.code(), at, it.message(), it.hint(), List.of(), it.subjects());
  }
}
