package assize.edit;

import assize.diagnostic.Accepted;
import assize.record.Evidence;
import assize.record.Observation;
import assize.record.Opinion;
import assize.record.Trace;
import assize.record.VehicleRecord;
import assize.text.SourceFile;
import assize.text.Span;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Compares records by what they say, wherever in a file they say it. */
final class SameFacts {
  private static final Span NOWHERE = new SourceFile("", "").span(0, 0);

  private SameFacts() {}

  static boolean of(VehicleRecord one, VehicleRecord other) {
    return placeless(one).equals(placeless(other)) && values(one).equals(values(other));
  }

  /** Returns a record with no places, and without what is held to be right. */
  private static VehicleRecord placeless(VehicleRecord it) {
    Map<String, Observation> observations = new LinkedHashMap<>();
    it.observations().forEach((item, one) -> observations.put(item, placeless(one)));
    Map<String, Evidence> evidence = new LinkedHashMap<>();
    it.evidence().forEach((id, one) -> evidence.put(id, placeless(one)));
    return new VehicleRecord(
        it.id(),
        it.rules(),
        it.edition(),
        it.name(),
        it.model(),
        it.notes(),
        it.numbers(),
        it.oneOf(),
        it.built(),
        it.plant(),
        it.market(),
        it.equipment(),
        it.judged(),
        observations,
        evidence,
        it.traces().stream().map(SameFacts::placeless).toList(),
        it.unshared(),
        it.unsharedWords(),
        it.accepted().stream().map(SameFacts::placeless).toList(),
        List.of(),
        NOWHERE);
  }

  private static Observation placeless(Observation it) {
    return new Observation(
        it.item(),
        it.findings(),
        it.evidence(),
        it.note(),
        it.by(),
        it.on(),
        it.departure()
            .map(one -> new Observation.Departure(one.reason(), one.why(), one.until(), NOWHERE)),
        it.opinion().map(one -> new Opinion(Map.of(), one.because(), NOWHERE)),
        it.unshared(),
        NOWHERE);
  }

  private static Accepted placeless(Accepted it) {
    return new Accepted(it.doubt(), it.of(), it.because(), NOWHERE);
  }

  private static Evidence placeless(Evidence it) {
    return new Evidence(
        it.id(),
        it.kind(),
        it.what(),
        it.caption(),
        it.taken(),
        it.by(),
        it.covers(),
        it.isUnshared(),
        NOWHERE);
  }

  private static Trace placeless(Trace it) {
    return new Trace(
        it.item(), it.grade(), it.manner(), Map.of(), it.where(), it.evidence(), NOWHERE);
  }

  /** Returns what is held to be right; patterns are compared by what was written. */
  private static List<String> values(VehicleRecord record) {
    return Stream.concat(
            record.observations().values().stream()
                .map(Observation::opinion)
                .flatMap(Optional::stream)
                .map(Opinion::holds),
            record.traces().stream().map(Trace::values))
        .map(
            held -> {
              Map<String, List<String>> keys = new LinkedHashMap<>();
              held.forEach(
                  (aspect, all) ->
                      keys.put(aspect.word(), all.stream().map(e -> e.key()).toList()));
              return keys.toString();
            })
        .toList();
  }
}
