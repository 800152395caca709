package assize.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.record.RecordReader;
import assize.report.text.DiagnosticFormatter;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever text is given, there is a value or an error, and never an exception. */
@Tag("slow")
class ArbitraryInputTest {
  private static final String LETTERS =
      "\t\n\r :,-#[]{}&*!|>'\"%@`?~\\0/.%a\u0000\u202e\ud83d\ude80é";
  private static final RuleSet RULES =
      RuleSetReader.read(Path.of("src/test/corpus/fine/rules.yaml")).value().orElseThrow();

  static List<String> shortTexts() throws IOException {
    List<String> texts = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("src/test/corpus"))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".yaml")).sorted().toList()) {
        texts.add(Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    }
    for (String page : List.of("docs/rule-sets.md", "docs/records.md")) {
      MarkdownBlocks.of(page).forEach(it -> texts.add(it.text()));
    }
    return texts;
  }

  static Stream<Path> demonstration() throws IOException {
    return Files.walk(Path.of("rules")).filter(it -> it.toString().endsWith(".yaml")).sorted();
  }

  @ParameterizedTest
  @MethodSource("shortTexts")
  void everyPrefixIsAnswered(String text) {
    for (int end = 0; end <= text.length(); end++) {
      answers(text.substring(0, end));
    }
  }

  @ParameterizedTest
  @MethodSource("demonstration")
  void prefixesOfTheDemonstrationAreAnswered(Path file) throws IOException {
    String text = Files.readString(file);
    int step = Math.max(1, text.length() / 60);
    for (int end = 0; end <= text.length(); end += step) {
      answers(text.substring(0, end));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void anyChangeIsAnswered(long seed) throws IOException {
    Random random = new Random(seed);
    List<String> texts = shortTexts();
    for (int i = 0; i < 3000; i++) {
      StringBuilder text = new StringBuilder(texts.get(random.nextInt(texts.size())));
      int changes = 1 + random.nextInt(4);
      for (int j = 0; j < changes && text.length() > 0; j++) {
        change(text, random);
      }
      answers(text.toString());
    }
  }

  private static void change(StringBuilder text, Random random) {
    int at = random.nextInt(text.length());
    String letter = Character.toString(LETTERS.charAt(random.nextInt(LETTERS.length())));
    switch (random.nextInt(5)) {
      case 0 -> text.deleteCharAt(at);
      case 1 -> text.insert(at, letter);
      case 2 -> text.setCharAt(at, letter.charAt(0));
      case 3 -> text.insert(at, text.substring(at, Math.min(text.length(), at + 20)));
      default -> text.insert(at, letter.repeat(1 + random.nextInt(80)));
    }
  }

  private static void answers(String text) {
    SourceFile file = new SourceFile("any.yaml", text);
    answers(RuleSetReader.parse(List.of(file)), text);
    answers(RecordReader.parse(file, RULES), text);
  }

  private static void answers(Result<?> result, String text) {
    assertThat(result.value().isPresent()).as(text).isEqualTo(!result.hasErrors());
    assertThat(result.value().isEmpty() && result.diagnostics().isEmpty()).as(text).isFalse();
    for (Diagnostic one : result.diagnostics()) {
      assertThat(one.message()).as(text).isNotBlank();
      assertThat(one.at().end()).as(text).isLessThanOrEqualTo(text.length());
    }
    assertThat(DiagnosticFormatter.print(result.diagnostics(), false)).as(text).isNotNull();
  }
}
