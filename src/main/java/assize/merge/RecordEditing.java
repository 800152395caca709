package assize.merge;

import assize.aspect.Aspect;
import assize.edit.EditResult;
import assize.edit.Style;
import assize.edit.VerifiedEdit;
import assize.record.EvidenceItem;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import assize.yaml.FlowYamlWriter;
import assize.yaml.YamlValue;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Changes the text of a record, and writes values as records have them. */
public final class RecordEditing {
  private static final String OBSERVATIONS = VehicleRecord.OBSERVATIONS.name();

  static final Style STYLE =
      new Style(
          Stream.concat(
                  VehicleRecord.SCHEMA.root().meant(),
                  Arrays.stream(Aspect.values())
                      .filter(it -> it.kind().staysPlain())
                      .map(Aspect::word))
              .collect(Collectors.toUnmodifiableSet()),
          Set.of(EvidenceItem.BLACK_OUT.name()),
          // Observations and pieces of evidence stand two names deep; what is below them is small.
          3);

  static final FlowYamlWriter FLOW = STYLE.flow();

  private RecordEditing() {}

  /**
   * Makes a record say what is wanted.
   *
   * @param wanted everything that the record is to say: what it says, some of it changed, and more
   *     behind it
   * @return empty if the changed text does not say exactly that, or is no record by these rules
   */
  public static Optional<EditResult> edit(SourceFile file, RuleSet rules, YamlValue.Group wanted) {
    return VerifiedEdit.edit(file, wanted, STYLE, (text, meant) -> says(text, meant, rules));
  }

  /** Returns how something is written on one line behind its name. */
  public static String written(String name, YamlValue content) {
    return FLOW.of(name, content, false);
  }

  /** Reads a text, and what it is meant to say written in the simplest way, and compares both. */
  private static boolean says(SourceFile text, YamlValue.Group meant, RuleSet rules) {
    SourceFile simple = new SourceFile(text.path(), FlowYamlWriter.JSON.of("", said(meant), false));
    Optional<VehicleRecord> read = RecordReader.parse(text, rules).value();
    Optional<VehicleRecord> expected = RecordReader.parse(simple, rules).value();
    return read.isPresent() && expected.equals(read);
  }

  /** Returns the same without aspects that are left blank, which say nothing. */
  private static YamlValue.Group said(YamlValue.Group whole) {
    return whole
        .get(OBSERVATIONS)
        .flatMap(YamlValue::asGroup)
        .map(
            all ->
                all.fields().stream()
                    .map(it -> new YamlValue.Field(it.name(), saidOfItem(it.value())))
                    .toList())
        .map(it -> new YamlValue.Field(OBSERVATIONS, new YamlValue.Group(it)))
        .map(it -> whole.with(List.of(it)))
        .orElse(whole);
  }

  private static YamlValue saidOfItem(YamlValue item) {
    return item.asGroup()
        .<YamlValue>map(
            group ->
                new YamlValue.Group(
                    group.fields().stream()
                        .filter(it -> !LocatedRecord.isBlank(it.name(), it.value()))
                        .toList()))
        .orElse(item);
  }
}
