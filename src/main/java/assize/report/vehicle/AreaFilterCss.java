package assize.report.vehicle;

import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The style by which choosing some areas hides the others: a page has as many areas as its rule
 * set.
 *
 * <p>Verdicts and the state of sources are words of the program and have their rules in {@code
 * filter.css}.
 */
final class AreaFilterCss {
  private AreaFilterCss() {}

  /** Returns rules for so many areas, on screens alone. */
  static String of(int areas) {
    return IntStream.rangeClosed(1, areas)
        .mapToObj(AreaFilterCss::rule)
        .collect(Collectors.joining("", "@media screen {\n", "}\n"));
  }

  private static String rule(int area) {
    String others =
        ".pick:has(.by-area :checked):not(:has(#pick-a-" + area + ":checked)) ~ .a-" + area;
    return others
        + ":not(:target, :has(:target)),\n"
        + others
        + " :is(.item, .apart li):not(:target, :has(:target)) { display: none; }\n";
  }
}
