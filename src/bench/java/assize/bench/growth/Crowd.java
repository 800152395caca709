package assize.bench.growth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A rule set and a record with a great many of one thing and little else, as nobody writes them by
 * hand.
 *
 * @param name by which it can be asked for
 * @param says what there are many of
 * @param most about as many as the bounds allow
 * @param rules the rule set with so many
 * @param record what the record has beside its head, with so many
 */
record Crowd(
    String name, String says, int most, IntFunction<String> rules, IntFunction<String> record) {

  static final List<Crowd> ALL =
      List.of(
          rules("claims-of-one", "claims of one source on one item", 200, Crowd::claimsOfOne),
          rules("sources-on-one", "sources on one item", 200, Crowd::sourcesOnOne),
          rules("claim-days", "claims on one item, each from another day", 152, Crowd::claimDays),
          rules(
              "claim-days-apart",
              "items with one source, whose claims are each from another day",
              248,
              Crowd::claimDaysApart),
          rules("claim-equipment", "claims, each with other equipment", 200, Crowd::claimEquipment),
          rules("item-days", "items, each from another day", 496, Crowd::itemDays),
          rules("models", "models with an item each", 96, Crowd::models),
          rules("equipment", "items, each with other equipment", 496, Crowd::equipment),
          rules("plants", "plants and markets with an item each", 96, Crowd::plants),
          crowd(
              "numbers",
              "entries of a number table, and items by number",
              480,
              Crowd::numbers,
              n -> "numbers: {chassis: A-" + n / 2 + "}\n"),
          crowd(
              "series",
              "number series, and items by number",
              200,
              Crowd::series,
              n -> "numbers: {chassis: A" + n / 2 + "-1}\n"),
          crowd(
              "tables",
              "number tables, and a number in each",
              96,
              Crowd::tables,
              n -> "numbers: {" + join(n, i -> "t" + i + ": A-" + i) + "}\n"),
          crowd(
              "date-codes",
              "date codes found, each with another window",
              200,
              Crowd::dateCodes,
              n ->
                  "observations: {"
                      + join(n, i -> item(i) + ": {date_code: " + code(i) + "}")
                      + "}\n"),
          rules("awards", "awards", 96, Crowd::awards),
          crowd("colors", "colors", 1000, Crowd::colors, n -> ""),
          crowd("kinds", "finishes, each a kind of the last", 992, Crowd::kinds, Crowd::found),
          rules("copies", "sources, each a copy of the last", 200, Crowd::copies),
          rules("copies-net", "sources that copy all of another row", 14, Crowd::copiesNet),
          crowd(
              "departures",
              "departures",
              4000,
              Crowd::plain,
              n ->
                  "observations: {"
                      + join(
                          n,
                          i ->
                              item(i)
                                  + ": {departure: {reason: r"
                                  + i
                                  + ", explanation: W, review_by: 2020}}")
                      + "}\n"),
          crowd(
              "evidence",
              "evidence on one item",
              40000,
              n -> plain(1),
              n ->
                  "evidence: {"
                      + join(n, i -> "e" + i + ": {measurement: Caliper " + i + "}")
                      + "}\nobservations: {i0: {finish: f0, evidence: ["
                      + join(n, i -> "e" + i)
                      + "]}}\n"),
          crowd(
              "traces",
              "traces, three on an item",
              1000,
              Crowd::plain,
              n ->
                  "traces: ["
                      + join(
                          n,
                          i ->
                              "{item: "
                                  + item(i / 3)
                                  + ", grade: B, says: {finish: f"
                                  + i % 3
                                  + "}}")
                      + "]\n"),
          rules("allowances", "reasons that keep credit", 20000, Crowd::allowances),
          rules("days-by-items", "days, and ten items for each", 192, Crowd::daysByItems),
          rules("accepted", "accepted warnings", 4000, Crowd::accepted),
          rules("cause", "items with one cause", 4000, Crowd::cause),
          rules("causes", "items that may apply with causes of two", 496, Crowd::causes),
          rules("areas", "areas with an item each", 200, Crowd::areas),
          rules("may-apply", "items that may apply, among others", 4000, Crowd::mayApply),
          rules("parts", "parts of one condition", 496, Crowd::parts),
          rules("of-nine", "items with any of nine pieces of equipment", 3600, Crowd::ofNine),
          rules("parts-of-claims", "claims with as many conditions", 22, Crowd::partsOfClaims),
          rules("spans", "items with eighty days each", 3, Crowd::spans),
          crowd(
              "part-numbers", "items with twenty part numbers", 4000, Crowd::partNumbers, n -> ""),
          rules(
              "titles", "items of one title", 4000, n -> plain(n).replaceAll("Item [0-9]+", "One")),
          crowd(
              "same-color",
              "items of the color of the last",
              4000,
              Crowd::sameColor,
              n -> "observations: {" + join(n, i -> item(i) + ": {color: c0}") + "}\n"));

  private static final List<String> COMMANDS =
      List.of("judge", "judge --json", "check", "handbook", "sheet");
  private static final String HEAD = "rule_set: crowd\nname: A crowd\nedition: \"1\"\n";
  private static final String MODEL = "models: {X1: {name: Dropside, production: 1900/1999}}\n";
  private static final String FINISHES =
      "finishes: {f0: {name: F}, f1: {name: G}, f2: {name: H}}\n";
  private static final String SOURCE = "sources: {s: {kind: drawing, grade: B, title: S}}\n";

  private static Crowd crowd(
      String name, String says, int most, IntFunction<String> rules, IntFunction<String> record) {
    return new Crowd(name, says, most, n -> HEAD + rules.apply(n), record);
  }

  private static Crowd rules(String name, String says, int most, IntFunction<String> rules) {
    return crowd(name, says, most, rules, n -> "observations: {i0: {finish: f0}}\n");
  }

  /**
   * Returns a course for each command that looks at all of it: an eighth of the most, to the most.
   */
  static Stream<Course> courses() {
    return ALL.stream()
        .flatMap(
            crowd ->
                COMMANDS.stream()
                    .map(
                        command ->
                            new Course(
                                crowd.name() + "-" + command,
                                crowd.says() + ", `" + command + "`",
                                Math.max(1, crowd.most() / 8),
                                4,
                                (folder, size) -> crowd.words(command, folder, size))));
  }

  private List<String> words(String command, Path folder, int n) throws IOException {
    String rules = Files.writeString(folder.resolve("rules.yaml"), this.rules.apply(n)).toString();
    String one = Files.writeString(folder.resolve("one.yaml"), recordText(n)).toString();
    String out = folder.resolve("out").toString();
    return switch (command) {
      case "judge" -> List.of("judge", one, "--out", out);
      case "judge --json" -> List.of("judge", one, "--out", out, "--json", out + ".json");
      case "check" -> List.of("check", rules);
      case "handbook" -> List.of("handbook", rules, "--out", out + "-handbook.html");
      default -> List.of("sheet", one, "--out", out + "-sheet.html");
    };
  }

  /** Returns the whole record. */
  String recordText(int n) {
    return "record: one\nrules: rules.yaml\nvehicle: {name: The first}\n" + record.apply(n);
  }

  private static String join(int n, IntFunction<String> one) {
    return IntStream.range(0, n).mapToObj(one).collect(Collectors.joining(",\n  "));
  }

  private static String item(int i) {
    return "i" + i;
  }

  private static String day(int i) {
    return LocalDate.of(1900, 1, 1).plusDays(1 + 2L * i).toString();
  }

  /** Items that have something between their points and their expectation. */
  private static String items(int n, IntFunction<String> more) {
    return "areas: {a: {name: A, items: {"
        + join(n, i -> item(i) + ": {title: Item " + i + ", points: 1, " + more.apply(i) + "}")
        + "}}}\n";
  }

  private static String expected(IntFunction<String> more, int n) {
    return items(n, i -> more.apply(i) + "expect: {finish: f0}");
  }

  private static String plain(int n) {
    return MODEL + FINISHES + expected(i -> "", n);
  }

  private static String claims(int n, IntFunction<String> one) {
    return items(1, i -> "claims: [" + join(n, one) + "]");
  }

  private static String claim(int i, String source, String more) {
    return "{source: " + source + ", " + more + "says: {finish: f" + i % 3 + "}}";
  }

  private static String sources(int n, IntFunction<String> more) {
    return "sources: {"
        + join(n, i -> "s" + i + ": {kind: drawing, grade: B, title: S" + more.apply(i) + "}")
        + "}\n";
  }

  private static String claimsOfOne(int n) {
    return MODEL + FINISHES + SOURCE + claims(n, i -> claim(i, "s", "cite: page " + i + ", "));
  }

  private static String sourcesOnOne(int n) {
    return MODEL + FINISHES + sources(n, i -> "") + claims(n, i -> claim(i, "s" + i, ""));
  }

  private static String claimDays(int n) {
    return MODEL
        + FINISHES
        + sources(n, i -> "")
        + claims(n, i -> claim(i, "s" + i, "built: " + day(i) + "/.., "));
  }

  private static String claimDaysApart(int n) {
    return MODEL
        + FINISHES
        + SOURCE
        + items(
            n,
            i ->
                "claims: ["
                    + claim(0, "s", "built: ../" + day(i) + ", ")
                    + ", "
                    + claim(1, "s", "built: " + day(i) + "/.., ")
                    + "]");
  }

  private static String claimEquipment(int n) {
    return MODEL
        + FINISHES
        + sources(n, i -> "")
        + "equipment: {"
        + join(n, i -> "q" + i + ": Q")
        + "}\n"
        + claims(n, i -> claim(i, "s" + i, "equipment: [q" + i + "], "));
  }

  private static String itemDays(int n) {
    return MODEL + FINISHES + expected(i -> "built: " + day(i) + "/.., ", n);
  }

  private static String models(int n) {
    return "models: {"
        + join(n, i -> "m" + i + ": {name: M, production: " + day(i) + "/1999}")
        + "}\n"
        + FINISHES
        + expected(i -> "models: [m" + i + "], ", n);
  }

  private static String equipment(int n) {
    return MODEL
        + FINISHES
        + "equipment: {"
        + join(n, i -> "q" + i + ": Q")
        + "}\n"
        + expected(i -> "equipment: [q" + i + "], ", n);
  }

  private static String plants(int n) {
    return MODEL
        + FINISHES
        + "plants: {"
        + join(n, i -> "p" + i + ": P")
        + "}\nmarkets: {"
        + join(n, i -> "k" + i + ": K")
        + "}\n"
        + expected(i -> "plant: [p" + i + "], market: [k" + i + "], ", n);
  }

  private static String numbers(int n) {
    return MODEL
        + FINISHES
        + "number_tables: {chassis: {name: Chassis, series: [{prefix: A-, first_numbers: {"
        + join(n, i -> (i + 1) + ": " + day(i))
        + "}, last: {number: "
        + (n + 1)
        + ", built: 1999}}]}}\n"
        + expected(i -> "numbers: {chassis: A-" + (i + 1) + "..A-" + (n + 1) + "}, ", n);
  }

  private static String series(int n) {
    return MODEL
        + FINISHES
        + "number_tables: {chassis: {name: Chassis, series: ["
        + join(
            n,
            i ->
                "{prefix: A"
                    + i
                    + "-, first_numbers: {1: "
                    + day(i)
                    + "}, last: {number: 9, built: 1999}}")
        + "]}}\n"
        + expected(i -> "numbers: {chassis: A" + i + "-1..A" + i + "-9}, ", n);
  }

  private static String tables(int n) {
    return MODEL
        + FINISHES
        + "number_tables: {"
        + join(
            n,
            i ->
                "t"
                    + i
                    + ": {name: T, series: [{prefix: A-, first_numbers: {1: "
                    + day(i)
                    + "}, last: {number: "
                    + (n + 1)
                    + ", built: "
                    + day(i + 1)
                    + "}}]}")
        + "}\n"
        + expected(i -> "", 1);
  }

  private static String code(int i) {
    return i % 12 + 1 + "-" + (10 + i % 80);
  }

  private static String dateCodes(int n) {
    return MODEL
        + FINISHES
        + items(
            n,
            i ->
                "expect: {date_code: {pattern: \"(?P<month>[0-9]{1,2})-(?P<year>[0-9]{2})\", lead_time: P"
                    + (i + 1)
                    + "D..P0D}}");
  }

  private static String awards(int n) {
    return "scale: {method: sum, out_of: "
        + (n + 1)
        + "}\nawards: {"
        + join(
            n,
            i ->
                "w"
                    + i
                    + ": {name: W, min_score: "
                    + (n - i)
                    + ", min_area_share: 10 %, max_item_loss: 1}")
        + "}\n"
        + plain(1);
  }

  private static String colors(int n) {
    return "colors: {"
        + join(n, i -> "c" + i + ": {name: C, lab: [" + i % 90 + ", 1, 2]}")
        + "}\n"
        + MODEL
        + items(n, i -> "expect: {color: c" + i + "}");
  }

  private static String kinds(int n) {
    return MODEL
        + "finishes: {f0: {name: F}, "
        + join(n, i -> "f" + (i + 1) + ": {name: F, kind_of: f" + i + "}")
        + "}\n"
        + expected(i -> "", n);
  }

  private static String found(int n) {
    return "observations: {" + join(n, i -> item(i) + ": {finish: f" + (n - i) + "}") + "}\n";
  }

  private static String copies(int n) {
    return MODEL
        + FINISHES
        + sources(n, i -> i == 0 ? "" : ", copies: [s" + (i - 1) + "]")
        + claims(n, i -> claim(0, "s" + i, ""));
  }

  private static String copiesNet(int n) {
    return MODEL
        + FINISHES
        + sources(
            n * n,
            i -> i < n ? "" : ", copies: [" + join(n, c -> "s" + ((i / n - 1) * n + c)) + "]")
        + claims(n * n, i -> claim(i / n, "s" + i, ""));
  }

  private static String allowances(int n) {
    return "scale: {method: sum, out_of: 100, allowances: {"
        + join(n, i -> "r" + i + ": 1/2")
        + "}}\n"
        + plain(1);
  }

  private static String daysByItems(int n) {
    return MODEL + FINISHES + expected(i -> i < n ? "built: " + day(i) + "/.., " : "", 10 * n);
  }

  private static String accepted(int n) {
    return plain(n)
        + SOURCE
        + "accepted_warnings: ["
        + join(n, i -> "{warning: no-source, about: [i" + i + "], reason: B}")
        + "]\n";
  }

  private static String cause(int n) {
    return MODEL + FINISHES + expected(i -> "cause: rust, ", n);
  }

  private static String causes(int n) {
    return MODEL
        + FINISHES
        + "equipment: {"
        + join(n, i -> "q" + i + ": Q")
        + "}\n"
        + expected(i -> "cause: c" + i / 8 + ", equipment: [q" + i + "], ", n);
  }

  private static String areas(int n) {
    return MODEL
        + FINISHES
        + "areas: {"
        + join(
            n,
            i ->
                "a"
                    + i
                    + ": {name: A, points: 1, items: {i"
                    + i
                    + ": {title: T, points: 1, expect: {finish: f0}}}}")
        + "}\n";
  }

  private static String mayApply(int n) {
    return MODEL
        + FINISHES
        + "equipment: {q0: Q, q1: Q}\n"
        + items(
            n,
            i ->
                (i % 2 == 0 ? "equipment: [q" + i / 2 % 2 + "], " : "")
                    + "expect: {finish: {f0: 1, f1: 0."
                    + (100 + i % 900)
                    + "}}");
  }

  private static String parts(int n) {
    return MODEL
        + FINISHES
        + "equipment: {"
        + join(n, i -> "q" + i + ": Q")
        + "}\n"
        + expected(i -> "any_of: [" + join(n, p -> "{equipment: [q" + p + "]}") + "], ", 1);
  }

  private static String ofNine(int n) {
    return MODEL
        + FINISHES
        + "equipment: {"
        + join(9, i -> "q" + i + ": Q")
        + "}\n"
        + expected(i -> "any_of: [" + join(9, p -> "{equipment: [q" + p + "]}") + "], ", n);
  }

  private static String partsOfClaims(int n) {
    return MODEL
        + FINISHES
        + sources(n, i -> "")
        + "equipment: {"
        + join(n * n, i -> "q" + i + ": Q")
        + "}\n"
        + claims(
            n,
            i ->
                claim(
                    i,
                    "s" + i,
                    "any_of: [" + join(n, p -> "{equipment: [q" + (i * n + p) + "]}") + "], "));
  }

  private static String spans(int n) {
    return MODEL + FINISHES + expected(i -> "built: \"{" + dates(i, n) + "}\", ", n);
  }

  private static String dates(int i, int n) {
    return IntStream.range(0, 80).mapToObj(p -> day(i + n * p)).collect(Collectors.joining(","));
  }

  private static String partNumbers(int n) {
    return MODEL
        + items(n, i -> "expect: {part_number: [" + join(20, p -> "A-" + (i * 20 + p)) + "]}");
  }

  private static String sameColor(int n) {
    return MODEL
        + "colors: {c0: {name: C, lab: [10, 1, 2]}}\n"
        + items(n, i -> "expect: {color: " + (i == 0 ? "c0" : "{same_as: i" + (i - 1) + "}") + "}");
  }
}
