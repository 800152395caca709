package assize.bench.growth;

import assize.bench.Generated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What grows where editions are compared, records are merged and warnings are accepted. */
final class Courses {
  private static final int ITEMS = 100;
  private static final int SOURCES = 40;

  static final List<Course> ALL =
      List.of(
          new Course("compare", "items renamed, `compare`", 250, 5, Courses::renamed),
          new Course("compare-points", "items changed, `compare`", 250, 5, Courses::points),
          new Course("compare-sources", "sources changed, `compare`", 250, 5, Courses::sources),
          new Course(
              "compare-record", "items changed, `compare --record`", 250, 5, Courses::vehicle),
          new Course("evidence", "pieces of evidence, `merge`", 1000, 5, Courses::evidence),
          new Course("friends", "records of 100 items, `merge`", 4, 5, Courses::friends),
          new Course("rows", "rows of a table, `merge`", 1000, 5, Courses::rows),
          new Course("accepted", "warnings accepted, `check`", 1000, 5, Courses::accepted));

  private Courses() {}

  private static List<String> compare(Path folder, String older, String newer) throws IOException {
    Path old = Files.writeString(folder.resolve("older.yaml"), older);
    Path now = Files.writeString(folder.resolve("newer.yaml"), newer);
    Path page = folder.resolve("changes.html");
    return List.of("compare", old.toString(), now.toString(), "--out", page.toString());
  }

  private static List<String> renamed(Path folder, int size) throws IOException {
    String rules = Generated.rules(size, SOURCES);
    return compare(
        folder, rules, rules.replaceAll("(?m)^ {6}(\\w+-\\w+-[0-9]+:)$", "      new-$1"));
  }

  private static List<String> points(Path folder, int size) throws IOException {
    String rules = Generated.rules(size, SOURCES);
    return compare(folder, rules, rules.replaceAll("(?m)^ {8}points: ", "        points: 1"));
  }

  private static List<String> sources(Path folder, int size) throws IOException {
    String rules = Generated.rules(ITEMS, size);
    return compare(folder, rules, rules.replace("grade: A", "grade: B"));
  }

  private static List<String> vehicle(Path folder, int size) throws IOException {
    List<String> words = points(folder, size);
    Path record = folder.resolve("record.yaml");
    Files.writeString(record, Generated.record(size, "newer.yaml", 1));
    return IntStream.range(0, words.size() + 2)
        .mapToObj(
            i ->
                i < words.size()
                    ? words.get(i)
                    : i == words.size() ? "--record" : record.toString())
        .toList();
  }

  private static String lines(int count, IntFunction<String> line) {
    return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining());
  }

  private static Path mine(Path folder) throws IOException {
    Files.writeString(folder.resolve("rules.yaml"), Generated.rules(ITEMS, SOURCES));
    return Files.writeString(
        folder.resolve("mine.yaml"), Generated.record(ITEMS / 2, "rules.yaml", 1));
  }

  private static List<String> evidence(Path folder, int size) throws IOException {
    String theirs =
        "\nevidence:\n"
            + lines(size, i -> "  rule-" + i + ": {measurement: Rule " + i + "}\n")
            + "\nobservations:\n";
    Path friend =
        Files.writeString(
            folder.resolve("theirs.yaml"),
            Generated.record(ITEMS, "rules.yaml", 1).replace("\nobservations:\n", theirs));
    return List.of("merge", mine(folder).toString(), friend.toString());
  }

  private static List<String> friends(Path folder, int size) throws IOException {
    Path mine = mine(folder);
    for (int i = 0; i < size; i++) {
      Files.writeString(
          folder.resolve("friend-" + i + ".yaml"), Generated.record(ITEMS, "rules.yaml", 1));
    }
    return IntStream.range(0, size + 2)
        .mapToObj(
            i ->
                switch (i) {
                  case 0 -> "merge";
                  case 1 -> mine.toString();
                  default -> folder.resolve("friend-" + (i - 2) + ".yaml").toString();
                })
        .toList();
  }

  private static List<String> rows(Path folder, int size) throws IOException {
    String rows =
        lines(size, i -> Generated.item(i % ITEMS) + ",,," + "Seen at place " + i + ",\n");
    Path table =
        Files.writeString(folder.resolve("table.csv"), "Item,Aspect,Found,Note,Evidence\n" + rows);
    return List.of("merge", mine(folder).toString(), table.toString());
  }

  private static List<String> accepted(Path folder, int size) throws IOException {
    String rules =
        "rule_set: measured\nname: Measured standard\nedition: '1'\n"
            + "scale: {method: sum, out_of: 100}\n"
            + "models: {X1: {name: Dropside, production: 1932-03/1936-08}}\n"
            + "accepted_warnings:\n"
            + lines(
                size,
                i ->
                    "  - {warning: no-source, about: i" + i + ", reason: Nobody knows " + i + "}\n")
            + "areas:\n  cab:\n    name: Cab\n    items:\n"
            + lines(
                size,
                i ->
                    "      i"
                        + i
                        + ": {title: Item "
                        + i
                        + ", points: 1, expect: {present: yes}}\n");
    return List.of("check", Files.writeString(folder.resolve("rules.yaml"), rules).toString());
  }
}
