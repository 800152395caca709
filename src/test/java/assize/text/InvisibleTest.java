package assize.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InvisibleTest {
  /**
   * Format characters that are drawn: PropList.txt of Unicode, Prepended_Concatenation_Mark (from
   * memory).
   */
  private static boolean isDrawn(int c) {
    return c >= 0x600 && c <= 0x605
        || c == 0x6DD
        || c == 0x70F
        || c == 0x890
        || c == 0x891
        || c == 0x8E2
        || c == 0x110BD
        || c == 0x110CD;
  }

  /** By the general categories that the Java at hand knows; later ones may know more. */
  @Test
  void hasAllSpacesControlsAndFormats() {
    for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
      boolean isUnseen =
          switch (Character.getType(c)) {
            case Character.CONTROL,
                Character.SPACE_SEPARATOR,
                Character.LINE_SEPARATOR,
                Character.PARAGRAPH_SEPARATOR ->
                true;
            case Character.FORMAT -> !isDrawn(c);
            default -> false;
          };
      assertThat(!isUnseen || Invisible.is(c)).as("U+%04X", c).isTrue();
    }
  }

  /**
   * Default_Ignorable_Code_Point of Unicode's DerivedCoreProperties.txt (from memory), first and
   * last of what is no format character; then letters and symbols that are drawn blank.
   */
  @ParameterizedTest
  @CsvSource({
    "034F,034F",
    "115F,1160",
    "17B4,17B5",
    "180B,180F",
    "2065,2065",
    "3164,3164",
    "FE00,FE0F",
    "FFA0,FFA0",
    "FFF0,FFF8",
    "E0000,E0FFF",
    "2800,2800",
    "16FE4,16FE4",
    "1D159,1D159"
  })
  void hasWhatIsDrawnBlank(String first, String last) {
    for (int c = Integer.parseInt(first, 16); c <= Integer.parseInt(last, 16); c++) {
      assertThat(Invisible.is(c)).as("U+%04X", c).isTrue();
      assertThat(Invisible.isHidden(c)).as("U+%04X", c).isTrue();
    }
  }

  /** Neighbors of what can't be seen, marks, and signs that are drawn. */
  @ParameterizedTest
  @ValueSource(
      ints = {
        '!', '~', 'a', 0xA1, 0xAC, 0xAE, 0x301, 0x600, 0x6DD, 0x1100, 0x115E, 0x1161, 0x180A,
        0x2010, 0x2027, 0x2030, 0x27FF, 0x2801, 0x3001, 0x3131, 0x3165, 0xFF9F, 0xFFFC, 0xFFFD,
        0x1F69A
      })
  void leavesOutWhatIsDrawn(int c) {
    assertThat(Invisible.is(c)).isFalse();
    assertThat(Invisible.isAllOf(" " + Character.toString(c) + "\u200B")).isFalse();
  }

  @Test
  void isAllOfATextThatShowsNothing() {
    assertThat(Invisible.isAllOf("")).isTrue();
    assertThat(Invisible.isAllOf(" \u00A0\t\n\u3000\u2028\u3164")).isTrue();
    assertThat(Invisible.isAllOf(Character.toString(0xE0020))).isTrue();
  }

  @Test
  void aSpaceIsNotHidden() {
    assertThat(" \t\n\u00A0\u2003\u3000\u2029".codePoints()).noneMatch(Invisible::isHidden);
  }

  /** A schema may let pass what takes two units to write, and refuses nothing that is drawn. */
  @Test
  void thePatternSaysTheSameOfEachUnit() {
    Pattern pattern = Pattern.compile(Invisible.visiblePattern());
    for (int c = 0; c <= Character.MAX_VALUE; c++) {
      boolean isHalf = Character.isSurrogate((char) c);
      assertThat(pattern.matcher(Character.toString((char) c)).matches())
          .as("U+%04X", c)
          .isEqualTo(isHalf || !Invisible.is(c));
    }
  }
}
