package assize.ruleset;

import static assize.schema.PropertySchema.may;

import assize.aspect.Aspect;
import assize.evidence.ClaimKind;
import assize.schema.ObjectSchema;
import assize.schema.PropertyConstraint;
import assize.schema.PropertySchema;
import assize.schema.ValueSchema;
import java.util.Arrays;
import java.util.List;

/** What is written under each aspect where something is held to be right. */
public final class AspectSchemas {
  /** Aspects of an item, each with what is right. */
  public static final ObjectSchema EXPECTED =
      new ObjectSchema(
          "an item",
          Arrays.stream(Aspect.values()).map(AspectSchemas::expected).toList(),
          List.of());

  public static final ValueSchema ASPECTS = new ValueSchema.Shared("aspects");

  private AspectSchemas() {}

  private static PropertySchema expected(Aspect aspect) {
    return may(aspect.word(), aspect.kind().right(), aspect.aboutRight());
  }

  /** Returns the three ways in which a claim or a trace speaks, of which it has one. */
  public static List<PropertySchema> manners() {
    return Arrays.stream(ClaimKind.values())
        .map(manner -> may(manner.word(), ASPECTS, about(manner)))
        .toList();
  }

  public static PropertyConstraint oneManner() {
    return PropertyConstraint.oneOf(
        Arrays.stream(ClaimKind.values()).map(ClaimKind::word).toList());
  }

  private static String about(ClaimKind manner) {
    return switch (manner) {
      case SAYS -> "This is right, or any of these.";
      case LEAVES_OPEN -> "Right is one of these; the source can't tell which.";
      case RULES_OUT -> "Whatever is right, it is not this.";
    };
  }
}
