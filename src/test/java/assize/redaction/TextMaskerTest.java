package assize.redaction;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.IDN;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextMaskerTest {
  private static TextMasker of(String... numbers) {
    return TextMasker.of(List.of(numbers), List.of());
  }

  private static TextMasker words(String... words) {
    return TextMasker.of(List.of(), List.of(words));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "L45-4388            | L45-4xxx",
        "l45 4388            | l45 4xxx",
        "L454388             | L454xxx",
        "L 45 – 43 88        | L 45 – 4x xx",
        "L/45/4388           | L/45/4xxx",
        "L45.4388            | L45.4xxx",
        "L45\u00A04388       | L45\u00A04xxx",
        "L45\u20114388       | L45\u20114xxx",
        "L45\u2212438\u00AD8 | L45\u22124xxx",
        "L4543\u200B88       | L454xxx",
        "Ｌ４５－４３８８     | Ｌ４５－４xxx",
        "L45-٤٣٨٨            | L45-٤xxx",
        "L45-43**88**        | L45-4x**xx**",
        "l45_4388.jpg        | l45_4xxx.jpg",
        "number 4388, behind | number 4xxx, behind",
        "4,388               | 4,xxx",
        "of 143880 made      | of 14xxx0 made",
        "L45-43881           | L45-4xxx1",
        "L45-4388 and 4388   | L45-4xxx and 4xxx",
        "L45-4389            | L45-4389",
        "4.388 of 5 points   | 4.388 of 5 points",
        "43 of 88            | 43 of 88",
        "1943-88             | 1943-88",
        "L45                 | L45",
        "L45-4xxx            | L45-4xxx",
      })
  void masksANumberHoweverItIsWritten(String text, String masked) {
    assertThat(of("L45-4388").text(text)).isEqualTo(masked);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "L45-4388      | L45-4xxx",
        "E 20874       | E 20xxx",
        "D 1187        | D 1xxx",
        "4836          | xxxx",
        "Q7B           | xxx",
        "1234567-ABC   | 1234xxx-xxx",
        "L45-4388A     | L45-4xxxx",
        "12            | xx",
        "KRB           | xxx",
        "ABCDEF        | ABCxxx",
      })
  void masksTheEndOfANumber(String number, String masked) {
    assertThat(of(number).text(number)).isEqualTo(masked);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "112 | No. 112 and 1.112 and 1120 and A112 | No. xxx and 1.112 and 1120 and Axxx",
        "12  | 12 March, 12, 1 2 and 1-2 of 120     | xx March, xx, x x and 1-2 of 120",
        "7   | frame 7 of 17, the 7th, 7/8 in, 7.5  | frame x of 17, the xth, x/8 in, 7.5",
        "A7  | truck-a7, A 7 and A77                | truck-xx, x x and A77",
        "AB  | AB or ab                             | AB or ab",
        "AB  | ab                                   | xx",
      })
  void looksForShortNumbersWithCare(String number, String text, String masked) {
    assertThat(of(number).text(text)).isEqualTo(masked);
  }

  /** The characters by their names in the Unicode Character Database (from memory). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        // blanks: Hangul filler, choseong and halfwidth fillers, Braille blank
        "43\u316488|4xxx",
        "43\u115F88|4xxx",
        "43\u116088|4xxx",
        "43\uFFA088|4xxx",
        "43\u280088|4xxx",
        // digits in circles, double circles, black and sans-serif circles, parentheses, with a stop
        "④③⑧⑧|④xxx",
        "⓸⓷⓼⓼|⓸xxx",
        "❹❸❽❽|❹xxx",
        "➃➂➇➇|➃xxx",
        "➍➌➑➑|➍xxx",
        "⑷⑶⑻⑻|⑷xxx",
        "⒋⒊⒏⒏|⒋xxx",
        // Chinese, in other forms, Hangzhou, Ethiopic
        "四三八八|四xxx",
        "肆叁捌捌|肆xxx",
        "㊃㊂㊇㊇|㊃xxx",
        "〤〣〨〨|〤xxx",
        "፬፫፰፰|፬xxx",
      })
  void seesThroughOtherNumerals(String text, String masked) {
    assertThat(of("L45-4388").text(text)).isEqualTo(masked);
    assertThat(of("4388").text("L" + text)).doesNotContain(text);
  }

  @Test
  void seesThroughZeroAndTenInCircles() {
    assertThat(of("X-100200").text("⓪⓪ and 〇零")).isEqualTo("⓪⓪ and 〇零");
    assertThat(of("X-1002").text("①⓪〇❷, ①⓿零②")).isEqualTo("①xxx, ①xxx");
    assertThat(of("X-1012").text("❿⓬")).isEqualTo("xx");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // any signs within the whole number
        "L45⧸4388          | L45⧸4xxx",
        "L45╱43⟋88         | L45╱4x⟋xx",
        "L45+43:88         | L45+4x:xx",
        "L(45) 43 (88)     | L(45) 4x (xx)",
        "L45 … 43 … 88     | L45 … 4x … xx",
        "L45-43[88](http://a.example) | L45-4x[xx](http://a.example)",
        // codes in links
        "http://a.example/%4C45%2D43%38%38   | http://a.example/%4C45%2D4xxx",
        "http://a.example/%EF%BC%94388       | http://a.example/%EF%BC%94xxx",
        "L45-&#52;&#x33;&#56;8               | L45-&#52;xxx",
        "http://xn--43-b3c.example           | http://xn--43-b3c.example",
        "100%25 of 43                        | 100%25 of 43",
      })
  void seesThroughSignsAndCodes(String text, String masked) {
    assertThat(of("L45-4388").text(text)).isEqualTo(masked);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "L45-43\n\n> 88",
        "L45-43\n\n## 88",
        "L45-43\n\n***\n\n88",
        "L45-43\n- 88",
        "| L45-43 | 88 |"
      })
  void seesThroughTheBoundsOfMarkdown(String note) {
    assertThat(of("L45-4388").text(note)).isEqualTo(note.replace("43", "4x").replace("88", "xx"));
  }

  @Test
  void moreSignsThanTwentyAreNoDisguise() {
    String signs = "!".repeat(NormalizedText.MOST_SIGNS);
    assertThat(of("L45-4388").text("L45 " + signs + "43 88")).isEqualTo("L45 " + signs + "4x xx");
    assertThat(of("L45-4388").text("L45 !" + signs + "43; 88"))
        .isEqualTo("L45 !" + signs + "43; 88");
  }

  /** What the page on copies says is not seen. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "forty-three, eighty-eight",
        "IV III VIII VIII",
        "8834-54L",
        "TDQ1LTQzODg=",
        "43 or 88"
      })
  void doesNotSeeWhatThePageNames(String text) {
    assertThat(of("L45-4388").text(text)).isEqualTo(text);
  }

  /** A host in Punycode; the pair is from RFC 3492, 7.1 (I), from memory. */
  @Test
  void masksWordsInNamesOfHosts() {
    String meant = IDN.toUnicode("xn--bcher-kva");
    assertThat(meant).isEqualTo("bücher");
    assertThat(words("Bücher").text("http://xn--bcher-kva.example/a"))
        .isEqualTo("http://xxx.example/a");
  }

  /**
   * What grew with the text, the words and their length together would not end here: each of these
   * begins at every letter, or is made anew by what is masked.
   */
  @Test
  void manyLongWordsInALongTextAreFoundInOnePass() {
    String text = "a".repeat(65_000);
    List<String> words = new ArrayList<>();
    List<String> numbers = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      words.add("a".repeat(30_000 + i) + "b");
      numbers.add("a".repeat(20_000 + i) + "7");
    }
    assertThat(TextMasker.of(numbers, words).text(text)).isEqualTo(text);
    words.replaceAll(word -> word.replace("b", "a"));
    assertThat(TextMasker.of(numbers, words).text(text)).isEqualTo("xxx");
    TextMasker anew = words("xxxaaa");
    String left = anew.text("xxx" + text);
    assertThat(left).startsWith("xxxa").hasSizeLessThan(65_003).hasSizeGreaterThan(64_000);
    assertThat(anew.text(left)).as("the check refuses it").isNotEqualTo(left);
  }

  @Test
  void aNumberThatIsAYearIsMaskedAndCounted() {
    TextMasker mask = of("1934", "E 20874");
    MaskCounts times = new MaskCounts();
    assertThat(mask.text("built 1934-05, not 1935; from May 1934 on", times))
        .isEqualTo("built xxxx-05, not 1935; from May xxxx on");
    assertThat(mask.text("1934; 20874", times)).isEqualTo("xxxx; 20xxx");
    assertThat(times.of(0)).isEqualTo(3);
    assertThat(times.of(1)).isEqualTo(1);
  }

  @Test
  void countsANumberOnceWhereItStandsOnce() {
    TextMasker mask = of("L45-4388");
    MaskCounts times = new MaskCounts();
    mask.text("L45-4388, 4388 and l45 4388; L45-4xxx", times);
    assertThat(times.of(0)).isEqualTo(3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Mill Lane | Behind MILL-LANE, mill lane.png   | Behind xxx, xxx.png",
        "Mill Lane | photos/millLane2.png, Mill\u2009Lane | photos/xxx2.png, xxx",
        "Mill Lane | Mill (Lane), M.i.l.l: Lane        | xxx), xxx",
        "Lee       | L(ee)                             | L(ee)",
        "Mill Lane | Windmill Lanes                    | Windxxxs",
        "Café      | the cafe\u0301 and the CAFE       | the xxx and the xxx",
        "Lee       | Lee's sleeve, by Lee; photoLee1   | xxx's sleeve, by xxx; photoxxx1",
        "Straße    | STRASSE                           | xxx",
        "0123      | 0123 and 10123                    | xxx and 10123",
      })
  void masksPrivateWords(String word, String text, String masked) {
    assertThat(words(word).text(text)).isEqualTo(masked);
  }

  @Test
  void masksWhatOverlaps() {
    TextMasker mask =
        TextMasker.of(List.of("L45-4388", "4388-71"), List.of("Lane 4388", "Mill Lane"));
    assertThat(mask.text("Mill Lane 4388")).isEqualTo("xxx");
    assertThat(mask.text("L45-438871")).isEqualTo("L45-4xxxxx");
    assertThat(mask.text("438871 and 4388")).isEqualTo("4xxxxx and 4xxx");
  }

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  private static final String[] PIECES = {
    "L45",
    "-",
    " ",
    "4388",
    "43",
    "88",
    "E",
    "20874",
    "20",
    "874",
    "x",
    "xxx",
    "/",
    ".",
    "**",
    "\n",
    "Mill",
    "Lane",
    "lane",
    "1934",
    "(",
    "４",
    "\u00AD",
    "½",
    "ﬁ",
    "e\u0301",
    "\ud83d\ude00"
  };

  private static String some(Random random, int most) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(most) + 1; i > 0; i--) {
      text.append(PIECES[random.nextInt(PIECES.length)]);
    }
    return text.toString();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void changesNothingTwiceAndHeedsNoOrder(long seed) {
    Random random = new Random(seed);
    List<String> numbers = new ArrayList<>();
    for (int i = random.nextInt(4); i >= 0; i--) {
      numbers.add(some(random, 4));
    }
    List<String> words = new ArrayList<>(List.of("Mill Lane", "xxxx", "L45 lane", "ﬁ½x"));
    String text = some(random, 40);
    TextMasker mask = TextMasker.of(numbers, words);
    String masked = mask.text(text);
    assertThat(mask.text(masked)).isEqualTo(masked);
    Collections.shuffle(numbers, random);
    Collections.shuffle(words, random);
    assertThat(TextMasker.of(numbers, words).text(text)).isEqualTo(masked);
    assertThat(TextMasker.of(List.of(), List.of()).text(text)).isEqualTo(text);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void changesNothingThatIsNotOfTheNumber(long seed) {
    Random random = new Random(seed);
    String number = "KZ" + (10_000 + random.nextInt(90_000));
    String filling = some(random, 20).replaceAll("[0-9４½]", "");
    String text = filling + "|" + number.toLowerCase(Locale.ROOT) + "|" + filling;
    String wanted = filling + "|kz" + number.substring(2, 4) + "xxx|" + filling;
    assertThat(of(number).text(text)).isEqualTo(wanted);
  }
}
