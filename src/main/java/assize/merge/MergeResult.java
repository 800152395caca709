package assize.merge;

import assize.edit.TextChange;
import assize.yaml.YamlValue;
import java.util.List;
import java.util.Optional;

/**
 * What came of holding friends' records against a record.
 *
 * @param steps what is to be changed, in the order in which it is written
 * @param conflicts where they differ, and nothing is changed
 * @param waiting what can't be taken yet
 * @param asides what they say of the vehicle itself, which is the owner's to write
 * @param same how many things the record says already
 */
public record MergeResult(
    List<Step> steps,
    List<Conflict> conflicts,
    List<Waiting> waiting,
    List<Aside> asides,
    int same) {
  public MergeResult {
    steps = List.copyOf(steps);
    conflicts = List.copyOf(conflicts);
    waiting = List.copyOf(waiting);
    asides = List.copyOf(asides);
  }

  /**
   * One thing that is added, or taken in the place of another.
   *
   * @param path the names that lead to it, the outermost first
   * @param value what is to stand there afterwards
   * @param isMore whether the value is a list that goes behind the entries that stand there
   * @param shown what of it is new
   * @param before what the record says and no longer will; empty for what is added
   * @param from whose it is; all that say the same
   */
  public record Step(
      List<String> path,
      YamlValue value,
      boolean isMore,
      YamlValue shown,
      Optional<Side> before,
      List<Side> from) {
    public Step {
      path = List.copyOf(path);
      from = List.copyOf(from);
    }

    /** Returns a step that puts a value where nothing, or what it takes the place of, stands. */
    static Step put(List<String> path, YamlValue value, Optional<Side> before, List<Side> from) {
      return new Step(path, value, false, value, before, from);
    }

    /** Returns a step that adds entries to a list, which is begun where there is none. */
    static Step more(List<String> path, List<YamlValue> entries, YamlValue shown, Side from) {
      return new Step(
          path, new YamlValue.Items(entries), true, shown, Optional.empty(), List.of(from));
    }
  }

  /**
   * Something that is said differently.
   *
   * @param mine what the record says; empty where only friends differ
   * @param theirs what the friends say, those left out that say what the record says
   */
  public record Conflict(RecordField part, Optional<Side> mine, List<Side> theirs) {
    public Conflict {
      theirs = List.copyOf(theirs);
    }
  }

  /**
   * Something that can't be taken yet.
   *
   * @param path the names that lead to it in the friend's record
   * @param file the file that is missing; empty where another reason is given
   * @param why what keeps it from being taken
   * @param mine what the record has under the same name
   */
  public record Waiting(
      List<String> path, Side theirs, Optional<String> file, String why, Optional<Side> mine) {
    public Waiting {
      path = List.copyOf(path);
    }
  }

  /** Something that a friend says of the vehicle and the record says differently or not at all. */
  public record Aside(List<String> path, Side theirs, Optional<Side> mine) {
    public Aside {
      path = List.copyOf(path);
    }
  }

  /** Returns what a record is to say afterwards. */
  YamlValue.Group wanted(YamlValue.Group before) {
    return TextChange.all(before, changes(steps));
  }

  static List<TextChange> changes(List<Step> steps) {
    return steps.stream().map(it -> new TextChange(it.path(), it.value(), it.isMore())).toList();
  }
}
