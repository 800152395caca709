package assize.ruleset;

import static assize.schema.Key.may;

import assize.aspect.Aspect;
import assize.evidence.Manner;
import assize.schema.Block;
import assize.schema.Key;
import assize.schema.Rule;
import assize.schema.Value;
import java.util.Arrays;
import java.util.List;

/** What is written under each aspect where something is held to be right. */
public final class AspectShapes {
  /** Aspects of an item, each with what is right. */
  public static final Block EXPECTED =
      new Block(
          "an item",
          Arrays.stream(Aspect.values()).map(AspectShapes::expected).toList(),
          List.of());

  public static final Value ASPECTS = new Value.Shared("aspects");

  private AspectShapes() {}

  private static Key expected(Aspect aspect) {
    return may(aspect.word(), aspect.kind().right(), aspect.aboutRight());
  }

  /** Returns the three ways in which a claim or a trace speaks, of which it has one. */
  public static List<Key> manners() {
    return Arrays.stream(Manner.values())
        .map(manner -> may(manner.word(), ASPECTS, about(manner)))
        .toList();
  }

  public static Rule oneManner() {
    return Rule.oneOf(Arrays.stream(Manner.values()).map(Manner::word).toList());
  }

  private static String about(Manner manner) {
    return switch (manner) {
      case SAYS -> "This is right, or any of these.";
      case LEAVES_OPEN -> "Right is one of these; the source can't tell which.";
      case RULES_OUT -> "Whatever is right, it is not this.";
    };
  }
}
