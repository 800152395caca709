package assize.schema;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.DiagnosticCode;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.ruleset.RuleSetSchema;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Files that have every name of the model in them are changed in every place, one at a time: what
 * the reader then reads, the schema does not refuse; what is wrong in shape, both refuse.
 */
@Tag("slow")
class MutationsTest {
  private static final Path FOLDER = Path.of("src/test/resources/assize/schema");

  private static String text(String name) throws IOException {
    return Files.readString(FOLDER.resolve(name));
  }

  private static RuleSet rules() throws IOException {
    return RuleSetReader.parse(
            List.of(
                new SourceFile("rules.yaml", text("rules.yaml")),
                new SourceFile("items.yaml", text("items.yaml"))))
        .value()
        .orElseThrow();
  }

  @Test
  void agreesOnRuleSets() throws IOException {
    String rest = text("items.yaml");
    hold(
        text("rules.yaml"),
        it -> ReaderMessages.ofRules(it, rest),
        EditorYaml.RULE_SET,
        OF_ONE_FILE);
  }

  @Test
  void agreesOnItemsInAFileOfTheirOwn() throws IOException {
    String head = text("rules.yaml");
    hold(
        text("items.yaml"),
        it -> ReaderMessages.ofRules(head, it),
        EditorYaml.RULE_SET,
        it -> false);
  }

  @Test
  void agreesOnRecords() throws IOException {
    RuleSet rules = rules();
    hold(text("record.yaml"), it -> ReaderMessages.ofRecord(it, rules), EditorYaml.RECORD, BLANK);
  }

  /** A name of the head may stand in any file of a rule set, so that one file can't lack it. */
  private static final Predicate<String> OF_ONE_FILE =
      it -> it.matches("/(rule_set|name|edition) left out");

  /** An aspect may be left blank; editors can't tell a blank from a word that means the same. */
  private static final Predicate<String> BLANK =
      it -> it.matches("/observations/[^/]+/[a-z_]+ = ~");

  private static void hold(
      String yaml,
      Function<String, Set<DiagnosticCode>> reader,
      com.networknt.schema.Schema schema,
      Predicate<String> beyond) {
    Object tree = EditorYaml.asTyped(yaml);
    assertThat(reader.apply(Mutations.yaml(tree))).isEmpty();
    assertThat(EditorYaml.refused(schema, Mutations.yaml(tree))).isEmpty();
    List<String> wrong = new ArrayList<>();
    int shapes = 0;
    for (Mutations.Mutation one : Mutations.of(tree)) {
      Set<DiagnosticCode> codes = reader.apply(one.yaml());
      boolean isShape = codes.stream().anyMatch(ReaderMessages.STRUCTURAL::contains);
      shapes += isShape ? 1 : 0;
      if (!isShape && !codes.isEmpty()) {
        continue;
      }
      List<String> refused = EditorYaml.refused(schema, one.yaml());
      if (codes.isEmpty() && !refused.isEmpty()) {
        wrong.add(one.what() + ": is read, but refused: " + refused);
      } else if (isShape && refused.isEmpty() && !beyond.test(one.what())) {
        wrong.add(one.what() + ": " + codes + ", but not refused");
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(shapes).isGreaterThan(40);
  }

  @Test
  void theFilesHaveEveryNameInThem() throws IOException {
    Set<String> seen = new LinkedHashSet<>();
    Visitor rules = new Visitor(RuleSetSchema.SCHEMA, seen);
    rules.visit(new ValueSchema.Group(RuleSetSchema.FILE), EditorYaml.asTyped(text("rules.yaml")));
    rules.visit(new ValueSchema.Group(RuleSetSchema.FILE), EditorYaml.asTyped(text("items.yaml")));
    new Visitor(VehicleRecord.SCHEMA, seen)
        .visit(
            new ValueSchema.Group(VehicleRecord.TABLE.block()),
            EditorYaml.asTyped(text("record.yaml")));
    Set<String> all = new LinkedHashSet<>();
    for (FileSchema shape : List.of(RuleSetSchema.SCHEMA, VehicleRecord.SCHEMA)) {
      new Names(all).group(new ValueSchema.Group(shape.root()));
      shape.shared().values().forEach(it -> new Names(all).group(new ValueSchema.Group(it)));
    }
    all.removeAll(seen);
    assertThat(all).isEmpty();
  }

  private static String key(ObjectSchema block, PropertySchema key) {
    return block.owner() + " " + key.name() + ": " + key.about();
  }

  /** Notes which names of the model a file has. */
  private record Visitor(FileSchema shape, Set<String> seen) {
    void visit(ValueSchema value, Object node) {
      value.match(
          new Names(new LinkedHashSet<>()) {
            @Override
            public Void group(ValueSchema.Group group) {
              if (node instanceof Map<?, ?> map) {
                for (PropertySchema key : group.block().keys()) {
                  Object below = map.get(key.name());
                  if (below != null) {
                    seen.add(key(group.block(), key));
                    visit(key.value(), below);
                  }
                }
              }
              return null;
            }

            @Override
            public Void named(ValueSchema.Named named) {
              if (node instanceof Map<?, ?> map) {
                map.values().forEach(it -> visit(named.each(), it));
              }
              return null;
            }

            @Override
            public Void many(ValueSchema.Many many) {
              if (node instanceof List<?> list) {
                list.forEach(it -> visit(many.each(), it));
              }
              return null;
            }

            @Override
            public Void either(ValueSchema.Either either) {
              either.ways().forEach(it -> visit(it, node));
              return null;
            }

            @Override
            public Void shared(ValueSchema.Shared shared) {
              visit(new ValueSchema.Group(shape.block(shared)), node);
              return null;
            }
          });
    }
  }

  /** Gathers every name of the model; what is shared is asked for by itself. */
  private static class Names implements ValueSchema.Cases<Void> {
    private final Set<String> all;

    Names(Set<String> all) {
      this.all = all;
    }

    @Override
    public Void blank(ValueSchema.Blank blank) {
      return null;
    }

    @Override
    public Void scalar(ValueSchema.Scalar scalar) {
      return null;
    }

    @Override
    public Void word(ValueSchema.Word word) {
      return null;
    }

    @Override
    public Void group(ValueSchema.Group group) {
      for (PropertySchema key : group.block().keys()) {
        all.add(key(group.block(), key));
        key.value().match(this);
      }
      return null;
    }

    @Override
    public Void named(ValueSchema.Named named) {
      return named.each().match(this);
    }

    @Override
    public Void many(ValueSchema.Many many) {
      return many.each().match(this);
    }

    @Override
    public Void row(ValueSchema.Row row) {
      return null;
    }

    @Override
    public Void either(ValueSchema.Either either) {
      either.ways().forEach(it -> it.match(this));
      return null;
    }

    @Override
    public Void shared(ValueSchema.Shared shared) {
      return null;
    }
  }
}
