package assize.merge;

import assize.date.Edtf;
import assize.record.Evidence;
import assize.record.Trace;
import assize.schema.Type;
import java.util.List;
import java.util.Optional;

/**
 * Says whether two records say the same, however they write it: {@code 3/32 in} is {@code 0.09375
 * in}, and a number is the same with dashes and without.
 */
final class Sameness {
  private Sameness() {}

  static boolean ofTexts(Optional<String> one, Optional<String> other) {
    return one.map(Type::spaced).equals(other.map(Type::spaced));
  }

  private static boolean ofDates(Optional<Edtf> one, Optional<Edtf> other) {
    return one.map(Edtf::text).map(String::strip).equals(other.map(Edtf::text).map(String::strip));
  }

  static boolean ofEvidence(Evidence one, Evidence other) {
    return one.kind() == other.kind()
        && Type.spaced(one.what()).equals(Type.spaced(other.what()))
        && ofTexts(one.caption(), other.caption())
        && ofTexts(one.by(), other.by())
        && ofDates(one.taken(), other.taken())
        && one.covers().equals(other.covers())
        && one.isUnshared() == other.isUnshared();
  }

  /** Returns what is equal for two traces that say the same. */
  static Object of(Trace trace) {
    return List.of(
        trace.item(),
        trace.grade(),
        trace.manner(),
        values(trace),
        trace.where().map(Type::spaced),
        trace.evidence());
  }

  private static List<List<String>> values(Trace trace) {
    return trace.values().entrySet().stream()
        .map(it -> it.getValue().stream().map(value -> it.getKey() + " " + value.key()).toList())
        .toList();
  }
}
