package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Finding;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.record.RecordReader;
import assize.report.sheet.Sheets;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.schema.TextFields;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A rule set and a record from a stranger, who wrote what he likes into every field that takes free
 * text: those of {@code src/test/resources/assize/schema}, which have every name that there is.
 *
 * @param fields what stands in which field now, by the text that stood there first
 * @param held the names of fields that refused it, since their text has a form of its own
 * @param refused what stands in those still
 */
record InjectionPages(
    Path folder, Map<String, String> fields, Set<String> held, Set<String> refused) {
  private static final Path SCHEMA = Path.of("src/test/resources/assize/schema");
  private static final Pattern MARK = Pattern.compile("q([0-9]+)z");

  /** Names of files: what stands there has to lie in the folder. */
  private static final Set<String> FILES = Set.of("photo", "document");

  private static final String RULES = "rules";
  private static final String FOLDER = "files/";
  private static final String OLDER = "older";

  /** What each field was asked to hold, and under which names it stands. */
  private static final class Texts implements TextFields.Change {
    final Map<String, String> instead = new LinkedHashMap<>();
    final Map<String, Set<String>> under = new LinkedHashMap<>();
    final Set<String> refused = new HashSet<>();
    final Map<String, String> files = new LinkedHashMap<>();
    private final IntFunction<String> wanted;

    Texts(IntFunction<String> wanted) {
      this.wanted = wanted;
    }

    @Override
    public String of(String name, String text) {
      if (name.equals(RULES)) {
        return RULES;
      }
      under.computeIfAbsent(text, it -> new TreeSet<>()).add(name);
      String changed = changed(name, text);
      return refused.contains(text) ? text : changed;
    }

    private String changed(String name, String text) {
      return instead.computeIfAbsent(
          text,
          it -> {
            int number = instead.size();
            String marked = wanted.apply(number) + " q" + number + "z";
            if (!FILES.contains(name)) {
              return marked;
            }
            String file = FOLDER + fileName(marked) + text.substring(text.lastIndexOf('.'));
            files.put(file, text);
            return file;
          });
    }

    /** What stood there in an edition before. */
    String older(String name, String text) {
      String now = of(name, text);
      return now.equals(text) || FILES.contains(name) ? now : now + " once";
    }

    /** A name that a file can have on any system. */
    private static String fileName(String text) {
      String name = text.replaceAll("[\\\\/:\n\u00ad\u061c\u200b\u200f]", "_");
      return name.substring(Math.max(0, name.length() - 60));
    }

    /** A field's mark is the first behind the place that is pointed at. */
    boolean refuse(List<Diagnostic> said) {
      int before = refused.size();
      List<String> all = List.copyOf(instead.keySet());
      for (Diagnostic one : said) {
        Matcher mark = MARK.matcher(one.at().file().text());
        if (mark.find(one.at().start())) {
          refused.add(all.get(Integer.parseInt(mark.group(1))));
        }
      }
      assertThat(refused.size()).as(said.toString()).isGreaterThan(before);
      return true;
    }
  }

  /** Names of the stranger's choice for everything that has a short name; texts stay. */
  private static final class Names implements TextFields.Change {
    private final Map<String, String> instead = new LinkedHashMap<>();
    private final IntFunction<String> wanted;

    Names(IntFunction<String> wanted) {
      this.wanted = wanted;
    }

    @Override
    public String of(String under, String text) {
      return under.equals(RULES) ? RULES : text;
    }

    @Override
    public String name(String under, String name) {
      return name.equals(Finding.OTHER)
          ? name
          : instead.computeIfAbsent(name, it -> wanted.apply(instead.size()));
    }
  }

  /**
   * Writes the files.
   *
   * @param wanted the text for the field of a number, counted from 0
   */
  static InjectionPages in(Path folder, IntFunction<String> wanted) throws IOException {
    return in(folder, wanted, Set.of());
  }

  /**
   * Writes the files.
   *
   * @param kept texts that stay as they are
   */
  static InjectionPages in(Path folder, IntFunction<String> wanted, Set<String> kept)
      throws IOException {
    Texts texts = new Texts(wanted);
    texts.refused.addAll(kept);
    Path rules = folder.resolve(RULES);
    Path record = folder.resolve("record.yaml");
    boolean again = true;
    while (again) {
      write(folder, texts, texts::older, texts.files);
      Result<RuleSet> read = RuleSetReader.read(rules);
      Result<?> vehicle =
          read.value().isPresent() ? RecordReader.read(record, read.value().get()) : read;
      List<Diagnostic> errors = vehicle.diagnostics().stream().filter(Diagnostic::isError).toList();
      again = !errors.isEmpty() && texts.refuse(errors);
    }
    Map<String, String> fields = new LinkedHashMap<>(texts.instead);
    fields.keySet().removeAll(texts.refused);
    Set<String> held = new TreeSet<>();
    texts.refused.forEach(it -> held.addAll(texts.under.getOrDefault(it, Set.of())));
    return new InjectionPages(folder, fields, held, texts.refused);
  }

  /**
   * Writes the files with names of somebody's choice.
   *
   * @param wanted the name in the place of that of a number, counted from 0
   */
  static InjectionPages named(Path folder, IntFunction<String> wanted) throws IOException {
    Names names = new Names(wanted);
    Map<String, String> files = new LinkedHashMap<>();
    for (String file : List.of("pictures/guide.png", "photos/horn.png", "papers/invoice.pdf")) {
      files.put(file, file);
    }
    write(folder, names, names, files);
    return new InjectionPages(folder, names.instead, Set.of(), Set.of());
  }

  private static void write(
      Path folder, TextFields.Change now, TextFields.Change older, Map<String, String> files)
      throws IOException {
    Path rules = Files.createDirectories(folder.resolve(RULES));
    Path before = Files.createDirectories(folder.resolve(OLDER));
    for (String file : List.of("rules.yaml", "items.yaml")) {
      String yaml = Files.readString(SCHEMA.resolve(file));
      Files.writeString(rules.resolve(file), TextFields.ofRules(yaml, now));
      Files.writeString(before.resolve(file), TextFields.ofRules(yaml, older));
    }
    Files.writeString(
        folder.resolve("record.yaml"),
        TextFields.ofRecord(Files.readString(SCHEMA.resolve("record.yaml")), now));
    for (Path home : List.of(folder, rules, before)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        for (String name : List.of(file.getKey(), file.getValue())) {
          Path one = home.resolve(name);
          Files.createDirectories(one.getParent());
          Files.write(one, PICTURE);
        }
      }
    }
  }

  /** The smallest PNG there is: one pixel. */
  private static final byte[] PICTURE =
      java.util.Base64.getDecoder()
          .decode(
              "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==");

  /** Returns the names of files that it chose. */
  List<String> files() {
    return fields.values().stream().filter(it -> it.startsWith(FOLDER)).toList();
  }

  Path rules() {
    return folder.resolve(RULES);
  }

  Path record() {
    return folder.resolve("record.yaml");
  }

  /** Writes every kind of page of them, and returns each under the name of its kind. */
  Map<String, Path> pages() throws IOException {
    Map<String, Path> pages = new LinkedHashMap<>();
    String record = record().toString();
    pages.put("report", one("report", "judge", record));
    pages.put("copy", one("copy", "judge", "--redact", record));
    Path dossiers = folder.resolve("dossiers");
    Sheets.run("dossier", record, "--out", dossiers.toString());
    addAll(pages, "dossier", dossiers);
    Path shared = folder.resolve("shared-dossiers");
    Sheets.run("dossier", "--redact", record, "--out", shared.toString());
    addAll(pages, "dossier, shared", shared);
    pages.put("results", one("results", "results", folder.toString(), "--no-reports"));
    pages.put(
        "results, shared", one("shared", "results", folder.toString(), "--no-reports", "--redact"));
    pages.put("sheet", file("sheet.html", "sheet", record));
    pages.put("handbook", file("handbook.html", "handbook", rules().toString()));
    pages.put(
        "changes",
        file(
            "changes.html",
            "compare",
            folder.resolve(OLDER).toString(),
            rules().toString(),
            "--record",
            record));
    return pages;
  }

  private Path file(String name, String... words) {
    Path out = folder.resolve("out").resolve(name);
    run(out, words);
    return out;
  }

  private Path one(String name, String... words) throws IOException {
    Path out = folder.resolve("out").resolve(name);
    run(out, words);
    try (var written = Files.list(out)) {
      return written.filter(it -> it.toString().endsWith(".html")).findFirst().orElseThrow();
    }
  }

  private static void run(Path out, String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--out", out.toString()));
    Sheets.run(all.toArray(String[]::new));
  }

  private static void addAll(Map<String, Path> pages, String kind, Path folder) throws IOException {
    try (var written = Files.list(folder)) {
      written.sorted().forEach(it -> pages.put(kind + ": " + it.getFileName(), it));
    }
  }
}
