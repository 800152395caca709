package assize.aspect;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** One thing about an item that can be looked at. */
public enum Aspect {
  FINISH(
      "finish",
      Worded.finish(),
      "The finish that is right, a list of them, or finishes with their credits.",
      "The finish that was found, by its short name; or other."),
  COLOR(
      "color",
      new Colors(),
      "The color that is right, a list of them, the color of another item (same_as), or colors"
          + " with a tolerance (any, tolerance).",
      "The color that it matches by eye, by its short name, or other; or what an instrument"
          + " reads (lab)."),
  GLOSS(
      "gloss",
      new Gloss(),
      "Gloss units at 60° (ISO 2813) or a band, from flat to high gloss.",
      "Gloss units at 60° (ISO 2813), with ± where known, or a band."),
  MATERIAL(
      "material",
      Worded.material(),
      "The material that is right, a list, or materials with their credits.",
      "The material that was found, by its short name; or other."),
  PART_NUMBER(
      "part_number",
      new PartNumbers(),
      "A pattern (RE2) for the number, a list of numbers, or numbers with their credits;"
          + " spaces, dashes and capitals don't count.",
      "The number as it is stamped."),
  DATE_CODE(
      "date_code",
      new DateCodes(),
      "How the code is made up, and when the part may have been made.",
      "The code as it is cast or stamped."),
  SIZE(
      "size",
      new Sizes(),
      "A size with its unit and tolerance, from one to another, or a thread.",
      "The size as measured, with its unit; ± or \"to 0.1 mm\" says how well."),
  COUNT("count", new Counts(), "How many pieces there have to be.", "How many there are."),
  PRESENT(
      "present",
      YesNo.present(),
      "Whether it has to be there: yes or no.",
      "Whether it is there: yes or no."),
  WORKS(
      "works", YesNo.works(), "Whether it has to work: yes or no.", "Whether it works: yes or no."),
  CHOICE(
      "choice",
      Worded.choice(),
      "The word of `choices` that is right, a list, or words with their credits.",
      "One of the item's words; or other."),
  ORIGIN(
      "origin",
      Graded.origin(),
      "graded, for the credits of the rule set, or origins with their own credits.",
      "Where it came from."),
  CONDITION(
      "condition",
      Graded.condition(),
      "graded, for the credits of the rule set, or conditions with their own credits.",
      "The state it is in: a word of the rule set's ladder.");

  private static final Map<String, Aspect> BY_WORD =
      Arrays.stream(values()).collect(Collectors.toMap(Aspect::word, it -> it));

  private final String word;
  private final Kind kind;
  private final String aboutRight;
  private final String aboutSeen;

  Aspect(String word, Kind kind, String aboutRight, String aboutSeen) {
    this.word = word;
    this.kind = kind;
    this.aboutRight = aboutRight;
    this.aboutSeen = aboutSeen;
  }

  /** Returns the name that rule sets and records use. */
  public String word() {
    return word;
  }

  /** Returns what there is to know of it. */
  public Kind kind() {
    return kind;
  }

  /** Returns in a sentence what is written of what is right. */
  public String aboutRight() {
    return aboutRight;
  }

  /** Returns in a sentence what is written of what was found. */
  public String aboutSeen() {
    return aboutSeen;
  }

  /** Returns the name as running text has it. */
  public String spoken() {
    return word.replace('_', ' ');
  }

  /** Returns the aspect of that name. */
  public static Optional<Aspect> of(String word) {
    return Optional.ofNullable(BY_WORD.get(word));
  }
}
