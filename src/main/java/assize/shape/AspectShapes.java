package assize.shape;

import static assize.shape.Key.may;
import static assize.shape.Key.need;
import static assize.shape.Value.either;
import static assize.shape.Value.list;
import static assize.shape.Value.oneOrMore;

import assize.aspect.Aspect;
import assize.aspect.Origin;
import assize.evidence.Manner;
import java.util.Arrays;
import java.util.List;

/** What is written under each aspect: what is right in rule sets, what was found in records. */
public final class AspectShapes {
  /** How weeks are counted in date codes. */
  public static final List<String> WEEKS = List.of("from January 1", "ISO");

  /** What stands for the credits of the rule set. */
  public static final String GRADED = "graded";

  static final Value ORIGINS =
      Value.word(Arrays.stream(Origin.values()).map(Origin::word).toList());

  static final Value LAB =
      new Value.Row(
          List.of(
              Form.decimal("0", "100"), Form.decimal("-128", "128"), Form.decimal("-128", "128")));

  /** A color that is expected, where more than its name is said. */
  public static final Block COLOR_EXPECTED =
      Block.of(
              "a color",
              may(
                  "same_as",
                  Form.name(),
                  "The item whose color this one has to have, as it was found there."),
              may("any", oneOrMore(Form.name()), "Colors of the rule set, each of which is right."),
              may(
                  "tolerance",
                  Form.decimal("0", "100"),
                  "The greatest color difference (CIEDE2000) that still passes here."))
          .with(Rule.anyOf("same_as", "any"));

  /** How many pieces are expected, where more than the number is said. */
  public static final Block COUNT =
      Block.of(
          "a count",
          need("of", oneOrMore(Form.pieces()), "How many are right: 6, or 6 to 8."),
          may(
              "each_missing",
              Form.credit(),
              "What each piece too few or too many costs, as a share of the aspect: 1/6."));

  /** How a date code is made up. */
  public static final Block DATE_CODE =
      Block.of(
          "a date code",
          need(
              "pattern",
              Form.text(),
              "The code (RE2), with named groups for year, month, week or day:"
                  + " (?P<month>[A-M])(?P<year>[0-9])."),
          need(
              "made",
              Form.text("P6M..P0D"),
              "How long before the vehicle the part may have been made, the longest time first."),
          may(
              "years",
              new Value.Named(Form.text(), Form.whole("0", "9999")),
              "Letters that stand for years: {A: 1932, B: 1933}."),
          may(
              "months",
              new Value.Named(Form.text(), Form.whole("1", "12")),
              "Letters that stand for months: {A: 1, B: 2}."),
          may(
              "weeks",
              Value.word(WEEKS),
              "How weeks are counted; those of ISO 8601 if nothing is said."));

  /** A color that was found, where more than its name is said. */
  public static final Block COLOR_FOUND =
      Block.of(
              "a color",
              may(
                  "chip",
                  Form.name(),
                  "The color of the rule set that it matches by eye; or other, for none."),
              may("lab", LAB, "What an instrument reads: L*, a*, b* (D65, 2°)."),
              may(
                  "uncertainty",
                  Form.decimal("0", "100"),
                  "How far the instrument may be off, as a color difference."),
              may("light", Form.text(), "In what light it was matched: north daylight."),
              may("by", Form.text(), "Who matched it."))
          .with(Rule.anyOf("chip", "lab"));

  /** Aspects of an item, each with what is right. */
  public static final Block EXPECTED =
      new Block(
          "an item",
          Arrays.stream(Aspect.values()).map(AspectShapes::expected).toList(),
          List.of());

  static final Value ASPECTS = new Value.Shared("aspects");

  private AspectShapes() {}

  private static Key expected(Aspect aspect) {
    return may(aspect.word(), right(aspect), about(aspect));
  }

  /** Returns what is written of an aspect that was looked at. */
  static Key found(Aspect aspect) {
    return may(aspect.word(), either(seen(aspect), new Value.Blank()), aboutFound(aspect));
  }

  /** Returns the three ways in which a claim or a trace speaks, of which it has one. */
  static List<Key> manners() {
    return Arrays.stream(Manner.values())
        .map(manner -> may(manner.word(), ASPECTS, about(manner)))
        .toList();
  }

  static Rule oneManner() {
    return Rule.oneOf(Arrays.stream(Manner.values()).map(Manner::word).toList());
  }

  private static Value right(Aspect aspect) {
    return switch (aspect) {
      case FINISH, MATERIAL -> words(Form.name());
      case CHOICE -> words(Form.text());
      case COLOR -> either(Form.name(), list(Form.name()), new Value.Group(COLOR_EXPECTED));
      case GLOSS -> oneOrMore(Form.text("semi-gloss", "30 to 50", "at most 35", "40 ± 5"));
      case SIZE -> oneOrMore(Form.text("3/32 in ± 1/64 in", "2 mm to 3 mm", "1/4-20 UNC"));
      case PART_NUMBER -> words(Form.text());
      case DATE_CODE -> new Value.Group(DATE_CODE);
      case COUNT -> either(Form.pieces(), list(Form.pieces()), new Value.Group(COUNT));
      case PRESENT, WORKS -> Form.yesNo();
      case ORIGIN -> graded(ORIGINS);
      case CONDITION -> graded(Form.text());
    };
  }

  private static Value words(Value each) {
    return either(each, list(each), new Value.Named(each, Form.credit()));
  }

  private static Value graded(Value each) {
    return either(Value.word(List.of(GRADED)), new Value.Named(each, Form.credit()));
  }

  private static Value seen(Aspect aspect) {
    return switch (aspect) {
      case FINISH, MATERIAL -> Form.name();
      case CHOICE, CONDITION -> Form.text();
      case COLOR -> either(Form.name(), new Value.Group(COLOR_FOUND));
      case GLOSS -> Form.text("41", "41 ± 3", "satin");
      case SIZE -> Form.text("5/64 in", "2.38 mm ± 0.02 mm", "2.4 mm, to 0.1 mm");
      case PART_NUMBER -> Form.text("A-41207");
      case DATE_CODE -> Form.text("E4");
      case COUNT -> Form.whole("0", "1000000");
      case PRESENT, WORKS -> Form.yesNo();
      case ORIGIN -> ORIGINS;
    };
  }

  private static String about(Aspect aspect) {
    return switch (aspect) {
      case FINISH -> "The finish that is right, a list of them, or finishes with their credits.";
      case COLOR ->
          "The color that is right, a list of them, the color of another item (same_as), or colors"
              + " with a tolerance (any, tolerance).";
      case GLOSS -> "Gloss units at 60° (ISO 2813) or a band, from flat to high gloss.";
      case MATERIAL -> "The material that is right, a list, or materials with their credits.";
      case PART_NUMBER ->
          "A pattern (RE2) for the number, a list of numbers, or numbers with their credits;"
              + " spaces, dashes and capitals don't count.";
      case DATE_CODE -> "How the code is made up, and when the part may have been made.";
      case SIZE -> "A size with its unit and tolerance, from one to another, or a thread.";
      case COUNT -> "How many pieces there have to be.";
      case PRESENT -> "Whether it has to be there: yes or no.";
      case WORKS -> "Whether it has to work: yes or no.";
      case CHOICE -> "The word of `choices` that is right, a list, or words with their credits.";
      case ORIGIN -> "graded, for the credits of the rule set, or origins with their own credits.";
      case CONDITION ->
          "graded, for the credits of the rule set, or conditions with their own credits.";
    };
  }

  private static String aboutFound(Aspect aspect) {
    return switch (aspect) {
      case FINISH -> "The finish that was found, by its short name; or other.";
      case COLOR ->
          "The color that it matches by eye, by its short name, or other; or what an instrument"
              + " reads (lab).";
      case GLOSS -> "Gloss units at 60° (ISO 2813), with ± where known, or a band.";
      case MATERIAL -> "The material that was found, by its short name; or other.";
      case PART_NUMBER -> "The number as it is stamped.";
      case DATE_CODE -> "The code as it is cast or stamped.";
      case SIZE -> "The size as measured, with its unit; ± or \"to 0.1 mm\" says how well.";
      case COUNT -> "How many there are.";
      case PRESENT -> "Whether it is there: yes or no.";
      case WORKS -> "Whether it works: yes or no.";
      case CHOICE -> "One of the item's words; or other.";
      case ORIGIN -> "Where it came from.";
      case CONDITION -> "The state it is in: a word of the rule set's ladder.";
    };
  }

  private static String about(Manner manner) {
    return switch (manner) {
      case SAYS -> "This is right, or any of these.";
      case LEAVES_OPEN -> "Right is one of these; the source can't tell which.";
      case RULES_OUT -> "Whatever is right, it is not this.";
    };
  }
}
