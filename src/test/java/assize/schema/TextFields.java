package assize.schema;

import assize.record.VehicleRecord;
import assize.ruleset.RuleSetSchema;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Every text that people word freely in a rule set or record, found by what {@link FileSchema} says
 * of each name, so that a new field is among them by itself.
 */
public final class TextFields {
  /** A field that takes this takes any text as far as its letters tell. */
  private static final String ANY = "<\"'&\u00e9 ";

  /** No field but one for names takes this. */
  private static final String NAME = "Any-name-1";

  /** What is put in the place of a text. */
  public interface Change {
    /**
     * Returns the text to stand there.
     *
     * @param under the name that it is written under
     */
    String of(String under, String text);

    /**
     * Returns the short name to stand there.
     *
     * @param under the name that it is written under
     */
    default String name(String under, String name) {
      return name;
    }
  }

  private final FileSchema shape;
  private final Change change;

  private TextFields(FileSchema shape, Change change) {
    this.shape = shape;
    this.change = change;
  }

  /** Returns a rule set's file with other texts, as YAML. */
  public static String ofRules(String yaml, Change change) {
    return of(RuleSetSchema.SCHEMA, yaml, change);
  }

  /** Returns a record with other texts, as YAML. */
  public static String ofRecord(String yaml, Change change) {
    return of(VehicleRecord.SCHEMA, yaml, change);
  }

  private static String of(FileSchema shape, String yaml, Change change) {
    Object tree = EditorYaml.asTyped(yaml);
    Map<?, ?> changed =
        (Map<?, ?>)
            new TextFields(shape, change).changed(new ValueSchema.Group(shape.root()), "", tree);
    return changed.entrySet().stream()
        .map(it -> it.getKey() + ": " + Mutations.yaml(it.getValue()) + "\n")
        .collect(Collectors.joining());
  }

  private Object changed(ValueSchema value, String under, Object node) {
    return value.match(
        new ValueSchema.Cases<>() {
          @Override
          public Object blank(ValueSchema.Blank blank) {
            return node;
          }

          @Override
          public Object word(ValueSchema.Word word) {
            return node;
          }

          @Override
          public Object scalar(ValueSchema.Scalar scalar) {
            String text = node.toString();
            return isFree(scalar.form())
                ? change.of(under, text)
                : isName(scalar.form()) ? change.name(under, text) : text;
          }

          @Override
          public Object group(ValueSchema.Group group) {
            Map<String, Object> all = new LinkedHashMap<>();
            ((Map<?, ?>) node)
                .forEach(
                    (name, below) -> {
                      PropertySchema key = group.block().key(name.toString()).orElseThrow();
                      all.put(key.name(), changed(key.value(), key.name(), below));
                    });
            return all;
          }

          @Override
          public Object named(ValueSchema.Named named) {
            Map<String, Object> all = new LinkedHashMap<>();
            ((Map<?, ?>) node)
                .forEach(
                    (name, below) ->
                        all.put(
                            changed(named.name(), under, name.toString()).toString(),
                            changed(named.each(), under, below)));
            return all;
          }

          @Override
          public Object many(ValueSchema.Many many) {
            List<Object> all = new ArrayList<>();
            ((List<?>) node).forEach(it -> all.add(changed(many.each(), under, it)));
            return all;
          }

          @Override
          public Object row(ValueSchema.Row row) {
            return node;
          }

          @Override
          public Object either(ValueSchema.Either either) {
            return either.ways().stream()
                .filter(way -> fits(way, node))
                .findFirst()
                .map(way -> changed(way, under, node))
                .orElse(node);
          }

          @Override
          public Object shared(ValueSchema.Shared shared) {
            return changed(new ValueSchema.Group(shape.block(shared)), under, node);
          }
        });
  }

  private static boolean isFree(ScalarFormat form) {
    return form.types().contains(ScalarFormat.Type.TEXT)
        && form.pattern().map(it -> Pattern.compile(it).matcher(ANY).find()).orElse(true);
  }

  private static boolean isName(ScalarFormat form) {
    return form.pattern().map(it -> Pattern.compile(it).matcher(NAME).find()).orElse(false);
  }

  /** Says whether a value can be written as a file has it. */
  private boolean fits(ValueSchema value, Object node) {
    return value.match(
        new ValueSchema.Cases<>() {
          @Override
          public Boolean blank(ValueSchema.Blank blank) {
            return node.toString().isEmpty();
          }

          @Override
          public Boolean scalar(ValueSchema.Scalar scalar) {
            return node instanceof String;
          }

          @Override
          public Boolean word(ValueSchema.Word word) {
            return node instanceof String text && word.words().contains(text);
          }

          @Override
          public Boolean group(ValueSchema.Group group) {
            return node instanceof Map<?, ?> map && group.block().names().containsAll(map.keySet());
          }

          @Override
          public Boolean named(ValueSchema.Named named) {
            return node instanceof Map<?, ?>;
          }

          @Override
          public Boolean many(ValueSchema.Many many) {
            return node instanceof List<?>;
          }

          @Override
          public Boolean row(ValueSchema.Row row) {
            return node instanceof List<?> list && list.size() == row.each().size();
          }

          @Override
          public Boolean either(ValueSchema.Either either) {
            return either.ways().stream().anyMatch(way -> fits(way, node));
          }

          @Override
          public Boolean shared(ValueSchema.Shared shared) {
            return group(new ValueSchema.Group(shape.block(shared)));
          }
        });
  }
}
