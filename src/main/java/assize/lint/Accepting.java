package assize.lint;

import assize.diagnostic.Accepted;
import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was found, parted by what the writer of the file has accepted.
 *
 * @param open what is still to be looked at, errors among it
 * @param accepted doubts with what accepts them, in the order of file and place
 */
public record Accepting(List<Diagnostic> open, Map<Diagnostic, Accepted> accepted) {
  public Accepting {
    open = open.stream().sorted().toList();
  }

  /**
   * Parts what was found.
   *
   * @param found everything that was found in a rule set, or in a record
   * @param all what the same rule set or record accepts
   */
  public static Accepting of(List<Diagnostic> found, List<Accepted> all) {
    List<Diagnostic> open = new ArrayList<>();
    Map<Diagnostic, Accepted> accepted = new LinkedHashMap<>();
    for (Diagnostic one : found.stream().distinct().sorted().toList()) {
      Optional<Accepted> by =
          one.isError() ? Optional.empty() : all.stream().filter(it -> it.covers(one)).findFirst();
      by.ifPresentOrElse(it -> accepted.put(one, it), () -> open.add(one));
    }
    all.forEach(one -> idle(one, accepted).ifPresent(open::add));
    return new Accepting(open, accepted);
  }

  /** Says that a line can go, or which of its names can. */
  private static Optional<Diagnostic> idle(Accepted one, Map<Diagnostic, Accepted> accepted) {
    List<Diagnostic> covered = accepted.keySet().stream().filter(one::covers).toList();
    List<String> idle =
        one.of().stream()
            .filter(name -> covered.stream().noneMatch(it -> it.about().contains(name)))
            .toList();
    boolean all = covered.isEmpty();
    if (!all && idle.isEmpty()) {
      return Optional.empty();
    }
    String names =
        (all ? one.of() : idle)
            .stream()
                .map(it -> "\"" + it + "\"")
                .reduce((a, b) -> a + ", " + b)
                .map(it -> " about " + it)
                .orElse("");
    return Optional.of(
        Diagnostic.of(
            Code.ACCEPTED_FOR_NOTHING,
            one.at(),
            "there is no doubt \"" + one.doubt().id() + "\"" + names + " here",
            all ? "leave the entry out" : "leave the name out of `of`"));
  }
}
