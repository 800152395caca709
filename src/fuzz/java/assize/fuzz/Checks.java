package assize.fuzz;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.report.text.DiagnosticFormatter;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.Parsed;
import assize.text.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What must be true whatever was read. */
final class Checks {
  /** The rule set and the record that have every name there is. */
  static final Path EVERY_NAME = Path.of("src/test/resources/assize/schema");

  private Checks() {}

  static void demand(boolean holds, String what) {
    if (!holds) {
      throw new IllegalStateException(what);
    }
  }

  static String text(byte[] data) {
    return new String(data, StandardCharsets.UTF_8);
  }

  static String file(String name) {
    try {
      return Files.readString(EVERY_NAME.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static RuleSet rules() {
    return RuleSetReader.parse(
            List.of(
                new SourceFile("rules.yaml", file("rules.yaml")),
                new SourceFile("items.yaml", file("items.yaml"))))
        .value()
        .orElseThrow();
  }

  /** A value or an error, every place inside its file, and the same a second time. */
  static <T> Result<T> result(Result<T> first, Result<T> second) {
    demand(first.value().isPresent() != first.hasErrors(), "neither a value nor an error, or both");
    for (Diagnostic one : first.diagnostics()) {
      int length = one.at().file().text().length();
      demand(
          0 <= one.at().start() && one.at().start() <= one.at().end() && one.at().end() <= length,
          "a place outside of the file: " + one);
      demand(!one.message().isBlank(), "no words: " + one.code());
    }
    DiagnosticFormatter.print(first.diagnostics(), true);
    demand(
        first.diagnostics().toString().equals(second.diagnostics().toString()),
        "said otherwise the second time");
    return first;
  }

  /** A value or a reason, its place inside the text, and the same a second time. */
  static <T> Parsed<T> parsed(String text, Parsed<T> first, Parsed<T> second) {
    first.match(
        good -> {
          demand(second.toOptional().filter(good::equals).isPresent(), "read otherwise: " + good);
          return good;
        },
        bad -> {
          demand(!bad.reason().isBlank(), "no reason");
          demand(bad.at() >= 0 && bad.length() >= 0, "a place before the text");
          demand(bad.at() + bad.length() <= text.length(), "a place behind the end of the text");
          return bad;
        });
    return first;
  }
}
