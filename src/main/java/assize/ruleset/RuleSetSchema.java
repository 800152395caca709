package assize.ruleset;

import assize.schema.FileSchema;
import assize.schema.ObjectSchema;
import assize.schema.PropertyConstraint;
import assize.schema.PropertySchema;
import assize.schema.ScalarFormat;
import java.util.Map;

/** What rule sets hold. */
public final class RuleSetSchema {
  /** The area that the items of a file of their own are in. */
  static final PropertySchema AREA =
      PropertySchema.may(
          "area", ScalarFormat.name(), "The area that the items of this file are in.");

  /** What one file of a rule set may hold. */
  public static final ObjectSchema FILE =
      RuleSet.TABLE
          .block()
          .and(AREA, Area.LISTED, AcceptedWarningsSchema.KEY)
          .with(
              PropertyConstraint.needs(AREA.name(), Area.LISTED.name()),
              PropertyConstraint.needs(Area.LISTED.name(), AREA.name()));

  /** What one file of a rule set may hold, with all that stands below it. */
  public static final FileSchema SCHEMA =
      new FileSchema(
          "Rule set",
          "One edition of one standard: the details to judge, what is right for each, for which"
              + " vehicles, and who says so.",
          FILE,
          Map.of(
              "aspects",
              AspectSchemas.EXPECTED,
              "condition",
              Scopes.GROUP,
              "item",
              Item.TABLE.block()));

  private RuleSetSchema() {}
}
