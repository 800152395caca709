package assize.schema;

import java.util.Optional;

/** Changes the texts that people wrote, in facts that it need not know. */
public interface Rewording {
  /** Returns what a text becomes that its writer chose freely. */
  String text(String text);

  /** Returns what a text becomes that may be a word of the standard. */
  String word(String text);

  /** Returns what the name of a piece of evidence becomes: another for each. */
  String name(String name);

  /**
   * Returns what a number becomes that is stamped on an item; nothing where it must not stay.
   *
   * @param aspect the key of the aspect that it was found or expected for
   */
  Optional<String> stamped(String aspect, String text);

  /** Returns the same for what is said of an item. */
  Rewording at(String item);
}
