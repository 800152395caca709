package assize.cli;

import assize.Pinned;
import assize.text.Sha256;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Everything that the program writes, for every record and rule set that the project has: messages,
 * JSON, CSV and YAML in full, pages and the parts of workbooks by their SHA-256. A change of the
 * inside leaves {@code src/test/pins} as it is; a change of what people see shows there.
 *
 * <p>A run leaves what it wrote in {@code target/pins}, so that two runs can be compared page by
 * page.
 */
@Tag("slow")
class PinsTest {
  private static final Path WORK = Path.of("target/pins");
  private static final Path EXPECTED = Path.of("src/test/pins");
  private static final Path RESOURCES = Path.of("src/test/resources/assize");
  private static final String AS_OF = " --as-of 2026-10-03";

  /** A secret for each record that is copied for others: what a copy shows hangs on it. */
  private static final String SECRET =
      "record: %s\nmade: 2026-07-14\n"
          + "secret: P8VBB-SADQA-D8YH3-5ADJ7-2BPT4-BC6B6-1BN29-N8B97-R9R8K-YKZA5-WT6S1-02YJ9-3XS0J\n";

  /** The records of the demonstration, each with its rule set. */
  private static final Map<String, String> RECORDS = new LinkedHashMap<>();

  static {
    RECORDS.put("l41-half-recorded", "tarrowby-type-l");
    RECORDS.put("l45-4388", "tarrowby-type-l");
    RECORDS.put("q-1187", "quillhurst-q.yaml");
  }

  /** Commands that belong together, and the files they work on. */
  enum Group {
    RECORDS,
    STANDARDS,
    EVERY_KEY,
    EDITIONS,
    RESULTS,
    CORPUS,
    MERGING,
    TABLES,
    PROGRAM;

    String folder() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    Path work() {
      return WORK.resolve(folder());
    }
  }

  @Tag("pinned")
  @ParameterizedTest
  @EnumSource
  void isAsKept(Group group) throws IOException {
    delete(group.work());
    Files.createDirectories(group.work());
    List<String> commands =
        switch (group) {
          case RECORDS -> records(group.work());
          case STANDARDS -> standards(group.work());
          case EVERY_KEY -> everyKey(group.work());
          case EDITIONS -> editions(group.work());
          case RESULTS -> results(group.work());
          case CORPUS -> corpus(group.work());
          case MERGING -> merging(group.work());
          case TABLES -> tables(group.work());
          case PROGRAM -> program();
        };
    StringBuilder said = new StringBuilder();
    Map<Path, FileTime> known = files(group.work());
    for (String command : commands) {
      said.append(run(group.work(), command));
      Map<Path, FileTime> now = files(group.work());
      for (Map.Entry<Path, FileTime> file : new TreeMap<>(now).entrySet()) {
        if (!file.getValue().equals(known.get(file.getKey()))) {
          said.append(written(group.work(), file.getKey()));
        }
      }
      known = now;
    }
    Pinned.equal(EXPECTED.resolve(group.folder() + ".txt"), said.toString());
  }

  private static List<String> records(Path work) throws IOException {
    copy(Path.of("rules"), work.resolve("demo"));
    List<String> all = new ArrayList<>();
    for (String name : RECORDS.keySet()) {
      Files.writeString(work.resolve("demo/" + name + ".secret"), SECRET.formatted(name));
      all.addAll(ofRecord("demo/" + name + ".yaml", name));
      all.add("merge demo/" + name + ".yaml out/sheet/" + name + ".csv --json");
      all.add("merge demo/" + name + ".yaml out/sheet/" + name + ".xlsx --json");
    }
    all.add("verify out/copy/l45-4388.html L45-4388 " + "AAAAA ".repeat(13).strip());
    all.add("judge demo/l45-4388.yaml --out out/later --as-of 2030-01-01 --json out/later.json");
    all.add("judge demo/l45-4388.yaml --out out/folder --photos folder" + AS_OF);
    return all;
  }

  /** Returns every command that takes one record. */
  private static List<String> ofRecord(String record, String name) {
    String sheet = "sheet " + record + " --out out/sheet/" + name;
    return List.of(
        "judge " + record + " --out out/judge --json out/judge/" + name + ".json" + AS_OF,
        "judge " + record + " --redact --out out/copy --json out/copy/" + name + ".json" + AS_OF,
        "dossier " + record + " --out out/dossier" + AS_OF,
        "dossier " + record + " --redact --out out/dossier-copy" + AS_OF,
        sheet + ".html",
        sheet + ".xlsx",
        sheet + ".csv",
        "check " + record + " --show-accepted" + AS_OF,
        "check " + record + " --show-accepted --json" + AS_OF,
        "prove " + record,
        "prove " + record + " --json");
  }

  private static List<String> standards(Path work) throws IOException {
    copy(Path.of("rules"), work.resolve("demo"));
    List<String> all = new ArrayList<>();
    for (String standard : List.of("tarrowby-type-l", "quillhurst-q.yaml")) {
      String name = standard.replace(".yaml", "");
      all.addAll(ofStandard("demo/" + standard, "demo/new-" + name + ".yaml", name));
      all.add("check demo/" + standard + " --coverage");
      all.add("check demo/" + standard + " --coverage --all-items");
      all.add("check demo/" + standard + " --coverage --json");
    }
    for (Map.Entry<String, String> one : RECORDS.entrySet()) {
      String empty = "demo/new-" + one.getValue().replace(".yaml", "") + ".yaml";
      String merge = "merge " + empty + " demo/" + one.getKey() + ".yaml --allow-other-vehicle";
      all.add(merge);
      all.add(merge + " --json");
      all.add(merge + " --write");
    }
    all.add("number demo/tarrowby-type-l L45-4388 L41-1 L99");
    all.add("number demo/tarrowby-type-l L45-4388 --json");
    return all;
  }

  /** Returns every command that takes one rule set. */
  private static List<String> ofStandard(String rules, String empty, String name) {
    return List.of(
        "handbook " + rules + " --out out/handbook/" + name + ".html",
        "check " + rules + " --show-accepted",
        "check " + rules + " --show-accepted --json",
        "sheet " + rules + " --out out/sheet/" + name + ".html",
        "sheet " + rules + " --out out/sheet/" + name + ".xlsx",
        "sheet " + rules + " --out out/sheet/" + name + ".csv",
        "new " + rules + " " + empty,
        "new " + rules + " " + empty.replace(".yaml", "-2.yaml") + " --json",
        "judge " + empty + " --out out/judge --json out/judge/" + name + ".json" + AS_OF);
  }

  /** A rule set and a record in which every key is written once. */
  private static List<String> everyKey(Path work) throws IOException {
    Path rules = Files.createDirectories(work.resolve("schema/rules"));
    for (String file : List.of("rules.yaml", "items.yaml")) {
      Files.copy(RESOURCES.resolve("schema").resolve(file), rules.resolve(file));
    }
    String record = Files.readString(RESOURCES.resolve("schema/record.yaml"));
    Files.writeString(
        work.resolve("schema/record.yaml"), record.replaceAll("(?m)^rules: .*", "rules: rules"));
    for (String file :
        List.of("rules/pictures/guide.png", "photos/horn.png", "papers/invoice.pdf")) {
      Path to = work.resolve("schema").resolve(file);
      Files.createDirectories(to.getParent());
      Files.copy(Path.of("rules/photos/horn-button.png"), to);
    }
    Files.writeString(work.resolve("schema/record.secret"), SECRET.formatted("record"));
    List<String> all = new ArrayList<>(ofRecord("schema/record.yaml", "record"));
    all.addAll(ofStandard("schema/rules", "schema/new.yaml", "rules"));
    all.add("merge schema/new.yaml schema/record.yaml --allow-other-vehicle");
    all.add("merge schema/new.yaml schema/record.yaml --allow-other-vehicle --json");
    all.add("merge schema/new.yaml schema/record.yaml --allow-other-vehicle --write");
    return all;
  }

  private static List<String> editions(Path work) throws IOException {
    copy(RESOURCES.resolve("handbook"), work.resolve("handbook"));
    copy(Path.of("rules"), work.resolve("demo"));
    copy(Path.of("rules"), work.resolve("changed"));
    change(work.resolve("changed/tarrowby-type-l"));
    change(work.resolve("changed/quillhurst-q.yaml"));
    List<String> all = new ArrayList<>();
    changes(all, "handbook/older.yaml", "handbook/newer.yaml", "handbook/truck.yaml", "forth");
    changes(all, "handbook/newer.yaml", "handbook/older.yaml", "handbook/truck.yaml", "back");
    String truck = "tarrowby-type-l";
    changes(all, "demo/" + truck, "changed/" + truck, "demo/l45-4388.yaml", "truck");
    changes(all, "changed/" + truck, "demo/" + truck, "demo/l41-half-recorded.yaml", "half");
    String cycle = "quillhurst-q.yaml";
    changes(all, "demo/" + cycle, "changed/" + cycle, "demo/q-1187.yaml", "motorcycle");
    for (String edition : List.of("older", "newer")) {
      all.add("handbook handbook/" + edition + ".yaml --out out/" + edition + ".html");
      all.add("check handbook/" + edition + ".yaml --show-accepted");
    }
    all.add("judge handbook/truck.yaml --out out --json out/truck.json" + AS_OF);
    return all;
  }

  private static void changes(
      List<String> all, String older, String newer, String record, String name) {
    String changes = "compare " + older + " " + newer;
    all.add(changes + " --out out/" + name + ".html");
    all.add(changes + " --json");
    all.add(changes + " --record " + record + " --out out/" + name + "-vehicle.html");
    all.add(changes + " --record " + record + " --json");
  }

  /** Makes another edition of a rule set: other points and grades. */
  private static void change(Path rules) throws IOException {
    try (Stream<Path> files = Files.walk(rules)) {
      for (Path file : files.filter(it -> it.toString().endsWith(".yaml")).toList()) {
        String text = Files.readString(file);
        Files.writeString(
            file,
            text.replace("points: 4", "points: 3")
                .replaceAll("(?m)^edition: .*$", "edition: 2030-01-01")
                .replace("grade: B", "grade: C"));
      }
    }
  }

  private static List<String> results(Path work) throws IOException {
    copy(Path.of("rules"), work.resolve("demo"));
    for (String name : RECORDS.keySet()) {
      Files.writeString(work.resolve("demo/" + name + ".secret"), SECRET.formatted(name));
    }
    return List.of(
        "results demo --out out/results --json out/results/all.json" + AS_OF,
        "results demo --redact --out out/copies --json out/copies/all.json" + AS_OF,
        "results demo --no-reports --out out/index" + AS_OF);
  }

  private static List<String> corpus(Path work) throws IOException {
    copy(Path.of("src/test/corpus"), work.resolve("corpus"));
    List<String> all = new ArrayList<>();
    for (Path folder : folders(work.resolve("corpus"))) {
      String name = "corpus/" + folder.getFileName();
      String rules = name + (Files.exists(folder.resolve("rules.yaml")) ? "/rules.yaml" : "/rules");
      all.add("check " + rules + " --show-accepted --json");
      if (Files.exists(folder.resolve("record.yaml"))) {
        String record = name + "/record.yaml";
        all.add("check " + record + " --show-accepted" + AS_OF);
        all.add("judge " + record + " --rules " + rules + " --out out --json" + AS_OF);
      }
    }
    return all;
  }

  private static List<String> merging(Path work) throws IOException {
    copy(Path.of("src/test/merging"), work.resolve("merging"));
    List<String> all = new ArrayList<>();
    for (Path folder : folders(work.resolve("merging"))) {
      if (Files.notExists(folder.resolve("rules.yaml"))) {
        Files.copy(work.resolve("merging/rules.yaml"), folder.resolve("rules.yaml"));
      }
      String options =
          Files.exists(folder.resolve("options.txt"))
              ? " " + Files.readString(folder.resolve("options.txt")).strip()
              : "";
      String merge = "merge merging/" + folder.getFileName() + "/record.yaml" + friends(folder);
      all.add(merge + options);
      all.add(merge + options + " --json");
      all.add(merge + options + " --write");
    }
    return all;
  }

  private static String friends(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(it -> String.valueOf(it.getFileName()))
          .filter(it -> it.endsWith(".yaml") || it.endsWith(".csv"))
          .filter(it -> !it.matches("(record|after|rules|other-rules|standard).*"))
          .sorted()
          .map(it -> " merging/" + folder.getFileName() + "/" + it)
          .collect(Collectors.joining());
    }
  }

  private static List<String> tables(Path work) throws IOException {
    copy(Path.of("src/test/tables"), work.resolve("tables"));
    try (Stream<Path> files = Files.list(work.resolve("tables"))) {
      return files
          .map(it -> String.valueOf(it.getFileName()))
          .filter(it -> it.endsWith(".csv"))
          .sorted()
          .map(it -> "merge tables/record.yaml tables/" + it + " --rules tables/rules.yaml")
          .flatMap(it -> Stream.of(it, it + " --json"))
          .toList();
    }
  }

  private static List<String> program() {
    return List.of(
        "schema out",
        "manual",
        "completion bash",
        "completion zsh",
        "completion fish",
        "completion powershell",
        "date 1934-06~ 1934/.. 1934-22",
        "date 1934-06~ --json",
        "color 34.2,-18.5,9.1 35,-18,9",
        "color 34.2,-18.5,9.1 35,-18,9 --json",
        "jugde nothing.yaml",
        "judge nothing.yaml --out out");
  }

  /** Runs one command, whose words that are paths lie in a folder. */
  private static String run(Path work, String command) {
    Object[] words =
        Stream.of(command.split(" "))
            .map(
                it ->
                    it.matches("(demo|changed|handbook|schema|out|corpus|merging|tables)(/.*)?")
                            && !it.equals(command.split(" ")[0])
                        ? work + "/" + it
                        : it)
            .toArray();
    CommandResult ran = CommandResult.of(words);
    String said = "$ %s%nexit %d%n%s".formatted(command, ran.exit(), ran.out());
    return ended(
        (said + (ran.err().isEmpty() ? "" : "--- err\n" + ran.err())).replace(work + "/", ""));
  }

  /** Returns what is kept of a file: a text in full, anything else by its digest. */
  private static String written(Path work, Path file) throws IOException {
    String name = work.relativize(file).toString().replace('\\', '/');
    byte[] bytes = Files.readAllBytes(file);
    if (name.matches(".*\\.(json|csv|yaml|txt)")) {
      String text = new String(bytes, StandardCharsets.UTF_8);
      return ended("--- " + name + "\n" + text.replace(work + "/", ""));
    }
    if (name.endsWith(".xlsx")) {
      return "--- " + name + "\n" + parts(file);
    }
    return "--- " + name + " " + Sha256.of(bytes) + "\n";
  }

  private static String parts(Path workbook) throws IOException {
    StringBuilder parts = new StringBuilder();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(workbook))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.append("  " + entry.getName() + " " + Sha256.of(zip.readAllBytes()) + "\n");
      }
    }
    return parts.toString();
  }

  private static String ended(String text) {
    return text.endsWith("\n") ? text : text + "\n";
  }

  private static Map<Path, FileTime> files(Path folder) throws IOException {
    Map<Path, FileTime> found = new HashMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        found.put(file, Files.getLastModifiedTime(file));
      }
    }
    return found;
  }

  private static List<Path> folders(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(Files::isDirectory).sorted().toList();
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    if (Files.notExists(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      files
          .sorted(Comparator.reverseOrder())
          .forEach(
              file -> {
                try {
                  Files.delete(file);
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              });
    }
  }
}
