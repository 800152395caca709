package assize.merge;

import assize.edit.ByHand;
import assize.edit.Change;
import assize.edit.Edited;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import assize.yaml.Content;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Writes into a record's text what holding friends' records against it came to. */
public final class Applying {
  /** So many characters are read again to find which changes can't be written. */
  private static final long TRIED = 8L * 1024 * 1024;

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
    Optional<Edited> whole = RecordEditing.edit(file, rules, merge.wanted(mine.content()));
    Edited edited = whole.orElseGet(() -> byParts(mine, rules, merge));
    List<Merge.Step> done = new ArrayList<>();
    List<Merge.Step> undone = new ArrayList<>();
    Said said = new Said(edited.says(), new HashMap<>());
    for (Merge.Step step : merge.steps()) {
      (said.holds(step) ? done : undone).add(step);
    }
    return new Applied(edited, done, undone);
  }

  /**
   * What a text says.
   *
   * @param lists the entries of the lists that were asked for, by where they stand
   */
  private record Said(Content.Group content, Map<List<String>, Set<Content>> lists) {
    /** Says whether a place has what a step puts there; later steps may put more into its list. */
    boolean holds(Merge.Step step) {
      Optional<Content> says = content.at(step.path());
      if (says.filter(step.value()::equals).isPresent()) {
        return true;
      }
      List<Content> entries =
          step.value().asItems().map(Content.Items::all).orElse(List.of(step.value()));
      return says.flatMap(Content::asItems)
          .filter(it -> entries(step.path(), it).containsAll(entries))
          .isPresent();
    }

    private Set<Content> entries(List<String> path, Content.Items list) {
      return lists.computeIfAbsent(path, it -> new HashSet<>(list.all()));
    }
  }

  private static Edited byParts(WrittenRecord mine, RuleSet rules, Merge merge) {
    Parts parts = new Parts(mine, rules);
    parts.part(merge.steps());
    return parts.taken();
  }

  /** Takes what can be taken, each half by itself, while there are characters left to try. */
  private static final class Parts {
    private final WrittenRecord mine;
    private final RuleSet rules;
    private final SourceFile file;
    private final List<Merge.Step> unsure = new ArrayList<>();
    private long left = TRIED;
    private Content.Group wanted;
    private Edited edited;

    Parts(WrittenRecord mine, RuleSet rules) {
      this.mine = mine;
      this.rules = rules;
      this.file = mine.record().at().file();
      this.wanted = mine.content();
      this.edited = new Edited(file.text(), List.of(), List.of(), wanted);
    }

    /** Takes what can be taken of steps that can't be taken together. */
    void part(List<Merge.Step> steps) {
      if (steps.size() < 2 || left <= 0) {
        unsure.addAll(steps);
        return;
      }
      take(steps.subList(0, steps.size() / 2));
      take(steps.subList(steps.size() / 2, steps.size()));
    }

    private void take(List<Merge.Step> steps) {
      left -= file.text().length();
      Content.Group more = Change.all(wanted, Merge.changes(steps));
      Optional<Edited> changed = RecordEditing.edit(file, rules, more);
      if (changed.isPresent()) {
        wanted = more;
        edited = changed.get();
      } else {
        part(steps);
      }
    }

    Edited taken() {
      List<ByHand> byHand = new ArrayList<>(edited.byHand());
      Content.Group whole = Change.all(wanted, Merge.changes(unsure));
      unsure.stream()
          .map(Merge.Step::path)
          .distinct()
          .forEach(path -> whole.at(path).ifPresent(it -> byHand.add(unsure(path, it))));
      return new Edited(edited.text(), edited.pieces(), byHand, edited.says());
    }

    private ByHand unsure(List<String> path, Content value) {
      String name = path.get(path.size() - 1);
      return new ByHand(
          path, mine.at(path), name + ": " + RecordEditing.written(name, value), UNSURE);
    }
  }
}
