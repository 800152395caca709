package assize.edit;

import assize.yaml.Content;
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
public record Change(List<String> path, Content value, boolean isMore) {
  public Change {
    path = List.copyOf(path);
  }

  /** Replaces what stands at a place, or puts something there. */
  public Change(List<String> path, Content value) {
    this(path, value, false);
  }

  private Change below() {
    return new Change(path.subList(1, path.size()), value, isMore);
  }

  /**
   * Returns the same group with changes made, one after another; groups on the way to a place that
   * are missing are made.
   */
  public static Content.Group all(Content.Group group, List<Change> changes) {
    Map<String, List<Change>> byName = new LinkedHashMap<>();
    changes.forEach(
        it -> byName.computeIfAbsent(it.path().get(0), name -> new ArrayList<>()).add(it));
    List<Content.Field> fields = new ArrayList<>();
    byName.forEach((name, all) -> fields.add(new Content.Field(name, one(group.get(name), all))));
    return group.with(fields);
  }

  /** Returns what stands under a name after changes of it and of what is below it. */
  private static Content one(Optional<Content> before, List<Change> changes) {
    Optional<Content> value = before;
    List<Content> more = new ArrayList<>();
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
      value = Optional.of(new Content.Items(more));
    }
    return below.isEmpty()
        ? value.orElseThrow()
        : all(value.flatMap(Content::asGroup).orElse(new Content.Group(List.of())), below);
  }

  /** Returns what a list has; a single value stands for a list of it. */
  private static List<Content> entries(Content content) {
    return content.asItems().map(Content.Items::all).orElse(List.of(content));
  }
}
