package assize.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.record.Departure;
import assize.record.Observation;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.html.Browser;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import assize.yaml.Document;
import assize.yaml.Node;
import assize.yaml.YamlTreeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheet's own reader and writer of records, in a browser, held to the program's reader. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class SheetWritingTest {
  /** Texts that a careless writer of YAML gets wrong. */
  private static final List<String> HOSTILE =
      List.of(
          "no",
          "Yes",
          "null",
          "~",
          "0042",
          "1e3",
          "0x1F",
          "0o17",
          "1_000",
          ".5",
          "2026-10-03",
          "12:30",
          "a: b",
          "a:",
          ": b",
          "- a",
          "-",
          "?",
          "? a",
          "# a",
          "a #b",
          "a#b",
          "&a",
          "*a",
          "!a",
          "!!str a",
          "%a",
          "@a",
          "`a",
          "|",
          ">",
          "|-",
          "\"",
          "'",
          "\"a\"",
          "'a'",
          "it's",
          "a\"b",
          "a\\nb",
          "a\\",
          "{a: b}",
          "[a]",
          "a, b",
          "a]",
          "}",
          ",",
          "line\nnext",
          "a\n\n b",
          "a\tb",
          "\ta",
          "  spaced  ",
          "\u00A0a",
          "\u2028a",
          "a\u0085b",
          "a\u200Db",
          "caf\u00e9",
          "\uD83D\uDE9A truck",
          "\u0627\u0644",
          "a\u0007b",
          "\u202Ea",
          "\uFEFFa",
          "<<",
          "---",
          "...",
          "\r\na",
          "</pre><script>alert(1)</script>",
          "&lt;",
          "3/32 in",
          "41 ± 3",
          "x".repeat(3000));

  private static final String WRITE =
      "const page = JSON.parse(document.getElementById('data').textContent);"
          + "return arguments[0].map(([text, answers]) => {"
          + " const record = recordOf({text, root: readYaml(text)}, page);"
          + " return record.write(answers); });";

  private static final String READ =
      "const plain = (node) => node.text !== undefined ? ['text', node.text, node.start, node.end]"
          + " : node.nothing ? ['nothing', node.end]"
          + " : node.group ? ['group', node.flow, node.group.map((it) => [it.key, it.at, it.colon,"
          + " plain(it.node)])] : ['list', node.flow, node.list.map(plain)];"
          + "return arguments[0].map((text) => { try { return plain(readYaml(text)); }"
          + " catch (e) { if (!(e instanceof Refused)) throw e; return e.message + ' at ' + e.at; } });";

  private Browser browser;
  private RuleSet rules;
  private Sheets sheets;

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) throws IOException {
    sheets = Sheets.in(folder.resolve("demo"));
    rules = RuleSetReader.read(sheets.rules()).value().orElseThrow();
    browser = Browser.start(profile);
    browser.open(sheets.fresh());
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  private static List<Path> corpus() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/corpus"))) {
      List<Path> found =
          new ArrayList<>(files.filter(it -> it.endsWith("record.yaml")).sorted().toList());
      for (String one : List.of("l45-4388", "l41-half-recorded", "q-1187", "quillhurst-q")) {
        found.add(Path.of("rules", one + ".yaml"));
      }
      return found;
    }
  }

  private List<Object> readByPage(List<String> texts) {
    return List.copyOf((List<?>) browser.result(READ, texts));
  }

  private static Optional<Object> readByProgram(String text) {
    return Document.parse(new SourceFile("r", text)).value().map(it -> plain(it.root()));
  }

  private static Object plain(Node node) {
    return node.<Object>match(
        group ->
            List.of(
                "group",
                group.isInBrackets(),
                group.entries().stream()
                    .map(
                        it ->
                            List.of(
                                it.name(),
                                (long) it.key().at().start(),
                                (long) it.colon(),
                                plain(it)))
                    .toList()),
        list ->
            List.of(
                "list", list.isInBrackets(), list.nodes().stream().map(it -> plain(it)).toList()),
        text ->
            text.isEmptyPlace()
                ? List.of("nothing", (long) text.at().end())
                : List.of("text", text.text(), (long) text.at().start(), (long) text.at().end()));
  }

  private static Object plain(Node.Entry entry) {
    return entry.value() instanceof Node.Scalar value && value.isEmptyPlace()
        ? List.of("nothing", (long) entry.behind())
        : plain(entry.value());
  }

  /** Compares what both read of texts; the page may refuse more than the program, never less. */
  private List<String> differences(List<String> texts, boolean alsoRefused) {
    List<Object> byPage = readByPage(texts);
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Object page = byPage.get(i);
      Optional<Object> program = readByProgram(texts.get(i));
      boolean refused = page instanceof String;
      boolean same = refused ? program.isEmpty() || alsoRefused : program.equals(Optional.of(page));
      if (!same) {
        List<?> why = Document.parse(new SourceFile("r", texts.get(i))).diagnostics();
        faults.add(
            why + "\n" + texts.get(i) + "\n--> " + page + "\n--> " + program.orElse("refused"));
      }
    }
    return faults;
  }

  @Test
  void recordsOfTheCorpusAreReadAlike() throws IOException {
    List<String> texts = new ArrayList<>();
    for (Path path : corpus()) {
      String text = Files.readString(path);
      texts.add(text);
      texts.add(text.replace("\n", "\r\n"));
    }
    assertThat(texts).hasSizeGreaterThan(30);
    assertThat(differences(texts, false)).isEmpty();
  }

  @Test
  void aTabBehindANameIsRefusedAlike() {
    for (String rest : List.of("\n  y: 1\n", "1\nz: 1\n", "# r\n  y: 1\n", "\n- 1\n", "\nz: 1\n")) {
      String text = "record: a\nrules: b\nx:\t" + rest;
      assertThat(readByProgram(text)).as(text).isEmpty();
      assertThat(readByPage(List.of(text))).as(text).first().isInstanceOf(String.class);
    }
  }

  @Test
  void recordsAsPeopleWriteThemAreReadAlike() {
    assertThat(
            differences(
                List.of(
                    "record: a\nrules: b\nobservations:\n  horn: {finish: chrome, note: \"x: y\"}\n",
                    "record: a\n\n# remark\nx:\n- a\n- b: c\n  d: e\n-\n  f: g\n- - h\n  - i\n",
                    "a: |\n  one\n    two\n\n  three\n\nb: >-\n  fold\n  ed\n\n  more\n   own\n  end\n",
                    "a: >\n\n  x\n\n\n  y\n# r\nb: |2+\n   a\n\n",
                    "a: plain\n  goes on # r\nb: \"two\n  lines \\\n  joined\\tx\\u00e9\"\nc: 'it''s\n\n  x'\n",
                    "a:\nb: # r\nc: {}\nd: []\ne: {f, g: , h: [i, {j: k}]}\n",
                    "a: {b: c,\n  d: e # r\n  , }\nf: [1,\n  2,\n]\n",
                    "--- # r\na: b\n",
                    "a: b#c\nd: e:f\ng: http://x/y\n'h i': j\n\"k\": l\nm : n\n",
                    "a: -1\nb: ?x\nc: :x\nd: -x\n"),
                false))
        .isEmpty();
  }

  @Test
  void whateverIsChangedInARecordIsReadAlikeOrRefused() throws IOException {
    String text = Files.readString(Path.of("rules/l41-half-recorded.yaml")).substring(0, 2400);
    String marks = "{}[],:#&*!|>'\"%@`-? \n\t\\ax0";
    List<String> texts = new ArrayList<>();
    for (int end = 0; end < text.length(); end += 3) {
      texts.add(text.substring(0, end));
    }
    Random random = new Random(20261128);
    for (int i = 0; i < 3000; i++) {
      int at = random.nextInt(text.length());
      String mark = "" + marks.charAt(random.nextInt(marks.length()));
      int gone = random.nextInt(2);
      texts.add(text.substring(0, at) + mark + text.substring(Math.min(text.length(), at + gone)));
    }
    assertThat(differences(texts, true)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void answersAreReadBackAsTheyWereGivenAndTheRestIsKept(long seed) throws IOException {
    Random random = new Random(seed);
    List<String> bases = bases();
    List<Asked> asked = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      asked.add(asked(bases.get(random.nextInt(bases.size())), random));
    }
    List<?> written =
        (List<?>) browser.result(WRITE, asked.stream().map(Asked::forThePage).toList());
    for (int i = 0; i < asked.size(); i++) {
      check(asked.get(i), String.valueOf(written.get(i)));
    }
  }

  /**
   * A record and what is answered on its sheet.
   *
   * @param items what is answered, by item and field
   */
  private record Asked(
      String text, Map<String, String> sheet, Map<String, Map<String, Object>> items) {
    Object forThePage() {
      return List.of(text, Map.of("sheet", sheet, "items", items));
    }

    boolean isAnswered(String item, String field) {
      return items.getOrDefault(item, Map.of()).containsKey(field);
    }
  }

  private static final String FAULTS =
      "const page = JSON.parse(document.getElementById('data').textContent);"
          + "const faultOf = faultsOf(page);"
          + "return arguments[0].map(([text, {sheet, items}]) => {"
          + " const all = [sheet, ...Object.values(items)].flatMap((it) => Object.entries(it));"
          + " return all.map(([name, value]) => faultOf(name, value)).join(''); });";

  /** What the page may refuse though the program does not: forms that nobody types on a sheet. */
  private static final List<String> STRICTER =
      List.of("41½", "2026-10-03/2026-10-04", "2026-21", "1/2 in");

  /** Where ranges of characters begin and end that show nothing, and what stands beside them. */
  private static final int[] UNSEEN = {
    0x00A0, 0x00A1, 0x00AC, 0x00AD, 0x034F, 0x0350, 0x061C, 0x115E, 0x115F, 0x1160, 0x1161, 0x1680,
    0x17B4, 0x17B6, 0x180B, 0x180F, 0x2000, 0x200A, 0x200B, 0x200F, 0x2010, 0x2028, 0x2029, 0x202F,
    0x2030, 0x205F, 0x2060, 0x206F, 0x2800, 0x2801, 0x3000, 0x3001, 0x3164, 0x3165, 0xFE00, 0xFE0F,
    0xFFA0, 0xFFA1, 0xFFF0, 0xFFFB, 0xFFFC, 0x13430, 0x1343F, 0x13440, 0x13442, 0x16FE4, 0x1BCA0,
    0x1BCA3, 0x1D159, 0x1D15A, 0x1D173, 0x1D17A, 0xE0000, 0xE0FFF
  };

  /** Answers at each bound of the program's readers and one past it, by what is answered. */
  private static Map<String, List<Object>> atBounds() {
    String full = "x".repeat(65_536);
    // A character beyond the first 65,536 counts twice, as UTF-16 has it.
    String trucks = "\uD83D\uDE9A".repeat(32_768);
    List<Object> texts =
        List.of("a", full, full + "x", trucks, trucks + "x", "\"\n".repeat(32_768));
    Map<String, List<Object>> values = new LinkedHashMap<>();
    values.put("by", texts);
    List<Object> compared = new ArrayList<>(texts);
    for (int c : UNSEEN) {
      compared.add("a" + Character.toString(c) + "b");
      compared.add(Character.toString(c));
    }
    values.put("date_code", compared);
    values.put("note", texts);
    values.put("departure", texts.stream().<Object>map(it -> departure("safety", it)).toList());
    values.put("departure reason", compared.stream().<Object>map(it -> departure(it, "")).toList());
    values.put("photos of", compared.stream().<Object>map(it -> photo("a.jpg", it)).toList());
    String twenty = "12345678901234567890";
    values.put(
        "size",
        List.of(
            twenty + " mm",
            twenty + "1 mm",
            "0." + twenty + " mm",
            "0." + twenty + "1 mm",
            "2,4 mm",
            "2.4 mm, to 0.1 mm",
            "½ in",
            "1½ in",
            "1 1/2 in",
            "x",
            "5'-6\"",
            "M6x0.75",
            "1/4-20 UNC",
            "#10-32 UNF",
            "M6,5",
            "18 SWG",
            "4/0 AWG",
            "1,000 mm"));
    values.put(
        "count",
        List.of(
            "0",
            "007",
            "1000000",
            "1000001",
            "999999999999999",
            "1000000000000000",
            "1.5",
            "-1",
            "about 30",
            "٣"));
    values.put(
        "gloss",
        List.of(
            "0",
            "41",
            "41.5",
            "41,5",
            "41 ± 3",
            "41±3",
            "41 +/- 3",
            "41 GU",
            "41 units ± 3 GU",
            "2000",
            "2000.1",
            "2001",
            "41 ± 2001",
            "satin",
            "Satin",
            "semi gloss",
            "High-gloss",
            "shiny",
            "41 to 43",
            "0." + twenty,
            "0." + twenty + "1",
            "-1",
            "41½"));
    values.put(
        "color",
        List.of(
            color("", "50", "0", "0", ""), color("", "100", "128", "-128", "100"),
            color("", "100.1", "0", "0", ""), color("", "50", "128.1", "0", ""),
            color("", "50", "0", "-128.1", ""), color("", "50", "0", "0", "100.1"),
            color("", "-1", "0", "0", ""), color("", "50", "0", "0", "-1"),
            color("", "+12", "+0", "0", ""), color("", "50.123456789012", "0", "0", ""),
            color("", "50.1234567890123", "0", "0", ""), color("", "000000000050", "0", "0", ""),
            color("", "0000000000050", "0", "0", ""), color("", "5e1", "0", "0", ""),
            color("", "50", "0", "", ""), color("chassis-black", "", "0", "", "")));
    values.put(
        "on",
        List.of(
            "2026",
            "2026-10",
            "2026-10-03",
            "2026-10-03~",
            "2026-10?",
            "2026%",
            "0000-02-29",
            "2026-02-29",
            "2028-02-29",
            "2100-02-29",
            "2026-13",
            "2026-00",
            "2026-10-32",
            "2026-11-31",
            "2026-10-00",
            "26-10-03",
            "3.10.2026",
            "soon",
            "2026-10-03/2026-10-04",
            "2026-21"));
    String name = "n".repeat(251) + ".jpg";
    String folders = "n".repeat(249) + "/";
    values.put(
        "photos",
        Stream.of(
                "a.jpg",
                "photos/a.jpg",
                "./a.jpg",
                "a b (1).jpg",
                "Größe.jpg",
                name,
                "n" + name,
                folders.repeat(4).substring(4),
                folders.repeat(4).substring(4) + "ab",
                folders.repeat(3) + "n".repeat(250),
                folders.repeat(3) + "n".repeat(251),
                "photos\\a.jpg",
                "/a.jpg",
                "C:/a.jpg",
                "c:a.jpg",
                "a.jpg:b",
                "~/a.jpg",
                "../a.jpg",
                "photos/../a.jpg",
                "photos..jpg",
                "a.jpg.",
                "photos./a.jpg",
                "nul.jpg",
                "NUL",
                "com1",
                "com10",
                "photos/aux .x",
                "lpt0.jpg",
                "a\u2044b.jpg",
                "a\uFF0Eb.jpg",
                "a\u2026.jpg",
                "a\u200Bb.jpg",
                "a\u00ADb.jpg",
                "a\u2062b.jpg",
                "a\u200Db.jpg")
            .<Object>map(it -> photo(it, ""))
            .toList());
    return values;
  }

  private static Map<String, String> departure(Object reason, Object why) {
    return Map.of("reason", String.valueOf(reason), "explanation", String.valueOf(why));
  }

  private static List<Map<String, String>> photo(String file, Object caption) {
    return List.of(Map.of("file", file, "caption", String.valueOf(caption)));
  }

  private static Map<String, String> color(String chip, String l, String a, String b, String u) {
    return Map.of("chip", chip, "l", l, "a", a, "b", b, "u", u);
  }

  @Test
  void anAnswerHasAFaultWhereTheProgramWouldRefuseItAndOnlyThere() throws IOException {
    Map<String, String> items =
        Map.of(
            "size", "frame-thickness",
            "count", "frame-rivets",
            "gloss", "frame-gloss",
            "color", "frame-paint",
            "date_code", "spring-date");
    String head = "record: t\nrules: tarrowby-type-l\nvehicle: {name: T, model: L45}\n";
    List<Asked> asked = new ArrayList<>();
    List<Object> values = new ArrayList<>();
    atBounds()
        .forEach(
            (name, all) ->
                all.forEach(
                    value -> {
                      String field = name.replaceFirst(" .*", "");
                      boolean ofSheet = field.equals("by") || field.equals("on");
                      String item = items.getOrDefault(field, "frame-rivets");
                      values.add(value);
                      asked.add(
                          new Asked(
                              head,
                              ofSheet ? Map.of(field, String.valueOf(value)) : Map.of(),
                              ofSheet ? Map.of() : Map.of(item, Map.of(field, value))));
                    }));
    List<Object> forThePage = asked.stream().map(Asked::forThePage).toList();
    List<?> faults = (List<?>) browser.result(FAULTS, forThePage);
    List<?> written = (List<?>) browser.result(WRITE, forThePage);
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      SourceFile record = new SourceFile("r", String.valueOf(written.get(i)));
      boolean taken =
          RecordReader.parse(record, rules, sheets.folder()).diagnostics().stream()
              .allMatch(it -> it.code() == DiagnosticCode.FILE_NOT_FOUND);
      boolean fine = faults.get(i).equals("");
      if (fine != taken && !(taken && STRICTER.contains(String.valueOf(values.get(i))))) {
        String shown = String.valueOf(asked.get(i).forThePage());
        wrong.add(faults.get(i) + ": " + shown.substring(0, Math.min(300, shown.length())));
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(faults.stream().filter(""::equals)).hasSizeBetween(50, faults.size() - 50);
  }

  @Test
  void textsAtTheProgramsBoundsAreReadAlike() {
    String full = "x".repeat(65_536);
    String name = "n".repeat(1024);
    assertThat(
            differences(
                List.of(
                    "a: " + full + "\n",
                    "a: " + full + "x\n",
                    "a: '" + full + "'\n",
                    "a: \"" + full + "x\"\n",
                    "a: |-\n  " + full + "\n",
                    "a: |\n  " + full + "\n",
                    "a: [" + full + "x]\n",
                    name + ": b\n",
                    name + "n: b\n",
                    "a: {" + name + ": b}\n",
                    "a: {" + name + "n: b}\n",
                    "\"" + name.substring(2) + "\": b\n",
                    "\"" + name + "\": b\n",
                    "a: \"\\u0007\"\n",
                    "a: \"\\uFEFF\"\n",
                    "a: \"\\u0085\"\n"),
                false))
        .isEmpty();
  }

  @Test
  void thePageTakesOutWhatNoRecordMayHoldAndNothingElse() {
    List<String> blocks = new ArrayList<>();
    for (int block = 0; block < 0x10000; block += 0x100) {
      StringBuilder text = new StringBuilder();
      for (int c = block; c < block + 0x100; c++) {
        text.append('-').append((char) c);
      }
      blocks.add(text.append('-').toString());
    }
    // As code units: text with halves of characters does not travel whole.
    List<?> units = blocks.stream().map(it -> it.chars().boxed().toList()).toList();
    List<?> left =
        (List<?>)
            browser.result(
                "return arguments[0].map((units) => { const text = String.fromCharCode(...units);"
                    + " return [...yamlText.clean(text)].map((it) => it.codePointAt(0)); });",
                units);
    for (int i = 0; i < blocks.size(); i++) {
      String text = blocks.get(i);
      List<Integer> unseen =
          YamlTreeBuilder.read(new SourceFile("r", text)).diagnostics().stream()
              .filter(it -> it.code() == DiagnosticCode.CONTROL_CHARACTER)
              .map(it -> it.at().start())
              .toList();
      List<Long> kept = new ArrayList<>();
      for (int at = 0; at < text.length(); at++) {
        if (!unseen.contains(at)) {
          kept.add((long) (text.charAt(at) == '\r' ? '\n' : text.charAt(at)));
        }
      }
      assertThat(left.get(i)).as("block " + i).isEqualTo(kept);
    }
  }

  /** The values that are published with FNV-1a for these texts, from memory. */
  @Test
  void digestsAreThoseOfFnv1a() {
    assertThat(browser.texts("return ['', 'a', 'foobar'].map(digestOf);"))
        .containsExactly("cbf29ce484222325", "af63dc4c8601ec8c", "85944171f73967e8");
  }

  /** Records in all the shapes in which people write them. */
  private static List<String> bases() throws IOException {
    String head = "record: t\nrules: tarrowby-type-l\nvehicle: {name: T, model: L45}\n";
    String truck = Files.readString(Path.of("rules/l45-4388.yaml"));
    return List.of(
        head,
        head + "observations: {}\n",
        head
            + "inspected: {by: me}\nobservations:   # all\n  # chassis\n  frame-paint: {finish: two-pack}\n",
        head
            + "observations:\n  frame-rivets: {count: 30, note: a, # r\n    by: b}\n  frame-paint:\n"
            + "    # why\n    finish: two-pack   # by eye\n    color:\n      lab: [12.6, 0.1, -0.2]\n"
            + "      uncertainty: 0.3\n    note: |\n      one\n        two\n    departure:\n"
            + "      reason: safety\n      review_by: 2027-05\n  spring-date: {date_code: \"C3\"}",
        truck,
        truck.replace("\n", "\r\n"));
  }

  private static Asked asked(String text, Random random) {
    Map<String, Map<String, Object>> items = new LinkedHashMap<>();
    for (int i = random.nextInt(4); i >= 0; i--) {
      Map<String, Object> fields = new LinkedHashMap<>();
      switch (random.nextInt(5)) {
        case 0 -> {
          fields.put("finish", random.nextBoolean() ? "other" : "stove-enamel");
          fields.put("color", color(random));
          items.put("frame-paint", fields);
        }
        case 1 -> {
          fields.put("count", random.nextInt(3) == 0 ? "" : "" + random.nextInt(40));
          items.put("frame-rivets", fields);
        }
        case 2 -> {
          fields.put("date_code", random.nextInt(4) == 0 ? "" : stamped(random));
          items.put("spring-date", fields);
        }
        case 3 -> {
          fields.put("part_number", stamped(random));
          items.put("steering-box-number", fields);
        }
        default -> {
          fields.put("present", random.nextBoolean() ? "yes" : "no");
          fields.put("works", random.nextInt(3) == 0 ? "" : "yes");
          items.put("shock-absorbers", fields);
        }
      }
      if (random.nextBoolean()) {
        fields.put("note", random.nextInt(4) == 0 ? "" : hostile(random));
      }
      if (random.nextInt(3) == 0) {
        boolean none = random.nextInt(3) == 0;
        fields.put(
            "departure",
            Map.of("reason", none ? "" : "safety", "explanation", none ? "" : hostile(random)));
      }
    }
    Map<String, String> sheet = new LinkedHashMap<>();
    if (random.nextBoolean()) {
      sheet.put("by", hostile(random));
      sheet.put("on", "2026-11-0" + (1 + random.nextInt(9)));
    }
    return new Asked(text, sheet, items);
  }

  private static Map<String, String> color(Random random) {
    boolean read = random.nextBoolean();
    return Map.of(
        "chip", read && random.nextBoolean() ? "" : "chassis-black",
        "l", read ? "11.5" : "",
        "a", read ? "-0.25" : "",
        "b", read ? "0" : "",
        "u", read && random.nextBoolean() ? "0.4" : "");
  }

  /** Returns a text that a field gives: without what can't be seen, and with nothing around it. */
  private static String hostile(Random random) {
    String text = HOSTILE.get(random.nextInt(HOSTILE.size()));
    String clean = seen(text).strip();
    return clean.isEmpty() ? "x" : clean;
  }

  /** A number as it is stamped holds nothing that can't be seen. */
  private static String stamped(Random random) {
    return hostile(random).replace("\u200D", "");
  }

  private static String seen(String text) {
    return text.replaceAll("\r\n?", "\n")
        .replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\u202E\uFEFF]", "");
  }

  private void check(Asked asked, String after) {
    Result<VehicleRecord> read = RecordReader.parse(new SourceFile("after", after), rules);
    assertThat(read.diagnostics()).as(after).isEmpty();
    Map<String, Observation> now = read.value().orElseThrow().observations();
    VehicleRecord old =
        RecordReader.parse(new SourceFile("before", asked.text()), rules).value().orElseThrow();
    asked
        .items()
        .forEach(
            (id, fields) -> fields.forEach((field, it) -> answered(now, id, field, it, after)));
    assertThat(told(now, asked)).as(after).isEqualTo(told(old.observations(), asked));
    assertThat(read.value().orElseThrow().traces()).hasSameSizeAs(old.traces());
    linesAreKept(asked, after);
  }

  /** Returns what observations say beside what was answered, those that say nothing left out. */
  private static Map<String, List<Object>> told(Map<String, Observation> all, Asked asked) {
    Map<String, List<Object>> told = new TreeMap<>();
    all.forEach(
        (id, one) -> {
          List<Object> says = new ArrayList<>();
          new TreeMap<>(one.findings())
              .forEach(
                  (aspect, it) -> {
                    if (!asked.isAnswered(id, aspect.word())) {
                      says.add(it);
                    }
                  });
          one.note().filter(it -> !asked.isAnswered(id, "note")).ifPresent(says::add);
          one.by().ifPresent(says::add);
          says.addAll(one.evidence());
          if (!says.isEmpty()) {
            told.put(id, says);
          }
        });
    return told;
  }

  private static void answered(
      Map<String, Observation> now, String id, String field, Object value, String after) {
    Optional<Observation> one = Optional.ofNullable(now.get(id));
    String typed = String.valueOf(value);
    switch (field) {
      case "note" ->
          assertThat(one.flatMap(Observation::note).orElse("")).as(after).isEqualTo(typed);
      case "departure" -> {
        String reason = String.valueOf(((Map<?, ?>) value).get("reason"));
        String why = String.valueOf(((Map<?, ?>) value).get("explanation"));
        Optional<Departure> departure = one.flatMap(Observation::departure);
        assertThat(departure.map(Departure::reason).orElse("")).as(after).isEqualTo(reason);
        assertThat(departure.flatMap(Departure::explanation).orElse("")).isEqualTo(why);
      }
      case "color" -> color(one, (Map<?, ?>) value, after);
      default -> {
        Aspect aspect = Aspect.of(field).orElseThrow();
        String found =
            one.map(it -> it.findings().get(aspect)).map(it -> it.written().typed()).orElse("");
        assertThat(found).as(after).isEqualTo(typed);
      }
    }
  }

  private static void color(Optional<Observation> one, Map<?, ?> value, String after) {
    Finding found = one.map(it -> it.findings().get(Aspect.COLOR)).orElseThrow();
    Map<?, ?> typed = (Map<?, ?>) Sheets.typed(found);
    assertThat(String.valueOf(typed.get("chip"))).as(after).isEqualTo(value.get("chip"));
    assertThat(typed.containsKey("l")).as(after).isEqualTo(!"".equals(value.get("l")));
    if (typed.containsKey("l")) {
      assertThat(typed.get("a")).isEqualTo("-0.25");
      assertThat(typed.get("u")).isEqualTo(value.get("u"));
    }
  }

  /** Every line that has nothing to do with an answer is still there, in its order. */
  private static void linesAreKept(Asked asked, String after) {
    boolean judged = !asked.sheet().isEmpty();
    String before = asked.text();
    List<String> lines = List.of(before.split("(?<=\n)"));
    Iterator<String> left = List.of(after.split("(?<=\n)")).iterator();
    String item = "";
    for (String line : lines) {
      if (line.matches("(?s)  [a-z].*")) {
        item = line.strip().replaceFirst("(?s):.*", "");
      }
      boolean touched =
          asked.items().containsKey(item)
              || judged && line.startsWith("inspected")
              || line.startsWith("observations")
              || !line.endsWith("\n");
      if (!touched) {
        boolean found = false;
        while (!found && left.hasNext()) {
          found = left.next().stripTrailing().equals(line.stripTrailing());
        }
        assertThat(found).as("the line “" + line + "” of\n" + before + "\nin\n" + after).isTrue();
      }
    }
  }
}
