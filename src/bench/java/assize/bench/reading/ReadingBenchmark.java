package assize.bench.reading;

import assize.bench.Baseline;
import assize.bench.Generated;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.io.StringReader;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.yaml.YAMLFactory;

/** Reads a rule set with its places, all checks on, against its tokens alone. */
@State(Scope.Benchmark)
public class ReadingBenchmark {
  /** Characters, in millions. */
  @Param({"1"})
  public double megabytes = 1;

  private String text = "";

  /** The library's bound and buffer as the program sets them: the default buffer is slower. */
  private final YAMLFactory factory =
      YAMLFactory.builder()
          .loadSettings(
              LoadSettings.builder()
                  .setCodePointLimit(16 * 1024 * 1024)
                  .setBufferSize(64 * 1024)
                  .setAllowDuplicateKeys(true)
                  .build())
          .build();

  /** Makes the text, and sees that it is a good one. */
  @Setup
  public void prepare() {
    text = Generated.rulesOfSize((int) (megabytes * 1_000_000));
    List<Diagnostic> found = whole().diagnostics();
    if (!found.isEmpty()) {
      throw new IllegalStateException(found.get(0) + " and " + found.size());
    }
  }

  /** Goes through the tokens and takes each text. */
  @Benchmark
  public long tokens() {
    long characters = 0;
    try (JsonParser parser =
        factory.createParser(ObjectReadContext.empty(), new StringReader(text))) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token.isScalarValue() || token == JsonToken.PROPERTY_NAME) {
          characters += parser.getString().length();
        }
      }
    }
    return characters;
  }

  /** Reads it as the program does. */
  @Benchmark
  @Baseline(value = "tokens", says = "rule set, read and checked : its tokens", goal = 0.7)
  public Result<RuleSet> whole() {
    return RuleSetReader.parse(List.of(new SourceFile("rules.yaml", text)));
  }
}
