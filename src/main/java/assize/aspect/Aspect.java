package assize.aspect;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** One thing about an item that can be looked at. */
public enum Aspect {
  FINISH("finish"),
  COLOR("color"),
  GLOSS("gloss"),
  MATERIAL("material"),
  PART_NUMBER("part_number"),
  DATE_CODE("date_code"),
  SIZE("size"),
  COUNT("count"),
  PRESENT("present"),
  WORKS("works"),
  CHOICE("choice"),
  ORIGIN("origin"),
  CONDITION("condition");

  private static final Map<String, Aspect> BY_WORD =
      Arrays.stream(values()).collect(Collectors.toMap(Aspect::word, it -> it));

  private final String word;

  Aspect(String word) {
    this.word = word;
  }

  /** Returns the name that rule sets and records use. */
  public String word() {
    return word;
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
