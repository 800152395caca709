package assize.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Result;
import assize.record.RecordReader;
import assize.report.text.DiagnosticFormatter;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What people copy from the documentation works. */
class DocsExamplesTest {
  private static final Path AROUND = Path.of("src/test/resources/assize/yaml/around-docs.yaml");
  private static final String RECORD =
      """
      record: around-docs
      rules: around-docs.yaml
      vehicle:
        name: The owner's dropside
      evidence:
        photo-12:
          photo: photos/horn-button.png
      """;
  private static final String ITEMS_FOR_RECORDS =
      """
      area: around
      items:
        horn-button:
          title: Horn button
          points: 1
          expect: {finish: nickel, origin: graded, condition: graded}
        bed-color:
          title: Color of the load bed
          points: 1
          expect: {color: works-green}
      """;

  static List<MarkdownBlocks.Block> rules() throws IOException {
    List<MarkdownBlocks.Block> blocks = new ArrayList<>(MarkdownBlocks.of("docs/rule-sets.md"));
    weighing().filter(block -> !block.hasKey("traces")).forEach(blocks::add);
    return blocks;
  }

  static List<MarkdownBlocks.Block> records() throws IOException {
    List<MarkdownBlocks.Block> blocks = new ArrayList<>(MarkdownBlocks.of("docs/records.md"));
    weighing().filter(block -> block.hasKey("traces")).forEach(blocks::add);
    return blocks;
  }

  private static Stream<MarkdownBlocks.Block> weighing() throws IOException {
    return MarkdownBlocks.of("docs/weighing-sources.md").stream();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void ruleSetsOfTheDocsAreRead(MarkdownBlocks.Block block) throws IOException {
    boolean ofItem = Stream.of("expect", "any_of", "hazards", "claims").anyMatch(block::hasKey);
    String text = ofItem ? asItem(block) : block.text();
    Result<RuleSet> read =
        RuleSetReader.parse(
            List.of(
                new SourceFile("around.yaml", around(ofItem ? "" : block.text())),
                new SourceFile(block.toString(), text)));
    assertThat(DiagnosticFormatter.print(read.diagnostics(), false)).isEmpty();
    assertThat(read.value()).isPresent();
  }

  @ParameterizedTest
  @MethodSource("records")
  void recordsOfTheDocsAreRead(MarkdownBlocks.Block block) throws IOException {
    RuleSet rules =
        RuleSetReader.parse(
                List.of(
                    new SourceFile("around.yaml", around("")),
                    new SourceFile("items.yaml", ITEMS_FOR_RECORDS)))
            .value()
            .orElseThrow();
    String text = without(RECORD, block.text()) + block.text();
    var read = RecordReader.parse(new SourceFile(block.toString(), text), rules);
    assertThat(DiagnosticFormatter.print(read.diagnostics(), false)).isEmpty();
    assertThat(read.value()).isPresent();
  }

  @Test
  void thereAreExamplesToRead() throws IOException {
    assertThat(rules()).hasSizeGreaterThan(25);
    assertThat(records()).hasSizeGreaterThan(4);
  }

  /** An example of what belongs into an item is put into one. */
  private static String asItem(MarkdownBlocks.Block block) {
    String expect =
        block.hasKey("expect") || block.hasKey("claims") ? "" : "expect: {present: yes}\n";
    String fields = ("title: An example\npoints: 2\n" + expect + block.text()).indent(4);
    return "area: cab\nitems:\n  example:\n" + fields;
  }

  private static String around(String block) throws IOException {
    return without(Files.readString(AROUND), block);
  }

  /** Leaves out of a file what an example says itself. */
  private static String without(String file, String block) {
    return MarkdownBlocks.pieces(file).stream()
        .filter(piece -> !piece.contains(":") || !saysItself(block, piece))
        .collect(Collectors.joining());
  }

  private static boolean saysItself(String block, String piece) {
    String name = piece.substring(0, piece.indexOf(':') + 1);
    return block.lines().anyMatch(line -> line.startsWith(name));
  }
}
