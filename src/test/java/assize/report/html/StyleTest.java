package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Text stands out from its ground in both themes.
 *
 * <p>Relative luminance and contrast ratio as defined in WCAG 2.2, section 5 (from memory); 7:1 is
 * its success criterion 1.4.6.
 */
class StyleTest {
  private static final Pattern COLOR = Pattern.compile("--([a-z]+): (#[0-9a-f]{3,6});");

  private static String css() throws IOException {
    return css("report.css");
  }

  private static String css(String name) throws IOException {
    try (InputStream in = Objects.requireNonNull(Templates.class.getResourceAsStream(name))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Map<String, String> colors(String block) {
    Map<String, String> colors = new HashMap<>();
    Matcher matcher = COLOR.matcher(block);
    while (matcher.find()) {
      colors.put(matcher.group(1), matcher.group(2));
    }
    return colors;
  }

  private static double luminance(String hex) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double c = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  private static double contrast(String a, String b) {
    double one = luminance(a);
    double other = luminance(b);
    return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
  }

  @Test
  void textHasAContrastOfSevenToOneInBothThemes() throws IOException {
    assertThat(contrast("#000000", "#ffffff")).isEqualTo(21);
    String css = css();
    int dark = css.indexOf("@media screen and (prefers-color-scheme: dark)");
    List<Map<String, String>> themes =
        List.of(
            colors(css.substring(0, dark)), colors(css.substring(dark, css.indexOf("* {", dark))));
    for (Map<String, String> theme : themes) {
      assertThat(theme).containsKeys("paper", "ink", "soft", "accent", "field");
      for (String text : List.of("ink", "soft", "accent")) {
        for (String ground : List.of("paper", "field")) {
          assertThat(contrast(theme.getOrDefault(text, ""), theme.getOrDefault(ground, "")))
              .as(text + " on " + ground)
              .isGreaterThanOrEqualTo(7);
        }
      }
    }
  }

  @Test
  void darkIsForScreensAlone() throws IOException {
    String css = css();
    assertThat(css).contains("@media screen and (prefers-color-scheme: dark)");
    assertThat(css.replace("@media screen and (prefers-color-scheme: dark)", ""))
        .doesNotContain("prefers-color-scheme");
    assertThat(css).doesNotContain("url(").doesNotContain("@media print");
    assertThat(css("print.css"))
        .contains("details::details-content")
        .doesNotContain("url(")
        .doesNotContainPattern("(?m)^ *size:");
  }
}
