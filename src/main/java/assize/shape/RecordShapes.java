package assize.shape;

import static assize.shape.Key.may;
import static assize.shape.Key.need;
import static assize.shape.Value.either;
import static assize.shape.Value.list;
import static assize.shape.Value.oneOrMore;

import assize.aspect.Aspect;
import assize.record.Evidence;
import assize.record.Unshared;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** What records hold. */
public final class RecordShapes {
  /** What {@code private} can name at the top of a record. */
  public static final List<Unshared> UNSHARED =
      List.of(Unshared.NOTES, Unshared.JUDGED, Unshared.PLANT, Unshared.MARKET);

  /** What {@code private} can name at an item. */
  public static final List<Unshared> UNSHARED_AT_ITEM =
      List.of(
          Unshared.NOTE,
          Unshared.BY,
          Unshared.ON,
          Unshared.EVIDENCE,
          Unshared.WHY,
          Unshared.BECAUSE);

  /** How many parts of one photo can be covered. */
  public static final int MOST_COVERS = 50;

  public static final Block VEHICLE =
      Block.of(
          "a vehicle",
          need("name", Form.visible(), "How the report calls it."),
          may("model", Form.name(), "The rule set's short name of the model."),
          may("notes", Form.text(), "What should be known of it."));

  public static final Block BUILT =
      Block.of(
          "a build date",
          need("date", Form.date("1934-05"), "When it was built."),
          may("basis", Form.text(), "What says so: a build plate, a build sheet."));

  public static final Block JUDGED =
      Block.of(
          "a judging",
          may("by", Form.text(), "Who looked."),
          may("on", Form.date("2026-10-03"), "On which day."));

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

  public static final Block DEPARTURE =
      Block.of(
          "a departure",
          need(
              "reason",
              Form.visible("safety"),
              "A word of the rule set's `allow`, or any other word."),
          may("why", Form.text(), "Why, in your own words."),
          may("until", Form.date("2027-05"), "When it is to be looked at again."));

  public static final Block OBSERVATION =
      new Block(
              "an item",
              Arrays.stream(Aspect.values()).map(AspectShapes::found).toList(),
              List.of())
          .and(
              may("evidence", oneOrMore(Form.name()), "What shows it: names of evidence."),
              may("note", Form.text(), "What else should be known."),
              may("by", Form.text(), "Who looked, if not who judged."),
              may("on", Form.date("2026-10-03"), "When, if not when it was judged."),
              may(
                  "departure",
                  new Value.Group(DEPARTURE),
                  "Why it is not right, where the owner knows that."),
              may(
                  "holds",
                  AspectShapes.ASPECTS,
                  "What the owner holds to be right, where sources differ; it weighs nothing."),
              may("because", Form.text(), "Why the owner holds it to be right."),
              may(
                  "private",
                  unshared(UNSHARED_AT_ITEM),
                  "What stays out of the copy for others; yes for all of it."))
          .with(Rule.needs("because", "holds"));

  public static final Block FILE =
      Block.of(
          "this record",
          need("record", Form.name(), "The vehicle's short name: letters, digits and dashes."),
          need(
              "rules",
              Form.visible("example-type-x", "type-x.yaml"),
              "The folder or file of the rule set, beside this file or below."),
          may("edition", Form.visible(), "The edition of the rule set that it was filled in for."),
          need("vehicle", new Value.Group(VEHICLE), "Which vehicle it is."),
          may(
              "numbers",
              new Value.Named(Form.name(), Form.visible("X-4388")),
              "Chassis and engine numbers, by the rule set's number tables."),
          may(
              "built",
              either(Form.date("1934-05"), new Value.Group(BUILT)),
              "When it was built, if something says so; with its basis: {date: 1934-05, basis:"
                  + " build plate}."),
          may("plant", Form.name(), "Where it was made, by its short name."),
          may("market", Form.name(), "For which market, by its short name."),
          may(
              "equipment",
              new Value.Named(Form.name(), Form.yesNo()),
              "Equipment by its short name, each yes or no; leave out what is not known."),
          may("judged", new Value.Group(JUDGED), "Who looked at the vehicle, and when."),
          may(
              "evidence",
              new Value.Named(Form.name(), new Value.Group(EVIDENCE)),
              "Photos, documents and measurements, by short names of your own."),
          may(
              "traces",
              list(new Value.Group(TRACE)),
              "What the vehicle itself shows of what is right."),
          may(
              "observations",
              new Value.Named(Form.name(), new Value.Group(OBSERVATION)),
              "What was found, item by item; an aspect that is left out is not shown."),
          may(
              "private",
              unshared(UNSHARED),
              "What stays out of the copy for others; yes for all of it."),
          may(
              "private_words",
              oneOrMore(Form.text()),
              "Words that become xxx in the copy for others, wherever they stand."),
          AcceptedShape.KEY);

  /** What a record holds, with all that stands below it. */
  public static final Shape SHAPE =
      new Shape(
          "Record",
          "One vehicle: what it is, and what was found at each item of a rule set.",
          FILE,
          Map.of("aspects", AspectShapes.EXPECTED));

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

  private static Value unshared(List<Unshared> all) {
    Value word = Value.word(all.stream().map(Unshared::word).toList());
    return either(Form.yesNo(), word, list(word), new Value.Many(Form.yesNo(), OptionalInt.of(1)));
  }
}
