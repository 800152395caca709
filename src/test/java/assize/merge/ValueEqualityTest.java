package assize.merge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Finding;
import assize.aspect.Gloss;
import assize.aspect.PartNumbers;
import assize.aspect.Sizes;
import assize.measure.GlossReading;
import assize.measure.MeasuredSize;
import assize.measure.ThreadDesignation;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
class ValueEqualityTest {
  private static Finding size(String text) {
    Optional<ThreadDesignation> thread = ThreadDesignation.parse(text).toOptional();
    return thread
        .<Finding>map(Sizes.ThreadFound::new)
        .orElseGet(() -> new Sizes.Found(MeasuredSize.parse(text).toOptional().orElseThrow()));
  }

  @ParameterizedTest
  @CsvSource({
    "3/32 in, 0.09375 in, true",
    "1/2 in, 12.7 mm, true",
    "2.38 mm, 2.39 mm, false",
    "2.4 mm ± 0.2 mm, 2.4 mm ± 0.20 mm, true",
    "2.4 mm ± 0.2 mm, '2.4 mm', false",
    "1/2 in ± 1/64 in, 12.7 mm ± 0.396875 mm, true",
    "1 kg, 1 mm, false",
    "1/4-20 UNC, 1/4 in x 20 tpi, true",
    "1/4-20 UNC, 1/4-28 UNF, false",
    "1/4-20 UNC, 1/4 in, false"
  })
  void sizesAreComparedByWhatTheyMean(String one, String other, boolean same) {
    assertThat(size(one).sameAs(size(other))).isEqualTo(same);
    assertThat(size(other).sameAs(size(one))).isEqualTo(same);
  }

  @ParameterizedTest
  @CsvSource({
    "A-41207, a 41207, true",
    "A-41207, A-41270, false",
    "0510, 510, false",
    "E4, e4, true"
  })
  void numbersAreComparedAsTheyAreJudged(String one, String other, boolean same) {
    assertThat(new PartNumbers.Found(one).sameAs(new PartNumbers.Found(other))).isEqualTo(same);
  }

  @ParameterizedTest
  @CsvSource({"41, 41.0, true", "41 ± 3, 41, false", "satin, satin, true", "satin, 41, false"})
  void glossIsComparedByWhatItMeans(String one, String other, boolean same) {
    Finding first = new Gloss.Found(GlossReading.parse(one).toOptional().orElseThrow());
    Finding second = new Gloss.Found(GlossReading.parse(other).toOptional().orElseThrow());
    assertThat(first.sameAs(second)).isEqualTo(same);
  }
}
