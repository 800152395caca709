package assize.schema;

import assize.record.VehicleRecord;
import assize.ruleset.RuleSetSchema;
import com.networknt.schema.Error;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;
import tools.jackson.databind.json.JsonMapper;

/**
 * What an editor makes of a file: it reads it by the core schema of YAML 1.2.2 (10.3), by which
 * {@code 1934} is a number and {@code yes} is a word, and holds it to a JSON Schema.
 */
final class EditorYaml {
  static final com.networknt.schema.Schema RULE_SET = schema(RuleSetSchema.SCHEMA);
  static final com.networknt.schema.Schema RECORD = schema(VehicleRecord.SCHEMA);

  private EditorYaml() {}

  private static com.networknt.schema.Schema schema(FileSchema shape) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
        .getSchema(JsonSchemaWriter.of(shape));
  }

  /** Says what a schema refuses in a file, a line each. */
  static List<String> refused(com.networknt.schema.Schema schema, String yaml) {
    Object tree =
        new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(yaml);
    return schema.validate(JsonMapper.shared().valueToTree(withWords(tree))).stream()
        .map(Error::toString)
        .toList();
  }

  /** JSON has names of words only. */
  private static Object withWords(Object node) {
    if (node instanceof Map<?, ?> map) {
      Map<String, Object> words = new java.util.LinkedHashMap<>();
      map.forEach((name, value) -> words.put(String.valueOf(name), withWords(value)));
      return words;
    }
    return node instanceof List<?> list
        ? list.stream().map(EditorYaml::withWords).collect(Collectors.toList())
        : node;
  }

  /** Returns maps, lists and texts as they are typed. */
  static Object asTyped(String yaml) {
    return new Load(LoadSettings.builder().setSchema(new FailsafeSchema()).build())
        .loadFromString(yaml);
  }
}
