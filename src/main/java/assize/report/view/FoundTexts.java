package assize.report.view;

import assize.aspect.Finding;
import assize.measure.Lab;
import assize.text.YamlText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What was found, as a person writes it in a record. */
final class FoundTexts implements Finding.Cases<FoundTexts.Written> {

  /**
   * A value as it is written.
   *
   * @param typed without quotes; of a color its name alone
   * @param yaml as YAML has it behind the colon
   */
  record Written(String typed, String yaml) {}

  private static Written plain(String text) {
    return new Written(text, YamlText.afterColon(text));
  }

  @Override
  public Written word(Finding.Word found) {
    return plain(found.id());
  }

  @Override
  public Written color(Finding.Color found) {
    boolean byEyeAlone =
        found.lab().isEmpty()
            && found.uncertainty() == 0
            && found.light().isEmpty()
            && found.by().isEmpty();
    if (byEyeAlone) {
      return plain(found.chip().orElse(""));
    }
    List<String> parts = new ArrayList<>();
    found.chip().ifPresent(chip -> parts.add("chip: " + YamlText.inBraces(chip)));
    found.lab().ifPresent(lab -> parts.add("lab: " + lab(lab)));
    if (found.uncertainty() > 0) {
      parts.add("uncertainty: " + number(found.uncertainty()));
    }
    found.light().ifPresent(light -> parts.add("light: " + YamlText.inBraces(light)));
    found.by().ifPresent(by -> parts.add("by: " + YamlText.inBraces(by)));
    return new Written(found.chip().orElse(""), "{" + String.join(", ", parts) + "}");
  }

  private static String lab(Lab lab) {
    return "[" + number(lab.l()) + ", " + number(lab.a()) + ", " + number(lab.b()) + "]";
  }

  private static String number(double value) {
    BigDecimal exact = new BigDecimal(Double.toString(value));
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }

  @Override
  public Written gloss(Finding.Gloss found) {
    return plain(found.reading().text());
  }

  @Override
  public Written size(Finding.Size found) {
    return plain(found.measured().text());
  }

  @Override
  public Written screwThread(Finding.ScrewThread found) {
    return plain(found.thread().text());
  }

  @Override
  public Written stamped(Finding.Stamped found) {
    return plain(found.text());
  }

  @Override
  public Written pieces(Finding.Pieces found) {
    String count = Integer.toString(found.count());
    return new Written(count, count);
  }

  @Override
  public Written yesNo(Finding.YesNo found) {
    String word = found.yes() ? "yes" : "no";
    return new Written(word, word);
  }
}
