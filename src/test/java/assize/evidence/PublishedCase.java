package assize.evidence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Two bodies of evidence from the literature, and what Dempster's rule makes of them. */
record PublishedCase(
    List<String> frame,
    Map<Long, BigFraction> first,
    Map<Long, BigFraction> second,
    BigFraction conflict,
    Map<Long, BigFraction> exact,
    Map<Long, Double> pignistic,
    Map<Long, String> bounds,
    Map<Long, Double> published) {

  static List<PublishedCase> all() {
    return Rows.of("dempster.csv").stream().map(PublishedCase::of).toList();
  }

  private static PublishedCase of(List<String> row) {
    List<String> frame = List.of(row.get(1).split(" "));
    return new PublishedCase(
        frame,
        fractions(frame, row.get(2)),
        fractions(frame, row.get(3)),
        BigFraction.parse(row.get(4)),
        fractions(frame, row.get(5)),
        doubles(frame, row.get(6)),
        cells(frame, row.get(7)),
        doubles(frame, row.get(8)));
  }

  long whole() {
    return (1L << frame.size()) - 1;
  }

  MassFunction firstMasses() {
    return masses(first);
  }

  MassFunction secondMasses() {
    return masses(second);
  }

  /** Returns both as testimonies, the last of the frame as what nobody mentions, if they are. */
  Optional<List<SimpleSupport>> testimonies() {
    List<SimpleSupport> testimonies = new ArrayList<>();
    for (Map<Long, BigFraction> body : List.of(first, second)) {
      List<Long> sets = body.keySet().stream().filter(set -> set != whole()).toList();
      if (sets.size() > 1 || (sets.size() == 1 && !body.containsKey(whole()))) {
        return Optional.empty();
      }
      sets.forEach(
          set ->
              testimonies.add(
                  new SimpleSupport(
                      body.getOrDefault(set, BigFraction.ZERO).multiply(1000).intValue(), set)));
    }
    return Optional.of(testimonies);
  }

  private static MassFunction masses(Map<Long, BigFraction> body) {
    BigInteger whole =
        body.values().stream()
            .map(BigFraction::getDenominator)
            .reduce(BigInteger.ONE, BigInteger::multiply);
    TreeMap<Long, BigInteger> numerators = new TreeMap<>();
    body.forEach((set, mass) -> numerators.put(set, mass.multiply(whole).getNumerator()));
    return new MassFunction(numerators, whole);
  }

  private static Map<Long, BigFraction> fractions(List<String> frame, String cell) {
    Map<Long, BigFraction> read = new LinkedHashMap<>();
    cells(frame, cell).forEach((set, mass) -> read.put(set, BigFraction.parse(mass)));
    return read;
  }

  private static Map<Long, Double> doubles(List<String> frame, String cell) {
    Map<Long, Double> read = new LinkedHashMap<>();
    cells(frame, cell).forEach((set, mass) -> read.put(set, Double.valueOf(mass)));
    return read;
  }

  private static Map<Long, String> cells(List<String> frame, String cell) {
    Map<Long, String> read = new LinkedHashMap<>();
    for (String part : cell.isEmpty() ? new String[0] : cell.split(" ")) {
      String[] sides = part.split("=");
      long set = 0;
      for (String member : sides[0].split("\\|")) {
        set |= 1L << frame.indexOf(member);
      }
      read.put(set, sides[1]);
    }
    return read;
  }
}
