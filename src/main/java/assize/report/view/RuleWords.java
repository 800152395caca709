package assize.report.view;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.NumberPattern;
import assize.measure.Swatch;
import assize.ruleset.ColorChip;
import assize.ruleset.Finish;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** What is expected, in the rule set's own words. */
final class RuleWords {
  private final RuleSet rules;

  RuleWords(RuleSet rules) {
    this.rules = rules;
  }

  /** Returns several values, each of which is right. */
  String any(Item item, Aspect aspect, List<Expectation> values) {
    return values.stream()
        .map(value -> one(item, aspect, value))
        .collect(Collectors.joining(" or "));
  }

  /** Returns one value, and its credit where that is not the whole. */
  String one(Item item, Aspect aspect, Expectation value) {
    String words = value.match(new Cases(item, aspect));
    return value.credit().equals(BigFraction.ONE)
        ? words
        : words + " (earns " + Numbers.number(value.credit()) + ")";
  }

  /** Returns what a word of the rule set means. */
  String word(Item item, Aspect aspect, String id) {
    return switch (aspect) {
      case FINISH -> Optional.ofNullable(rules.finishes().get(id)).map(Finish::name).orElse(id);
      case MATERIAL -> rules.materials().getOrDefault(id, id);
      case CHOICE -> item.choices().getOrDefault(id, id);
      case COLOR -> chip(id);
      case GLOSS, PART_NUMBER, DATE_CODE, SIZE, COUNT, PRESENT, WORKS, ORIGIN, CONDITION -> id;
    };
  }

  /** Returns the colors among some values, as a screen can show them. */
  List<String> swatches(List<Expectation> values) {
    return rules.colors().values().stream()
        .filter(
            color ->
                values.stream()
                    .anyMatch(
                        value ->
                            value instanceof Expectation.Chip chip
                                && chip.chip().equals(color.id())))
        .flatMap(color -> color.lab().stream())
        .map(lab -> Swatch.of(lab).hex())
        .toList();
  }

  /** Returns the name of a color. */
  String chip(String id) {
    return Optional.ofNullable(rules.colors().get(id)).map(ColorChip::name).orElse(id);
  }

  private String title(String itemId) {
    return rules
        .items()
        .filter(item -> item.id().equals(itemId))
        .findFirst()
        .map(Item::title)
        .orElse(itemId);
  }

  private String ladder(Aspect aspect, Map<String, BigFraction> own) {
    Map<String, BigFraction> credits = new java.util.LinkedHashMap<>();
    if (aspect == Aspect.ORIGIN) {
      rules.origins().forEach((origin, credit) -> credits.put(origin.word(), credit));
    } else {
      credits.putAll(rules.conditions());
    }
    if (!own.isEmpty()) {
      // the item's own credits, in the order of the rule set's ladder
      credits.keySet().retainAll(own.keySet());
      credits.replaceAll((word, credit) -> own.getOrDefault(word, credit));
      own.entrySet().stream()
          .sorted(Map.Entry.comparingByKey())
          .forEach(entry -> credits.putIfAbsent(entry.getKey(), entry.getValue()));
    }
    return credits.entrySet().stream()
        .map(entry -> entry.getKey() + " " + Numbers.number(entry.getValue()))
        .collect(Collectors.joining("; "));
  }

  /** Says whether a part number is one number, and no pattern that several fit. */
  static boolean isPlain(NumberPattern number) {
    return number.isLiteral() || number.text().matches("[A-Za-z0-9 -]+");
  }

  private static String within(OptionalDouble tolerance) {
    return tolerance.isPresent() ? ", within ΔE00 " + Numbers.measure(tolerance.getAsDouble()) : "";
  }

  private final class Cases implements Expectation.Cases<String> {
    private final Item item;
    private final Aspect aspect;

    Cases(Item item, Aspect aspect) {
      this.item = item;
      this.aspect = aspect;
    }

    @Override
    public String word(Expectation.Word expected) {
      return RuleWords.this.word(item, aspect, expected.id());
    }

    @Override
    public String chip(Expectation.Chip expected) {
      return RuleWords.this.chip(expected.chip()) + within(expected.tolerance());
    }

    @Override
    public String sameColor(Expectation.SameColor expected) {
      return "the color found on ‘" + title(expected.item()) + "’" + within(expected.tolerance());
    }

    @Override
    public String gloss(Expectation.Gloss expected) {
      String range = expected.range().text();
      boolean units = range.codePoints().anyMatch(Character::isDigit);
      if (units) {
        return range + " gloss units";
      }
      String from = Numbers.measure(expected.range().from());
      OptionalDouble to = expected.range().to();
      return range
          + (to.isPresent()
              ? " (" + from + " to " + Numbers.measure(to.getAsDouble()) + " gloss units)"
              : " (" + from + " gloss units and above)");
    }

    @Override
    public String size(Expectation.Size expected) {
      return expected.limits().text();
    }

    @Override
    public String screwThread(Expectation.ScrewThread expected) {
      return expected.thread().text();
    }

    @Override
    public String partNumber(Expectation.PartNumber expected) {
      return isPlain(expected.number())
          ? expected.number().text()
          : "a number of the pattern " + expected.number().text();
    }

    @Override
    public String madeCode(Expectation.MadeCode expected) {
      return MadeWords.of(expected.code());
    }

    @Override
    public String pieces(Expectation.Pieces expected) {
      return expected.key()
          + expected
              .eachOff()
              .map(off -> " (each piece off costs " + Numbers.number(off) + " of the credit)")
              .orElse("");
    }

    @Override
    public String yesNo(Expectation.YesNo expected) {
      return YesNoWords.of(aspect, expected.yes());
    }

    @Override
    public String graded(Expectation.Graded expected) {
      return "graded: " + ladder(aspect, expected.credits());
    }
  }
}
