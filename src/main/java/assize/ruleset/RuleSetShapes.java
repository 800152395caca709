package assize.ruleset;

import static assize.schema.Key.may;
import static assize.schema.Key.need;
import static assize.schema.Value.list;
import static assize.schema.Value.oneOrMore;

import assize.aspect.Aspect;
import assize.aspect.Colors;
import assize.aspect.Graded;
import assize.evidence.Grade;
import assize.evidence.SourceKind;
import assize.schema.Block;
import assize.schema.Form;
import assize.schema.Key;
import assize.schema.Rule;
import assize.schema.Shape;
import assize.schema.Value;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** What rule sets hold. */
public final class RuleSetShapes {
  public static final Value GRADES =
      Value.word(Arrays.stream(Grade.values()).map(Grade::name).toList());

  public static final Block SCALE =
      Block.of(
          "a scale",
          may(
              "grades",
              new Value.Named(GRADES, Form.share("0.001", "0.99", "0.90")),
              "How much a source of each grade weighs: {A: 0.90, B: 0.70, C: 0.50, D: 0.30}."),
          may(
              "allow",
              new Value.Named(Form.visible(), Form.credit()),
              "Reasons for a departure that keep part of the credit; the words are yours."),
          may(
              "method",
              Value.word(Arrays.stream(Scale.Method.values()).map(Scale.Method::word).toList()),
              "How points add up: sum, areas (each area's share, weighed by its points) or"
                  + " deductions (points lost are taken from the full score)."),
          may("out_of", Form.points(), "The full score; 100 if nothing is said."),
          may(
              "not_shown",
              Form.credit(),
              "The likely credit of what was not shown; 0 if nothing is said."),
          may(
              "settled_at",
              Form.share("0.501", "0.99", "0.90"),
              "The belief at which a dispute counts as settled; 0.90 if nothing is said."),
          may(
              "too_early",
              Form.credit(),
              "The credit of a part that was made earlier than its window; 1/2 if nothing is"
                  + " said."));

  public static final Block AWARD =
      Block.of(
          "an award",
          need("name", Form.visible(), "How reports say it."),
          need(
              "at",
              Form.share("0", "1000000", "460", "92 %"),
              "The points that it takes, or a share of the full score."),
          may("no_area_under", Form.credit(), "No area may earn a smaller share than this."),
          may("no_item_over", Form.points(), "No single item may lose more points than this."));

  public static final Block MODEL =
      Block.of(
          "a model",
          need("name", Form.visible(), "How reports say it."),
          need(
              "built",
              Form.date("1932-03/1936-08"),
              "From when to when it was made: 1932-03/1936-08."));

  public static final Block COLOR =
      Block.of(
          "a color",
          need("name", Form.visible(), "How reports say it."),
          may(
              "lab",
              Colors.LAB,
              "What an instrument reads on a good sample: L*, a*, b* (D65, 2°). Without it the"
                  + " color can only be matched by eye."),
          may(
              "tolerance",
              Form.decimal("0", "100"),
              "The greatest color difference (CIEDE2000) that still passes; 3 if nothing is"
                  + " said."));

  public static final Block FINISH =
      Block.of(
          "a finish",
          need("name", Form.visible(), "How reports say it."),
          may(
              "kind_of",
              Form.name(),
              "Another finish, where this one is right too: bright nickel is a kind of nickel."));

  public static final Block SOURCE =
      Block.of(
          "a source",
          need(
              "kind",
              Value.word(Arrays.stream(SourceKind.values()).map(SourceKind::word).toList()),
              "What kind of thing it is."),
          need("grade", GRADES, "How far it is trusted: A the most, D the least."),
          need("title", Form.visible(), "What it is called."),
          may("date", Form.date("1932-02", "1978~"), "When it was made."),
          may("held_by", Form.text(), "Where it can be seen: the club's archive."),
          may(
              "copies",
              oneOrMore(Form.name()),
              "The sources that it repeats: where it says the same, it is no second witness."),
          may("notes", Form.text(), "Remarks."));

  public static final Block LAST_NUMBER =
      Block.of(
          "a last number",
          need("number", Form.whole("0", "999999999999999"), "The last number of the series."),
          need("built", Form.date("1936-08-28"), "When it was built."));

  public static final Block RESERVED =
      Block.of(
          "a reserved block",
          need("numbers", Form.text("3000..3049"), "The first and the last: 3000..3049."),
          need("for", Form.visible(), "What they were kept for: exhibition vehicles."),
          may("built", Form.date("1933-10"), "When they were built, if they were."));

  public static final Block SERIES =
      Block.of(
          "a series",
          may("prefix", Form.text("X-"), "What stands before the number."),
          may("suffix", Form.text(), "What stands behind the number."),
          may("models", oneOrMore(Form.name()), "The models that have these numbers."),
          may("plant", Form.name(), "The plant that gave them."),
          need(
              "from",
              new Value.Named(Form.whole("0", "999999999999999"), Form.date("1933-01")),
              "The first number of a day, month or year, and which: {1001: 1932-03-14}."),
          may("last", new Value.Group(LAST_NUMBER), "The last number, and when it was built."),
          may(
              "reserved",
              list(new Value.Group(RESERVED)),
              "Numbers within the series that were not given in their turn."));

  public static final Block NUMBER_TABLE =
      Block.of(
          "a number table",
          need("name", Form.visible(), "How reports say it: Chassis number."),
          need("series", list(new Value.Group(SERIES)), "Runs of numbers that rise with time."));

  /** Which vehicles an item or a claim is about: all that is given must hold. */
  private static final List<Key> SCOPE =
      List.of(
          may("models", oneOrMore(Form.name()), "Only these models."),
          may(
              "built",
              Form.date("1934-06/1935", "../1933"),
              "Only vehicles built in these days: 1934-06/1935, or ../1933."),
          may(
              "numbers",
              new Value.Named(Form.name(), Form.text("X-4120..X-5000")),
              "Only these numbers of a number table: {chassis: X-4120..X-5000}."),
          may("equipment", oneOrMore(Form.name()), "Only vehicles with all of this."),
          may("market", oneOrMore(Form.name()), "Only vehicles for these markets."),
          may("plant", oneOrMore(Form.name()), "Only vehicles from these plants."),
          may(
              "any_of",
              list(new Value.Shared("condition")),
              "Groups of conditions, one of which has to hold."),
          may(
              "none_of",
              list(new Value.Shared("condition")),
              "Groups of conditions, none of which may hold."));

  public static final Block CONDITION = Block.of("a condition").and(SCOPE);

  public static final Block CLAIM =
      Block.of(
              "a claim",
              may("source", Form.name(), "Who says so: a source of this rule set."),
              may("cite", Form.text(), "Where it says so: note 7."))
          .and(SCOPE)
          .and(
              may("photo", Form.visible("pictures/drawing-204.png"), "A picture of what it shows."),
              may("caption", Form.visible(), "What the picture shows."))
          .and(AspectShapes.manners())
          .with(Rule.anyOf("source"), AspectShapes.oneManner(), Rule.needs("caption", "photo"));

  public static final Block ITEM =
      Block.of(
              "this item",
              need("title", Form.visible(), "What it is called."),
              need("points", Form.points(), "What it is worth, to a thousandth of a point."),
              may("look", Form.text(), "Where and how to look at it."),
              may("notes", Form.text(), "Remarks."),
              may(
                  "cause",
                  Form.visible(),
                  "One cause of several items' loss: together they lose what the dearest does."),
              may(
                  "cautions",
                  oneOrMore(
                      Value.word(Arrays.stream(Caution.values()).map(Caution::word).toList())),
                  "What can hurt whoever looks at it."),
              may(
                  "choices",
                  new Value.Named(Form.ownWord(), Form.visible()),
                  "Words to choose from, each with what it means."))
          .and(SCOPE)
          .and(
              may(
                  "expect",
                  AspectShapes.ASPECTS,
                  "What is right, by one source or none: aspects with their values."),
              may("source", Form.name(), "Who says what is expected: a source of this rule set."),
              may("cite", Form.text(), "Where the source says so: plate 14, figure 3."),
              may(
                  "claims",
                  list(new Value.Group(CLAIM)),
                  "What several sources say is right, each with its source."),
              may(
                  "worth",
                  new Value.Named(Value.word(AspectShapes.EXPECTED.names()), Form.points()),
                  "How the points are shared among the aspects, where not equally."))
          .elsewhere(name -> Aspect.of(name).map(it -> "an aspect belongs under `expect:`"))
          .with(
              Rule.anyOf("expect", "claims"),
              Rule.needs("source", "expect"),
              Rule.needs("cite", "expect"));

  private static final Value ITEMS = new Value.Named(Form.name(), new Value.Shared("item"));

  public static final Block AREA =
      Block.of(
          "an area",
          may("name", Form.visible(), "How reports say it."),
          may(
              "points",
              Form.points(),
              "What its items should add up to; its weight where the method is areas."),
          may("most", Form.points(), "The most points that the whole area can lose."),
          may("items", ITEMS, "Short names of items, each with what belongs to it."));

  /** What is said once in all files of a rule set. */
  public static final Block HEAD =
      Block.of(
          "a rule set",
          may("rule_set", Form.name(), "The rule set's short name: letters, digits and dashes."),
          may("name", Form.visible(), "What it is called."),
          may("edition", Form.visible("\"3\""), "Which edition this is."),
          may("issued", Form.date("2026-03"), "When this edition was issued."),
          may("maker", Form.text(), "Who made the vehicles."),
          may("scope", Form.text(), "What this standard is for, in a sentence or two."),
          may("notes", Form.text(), "Longer remarks."));

  /** What may stand in several files of a rule set, and is joined. */
  public static final Block JOINED =
      Block.of(
          "a rule set",
          may("scale", new Value.Group(SCALE), "How points become a score."),
          may("awards", named(AWARD), "Short names of awards, the highest first."),
          may("models", named(MODEL), "Short names of models, each with when it was made."),
          may("plants", meanings(), "Short names of plants, each with its full name."),
          may("markets", meanings(), "Short names of markets, each with its full name."),
          may("equipment", meanings(), "Short names of equipment, each with what it is."),
          may("numbers", named(NUMBER_TABLE), "What chassis and engine numbers date to."),
          may("sources", named(SOURCE), "Short names of sources, each with what it is."),
          may("colors", named(COLOR), "Short names of colors, each with its name and reading."),
          may("finishes", named(FINISH), "Short names of finishes, each with its name."),
          may("materials", meanings(), "Short names of materials, each with its full name."),
          may(
              "origins",
              new Value.Named(Graded.ORIGIN_WORDS, Form.credit()),
              "What each origin is worth; one that is left out is worth 0."),
          may(
              "conditions",
              new Value.Named(Form.visible(), Form.credit()),
              "What each condition is worth, the best first; the words are yours."),
          may("areas", named(AREA), "Short names of areas, each with its items."));

  /** What one file of a rule set may hold. */
  public static final Block FILE =
      HEAD.and(JOINED.keys())
          .and(
              may("area", Form.name(), "The area that the items of this file are in."),
              may("items", ITEMS, "Short names of items, each with what belongs to it."),
              AcceptedShape.KEY)
          .with(Rule.needs("area", "items"), Rule.needs("items", "area"));

  /** What one file of a rule set may hold, with all that stands below it. */
  public static final Shape SHAPE =
      new Shape(
          "Rule set",
          "One edition of one standard: the details to judge, what is right for each, for which"
              + " vehicles, and who says so.",
          FILE,
          Map.of("aspects", AspectShapes.EXPECTED, "condition", CONDITION, "item", ITEM));

  private RuleSetShapes() {}

  private static Value named(Block block) {
    return new Value.Named(Form.ownName(), new Value.Group(block));
  }

  private static Value meanings() {
    return new Value.Named(Form.ownName(), Form.visible());
  }
}
