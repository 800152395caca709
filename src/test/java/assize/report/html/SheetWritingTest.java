package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.diagnostic.Result;
import assize.record.Observation;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.text.Outline;
import assize.text.SourceFile;
import assize.yaml.RecordReader;
import assize.yaml.RecordText;
import assize.yaml.RuleSetReader;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheet's own reader and writer of records, in a browser, held to the program's reader. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
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
    return RecordText.parse(new SourceFile("r", text)).value().map(it -> plain(it.outline()));
  }

  private static Object plain(Outline outline) {
    return outline.<Object>match(
        text -> List.of("text", text.value(), (long) text.start(), (long) text.end()),
        nothing -> List.of("nothing", (long) nothing.end()),
        group ->
            List.of(
                "group",
                group.braces(),
                group.parts().stream()
                    .map(
                        it ->
                            List.of(
                                it.name(), (long) it.at(), (long) it.colon(), plain(it.value())))
                    .toList()),
        several ->
            List.of(
                "list",
                several.brackets(),
                several.parts().stream().map(it -> plain(it)).toList()));
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
        List<?> why = RecordText.parse(new SourceFile("r", texts.get(i))).diagnostics();
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

  /** Records in all the shapes in which people write them. */
  private static List<String> bases() throws IOException {
    String head = "record: t\nrules: tarrowby-type-l\nvehicle: {name: T, model: L45}\n";
    String truck = Files.readString(Path.of("rules/l45-4388.yaml"));
    return List.of(
        head,
        head + "observations: {}\n",
        head
            + "judged: {by: me}\nobservations:   # all\n  # chassis\n  frame-paint: {finish: two-pack}\n",
        head
            + "observations:\n  frame-rivets: {count: 30, note: a, # r\n    by: b}\n  frame-paint:\n"
            + "    # why\n    finish: two-pack   # by eye\n    color:\n      lab: [12.6, 0.1, -0.2]\n"
            + "      uncertainty: 0.3\n    note: |\n      one\n        two\n    departure:\n"
            + "      reason: safety\n      until: 2027-05\n  spring-date: {date_code: \"C3\"}",
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
          fields.put("date_code", random.nextInt(4) == 0 ? "" : hostile(random));
          items.put("spring-date", fields);
        }
        case 3 -> {
          fields.put("part_number", hostile(random));
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
            Map.of("reason", none ? "" : "safety", "why", none ? "" : hostile(random)));
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
        String why = String.valueOf(((Map<?, ?>) value).get("why"));
        Optional<Observation.Departure> departure = one.flatMap(Observation::departure);
        assertThat(departure.map(Observation.Departure::reason).orElse(""))
            .as(after)
            .isEqualTo(reason);
        assertThat(departure.flatMap(Observation.Departure::why).orElse("")).isEqualTo(why);
      }
      case "color" -> color(one, (Map<?, ?>) value, after);
      default -> {
        Aspect aspect = Aspect.of(field).orElseThrow();
        String found =
            one.map(it -> it.findings().get(aspect))
                .map(it -> String.valueOf(it.match(new Sheets.Typed())))
                .orElse("");
        assertThat(found).as(after).isEqualTo(typed);
      }
    }
  }

  private static void color(Optional<Observation> one, Map<?, ?> value, String after) {
    Finding found = one.map(it -> it.findings().get(Aspect.COLOR)).orElseThrow();
    Map<?, ?> typed = (Map<?, ?>) found.match(new Sheets.Typed());
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
              || judged && line.startsWith("judged")
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
