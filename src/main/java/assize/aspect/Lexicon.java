package assize.aspect;

import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a rule set says of the words that it and its records use. */
public interface Lexicon {
  Map<String, Finish> finishes();

  Map<String, ColorChip> colors();

  Map<String, String> materials();

  Map<Origin, BigFraction> origins();

  Map<String, BigFraction> conditions();

  /** Returns the title of an item; its name where there is no such item. */
  String title(String item);

  /** Returns the words that an item lets one choose from, with what they mean. */
  Map<String, String> choices(String item);

  /** Says whether one finish may stand where another is expected: itself, or a kind of it. */
  boolean isKindOf(String finish, String expected);

  /** Returns the name of a color. */
  default String color(String id) {
    return Optional.ofNullable(colors().get(id)).map(ColorChip::name).orElse(id);
  }
}
