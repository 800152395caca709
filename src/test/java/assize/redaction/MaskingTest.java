package assize.redaction;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.judge.Judge;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Table;
import assize.text.FileChecksum;
import assize.text.SourceFile;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Plants a number in every text of a record, whatever it is, and looks for it afterwards. */
class MaskingTest {
  private static final String NUMBER = "PLANT-48391";

  /** Words of the standard, digests, private words, and what a person can write no words into. */
  private static final Set<String> STAYS =
      Set.of(
          "Named.model",
          "VehicleRecord.plant",
          "VehicleRecord.market",
          "VehicleRecord.private_words",
          "AcceptedWarning.about",
          "AcceptedWarning.reason",
          "Observation.item",
          "PhysicalTrace.item",
          "Worded$Found.id",
          "Worded$Right.id",
          "Graded$Found.word",
          "Colors$Found.chip",
          "Colors$Chip.chip",
          "Colors$Same.item",
          "FileChecksum.sha256");

  private final Set<String> planted = new TreeSet<>();

  @Test
  void noTextOfARecordKeepsItsNumber() throws ReflectiveOperationException, IOException {
    RuleSet rules =
        RuleSetReader.parse(List.of(file("rules.yaml"), file("items.yaml"))).value().orElseThrow();
    VehicleRecord read = RecordReader.parse(file("record.yaml"), rules).value().orElseThrow();
    VehicleRecord vehicle = VehicleRecord.class.cast(facts(read));
    assertThat(planted)
        .contains(
            "Named.notes", "EvidenceItem.caption", "PhysicalTrace.where", "Departure.explanation")
        .contains("Observation.note", "Opinion.reason", "PartNumbers$Found.text")
        .contains("Colors$Found.light", "Built.basis");
    Masking masking = Masking.of(Judge.by(rules), rules, vehicle);
    assertThat(left(masking.record())).isEmpty();
    assertThat(masking.numbers()).allMatch(it -> it.masked().equals("PLANT-48xxx"));
  }

  private static SourceFile file(String name) throws IOException {
    return new SourceFile(
        name, Files.readString(Path.of("src/test/resources/assize/schema").resolve(name)));
  }

  private Object value(Object value, Object owner, String component)
      throws ReflectiveOperationException {
    if (value instanceof String text) {
      String name = owner.getClass().getName().replaceAll(".*\\.", "") + "." + component;
      if (STAYS.contains(name)) {
        return text;
      }
      planted.add(name);
      return component.equals("numbers") ? NUMBER : text + " " + NUMBER;
    }
    if (value instanceof Optional<?> optional) {
      return optional.isEmpty() ? optional : Optional.of(value(optional.get(), owner, component));
    }
    if (value instanceof List<?> list) {
      Object[] changed = list.toArray();
      for (int i = 0; i < changed.length; i++) {
        changed[i] = value(changed[i], owner, component);
      }
      return List.of(changed);
    }
    if (value instanceof Map<?, ?> map) {
      Map<Object, Object> changed = new LinkedHashMap<>();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        changed.put(entry.getKey(), value(entry.getValue(), owner, component));
      }
      return changed;
    }
    if (value instanceof Facts facts) {
      return facts(facts);
    }
    return isOurs(value) ? record((Record) value) : value;
  }

  private static boolean isOurs(Object value) {
    return value instanceof Record
        && (value.getClass().getName().startsWith("assize.record.")
            || value instanceof Finding
            || value instanceof Expectation
            || value instanceof FileChecksum);
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private Facts facts(Facts one) throws ReflectiveOperationException {
    Table table = (Table) one.getClass().getField("TABLE").get(null);
    Facts changed = one;
    for (Object each : table.fields()) {
      Field field = (Field) each;
      changed = table.with(changed, field, value(one.get(field), one, field.name()));
    }
    return changed;
  }

  private Object record(Record one) throws ReflectiveOperationException {
    RecordComponent[] components = one.getClass().getRecordComponents();
    Class<?>[] types = Stream.of(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Object[] values = new Object[components.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = value(components[i].getAccessor().invoke(one), one, components[i].getName());
    }
    return one.getClass().getDeclaredConstructor(types).newInstance(values);
  }

  private static List<String> left(VehicleRecord masked) {
    return Arrays.stream(masked.toString().split("[,\\[\\]]"))
        .filter(it -> it.contains("48391"))
        .toList();
  }
}
