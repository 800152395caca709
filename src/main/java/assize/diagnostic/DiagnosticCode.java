package assize.diagnostic;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What kinds of things can be wrong or doubtful; {@code docs/messages.md} has a word on each. */
public enum DiagnosticCode {
  // The file
  FILE_NOT_FOUND("a file that is named is not there"),
  CANNOT_OPEN_FILE("a file or folder can't be opened"),
  FILE_TOO_LARGE("a file is longer than is read"),
  NOT_UTF8("a file is not UTF-8 text"),
  EMPTY_FILE("a file has nothing in it"),
  PATH_OUTSIDE("a path leads out of its folder"),
  CONTROL_CHARACTER("a file has a character in it that can't be seen"),
  TAB_INDENTATION("a tab stands where spaces are wanted"),

  // YAML
  SYNTAX("a file is not YAML"),
  ALIAS("a YAML alias is used"),
  ANCHOR("a YAML anchor is used"),
  MERGE_KEY("a YAML merge key is used"),
  TAG("a YAML tag is used"),
  SECOND_DOCUMENT("a file holds more than one YAML document"),
  DUPLICATE_KEY("a name is written twice in one place"),
  INVALID_KEY("a name is not a word"),
  TOO_DEEP("names are nested too deeply"),
  TOO_MANY_ENTRIES("a file has more entries than are read"),
  TOO_MANY("a rule set or a record has more of something than is judged"),
  TEXT_TOO_LONG("a text is longer than is read"),
  TOO_MANY_PROBLEMS("a file has more wrong with it than is shown"),

  // What is written under a name
  MISSING_VALUE("nothing is written after a name"),
  WRONG_STRUCTURE("one thing is written where another is wanted"),
  UNKNOWN_KEY("a name means nothing here"),
  MISSING_KEY("something that has to be said is not"),
  BAD_NAME("a name has characters that names may not have"),
  BLANK_NAME("a name or title shows nothing"),
  BAD_NUMBER("a number can't be read or is out of range"),
  BAD_CREDIT("a credit is not between 0 and 1"),
  BAD_POINTS("points can't be read or are out of range"),
  BAD_YES_NO("neither yes nor no is written"),
  BAD_DATE("a date can't be read"),
  BAD_DURATION("a lead time can't be read"),
  BAD_SIZE("a size can't be read"),
  BAD_GLOSS("a gloss can't be read"),
  BAD_LAB("an instrument's color reading can't be read"),
  BAD_PATTERN("a pattern can't be read"),
  BAD_RANGE("a range can't be read"),

  // Names that are not defined
  UNKNOWN_FINISH("a finish is not defined"),
  UNKNOWN_COLOR("a color is not defined"),
  UNKNOWN_MATERIAL("a material is not defined"),
  UNKNOWN_CHOICE("a choice is not one of the item's"),
  UNKNOWN_ORIGIN("an origin is none of the eight"),
  UNKNOWN_CONDITION("a condition is not on the ladder"),
  UNKNOWN_SOURCE("a source is not defined"),
  UNKNOWN_MODEL("a model is not defined"),
  UNKNOWN_PLANT("a plant is not defined"),
  UNKNOWN_MARKET("a market is not defined"),
  UNKNOWN_EQUIPMENT("a piece of equipment is not defined"),
  UNKNOWN_NUMBER_TABLE("a number table is not defined"),
  UNKNOWN_AREA("an area is not defined"),
  UNKNOWN_ITEM("an item is not defined"),
  UNKNOWN_EVIDENCE("a piece of evidence is not in the record"),
  UNKNOWN_HAZARD("a hazard is none that is known"),
  UNKNOWN_WORD("a word is none of those that may stand there"),
  UNKNOWN_WARNING("a warning is none that is known"),
  UNKNOWN_NAME("nothing bears a name"),

  // What does not fit together
  DUPLICATE_NAME("two things bear one name"),
  CIRCULAR_COPIES("sources copy each other in a circle"),
  CIRCULAR_KIND_OF("finishes are kinds of each other in a circle"),
  CIRCULAR_SAME_AS("items take their color from each other in a circle"),
  SAME_AS_WITHOUT_COLOR("an item takes its color from one that has none"),
  CAUSE_IN_TWO_AREAS("items of different areas name one cause"),
  OPEN_PRODUCTION_DATES("a model's production has no beginning or no end"),
  AWARD_OUT_OF_REACH("an award asks for more than the full score"),
  NUMBERS_NOT_ASCENDING("a number table does not rise"),
  DATES_NOT_ASCENDING("a number table's dates go back"),
  RESERVED_OUTSIDE("reserved numbers lie outside of their series"),
  POINTS_FOR_MISSING_ASPECT(
      "an item's worth names an aspect that is not expected, or none that is"),
  EXPECT_AND_CLAIMS("an aspect is both expected and claimed"),
  ONLY_RULED_OUT("sources say only what an aspect is not"),
  CREDIT_NOT_ALLOWED("a claim that leaves something open, or rules it out, gives it a credit"),
  TOO_MANY_CLAIMS("sources say more different things of one aspect than can be weighed"),
  NO_CHOICES("an item has the aspect choice but no choices"),
  CLAIM_WITHOUT_SOURCE("a claim does not say whose it is"),
  NOTHING_EXPECTED("an item expects nothing"),
  NO_ITEMS("a rule set or an area has no items"),
  ASPECT_NOT_EXPECTED("a record gives what the item does not ask for"),

  // The copy for others
  BAD_BLACKOUT_AREA("a part of a photo that is to be covered can't be read"),
  PRIVATE_WORD_TOO_SHORT("a private word is too short to be masked"),

  // Editions
  TOO_MUCH_CHANGED("two editions differ in more than is laid out"),

  // Merging
  DIFFERENT_VEHICLE("a file to merge is about another vehicle"),
  DIFFERENT_EDITION("a file to merge was filled in for another rule set or edition"),
  CHANGED_DURING_MERGE("a file was changed while it was being merged"),

  // Photos
  PHOTO_CANNOT_BE_SHOWN("a photo can't be shown"),

  // Tables
  NOT_A_TABLE("a file is not a table that can be read"),
  MISSING_COLUMN("a table lacks a column that is needed"),
  ROW_WITHOUT_NAME("a row of a table does not say what it is about"),
  FORMULA("a cell of a table holds a formula or a fault"),
  CONVERTED_CELL("a cell of a table holds something else than was typed"),
  MERGED_CELLS("cells of a table are made one"),
  SHEET_FOR_OTHER_RULE_SET("a table was made for another rule set"),

  // Warnings
  RECORD_FOR_OTHER_EDITION(Severity.WARNING, "a record names another edition than the rule set's"),
  UNCITED_SOURCE(Severity.WARNING, "no item cites a source"),
  NO_SOURCE(Severity.WARNING, "an item names no source"),
  REDUNDANT_COPY(Severity.WARNING, "a claim only repeats the source that its own source copies"),
  UNCOVERED_DATES(Severity.WARNING, "for a stretch of production no claim says what is right"),
  UNCOVERED_VEHICLES(Severity.WARNING, "for some vehicles an item applies and no claim speaks"),
  UNREACHABLE_ITEM(Severity.WARNING, "an item applies to no vehicle"),
  UNREACHABLE_CLAIM(Severity.WARNING, "a claim speaks of no vehicle"),
  OVERLAPPING_CLAIMS(Severity.WARNING, "one claim of a source lies within another of its claims"),
  INDISTINGUISHABLE_POSITIONS(Severity.WARNING, "two values can't be told apart by what is found"),
  UNMATCHABLE_PATTERN(Severity.WARNING, "a pattern matches nothing"),
  UNMATCHABLE_DATE_CODE(Severity.WARNING, "a date code fits no vehicle"),
  NUMBERS_OUTSIDE_TABLE(Severity.WARNING, "a condition asks for numbers that were never given out"),
  NUMBER_TABLE_GAP(Severity.WARNING, "a number table has a hole"),
  UNUSED_WORD(Severity.WARNING, "a word is defined and never used"),
  DUPLICATE_TITLE(Severity.WARNING, "two items of an area look the same"),
  AREA_POINTS_MISMATCH(Severity.WARNING, "an area's items do not add up to its points"),
  PHOTO_MISNAMED(Severity.WARNING, "a photo is named as another kind of file than it is"),
  PHOTO_LEFT_OUT(Severity.WARNING, "a photo is left out of the report, since it can't be shown"),
  SHEET_FOR_OTHER_RECORD(Severity.WARNING, "a table was made for another record"),
  RULES_CHANGED(Severity.WARNING, "the rule set is another than when a table was made"),
  COLUMN_NOT_READ(Severity.WARNING, "a column of a table is not read"),
  POSSIBLY_CONVERTED_CELL(
      Severity.WARNING, "a cell of a table looks like what a spreadsheet made of another text"),
  ITEM_DOES_NOT_APPLY(
      Severity.WARNING, "a record says what was found at an item that does not apply"),
  UNCITED_EVIDENCE(Severity.WARNING, "nothing in a record cites a piece of its evidence"),
  OVERDUE_REVIEW(Severity.WARNING, "a departure was to be looked at again more than a year ago"),
  UNUSED_ACCEPTANCE(Severity.WARNING, "a warning is accepted that is not there");

  private final Severity severity;
  private final String meaning;

  DiagnosticCode(String meaning) {
    this(Severity.ERROR, meaning);
  }

  DiagnosticCode(Severity severity, String meaning) {
    this.severity = severity;
    this.meaning = meaning;
  }

  /** Returns the name that messages show, such as {@code unknown-finish}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the code of that name. */
  public static Optional<DiagnosticCode> of(String id) {
    return Arrays.stream(values()).filter(code -> code.id().equals(id)).findFirst();
  }

  public Severity severity() {
    return severity;
  }

  /** Returns what it means, in a line. */
  public String meaning() {
    return meaning;
  }
}
