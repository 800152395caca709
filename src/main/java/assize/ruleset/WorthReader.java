package assize.ruleset;

import assize.aspect.Aspect;
import assize.diagnostic.Code;
import assize.schema.Fields;
import assize.schema.Values;
import assize.yaml.Node;
import assize.yaml.Words;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads how an item's points are shared among its aspects, and checks that all can have a share.
 */
final class WorthReader {
  private final Values values;

  WorthReader(Values values) {
    this.values = values;
  }

  /**
   * Reads the weight of each aspect, in their order. Aspects that {@code worth} does not name share
   * what it leaves of the points; without {@code worth} all weigh the same.
   *
   * @param points of the item, in thousandths
   */
  List<BigFraction> read(Fields item, long points, Collection<Aspect> aspects) {
    Optional<Node.Entry> entry = item.get("worth");
    if (entry.isEmpty()) {
      return Collections.nCopies(aspects.size(), BigFraction.ONE);
    }
    Map<Aspect, BigFraction> written = new HashMap<>();
    for (Node.Entry one : values.entries(entry, "aspects with their points")) {
      Optional<Aspect> aspect = ClaimReader.aspect(one.key(), values.problems());
      Optional<Long> own = values.points(Optional.of(one));
      if (aspect.isPresent() && !aspects.contains(aspect.get())) {
        values
            .problems()
            .add(
                Code.WORTH_OF_NOTHING,
                one.key().at(),
                "this item does not expect the aspect " + Words.quoted(one.name()),
                "expected: " + Words.list(aspects.stream().map(Aspect::word).toList()));
      } else if (aspect.isPresent() && own.isPresent()) {
        written.put(aspect.get(), BigFraction.of(own.get()));
      }
    }
    if (written.values().stream().allMatch(it -> it.signum() == 0)) {
      entry
          .filter(it -> !written.isEmpty())
          .ifPresent(
              it ->
                  values
                      .problems()
                      .add(
                          Code.WORTH_OF_NOTHING,
                          it.at(),
                          "no aspect of this item is worth anything"));
      return aspects.stream().map(it -> BigFraction.ONE).toList();
    }
    BigFraction sum = written.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
    BigFraction left = BigFraction.of(points).subtract(sum);
    int others = Math.max(1, aspects.size() - written.size());
    BigFraction rest = left.signum() > 0 ? left.divide(others) : BigFraction.ZERO;
    return aspects.stream().map(it -> written.getOrDefault(it, rest)).toList();
  }
}
