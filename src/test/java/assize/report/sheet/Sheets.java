package assize.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Colors;
import assize.aspect.Finding;
import assize.cli.Main;
import assize.cli.Terminal;
import assize.measure.CieLab;
import assize.record.Observation;
import assize.report.html.Browser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchService;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The demonstration in a folder, and inspection sheets of it. */
public record Sheets(Path folder, Path home) {
  /** After this a browser is taken to save nothing. */
  private static final long PATIENCE = 300;

  /** Unpacks the demonstration twice: one is worked on, one stays as it is. */
  static Sheets in(Path folder) throws IOException {
    Sheets sheets = new Sheets(folder, folder.resolveSibling("as-it-was"));
    run("demo", sheets.folder().toString());
    run("demo", sheets.home().toString());
    return sheets;
  }

  /** Runs a command that has to succeed, and returns its messages. */
  public static String run(String... words) {
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    PrintStream err = new PrintStream(messages, true, StandardCharsets.UTF_8);
    PrintStream out = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    int exit = Main.run(new Terminal(out, err, false), words);
    String said = messages.toString(StandardCharsets.UTF_8);
    assertThat(exit).as(said).isZero();
    return said;
  }

  Path rules() {
    return folder.resolve("tarrowby-type-l");
  }

  Path truck() {
    return folder.resolve("l45-4388.yaml");
  }

  List<Path> records() {
    return List.of(
        truck(), folder.resolve("l41-half-recorded.yaml"), folder.resolve("q-1187.yaml"));
  }

  /** Returns the same record as it was unpacked. */
  Path original(Path record) {
    return home.resolve(record.getFileName());
  }

  /** Makes the sheet of a record and moves the record away, so that a saved one is seen. */
  Path of(Path record) throws IOException {
    Path page = folder.resolve("sheets").resolve(record.getFileName() + ".html");
    Files.copy(original(record), record, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    run("sheet", record.toString(), "--out", page.toString());
    Files.delete(record);
    return page;
  }

  Path ofTruck() {
    Path page = folder.resolve("sheets").resolve("truck.html");
    run("sheet", original(truck()).toString(), "--out", page.toString());
    return page;
  }

  /** Makes the sheet of a truck that nobody looked at yet; it has all that the record states. */
  Path fresh() {
    Path page = folder.resolve("sheets").resolve("fresh.html");
    run(
        "sheet",
        rules().toString(),
        "--model",
        "L45",
        "--name",
        "Test truck",
        "--out",
        page.toString());
    return page;
  }

  /** Presses the key to save and waits for the file. */
  Path save(Browser browser) throws IOException, InterruptedException {
    String name =
        String.valueOf(
            browser.result("return JSON.parse(document.getElementById('data').textContent).file;"));
    return save(browser, name);
  }

  /** Presses the key to save and waits for a file of that name. */
  Path save(Browser browser, String name) throws IOException, InterruptedException {
    Path saved = folder.resolve(name);
    Files.deleteIfExists(saved);
    try (WatchService watch = folder.getFileSystem().newWatchService()) {
      folder.register(watch, StandardWatchEventKinds.ENTRY_CREATE);
      browser.click(".bar .main");
      while (!Files.exists(saved)) {
        var key = watch.poll(PATIENCE, TimeUnit.SECONDS);
        assertThat(key).as("waiting for " + name).isNotNull();
        key.pollEvents();
        key.reset();
      }
    }
    return saved;
  }

  /** Judges a record and returns what was said about it. */
  String judge(Path record) {
    return run("judge", record.toString(), "--out", folder.resolve("judged").toString());
  }

  /** Returns what a person would choose and type to say what an observation says. */
  static Map<String, Object> answers(Observation one) {
    Map<String, Object> answers = new LinkedHashMap<>();
    one.findings().forEach((aspect, it) -> answers.put(aspect.word(), typed(it)));
    one.note().ifPresent(it -> answers.put("note", it));
    one.departure()
        .ifPresent(
            it ->
                answers.put(
                    "departure",
                    Map.of("reason", it.reason(), "explanation", it.explanation().orElse(""))));
    return answers;
  }

  /** Returns a finding as it is typed, a color field by field. */
  static Object typed(Finding found) {
    if (!(found instanceof Colors.Found color)) {
      return found.written().typed();
    }
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("chip", color.chip().orElse(""));
    color.lab().ifPresent(lab -> put(typed, lab, color.uncertainty()));
    return typed;
  }

  private static void put(Map<String, String> typed, CieLab lab, double uncertainty) {
    typed.put("l", Double.toString(lab.l()));
    typed.put("a", Double.toString(lab.a()));
    typed.put("b", Double.toString(lab.b()));
    typed.put("u", uncertainty == 0 ? "" : Double.toString(uncertainty));
  }
}
