package assize.merge;

import assize.edit.EditResult;
import assize.edit.ManualEdit;
import assize.edit.TextChange;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Writes into a record's text what holding friends' records against it came to. */
public final class MergeApplier {
  /** So many characters are read again to find which changes can't be written. */
  private static final long TRIED = 8L * 1024 * 1024;

  private static final String UNSURE = "the changed text would not be sure to say that alone";

  private MergeApplier() {}

  /**
   * What came of it.
   *
   * @param done what the changed text says
   * @param undone what it does not say, and the person has to write
   */
  public record Applied(
      EditResult edited, List<MergeResult.Step> done, List<MergeResult.Step> undone) {
    public Applied {
      done = List.copyOf(done);
      undone = List.copyOf(undone);
    }
  }

  /** Changes a text, as much as can be done for certain. */
  public static Applied apply(LocatedRecord mine, RuleSet rules, MergeResult merge) {
    SourceFile file = mine.record().at().file();
    Optional<EditResult> whole = RecordEditing.edit(file, rules, merge.wanted(mine.content()));
    EditResult edited = whole.orElseGet(() -> byParts(mine, rules, merge));
    List<MergeResult.Step> done = new ArrayList<>();
    List<MergeResult.Step> undone = new ArrayList<>();
    RecordContent said = new RecordContent(edited.says(), new HashMap<>());
    for (MergeResult.Step step : merge.steps()) {
      (said.holds(step) ? done : undone).add(step);
    }
    return new Applied(edited, done, undone);
  }

  /**
   * What a text says.
   *
   * @param lists the entries of the lists that were asked for, by where they stand
   */
  private record RecordContent(YamlValue.Group content, Map<List<String>, Set<YamlValue>> lists) {
    /** Says whether a place has what a step puts there; later steps may put more into its list. */
    boolean holds(MergeResult.Step step) {
      Optional<YamlValue> says = content.at(step.path());
      if (says.filter(step.value()::equals).isPresent()) {
        return true;
      }
      List<YamlValue> entries =
          step.value().asItems().map(YamlValue.Items::all).orElse(List.of(step.value()));
      return says.flatMap(YamlValue::asItems)
          .filter(it -> entries(step.path(), it).containsAll(entries))
          .isPresent();
    }

    private Set<YamlValue> entries(List<String> path, YamlValue.Items list) {
      return lists.computeIfAbsent(path, it -> new HashSet<>(list.all()));
    }
  }

  private static EditResult byParts(LocatedRecord mine, RuleSet rules, MergeResult merge) {
    Parts parts = new Parts(mine, rules);
    parts.part(merge.steps());
    return parts.taken();
  }

  /** Takes what can be taken, each half by itself, while there are characters left to try. */
  private static final class Parts {
    private final LocatedRecord mine;
    private final RuleSet rules;
    private final SourceFile file;
    private final List<MergeResult.Step> unsure = new ArrayList<>();
    private long left = TRIED;
    private YamlValue.Group wanted;
    private EditResult edited;

    Parts(LocatedRecord mine, RuleSet rules) {
      this.mine = mine;
      this.rules = rules;
      this.file = mine.record().at().file();
      this.wanted = mine.content();
      this.edited = new EditResult(file.text(), List.of(), List.of(), wanted);
    }

    /** Takes what can be taken of steps that can't be taken together. */
    void part(List<MergeResult.Step> steps) {
      if (steps.size() < 2 || left <= 0) {
        unsure.addAll(steps);
        return;
      }
      take(steps.subList(0, steps.size() / 2));
      take(steps.subList(steps.size() / 2, steps.size()));
    }

    private void take(List<MergeResult.Step> steps) {
      left -= file.text().length();
      YamlValue.Group more = TextChange.all(wanted, MergeResult.changes(steps));
      Optional<EditResult> changed = RecordEditing.edit(file, rules, more);
      if (changed.isPresent()) {
        wanted = more;
        edited = changed.get();
      } else {
        part(steps);
      }
    }

    EditResult taken() {
      List<ManualEdit> byHand = new ArrayList<>(edited.byHand());
      YamlValue.Group whole = TextChange.all(wanted, MergeResult.changes(unsure));
      unsure.stream()
          .map(MergeResult.Step::path)
          .distinct()
          .forEach(path -> whole.at(path).ifPresent(it -> byHand.add(unsure(path, it))));
      return new EditResult(edited.text(), edited.pieces(), byHand, edited.says());
    }

    private ManualEdit unsure(List<String> path, YamlValue value) {
      String name = path.get(path.size() - 1);
      return new ManualEdit(
          path, mine.at(path), name + ": " + RecordEditing.written(name, value), UNSURE);
    }
  }
}
