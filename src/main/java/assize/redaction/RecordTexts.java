package assize.redaction;

import assize.record.VehicleRecord;
import assize.schema.Rewording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Changes every text of a record that its owner wrote freely; words of the standard stay. */
final class RecordTexts implements Rewording {
  private final Changes changes;
  private final String item;

  private RecordTexts(Changes changes, String item) {
    this.changes = changes;
    this.item = item;
  }

  /** What becomes of texts. */
  interface Changes {
    /**
     * Returns what a text becomes.
     *
     * @param item the item it stands at; empty for none
     */
    String text(String item, String text);

    /** Returns what a text becomes that may be a word of the standard. */
    default String word(String item, String text) {
      return text(item, text);
    }

    /** Returns what the name of a piece of evidence becomes: another for each. */
    default String key(String key) {
      return text("", key);
    }

    /**
     * Returns what a number that is stamped on an item becomes; nothing where it must not stay.
     *
     * @param aspect the key of the aspect that it is written under
     */
    default Optional<String> stamped(String item, String aspect, String text) {
      return Optional.of(text(item, text));
    }
  }

  /**
   * Returns a record with its texts changed.
   *
   * @param numbers its numbers as they are to be shown
   * @param oneOf the numbers that each may be
   */
  static VehicleRecord of(
      VehicleRecord vehicle,
      Map<String, String> numbers,
      Map<String, List<String>> oneOf,
      Changes changes) {
    return VehicleRecord.TABLE
        .reworded(vehicle, new RecordTexts(changes, ""))
        .with(VehicleRecord.NUMBERS, numbers)
        .with(VehicleRecord.ONE_OF, oneOf);
  }

  /** Returns every text of a record, but for those that may be words of the standard. */
  static List<RedactedJudgment.Written> in(VehicleRecord vehicle) {
    List<RedactedJudgment.Written> texts = new ArrayList<>();
    of(
        vehicle,
        Map.of(),
        Map.of(),
        new Changes() {
          @Override
          public String text(String item, String text) {
            texts.add(new RedactedJudgment.Written(item, text));
            return text;
          }

          @Override
          public String word(String item, String text) {
            return text;
          }
        });
    return texts;
  }

  @Override
  public String text(String text) {
    return changes.text(item, text);
  }

  @Override
  public String word(String text) {
    return changes.word(item, text);
  }

  @Override
  public String name(String name) {
    return changes.key(name);
  }

  @Override
  public Optional<String> stamped(String aspect, String text) {
    return changes.stamped(item, aspect, text);
  }

  @Override
  public Rewording at(String at) {
    return new RecordTexts(changes, at);
  }
}
