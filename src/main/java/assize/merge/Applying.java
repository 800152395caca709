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
    Edited edited = whole.orElseGet(() -> oneByOne(mine, rules, merge));
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

  private static Edited oneByOne(WrittenRecord mine, RuleSet rules, Merge merge) {
    SourceFile file = mine.record().at().file();
    Content.Group wanted = mine.content();
    Edited edited = new Edited(file.text(), List.of(), List.of(), wanted);
    List<ByHand> unsure = new ArrayList<>();
    for (Merge.Step step : merge.steps()) {
      Content.Group more = wanted.with(step.path(), step.value());
      Optional<Edited> changed = Editing.edit(file, rules, more);
      if (changed.isPresent()) {
        wanted = more;
        edited = changed.get();
      } else {
        String name = step.path().get(step.path().size() - 1);
        String write = name + ": " + Editing.written(name, step.value());
        unsure.add(new ByHand(step.path(), mine.at(step.path()), write, UNSURE));
      }
    }
    List<ByHand> byHand = new ArrayList<>(edited.byHand());
    byHand.addAll(unsure);
    return new Edited(edited.text(), edited.pieces(), byHand, edited.says());
  }
}
