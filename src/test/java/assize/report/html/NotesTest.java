package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Notes are a small Markdown; a paragraph of mere words is not read as Markdown, and comes out as
 * if it had been.
 */
class NotesTest {
  private static final String SIGNS =
      "abcXYZ 0123456789 .,;:()/%-±’–°?“”' -- 1. <b>&amp; *_`[]{}#+>!|~\"'\\\n\t  é½=\u00a0";

  static Stream<String> texts() {
    Random random = new Random(1);
    Stream<String> written =
        Stream.of(
            "Seen from below, with a lamp.",
            "a",
            "",
            " a",
            "a ",
            "a  b",
            "1. first",
            "- one",
            "a - b -- c --- d",
            "M6 – 1 mm (± 0.1 mm) at 20 °C: 50 % of it",
            "Seen from\nbelow, and\nabove",
            "Seen from \nbelow",
            "Seen from\n below",
            "Seen from\n- below",
            "Seen\n---",
            "Seen\n\nbelow",
            "Seen\n",
            "The owner's \"good\" one, \u201cas new\u201d?",
            "www.example.com/a-b",
            "https://example.com/a");
    return Stream.concat(written, IntStream.range(0, 4000).mapToObj(i -> random(random)));
  }

  /** Most have only a few of the signs, so that many are plain and many nearly so. */
  private static String random(Random random) {
    int signs = 5 + random.nextInt(SIGNS.length() - 5);
    String rest =
        random
            .ints(random.nextInt(30), 0, signs)
            .mapToObj(i -> SIGNS.substring(i, i + 1))
            .collect(Collectors.joining());
    return random.nextInt(4) == 0 ? rest : "x" + rest;
  }

  @Test
  void notesAreTheSmallMarkdownAndNothingElse() {
    assertThat(Notes.toHtml("**a** <b>c</b>"))
        .isEqualTo("<p><strong>a</strong> &lt;b&gt;c&lt;/b&gt;</p>");
    assertThat(Notes.toHtml("# Big")).isEqualTo("<p class=\"note-heading\">Big</p>");
    assertThat(
            Jsoup.parse(Notes.toHtml("[x](javascript:alert(1)) [y](data:text/html,a)"))
                .select("[href]"))
        .isEmpty();
    assertThat(Notes.toHtml("[y](https://example.org)"))
        .contains("rel=\"nofollow noopener noreferrer\"");
    assertThat(Notes.toHtml("![the badge](https://example.org/x.png)"))
        .contains("the badge")
        .doesNotContain("<img");
  }

  @ParameterizedTest
  @MethodSource("texts")
  void isTheSame(String text) {
    assertThat(Notes.toHtml(text)).isEqualTo(Notes.cleaned(text));
  }

  /** Letters are words in whatever script. */
  @Test
  void isTheSameForEveryLetter() {
    for (char c = 0; c < Character.MAX_VALUE; c++) {
      if (Character.isLetter(c)) {
        String text = c + "a " + c + ".";
        assertThat(Notes.toHtml(text)).as("U+%04X", (int) c).isEqualTo(Notes.cleaned(text));
      }
    }
  }
}
