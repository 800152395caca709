package assize.ruleset;

import assize.date.DateRange;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.ruleset.NumberTable.Series;
import assize.schema.Field;
import assize.text.Span;
import assize.yaml.DiagnosticCollector;
import assize.yaml.Node;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Stops at a rule set that has more of something than can be judged in a short time: far more than
 * a standard needs.
 */
final class Crowding {
  static final int MOST_ITEMS = 4000;
  static final int MOST_CLAIMS = 200;
  static final int MOST_DAYS = 500;
  static final int MOST_SERIES = 200;
  static final int MOST_NUMBERS = 10_000;

  /** The most items times days on which conditions begin or end to hold. */
  static final int MOST_ITEMS_ON_DAYS = 400_000;

  /** The most claims, each counted for every span of build days that those beside it make. */
  static final int MOST_CLAIMS_IN_SPANS = 50_000;

  /** What stands in a section, as messages call it, and the most of it. */
  private record Section(String things, int most) {}

  private static final Map<Field<?, ?>, Section> SECTIONS = sections();

  private final RuleSet rules;
  private final DiagnosticCollector problems;

  private Crowding(RuleSet rules, DiagnosticCollector problems) {
    this.rules = rules;
    this.problems = problems;
  }

  private static Map<Field<?, ?>, Section> sections() {
    Map<Field<?, ?>, Section> all = new LinkedHashMap<>();
    all.put(RuleSet.AWARDS, new Section("awards", 100));
    all.put(RuleSet.MODELS, new Section("models", 100));
    all.put(RuleSet.PLANTS, new Section("plants", 100));
    all.put(RuleSet.MARKETS, new Section("markets", 100));
    all.put(RuleSet.EQUIPMENT, new Section("pieces of equipment", 500));
    all.put(RuleSet.NUMBER_TABLES, new Section("number tables", 100));
    all.put(RuleSet.SOURCES, new Section("sources", 500));
    all.put(RuleSet.COLORS, new Section("colors", 1000));
    all.put(RuleSet.FINISHES, new Section("finishes", 1000));
    all.put(RuleSet.MATERIALS, new Section("materials", 1000));
    all.put(RuleSet.AREAS, new Section("areas", 200));
    return all;
  }

  /** Says whether no section has too much to be read at all. */
  static boolean isFree(RuleSetFileMerger sections, DiagnosticCollector problems) {
    boolean free = true;
    for (Map.Entry<Field<?, ?>, Section> one : SECTIONS.entrySet()) {
      List<Node.Entry> entries = sections.all(one.getKey());
      Section section = one.getValue();
      if (entries.size() > section.most()) {
        free = false;
        problems.add(
            DiagnosticCode.TOO_MANY,
            entries.get(section.most()).key().at(),
            most(section.most(), section.things()));
      }
    }
    return free;
  }

  /** Says whether what was read is little enough to be looked at as a whole. */
  static boolean isFree(RuleSet rules, DiagnosticCollector problems) {
    Crowding crowding = new Crowding(rules, problems);
    return crowding.fewNumbers() && crowding.fewItems() && crowding.fewDays();
  }

  private static String most(int most, String things) {
    return "a rule set may have at most " + most + " " + things + "; this is one more";
  }

  private boolean fewNumbers() {
    int series = 0;
    int numbers = 0;
    for (NumberTable table : rules.numberTables().values()) {
      for (Series one : table.series()) {
        series++;
        numbers += one.firstNumbers().size() + one.reserved().size();
        if (series > MOST_SERIES) {
          return crowded(one.at(), most(MOST_SERIES, "series of numbers"));
        }
        if (numbers > MOST_NUMBERS) {
          return crowded(
              one.at(),
              "the number tables of a rule set may have at most "
                  + MOST_NUMBERS
                  + " entries together; with this series they have more");
        }
      }
    }
    return true;
  }

  private boolean fewItems() {
    Optional<Item> past = rules.items().skip(MOST_ITEMS).findFirst();
    return past.map(item -> crowded(item.at(), most(MOST_ITEMS, "items"))).orElse(true);
  }

  private boolean fewDays() {
    Set<LocalDate> days = new HashSet<>();
    rules.models().values().stream().map(Model::production).forEach(built -> turn(days, built));
    long inSpans = 0;
    long items = 0;
    for (Item item : rules.items().toList()) {
      turn(days, item.scope());
      for (AspectRule rule : item.aspects()) {
        String what = "the claims on the " + rule.aspect().spoken() + " of \"" + item.id() + "\"";
        int claims = rule.claims().size();
        if (claims > MOST_CLAIMS) {
          return crowded(
              rule.claims().get(MOST_CLAIMS).at(),
              what + " are " + claims + "; at most " + MOST_CLAIMS + " can be weighed");
        }
        Set<LocalDate> own = new HashSet<>();
        for (Claim claim : rule.claims()) {
          turn(own, claim.scope());
          turn(days, claim.scope());
          if (days.size() > MOST_DAYS) {
            return tooManyDays(claim.at());
          }
        }
        inSpans += (long) claims * (own.size() + 1);
        if (inSpans > MOST_CLAIMS_IN_SPANS) {
          return crowded(
              rule.claims().get(0).at(),
              "with these claims, those of all items, each counted for every span of build days"
                  + " that it is weighed for, come to "
                  + inSpans
                  + "; at most "
                  + MOST_CLAIMS_IN_SPANS
                  + " can be judged");
        }
      }
      if (days.size() > MOST_DAYS) {
        return tooManyDays(item.at());
      }
      items++;
      long onDays = items * days.size();
      if (onDays > MOST_ITEMS_ON_DAYS) {
        return crowded(
            item.at(),
            "with this one, "
                + items
                + " items times "
                + days.size()
                + " days on which conditions begin or end to hold come to "
                + onDays
                + "; at most "
                + MOST_ITEMS_ON_DAYS
                + " can be judged");
      }
    }
    return true;
  }

  private boolean tooManyDays(Span at) {
    return crowded(
        at,
        "with this one, conditions begin or end to hold on more than "
            + MOST_DAYS
            + " days; at most so many can be judged");
  }

  private boolean crowded(Span at, String message) {
    problems.add(DiagnosticCode.TOO_MANY, at, message);
    return false;
  }

  private static void turn(Set<LocalDate> days, Scope scope) {
    Stream<DateRange> spans = scope.buildDays();
    spans.forEach(span -> turn(days, span));
  }

  private static void turn(Set<LocalDate> days, DateRange span) {
    if (!span.openStart()) {
      days.add(span.first());
    }
    if (!span.openEnd()) {
      days.add(span.last().plusDays(1));
    }
  }
}
