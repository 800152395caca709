package assize.merge;

import assize.edit.ByHand;
import assize.edit.Content;
import assize.edit.Edited;
import assize.edit.Editing;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes into a record's text what holding friends' records against it came to. */
public final class Applying {
  private static final String UNSURE = "the changed text would not be sure to say that alone";

  private Applying() {}

  /**
   * What came of it.
   *
   * @param done what the changed text says
   * @param undone what it does not say, and the person has to write
   */
  public record Applied(Edited edited, List<Merge.Step> done, List<Merge.Step> undone) {
    public Applied {
      done = List.copyOf(done);
      undone = List.copyOf(undone);
    }
  }

  /** Changes a text, as much as can be done for certain. */
  public static Applied apply(WrittenRecord mine, RuleSet rules, Merge merge) {
    SourceFile file = mine.record().at().file();
    Optional<Edited> whole = Editing.edit(file, rules, merge.wanted(mine.content()));
    Edited edited = whole.orElseGet(() -> byParts(mine, rules, merge));
    List<Merge.Step> done = new ArrayList<>();
    List<Merge.Step> undone = new ArrayList<>();
    for (Merge.Step step : merge.steps()) {
      Optional<Content> says = edited.says().at(step.path());
      boolean isDone = says.filter(it -> holds(it, step)).isPresent();
      (isDone ? done : undone).add(step);
    }
    return new Applied(edited, done, undone);
  }

  /** Says whether a place has what a step puts there; later steps may put more into its list. */
  private static boolean holds(Content says, Merge.Step step) {
    return says.equals(step.value())
        || says.asItems().isPresent()
            && says.asItems()
                .get()
                .all()
                .containsAll(
                    step.value().asItems().map(Content.Items::all).orElse(List.of(step.value())));
  }

  private static Edited byParts(WrittenRecord mine, RuleSet rules, Merge merge) {
    Parts parts = new Parts(mine, rules);
    parts.take(merge.steps());
    return parts.taken();
  }

  /** Takes what can be taken: all of it, or where that can't be done for certain each half. */
  private static final class Parts {
    private final WrittenRecord mine;
    private final RuleSet rules;
    private final SourceFile file;
    private final List<ByHand> unsure = new ArrayList<>();
    private Content.Group wanted;
    private Edited edited;

    Parts(WrittenRecord mine, RuleSet rules) {
      this.mine = mine;
      this.rules = rules;
      this.file = mine.record().at().file();
      this.wanted = mine.content();
      this.edited = new Edited(file.text(), List.of(), List.of(), wanted);
    }

    void take(List<Merge.Step> steps) {
      Content.Group more = wanted.with(Merge.changes(steps));
      Optional<Edited> changed = Editing.edit(file, rules, more);
      if (changed.isPresent()) {
        wanted = more;
        edited = changed.get();
      } else if (steps.size() > 1) {
        take(steps.subList(0, steps.size() / 2));
        take(steps.subList(steps.size() / 2, steps.size()));
      } else {
        Merge.Step step = steps.get(0);
        String name = step.path().get(step.path().size() - 1);
        String write = name + ": " + Editing.written(name, step.value());
        unsure.add(new ByHand(step.path(), mine.at(step.path()), write, UNSURE));
      }
    }

    Edited taken() {
      List<ByHand> byHand = new ArrayList<>(edited.byHand());
      byHand.addAll(unsure);
      return new Edited(edited.text(), edited.pieces(), byHand, edited.says());
    }
  }
}
