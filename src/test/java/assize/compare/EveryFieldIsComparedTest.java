package assize.compare;

import static org.assertj.core.api.Assertions.assertThat;

import assize.compare.FieldMutations.Mutated;
import assize.report.changes.ChangesView;
import assize.report.changes.ChangesViewFactory;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whatever single field of a rule set changes, the comparison says so, and where. */
class EveryFieldIsComparedTest {
  /** What a rule set can't hold by itself: no claim without a value, no item without an aspect. */
  private static final Pattern REFUSED =
      Pattern.compile(
          ".*(\\.points|\\.possible|\\.values\\[0]|\\.aspects\\[[01]]|\\.first|\\.last|\\.lower"
              + "|\\.upper|\\.unit|\\.dimension|\\.from|\\.to|\\.l|\\.a|\\.b)");

  private final RuleSet rules = EditionFixture.newer();
  private final FieldMutations mutations = new FieldMutations();
  private final List<Mutated<RuleSet>> all = mutations.of(rules);

  @Test
  void thereIsMuchToChange() {
    assertThat(all.size()).isGreaterThan(300);
    assertThat(all.stream().map(Mutated::path))
        .contains(
            ".name",
            ".scale.not_assessed",
            ".awards[0].max_item_loss",
            ".models{X1}.production.last",
            ".number_tables{chassis}.series[0].reserved[0].purpose",
            ".sources{leaflet}.copies-guide",
            ".colors{green}.tolerance",
            ".areas[0].items[0].expect.claims{PART_NUMBER}[1].scope.days",
            ".areas[0].items[1].points",
            ".areas[1].items[3].expect.claims{DATE_CODE}[0].values[0].code.tables");
    assertThat(mutations.refused()).allSatisfy(path -> assertThat(path).matches(REFUSED));
  }

  @Test
  void everyOneOfThemIsTold() {
    for (Mutated<RuleSet> one : all) {
      List<Change> changes = EditionComparison.between(rules, one.value()).changes();
      assertThat(changes).as(one.path()).isNotEmpty();
      if (!one.item().isEmpty()) {
        assertThat(changes)
            .as(one.path())
            .anyMatch(
                change -> change.id().equals(one.item()) || change.items().contains(one.item()));
      }
    }
  }

  @Test
  void everyOneOfThemIsToldInWordsThatDiffer() {
    List<String> alike = new ArrayList<>();
    for (Mutated<RuleSet> one : all) {
      ChangesView view =
          ChangesViewFactory.of(
              EditionComparison.between(rules, one.value()), Optional.empty(), List.of());
      for (ChangesView.ChangeDetails told : view.told()) {
        if (told.before().isPresent() && told.before().equals(told.after())) {
          alike.add(one.path() + ": " + told.what() + " " + told.before().get());
        }
      }
    }
    assertThat(alike).isEmpty();
  }

  @Test
  void theSameIsNoChange() {
    EditionComparison same = EditionComparison.between(rules, EditionFixture.newer());
    assertThat(same.changes()).isEmpty();
    assertThat(same.shifted()).isEmpty();
    assertThat(same.renamings()).isEmpty();
  }
}
