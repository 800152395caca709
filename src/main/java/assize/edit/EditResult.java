package assize.edit;

import assize.yaml.YamlValue;
import java.util.List;

/**
 * A text after changes, read again and found to say what was meant and nothing else.
 *
 * @param text the whole text
 * @param pieces what was put in or replaced, in the order of the text before
 * @param byHand what was left to the person
 * @param says what the text says
 */
public record EditResult(
    String text, List<TextEdit> pieces, List<ManualEdit> byHand, YamlValue.Group says) {
  public EditResult {
    pieces = List.copyOf(pieces);
    byHand = List.copyOf(byHand);
  }
}
