package assize.date;

import static org.assertj.core.api.Assertions.assertThat;

import assize.text.Parsed;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What holds for any text, tried on each valid one, its beginnings, and seeded changes of it. */
class EdtfPropertiesTest {
  private static final String ALPHABET = "0123456789X-/.,[]{}?~%TZYES: +ux\u0130\u0661\ud83d(";

  @ParameterizedTest
  @CsvFileSource(resources = "edtf_spec_examples.csv", numLinesToSkip = 1)
  void examplesBrokenInManyWays(String text) {
    tryAll(text);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "edtf_minmax.csv", numLinesToSkip = 1)
  void otherDatesBrokenInManyWays(String text) {
    tryAll(text);
  }

  private static void tryAll(String text) {
    assertThat(holds(text)).isTrue();
    for (int end = 0; end <= text.length(); end++) {
      holds(text.substring(0, end));
      holds(text.substring(end));
    }
    Random random = new Random(20_190_204L + text.hashCode());
    for (int i = 0; i < 300; i++) {
      StringBuilder changed = new StringBuilder(text);
      for (int change = random.nextInt(3); change >= 0; change--) {
        char c = ALPHABET.charAt(random.nextInt(ALPHABET.length()));
        int at = random.nextInt(changed.length() + 1);
        if (random.nextBoolean() || at == changed.length()) {
          changed.insert(at, c);
        } else {
          changed.setCharAt(at, c);
        }
      }
      holds(changed.toString());
    }
  }

  /** Checks what must hold for any text, and says whether it is a date. */
  private static boolean holds(String text) {
    Parsed<Edtf> parsed = Edtf.parse(text);
    parsed.match(
        date -> {
          List<DateRange> spans = date.days().spans();
          assertThat(date.text()).isEqualTo(text);
          assertThat(spans).as(text).isNotEmpty();
          for (int i = 1; i < spans.size(); i++) {
            assertThat(spans.get(i - 1).last().plusDays(1)).isBefore(spans.get(i).first());
          }
          assertThat(date.span()).isEqualTo(date.days().hull());
          assertThat(date.span().contains(date.stated())).as(text).isTrue();
          assertThat(date.approximate() || date.span().equals(date.stated())).as(text).isTrue();
          return 0;
        },
        bad -> {
          assertThat(bad.reason()).as(text).isNotBlank();
          assertThat(bad.at()).as(text).isBetween(0, text.length());
          assertThat(bad.at() + bad.length()).as(text).isBetween(bad.at(), text.length());
          return 0;
        });
    return parsed.toOptional().isPresent();
  }
}
