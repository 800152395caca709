package assize.share;

import static org.assertj.core.api.Assertions.assertThat;

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

class MaskTest {
  private static Mask of(String... numbers) {
    return Mask.of(List.of(numbers), List.of());
  }

  private static Mask words(String... words) {
    return Mask.of(List.of(), List.of(words));
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
        // three: where they stand by themselves; fewer: where nothing else is written
        "112 | No. 112 and 1.112 and 1120 and A112 | No. xxx and 1.112 and 1120 and Axxx",
        "12  | 12 March                            | 12 March",
        "7   | 7 of 10                             | 7 of 10",
      })
  void looksForShortNumbersWithCare(String number, String text, String masked) {
    assertThat(of(number).text(text)).isEqualTo(masked);
  }

  @Test
  void aNumberThatIsAYearIsMaskedAndCounted() {
    Mask mask = of("1934", "E 20874");
    Times times = new Times(mask);
    assertThat(mask.text("built 1934-05, not 1935; from May 1934 on", times))
        .isEqualTo("built xxxx-05, not 1935; from May xxxx on");
    assertThat(mask.text("1934; 20874", times)).isEqualTo("xxxx; 20xxx");
    assertThat(times.of(0)).isEqualTo(3);
    assertThat(times.of(1)).isEqualTo(1);
  }

  @Test
  void countsANumberOnceWhereItStandsOnce() {
    Mask mask = of("L45-4388");
    Times times = new Times(mask);
    mask.text("L45-4388, 4388 and l45 4388; L45-4xxx", times);
    assertThat(times.of(0)).isEqualTo(3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Mill Lane | Behind MILL-LANE, mill lane.png   | Behind xxx, xxx.png",
        "Mill Lane | photos/millLane2.png, Mill\u2009Lane | photos/xxx2.png, xxx",
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
    Mask mask = Mask.of(List.of("L45-4388", "4388-71"), List.of("Lane 4388", "Mill Lane"));
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
    Mask mask = Mask.of(numbers, words);
    String masked = mask.text(text);
    assertThat(mask.text(masked)).isEqualTo(masked);
    Collections.shuffle(numbers, random);
    Collections.shuffle(words, random);
    assertThat(Mask.of(numbers, words).text(text)).isEqualTo(masked);
    assertThat(Mask.of(List.of(), List.of()).text(text)).isEqualTo(text);
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
