package assize.docs;

import static assize.docs.LimitInputs.RECORD;
import static assize.docs.LimitInputs.join;
import static assize.docs.LimitInputs.run;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongFunction;

/** Rule sets and records with as many as wanted of the things that they are made of. */
final class CrowdedRules {
  private static final String HEAD =
      "rule_set: small\nname: A small standard\nedition: \"1\"\n"
          + "models: {x0: {name: Dropside, production: 1900/1999}}\nfinishes: {x0: {name: F}}\n";
  private static final String ITEM = "{title: T, points: 1, expect: {finish: x0}}";

  private CrowdedRules() {}

  static Map<String, LimitInputs> all() {
    Map<String, LimitInputs> all = new LinkedHashMap<>();
    all.put("awards", section("awards", i -> "{name: W, min_score: 1}"));
    all.put("models", section("models", i -> "{name: M, production: 1900/1999}"));
    all.put("plants", section("plants", i -> "P"));
    all.put("markets", section("markets", i -> "M"));
    all.put("pieces of equipment", section("equipment", i -> "Q"));
    all.put(
        "number tables",
        section("number_tables", i -> "{name: N, series: [" + series(i, 1) + "]}"));
    all.put("sources", section("sources", i -> "{kind: drawing, grade: A, title: S}"));
    all.put("colors", section("colors", i -> "{name: C}"));
    all.put("finishes", section("finishes", i -> "{name: F}"));
    all.put("materials", section("materials", i -> "M"));
    all.put(
        "areas", section("areas", i -> "{name: A, points: 1, items: {i" + i + ": " + ITEM + "}}"));
    all.put("items", rules(n -> items(n, 0)));
    all.put(
        "series of numbers, in all number tables",
        rules(
            n ->
                "number_tables: {t: {name: T, series: ["
                    + join(n, i -> series(i, 1), ", ")
                    + "]}}"));
    all.put(
        "entries of all number tables, with reserved blocks",
        rules(n -> "number_tables: {t: {name: T, series: [" + series(0, n) + "]}}"));
    all.put("claims of one aspect of one item", rules(n -> claims(n, 0)));
    all.put(
        "days on which conditions and productions begin or end", rules(n -> items(n - 2, n - 2)));
    all.put("items times those days", rules(n -> items(4000, (n + 3999) / 4000 - 2)));
    all.put(
        "claims, each counted for every span of build days of its aspect",
        rules(n -> claims(200, (n + 199) / 200 - 1)));
    all.put("date codes found times the pieces of the build days", CrowdedRules::dateCodes);
    all.put("traces of a record", CrowdedRules::traces);
    all.put("bytes of the files of a rule set together", CrowdedRules::bytes);
    all.put("entries of the files of a rule set together", CrowdedRules::entries);
    return all;
  }

  private static LimitInputs section(String name, LongFunction<String> one) {
    return rules(n -> name + ": {" + join(n, i -> "x" + i + ": " + one.apply(i), ", ") + "}");
  }

  /** Stands in for what the head has. */
  private static LimitInputs rules(LongFunction<String> rules) {
    return (folder, n) -> {
      String own = rules.apply(n);
      String head =
          HEAD.lines()
              .filter(it -> !own.startsWith(it.substring(0, it.indexOf(':') + 1)))
              .reduce("", (a, b) -> a + b + "\n");
      String areas = own.contains("areas:") ? "" : "\n" + items(1, 0);
      Path file = Files.writeString(folder.resolve("rules.yaml"), head + own + areas + "\n");
      return run("check", file.toString());
    };
  }

  private static String series(long i, long entries) {
    return "{prefix: A"
        + i
        + "-, first_numbers: {"
        + join(entries, e -> e + 1 + ": 1934", ", ")
        + "}}";
  }

  private static String day(long i) {
    return LocalDate.of(1901, 1, 1).plusDays(2 * i).toString();
  }

  /** Items, some of which apply from a day of their own on. */
  private static String items(long n, long days) {
    return "areas: {a: {name: A, items: {"
        + join(
            n,
            i ->
                "i"
                    + i
                    + ": "
                    + (i < days
                        ? ITEM.replace("points", "built: " + day(i) + "/.., points")
                        : ITEM),
            ", ")
        + "}}}";
  }

  /** Claims of one source on one item, which begin or end to hold on so many days. */
  private static String claims(long n, long days) {
    return "sources: {s: {kind: drawing, grade: A, title: S}}\n"
        + "areas: {a: {name: A, items: {i: {title: T, points: 1, claims: ["
        + join(n, i -> "{source: s, " + built(i, days) + "says: {finish: x0}}", ", ")
        + "]}}}}";
  }

  private static String built(long i, long days) {
    return 2 * i >= days
        ? ""
        : "built: "
            + day(2 * i)
            + (2 * i + 1 < days ? "/" + LocalDate.parse(day(2 * i + 1)).minusDays(1) : "/..")
            + ", ";
  }

  /** A hundred codes that the whole production fits; other items cut it into pieces. */
  private static String dateCodes(Path folder, long n) throws Exception {
    long pieces = (n + 249) / 250;
    String codes =
        join(
            250,
            i ->
                "c"
                    + i
                    + ": {title: T, points: 1, expect: {date_code: {pattern: \"(?P<year>[0-9]{4})\","
                    + " lead_time: P200Y..P0D}}}",
            ", ");
    String rules = HEAD + items(pieces, pieces - 1).replace("items: {", "items: {" + codes + ", ");
    Files.writeString(folder.resolve("rules.yaml"), rules);
    return record(
        folder, "observations: {" + join(250, i -> "c" + i + ": {date_code: 1899}", ", ") + "}\n");
  }

  private static String traces(Path folder, long n) throws Exception {
    Files.writeString(folder.resolve("rules.yaml"), HEAD + items(n, 0));
    return record(
        folder,
        "traces: [" + join(n, i -> "{item: i" + i + ", grade: B, says: {finish: x0}}", ", ") + "]");
  }

  private static String record(Path folder, String more) throws Exception {
    String record = RECORD.replace(", model: X1", "") + more;
    return run("check", Files.writeString(folder.resolve("one.yaml"), record).toString());
  }

  private static String bytes(Path folder, long n) throws Exception {
    String rules = HEAD + items(1, 0) + "\n";
    Files.writeString(folder.resolve("rules.yaml"), rules);
    int each = 4_000_000;
    Files.writeString(folder.resolve("a.yaml"), "#".repeat(each));
    Files.writeString(folder.resolve("b.yaml"), "#".repeat(each));
    Files.writeString(folder.resolve("c.yaml"), "#".repeat((int) n - 2 * each - rules.length()));
    return run("check", folder.toString());
  }

  /** Each file has one entry for the whole of it and one for its list. */
  private static String entries(Path folder, long n) throws Exception {
    int each = 150_000;
    Files.writeString(folder.resolve("rules.yaml"), list(each));
    Files.writeString(folder.resolve("a.yaml"), list(each));
    Files.writeString(folder.resolve("b.yaml"), list(n - 2 * each));
    return run("check", folder.toString());
  }

  private static String list(long entries) {
    return "x: [" + "a,".repeat((int) entries - 2) + "]\n";
  }
}
