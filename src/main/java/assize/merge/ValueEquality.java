package assize.merge;

import assize.record.PhysicalTrace;
import assize.schema.Type;
import java.util.List;
import java.util.Optional;

/**
 * Says whether two records say the same, however they write it: {@code 3/32 in} is {@code 0.09375
 * in}, and a number is the same with dashes and without.
 */
final class ValueEquality {
  private ValueEquality() {}

  static boolean ofTexts(Optional<String> one, Optional<String> other) {
    return one.map(Type::spaced).equals(other.map(Type::spaced));
  }

  /** Returns what is equal for two traces that say the same. */
  static Object of(PhysicalTrace trace) {
    return List.of(
        trace.item(),
        trace.grade(),
        trace.manner(),
        values(trace),
        trace.where().map(Type::spaced),
        trace.evidence());
  }

  private static List<List<String>> values(PhysicalTrace trace) {
    return trace.values().entrySet().stream()
        .map(it -> it.getValue().stream().map(value -> it.getKey() + " " + value.key()).toList())
        .toList();
  }
}
