package assize.schema;

import assize.text.Json;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Says what a file may hold as a JSON Schema, draft-07, which editors read.
 *
 * <p>A schema refuses nothing that the readers accept, but for one word: a plain {@code null},
 * which YAML takes for nothing written.
 */
public final class JsonSchemaWriter {
  private JsonSchemaWriter() {}

  /** Returns the schema as JSON, with a line break at its end. */
  public static String of(FileSchema schema) {
    Map<String, Object> root = top(schema);
    root.putAll(group(schema.root()));
    Map<String, Object> shared = new TreeMap<>();
    schema.shared().forEach((name, block) -> shared.put(name, group(block)));
    root.put("definitions", shared);
    return Json.inLines(root);
  }

  private static Map<String, Object> top(FileSchema schema) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("$schema", "http://json-schema.org/draft-07/schema#");
    root.put("title", schema.title());
    root.put("description", schema.about());
    return root;
  }

  /** Says whether a text is such a schema, of this edition of the program or another. */
  public static boolean isOne(FileSchema schema, String json) {
    String top = Json.inLines(Map.of("title", schema.title()));
    return json.contains("json-schema.org") && json.contains(top.strip().replaceAll("[{}]", ""));
  }

  private static Map<String, Object> schema(ValueSchema value) {
    return value.match(new Words());
  }

  private static Map<String, Object> group(ObjectSchema block) {
    Map<String, Object> properties = new LinkedHashMap<>();
    block.keys().forEach(key -> properties.put(key.name(), property(key)));
    List<String> needed = new ArrayList<>();
    block.keys().stream()
        .filter(PropertySchema::isNeeded)
        .map(PropertySchema::name)
        .forEach(needed::add);
    Map<String, Object> dependencies = new LinkedHashMap<>();
    List<Object> others = new ArrayList<>();
    for (PropertyConstraint rule : block.rules()) {
      switch (rule.kind()) {
        case ONE_OF -> others.add(Map.of("oneOf", each(rule)));
        case ANY_OF -> others.add(Map.of("anyOf", each(rule)));
        case FIRST_NEEDS_SECOND ->
            dependencies.put(rule.names().get(0), List.of(rule.names().get(1)));
      }
    }
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", "object");
    schema.put("properties", properties);
    if (!needed.isEmpty()) {
      schema.put("required", needed);
    }
    if (!dependencies.isEmpty()) {
      schema.put("dependencies", dependencies);
    }
    if (!others.isEmpty()) {
      schema.put("allOf", others);
    }
    schema.put("additionalProperties", false);
    return schema;
  }

  private static List<Object> each(PropertyConstraint rule) {
    return rule.names().stream().<Object>map(name -> Map.of("required", List.of(name))).toList();
  }

  private static Map<String, Object> property(PropertySchema key) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("description", key.about());
    Map<String, Object> value = schema(key.value());
    if (value.containsKey("$ref")) {
      // What stands beside a $ref is passed over in draft-07.
      schema.put("allOf", List.of(value));
    } else {
      schema.putAll(value);
    }
    return schema;
  }

  private static final class Words implements ValueSchema.Cases<Map<String, Object>> {
    @Override
    public Map<String, Object> blank(ValueSchema.Blank blank) {
      return Map.of("type", "null");
    }

    @Override
    public Map<String, Object> scalar(ValueSchema.Scalar scalar) {
      ScalarFormat form = scalar.form();
      Map<String, Object> schema = new LinkedHashMap<>();
      List<String> types = form.types().stream().sorted().map(Words::type).toList();
      schema.put("type", types.size() == 1 ? types.get(0) : types);
      form.pattern().ifPresent(it -> schema.put("pattern", it));
      form.bounds()
          .ifPresent(
              it -> {
                schema.put("minimum", new BigDecimal(it.least()));
                schema.put("maximum", new BigDecimal(it.most()));
              });
      if (!form.examples().isEmpty()) {
        schema.put("examples", form.examples());
      }
      return schema;
    }

    private static String type(ScalarFormat.Type type) {
      return switch (type) {
        case TEXT -> "string";
        case NUMBER -> "number";
        case WHOLE_NUMBER -> "integer";
        case TRUTH -> "boolean";
      };
    }

    @Override
    public Map<String, Object> word(ValueSchema.Word word) {
      return Map.of("enum", word.words());
    }

    @Override
    public Map<String, Object> group(ValueSchema.Group group) {
      return JsonSchemaWriter.group(group.block());
    }

    @Override
    public Map<String, Object> named(ValueSchema.Named named) {
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", "object");
      Map<String, Object> name = schema(named.name());
      Map<String, Object> each = schema(named.each());
      if (name.get("enum") instanceof List<?> words) {
        Map<String, Object> properties = new LinkedHashMap<>();
        words.forEach(word -> properties.put(word.toString(), each));
        schema.put("properties", properties);
        schema.put("additionalProperties", false);
        return schema;
      }
      if (name.get("pattern") instanceof String pattern) {
        schema.put("propertyNames", Map.of("pattern", pattern));
      }
      schema.put("additionalProperties", each);
      return schema;
    }

    @Override
    public Map<String, Object> many(ValueSchema.Many many) {
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", "array");
      schema.put("items", schema(many.each()));
      many.most().ifPresent(it -> schema.put("maxItems", BigDecimal.valueOf(it)));
      return schema;
    }

    @Override
    public Map<String, Object> row(ValueSchema.Row row) {
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", "array");
      schema.put("items", row.each().stream().map(JsonSchemaWriter::schema).toList());
      schema.put("minItems", BigDecimal.valueOf(row.each().size()));
      schema.put("additionalItems", false);
      return schema;
    }

    @Override
    public Map<String, Object> either(ValueSchema.Either either) {
      return Map.of("anyOf", either.ways().stream().map(JsonSchemaWriter::schema).toList());
    }

    @Override
    public Map<String, Object> shared(ValueSchema.Shared shared) {
      return Map.of("$ref", "#/definitions/" + shared.name());
    }
  }
}
