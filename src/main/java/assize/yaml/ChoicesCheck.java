package assize.yaml;

import assize.aspect.Aspect;
import assize.diagnostic.Code;
import java.util.List;

/** Finds items with the aspect choice that give nothing to choose from. */
final class ChoicesCheck {
  private final Problems problems;

  ChoicesCheck(Problems problems) {
    this.problems = problems;
  }

  void check(List<ClaimReader.Told> all, boolean hasChoices) {
    all.stream()
        .filter(it -> it.aspect() == Aspect.CHOICE && !hasChoices)
        .findFirst()
        .ifPresent(
            it ->
                problems.add(
                    Code.NO_CHOICES,
                    it.entry().key().at(),
                    "this item has the aspect choice but nothing to choose from",
                    "add `choices:` with the words and what they mean"));
  }
}
