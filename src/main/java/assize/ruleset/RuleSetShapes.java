package assize.ruleset;

import static assize.schema.Key.may;
import static assize.schema.Key.need;
import static assize.schema.Value.list;
import static assize.schema.Value.oneOrMore;

import assize.aspect.Aspect;
import assize.aspect.ColorChip;
import assize.aspect.Finish;
import assize.aspect.Graded;
import assize.evidence.Source;
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
          may("scale", new Value.Group(Scale.TABLE.block()), "How points become a score."),
          may("awards", named(Award.TABLE.block()), "Short names of awards, the highest first."),
          may(
              "models",
              named(Model.TABLE.block()),
              "Short names of models, each with when it was made."),
          may("plants", meanings(), "Short names of plants, each with its full name."),
          may("markets", meanings(), "Short names of markets, each with its full name."),
          may("equipment", meanings(), "Short names of equipment, each with what it is."),
          may(
              "numbers",
              named(NumberTable.TABLE.block()),
              "What chassis and engine numbers date to."),
          may(
              "sources",
              named(Source.TABLE.block()),
              "Short names of sources, each with what it is."),
          may(
              "colors",
              named(ColorChip.TABLE.block()),
              "Short names of colors, each with its name and reading."),
          may(
              "finishes",
              named(Finish.TABLE.block()),
              "Short names of finishes, each with its name."),
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
