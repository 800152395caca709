package assize.edit;

import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A place and what is to stand there.
 *
 * @param path names, the outermost first; at least one
 * @param isMore whether the value is a list that goes behind the entries that stand there
 */
public record Change(List<String> path, YamlValue value, boolean isMore) {
  public Change {
    path = List.copyOf(path);
  }

  /** Replaces what stands at a place, or puts something there. */
  public Change(List<String> path, YamlValue value) {
    this(path, value, false);
  }

  private Change below() {
    return new Change(path.subList(1, path.size()), value, isMore);
  }

  /**
   * Returns the same group with changes made, one after another; groups on the way to a place that
   * are missing are made.
   */
  public static YamlValue.Group all(YamlValue.Group group, List<Change> changes) {
    Map<String, List<Change>> byName = new LinkedHashMap<>();
    changes.forEach(
        it -> byName.computeIfAbsent(it.path().get(0), name -> new ArrayList<>()).add(it));
    List<YamlValue.Field> fields = new ArrayList<>();
    byName.forEach((name, all) -> fields.add(new YamlValue.Field(name, one(group.get(name), all))));
    return group.with(fields);
  }

  /** Returns what stands under a name after changes of it and of what is below it. */
  private static YamlValue one(Optional<YamlValue> before, List<Change> changes) {
    Optional<YamlValue> value = before;
    List<YamlValue> more = new ArrayList<>();
    List<Change> below = new ArrayList<>();
    for (Change one : changes) {
      if (one.path().size() > 1) {
        below.add(one.below());
        continue;
      }
      below.clear();
      if (one.isMore()) {
        more.addAll(entries(one.value()));
      } else {
        more.clear();
        value = Optional.of(one.value());
      }
    }
    if (!more.isEmpty()) {
      more.addAll(0, value.filter(it -> !it.isBlank()).map(Change::entries).orElse(List.of()));
      value = Optional.of(new YamlValue.Items(more));
    }
    return below.isEmpty()
        ? value.orElseThrow()
        : all(value.flatMap(YamlValue::asGroup).orElse(new YamlValue.Group(List.of())), below);
  }

  /** Returns what a list has; a single value stands for a list of it. */
  private static List<YamlValue> entries(YamlValue content) {
    return content.asItems().map(YamlValue.Items::all).orElse(List.of(content));
  }
}
