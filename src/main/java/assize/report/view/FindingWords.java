package assize.report.view;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.measure.Lab;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.List;

/** What was found, in words. */
final class FindingWords implements Finding.Cases<String> {
  private final RuleWords rules;
  private final Item item;
  private final Aspect aspect;

  FindingWords(RuleWords rules, Item item, Aspect aspect) {
    this.rules = rules;
    this.item = item;
    this.aspect = aspect;
  }

  @Override
  public String word(Finding.Word found) {
    return found.id().equals(Finding.OTHER)
        ? "other: none that the rule set names"
        : rules.word(item, aspect, found.id());
  }

  @Override
  public String color(Finding.Color found) {
    List<String> parts = new ArrayList<>();
    found
        .chip()
        .ifPresent(
            chip ->
                parts.add(
                    (chip.equals(Finding.OTHER)
                            ? "none of the rule set's colors"
                            : rules.chip(chip))
                        + " by eye"
                        + found.light().map(light -> " in " + light).orElse("")
                        + found.by().map(by -> " (" + by + ")").orElse("")));
    found.lab().ifPresent(lab -> parts.add(reading(lab, found.uncertainty())));
    return String.join("; ", parts);
  }

  private static String reading(Lab lab, double uncertainty) {
    return "L* "
        + Numbers.measure(lab.l())
        + ", a* "
        + Numbers.measure(lab.a())
        + ", b* "
        + Numbers.measure(lab.b())
        + " by instrument"
        + (uncertainty > 0 ? ", uncertainty " + Numbers.measure(uncertainty) : "");
  }

  @Override
  public String gloss(Finding.Gloss found) {
    return found.reading().spoken();
  }

  @Override
  public String size(Finding.Size found) {
    return found.measured().text();
  }

  @Override
  public String screwThread(Finding.ScrewThread found) {
    return found.thread().text();
  }

  @Override
  public String stamped(Finding.Stamped found) {
    return "“" + found.text() + "”";
  }

  @Override
  public String pieces(Finding.Pieces found) {
    return Integer.toString(found.count());
  }

  @Override
  public String yesNo(Finding.YesNo found) {
    return YesNoWords.of(aspect, found.yes());
  }
}
