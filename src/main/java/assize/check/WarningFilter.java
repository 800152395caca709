package assize.check;

import assize.diagnostic.AcceptedWarning;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was found, parted by what the writer of the file has accepted.
 *
 * @param open what is still to be looked at, errors among it
 * @param accepted warnings with what accepts them, in the order of file and place
 */
public record WarningFilter(List<Diagnostic> open, Map<Diagnostic, AcceptedWarning> accepted) {
  public WarningFilter {
    open = open.stream().sorted().toList();
  }

  /**
   * Parts what was found.
   *
   * @param found everything that was found in a rule set, or in a record
   * @param all what the same rule set or record accepts
   */
  public static WarningFilter of(List<Diagnostic> found, List<AcceptedWarning> all) {
    Entries entries = new Entries(all);
    List<Diagnostic> open = new ArrayList<>();
    Map<Diagnostic, AcceptedWarning> accepted = new LinkedHashMap<>();
    for (Diagnostic one : found.stream().distinct().sorted().toList()) {
      Optional<AcceptedWarning> by = one.isError() ? Optional.empty() : entries.first(one);
      by.ifPresentOrElse(it -> accepted.put(one, it), () -> open.add(one));
    }
    Map<DiagnosticCode, Set<String>> used = new EnumMap<>(DiagnosticCode.class);
    accepted
        .keySet()
        .forEach(
            it -> used.computeIfAbsent(it.code(), code -> new HashSet<>()).addAll(it.subjects()));
    all.forEach(one -> idle(one, used).ifPresent(open::add));
    return new WarningFilter(open, accepted);
  }

  /** The entries of a file by what they cover, so that each warning meets only those about it. */
  private static final class Entries {
    private final List<AcceptedWarning> all;

    /** The first entry that covers a warning, whatever it is about. */
    private final Map<DiagnosticCode, Integer> whole = new EnumMap<>(DiagnosticCode.class);

    /** The first entry that covers a warning about a name. */
    private final Map<DiagnosticCode, Map<String, Integer>> named =
        new EnumMap<>(DiagnosticCode.class);

    Entries(List<AcceptedWarning> all) {
      this.all = all;
      for (int i = 0; i < all.size(); i++) {
        AcceptedWarning one = all.get(i);
        if (one.of().isEmpty()) {
          whole.putIfAbsent(one.warning(), i);
        }
        Map<String, Integer> names = named.computeIfAbsent(one.warning(), it -> new HashMap<>());
        for (String name : one.of()) {
          names.putIfAbsent(name, i);
        }
      }
    }

    Optional<AcceptedWarning> first(Diagnostic warning) {
      Map<String, Integer> names = named.getOrDefault(warning.code(), Map.of());
      return Stream.concat(
              Stream.ofNullable(whole.get(warning.code())),
              warning.subjects().stream().flatMap(it -> Stream.ofNullable(names.get(it))))
          .min(Comparator.naturalOrder())
          .map(all::get);
    }
  }

  /**
   * Says that a line can go, or which of its names can.
   *
   * @param used what the accepted warnings are about
   */
  private static Optional<Diagnostic> idle(
      AcceptedWarning one, Map<DiagnosticCode, Set<String>> used) {
    Set<String> names = used.getOrDefault(one.warning(), Set.of());
    List<String> idle = one.of().stream().filter(name -> !names.contains(name)).toList();
    boolean all =
        one.of().isEmpty() ? !used.containsKey(one.warning()) : idle.size() == one.of().size();
    if (!all && idle.isEmpty()) {
      return Optional.empty();
    }
    String about = idle.stream().map(it -> "\"" + it + "\"").collect(Collectors.joining(", "));
    return Optional.of(
        Diagnostic.of(
            DiagnosticCode.UNUSED_ACCEPTANCE,
            one.at(),
            "there is no warning \""
                + one.warning().id()
                + "\""
                + (about.isEmpty() ? "" : " about " + about)
                + " here",
            all ? "leave the entry out" : "leave the name out of `about`"));
  }
}
