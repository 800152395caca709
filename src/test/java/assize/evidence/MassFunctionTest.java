package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MassFunctionTest {
  static List<PublishedCase> cases() {
    return PublishedCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void combinesAsPublished(PublishedCase published) {
    MassFunction combined = published.firstMasses().combine(published.secondMasses());

    assertThat(BigFraction.of(combined.conflict(), combined.whole()))
        .isEqualByComparingTo(published.conflict());
    TreeSet<Long> sets = new TreeSet<>(combined.numerators().keySet());
    sets.remove(0L);
    assertThat(sets).isEqualTo(new TreeSet<>(published.exact().keySet()));
    published
        .exact()
        .forEach(
            (set, mass) ->
                assertThat(BigFraction.of(combined.of(set), combined.agreement()))
                    .isEqualByComparingTo(mass));
    // Klir's table is printed to two decimals, from masses that are rounded themselves.
    published
        .published()
        .forEach(
            (set, mass) ->
                assertThat(part(combined.of(set), combined)).isCloseTo(mass, within(0.006)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void boundsEachMemberAsPublished(PublishedCase published) {
    MassFunction combined = published.firstMasses().combine(published.secondMasses());

    published
        .bounds()
        .forEach(
            (member, bounds) -> {
              String[] two = bounds.split("\\.\\.");
              assertThat(part(combined.belief(member), combined))
                  .isCloseTo(Double.parseDouble(two[0]), within(1e-12));
              assertThat(part(combined.plausibility(member), combined))
                  .isCloseTo(Double.parseDouble(two[1]), within(1e-12));
            });
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theOrderDoesNotMatter(PublishedCase published) {
    assertThat(published.secondMasses().combine(published.firstMasses()))
        .isEqualTo(published.firstMasses().combine(published.secondMasses()));
  }

  @Test
  void whatDoesNotAddUpIsRefused() {
    TreeMap<Long, BigInteger> half = new TreeMap<>(Map.of(1L, BigInteger.ONE));

    assertThatThrownBy(() -> new MassFunction(half, BigInteger.TWO))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static double part(BigInteger mass, MassFunction of) {
    return BigFraction.of(mass, of.agreement()).doubleValue();
  }
}
