package assize.ruleset;

import static assize.schema.Key.may;

import assize.aspect.ColorChip;
import assize.aspect.Finish;
import assize.aspect.Graded;
import assize.evidence.Source;
import assize.schema.Block;
import assize.schema.Form;
import assize.schema.Rule;
import assize.schema.Shape;
import assize.schema.Value;
import java.util.Map;

/** What rule sets hold. */
public final class RuleSetShapes {
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
          may("areas", named(Area.TABLE.block()), "Short names of areas, each with its items."));

  /** What one file of a rule set may hold. */
  public static final Block FILE =
      HEAD.and(JOINED.keys())
          .and(
              may("area", Form.name(), "The area that the items of this file are in."),
              Area.LISTED,
              AcceptedShape.KEY)
          .with(Rule.needs("area", Area.LISTED.name()), Rule.needs(Area.LISTED.name(), "area"));

  /** What one file of a rule set may hold, with all that stands below it. */
  public static final Shape SHAPE =
      new Shape(
          "Rule set",
          "One edition of one standard: the details to judge, what is right for each, for which"
              + " vehicles, and who says so.",
          FILE,
          Map.of(
              "aspects",
              AspectShapes.EXPECTED,
              "condition",
              Scopes.GROUP,
              "item",
              Item.TABLE.block()));

  private RuleSetShapes() {}

  private static Value named(Block block) {
    return new Value.Named(Form.ownName(), new Value.Group(block));
  }

  private static Value meanings() {
    return new Value.Named(Form.ownName(), Form.visible());
  }
}
