package assize.ruleset;

import assize.schema.Block;
import assize.schema.Form;
import assize.schema.Key;
import assize.schema.Rule;
import assize.schema.Shape;
import java.util.Map;

/** What rule sets hold. */
public final class RuleSetShapes {
  /** The area that the items of a file of their own are in. */
  static final Key AREA =
      Key.may("area", Form.name(), "The area that the items of this file are in.");

  /** What one file of a rule set may hold. */
  public static final Block FILE =
      RuleSet.TABLE
          .block()
          .and(AREA, Area.LISTED, AcceptedShape.KEY)
          .with(
              Rule.needs(AREA.name(), Area.LISTED.name()),
              Rule.needs(Area.LISTED.name(), AREA.name()));

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
}
