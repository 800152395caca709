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
public record TextChange(List<String> path, YamlValue value, boolean isMore) {
  public TextChange {
    path = List.copyOf(path);
  }

  /** Replaces what stands at a place, or puts something there. */
  public TextChange(List<String> path, YamlValue value) {
    this(path, value, false);
  }

  private TextChange below() {
    return new TextChange(path.subList(1, path.size()), value, isMore);
  }

  /**
   * Returns the same group with changes made, one after another; groups on the way to a place that
   * are missing are made.
   */
  public static YamlValue.Group all(YamlValue.Group group, List<TextChange> changes) {
    Map<String, List<TextChange>> byName = new LinkedHashMap<>();
    changes.forEach(
        it -> byName.computeIfAbsent(it.path().get(0), name -> new ArrayList<>()).add(it));
    List<YamlValue.Field> fields = new ArrayList<>();
    byName.forEach((name, all) -> fields.add(new YamlValue.Field(name, one(group.get(name), all))));
    return group.with(fields);
  }

  /** Returns what stands under a name after changes of it and of what is below it. */
  private static YamlValue one(Optional<YamlValue> before, List<TextChange> changes) {
    Optional<YamlValue> value = before;
    List<YamlValue> more = new ArrayList<>();
    List<TextChange> below = new ArrayList<>();
    for (TextChange one : changes) {
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
      more.addAll(0, value.filter(it -> !it.isBlank()).map(TextChange::entries).orElse(List.of()));
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
