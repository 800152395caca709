package assize.ruleset;

import static assize.schema.Key.may;
import static assize.schema.Key.need;
import static assize.schema.Value.list;
import static assize.schema.Value.oneOrMore;

import assize.diagnostic.Code;
import assize.diagnostic.Severity;
import assize.schema.Block;
import assize.schema.Form;
import assize.schema.Key;
import assize.schema.Value;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How rule sets and records let a doubt stand. */
public final class AcceptedShape {
  /** What is not said by check, or of what was accepted itself. */
  private static final Set<Code> NOT_OF_LINT =
      EnumSet.of(
          Code.PHOTO_LEFT_OUT,
          Code.SHEET_FOR_OTHER_RECORD,
          Code.RULES_CHANGED,
          Code.COLUMN_NOT_READ,
          Code.POSSIBLY_CONVERTED_CELL,
          Code.UNUSED_ACCEPTANCE);

  /** The doubts that can be accepted. */
  public static final List<String> DOUBTS =
      Arrays.stream(Code.values())
          .filter(code -> code.severity() == Severity.DOUBT && !NOT_OF_LINT.contains(code))
          .map(Code::id)
          .toList();

  static final Key DOUBT =
      need("doubt", Value.word(DOUBTS), "The doubt: the name in brackets in its message.");
  static final Key OF =
      may(
          "of",
          oneOrMore(Form.name()),
          "What it is about: the item, the source, the table or the word that its message"
              + " names; without it, whatever it is about.");
  static final Key BECAUSE = need("because", Form.visible(), "Why it may stand.");

  static final Block ACCEPTED = Block.of("an accepted doubt", DOUBT, OF, BECAUSE);

  public static final Key KEY =
      may(
          "accepted",
          list(new Value.Group(ACCEPTED)),
          "Doubts of check that somebody has looked at and lets stand.");

  private AcceptedShape() {}
}
