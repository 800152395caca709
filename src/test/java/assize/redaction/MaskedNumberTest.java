package assize.redaction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MaskedNumberTest {
  @ParameterizedTest
  @CsvSource({
    "L45-4xxx, L45-4388",
    "L45-4xxx, l45-4388",
    "L45-4xxx, L45–4388",
    "L45-4xxx, Ｌ４５-４３８８",
    "D 1xxx, D\u00a01187",
    "xxxx, 4388",
    "L45-43x-xx, L45-438-80",
    "xxx-4xxx, MILL-4388",
    "xxx4xxx, Mill4388",
    "É-4xxx, É-4388",
    "É-4xxx, E\u0301-4388",
    "★12xxx★, ★12345★",
    "x45-4xxx, x45-4388"
  })
  void isOfTheNumberThatItMasks(String masked, String number) {
    assertThat(MaskedNumber.isOf(masked, number)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "K12-9xxx, L45-4388",
    "L45-4xxx, L46-4388",
    "L45-4xxx, L4-54-388",
    "L45-4xxx, L454388",
    "L45-4xxx, L45 4388",
    "L45-4xxx, L45-4-388",
    "L45-4xxx, L45-43-88",
    "L45-4xxx, L45-4",
    "L45-4xxx, 'L45-4388 '",
    "L45-4xxx, L45-43★8",
    "L45-4xxx, L45-4️⃣88",
    "L45-43x-xx, L45-4388-8",
    "É-4xxx, E-4388",
    "L45-4x, L45-438",
    "'', 1"
  })
  void isOfNoOther(String masked, String number) {
    assertThat(MaskedNumber.isOf(masked, '!' + number)).isFalse();
    assertThat(MaskedNumber.isOf('!' + masked, '!' + number)).isFalse();
  }

  /** Whatever the mask makes of a number is a masked form of it. */
  @Test
  void fitsWhatTheMaskMakes() {
    Random random = new Random(5);
    String signs = "0123456789ABxXÉéМ -/.★";
    int masked = 0;
    for (int i = 0; i < 3000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(12); n >= 0; n--) {
        text.append(signs.charAt(random.nextInt(signs.length())));
      }
      String number = text.toString();
      String other = number.substring(number.length() / 2);
      String made = TextMasker.of(List.of(number, other), List.of()).text(number);
      masked += made.equals(number) ? 0 : 1;
      assertThat(MaskedNumber.isOf(made, number)).as(number + " as " + made).isTrue();
    }
    assertThat(masked).isGreaterThan(1500);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "L45-\u001b[31m4388",
        "L45-\u202e4388",
        "L45\u200b-4388",
        "L45-4\ud83d\ude42388",
        "L45-4\ud83d388",
        "L45\n4388",
        "L45-\ue0004388"
      })
  void noNumberHasWhatCanNotBeSeenNorPictures(String number) {
    assertThat(MaskedNumber.strange(number)).isPresent();
  }

  @ParameterizedTest
  @ValueSource(strings = {"L45-4388", "★12345★", "№ 12/3 (a)", "Ｌ４５", "É-1", "𝟒𝟑", "𠀀1"})
  void aNumberMayHaveLettersDigitsAndSigns(String number) {
    assertThat(MaskedNumber.strange(number)).isEmpty();
  }
}
