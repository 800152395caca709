package assize.measure;

import assize.text.Parsed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the unit that a person wrote, and says kindly when it is not clear which. */
final class UnitNames {
  private record Name(String text, Unit unit) {}

  private static final List<Name> LONGEST_FIRST = longestFirst();

  private static final Map<String, String> AMBIGUOUS =
      Map.ofEntries(
          Map.entry("gal", "\"gal\" may be imperial or US: write imp gal or US gal"),
          Map.entry("gallon", "\"gallon\" may be imperial or US: write imp gal or US gal"),
          Map.entry("gallons", "\"gallons\" may be imperial or US: write imp gal or US gal"),
          Map.entry("pt", "\"pt\" may be imperial or US: write imp pt or US pt"),
          Map.entry("pint", "\"pint\" may be imperial or US: write imp pt or US pt"),
          Map.entry("pints", "\"pints\" may be imperial or US: write imp pt or US pt"),
          Map.entry("qt", "\"qt\" may be imperial or US: write imp qt or US qt"),
          Map.entry("quart", "\"quart\" may be imperial or US: write imp qt or US qt"),
          Map.entry("quarts", "\"quarts\" may be imperial or US: write imp qt or US qt"),
          Map.entry("ton", "\"ton\" may be long, short or metric: write long ton, short ton or t"),
          Map.entry(
              "tons", "\"tons\" may be long, short or metric: write long ton, short ton or t"),
          Map.entry("gauge", "there are several gauges: write SWG, USG or AWG"),
          Map.entry("ga", "there are several gauges: write SWG, USG or AWG"));

  private UnitNames() {}

  private static List<Name> longestFirst() {
    List<Name> names = new ArrayList<>();
    for (Unit unit : Unit.values()) {
      names.add(new Name(unit.symbol(), unit));
      unit.names().forEach(name -> names.add(new Name(name, unit)));
    }
    names.sort(Comparator.comparing((Name name) -> -name.text().length()));
    return List.copyOf(names);
  }

  /** Reads a unit if one stands here: empty at the end and before a sign or a known word. */
  static Parsed<Optional<Unit>> read(Cursor cursor) {
    for (Name name : LONGEST_FIRST) {
      if (cursor.take(name.text())) {
        return Parsed.ok(Optional.of(name.unit()));
      }
    }
    String word = cursor.letters();
    if (word.isEmpty() || cursor.endOf("to") >= 0) {
      return Parsed.ok(Optional.empty());
    }
    String reason = AMBIGUOUS.getOrDefault(word.toLowerCase(Locale.ROOT), unknown(word));
    return Parsed.bad(reason, cursor.at(), word.length());
  }

  private static String unknown(String word) {
    Set<String> near = new LinkedHashSet<>();
    for (Name name : LONGEST_FIRST) {
      String known = name.text().toLowerCase(Locale.ROOT);
      if (word.length() > 1
          && known.length() > 1
          && oneSlip(word.toLowerCase(Locale.ROOT), known)) {
        near.add(name.unit().symbol());
      }
    }
    String said = "no unit is called \"" + Cursor.shown(word) + "\": ";
    return near.isEmpty()
        ? said + "write one such as mm, in, ft, g, lb, ° or V"
        : said + "did you mean " + String.join(" or ", near) + "?";
  }

  /** Returns whether one letter more, less or other, or two changed places, makes them the same. */
  static boolean oneSlip(String a, String b) {
    if (Math.abs(a.length() - b.length()) > 1) {
      return false;
    }
    int start = 0;
    int shorter = Math.min(a.length(), b.length());
    while (start < shorter && a.charAt(start) == b.charAt(start)) {
      start++;
    }
    if (a.length() == b.length()) {
      return tail(a, start + 1).equals(tail(b, start + 1))
          || (start + 1 < shorter
              && a.charAt(start) == b.charAt(start + 1)
              && a.charAt(start + 1) == b.charAt(start)
              && tail(a, start + 2).equals(tail(b, start + 2)));
    }
    return a.length() < b.length()
        ? tail(a, start).equals(tail(b, start + 1))
        : tail(a, start + 1).equals(tail(b, start));
  }

  private static String tail(String text, int from) {
    return text.substring(Math.min(from, text.length()));
  }
}
