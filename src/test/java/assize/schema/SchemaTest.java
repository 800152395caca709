package assize.schema;

import static org.assertj.core.api.Assertions.assertThat;

import assize.Pinned;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSetSchema;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas in {@code docs/schema} are those that the model gives, and are draft-07. */
class SchemaTest {
  private static final Path FOLDER = Path.of("docs/schema");

  static Stream<Map.Entry<String, FileSchema>> schemas() {
    return Stream.of(
        Map.entry("rule-set.json", RuleSetSchema.SCHEMA),
        Map.entry("record.json", VehicleRecord.SCHEMA));
  }

  @Tag("pinned")
  @ParameterizedTest
  @MethodSource("schemas")
  void isWhatTheModelGives(Map.Entry<String, FileSchema> one) {
    Pinned.equal(FOLDER.resolve(one.getKey()), JsonSchemaWriter.of(one.getValue()));
  }

  /** The metaschema is that of json-schema.org, which the validator has with it. */
  @ParameterizedTest
  @MethodSource("schemas")
  void isDraft7(Map.Entry<String, FileSchema> one) {
    var metaschema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
            .getSchema(SchemaLocation.of("http://json-schema.org/draft-07/schema#"));
    assertThat(metaschema.validate(JsonSchemaWriter.of(one.getValue()), InputFormat.JSON))
        .isEmpty();
    assertThat(metaschema.validate("{\"type\": \"wrong\"}", InputFormat.JSON)).isNotEmpty();
  }
}
