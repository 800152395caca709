package assize.aspect;

import assize.measure.CieLab;
import assize.schema.Rewording;
import assize.yaml.FlowYamlWriter;
import java.util.Optional;

/** What was found of one aspect of one item. */
public interface Finding {

  /** The word for a finish, material, color or choice that the rule set has no word for. */
  String OTHER = "other";

  /** Returns it in words. */
  String words(Place at);

  /** Returns it as a person writes it in a record. */
  Written written();

  /** Says whether another finding of the same aspect says the same, however it is written. */
  default boolean sameAs(Finding other) {
    return equals(other);
  }

  /** Says whether a rule set has the words for it. */
  default boolean isKnown(Place at) {
    return true;
  }

  /**
   * Returns the same, its texts changed; nothing where it must not stay.
   *
   * @param aspect the key of the aspect that it is of
   */
  default Optional<Finding> reworded(String aspect, Rewording rewording) {
    return Optional.of(this);
  }

  /** Returns what an instrument read of a color. */
  default Optional<CieLab> lab() {
    return Optional.empty();
  }

  /** Says whether it tells who looked. */
  default boolean saysBy() {
    return false;
  }

  /** Returns the same without who looked. */
  default Finding withoutBy() {
    return this;
  }

  /**
   * A value as it is written.
   *
   * @param typed without quotes; of a color its name alone
   * @param yaml as YAML has it behind the colon
   */
  record Written(String typed, String yaml) {
    static Written of(String text) {
      return new Written(text, FlowYamlWriter.text(text, false));
    }

    static Written plain(String text) {
      return new Written(text, text);
    }
  }
}
