package assize.record;

import static assize.schema.Key.may;
import static assize.schema.Key.need;
import static assize.schema.Value.either;
import static assize.schema.Value.oneOrMore;

import assize.ruleset.AspectShapes;
import assize.ruleset.RuleSetShapes;
import assize.schema.Block;
import assize.schema.Form;
import assize.schema.Key;
import assize.schema.Rule;
import assize.schema.Value;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/** What records hold. */
public final class RecordShapes {
  /** How many parts of one photo can be covered. */
  public static final int MOST_COVERS = 50;

  public static final Block COVER =
      Block.of(
          "a part of a photo",
          need("left", Form.percent(), "Where it begins, from the left edge, in percent."),
          need("top", Form.percent(), "Where it begins, from the upper edge, in percent."),
          need("width", Form.percent(), "How wide it is, in percent of the photo."),
          need("height", Form.percent(), "How high it is, in percent of the photo."));

  public static final Block EVIDENCE =
      new Block(
              "evidence",
              Arrays.stream(Evidence.Kind.values()).map(RecordShapes::kind).toList(),
              List.of())
          .and(
              may("caption", Form.visible(), "What it shows."),
              may("taken", Form.date("2025-11"), "When it was taken or written."),
              may("by", Form.text(), "Who took or wrote it."),
              may(
                  "cover",
                  either(
                      new Value.Group(COVER),
                      new Value.Many(new Value.Group(COVER), OptionalInt.of(MOST_COVERS))),
                  "Parts of the photo that are painted over in the copy for others."),
              may("private", Form.yesNo(), "yes: all of it stays out of the copy for others."))
          .with(
              Rule.oneOf(Arrays.stream(Evidence.Kind.values()).map(Evidence.Kind::word).toList()),
              Rule.needs("cover", Evidence.Kind.PHOTO.word()));

  public static final Block TRACE =
      Block.of(
              "a trace",
              need("item", Form.name(), "The item of the rule set that it tells of."),
              need("grade", RuleSetShapes.GRADES, "How far it can be trusted: A the most."))
          .and(AspectShapes.manners())
          .and(
              may("where", Form.text(), "Where on the vehicle it is."),
              may("evidence", oneOrMore(Form.name()), "What shows it: names of evidence."))
          .with(AspectShapes.oneManner());

  private RecordShapes() {}

  private static Key kind(Evidence.Kind kind) {
    return may(
        kind.word(),
        Form.visible(),
        switch (kind) {
          case PHOTO -> "The file of a photo, in the record's folder or below.";
          case DOCUMENT -> "The file of a document, in the record's folder or below.";
          case MEASUREMENT -> "What was measured with: Vernier caliper, read to 1/128 in.";
        });
  }
}
