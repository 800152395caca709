package assize.record;

import assize.date.Edtf;
import assize.diagnostic.Accepted;
import assize.text.Fingerprint;
import assize.text.Span;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One vehicle, and what was found on it.
 *
 * @param rules the rule set it names, as written
 * @param numbers its numbers, by the rule set's number table
 * @param oneOf where a number is masked: numbers that it can't be told from, by number table; what
 *     they differ in is not known of this vehicle
 * @param equipment whether it has it; what is not stated is not known
 * @param observations by item
 * @param evidence by its name in the record
 * @param unshared what of it stays out of the copy for others
 * @param unsharedWords texts that are masked in the copy for others wherever they stand, as its
 *     numbers are
 * @param accepted doubts that its owner lets stand
 * @param files the record's file, and each file of evidence that could be read
 */
public record VehicleRecord(
    String id,
    String rules,
    Optional<String> edition,
    String name,
    Optional<String> model,
    Optional<String> notes,
    Map<String, String> numbers,
    Map<String, List<String>> oneOf,
    Optional<Built> built,
    Optional<String> plant,
    Optional<String> market,
    Map<String, Boolean> equipment,
    Optional<Judged> judged,
    Map<String, Observation> observations,
    Map<String, Evidence> evidence,
    List<Trace> traces,
    Set<Unshared> unshared,
    List<String> unsharedWords,
    List<Accepted> accepted,
    List<Fingerprint> files,
    Span at) {
  public VehicleRecord {
    numbers = InOrder.copyOf(numbers);
    oneOf = InOrder.copyOf(oneOf);
    equipment = InOrder.copyOf(equipment);
    observations = InOrder.copyOf(observations);
    evidence = InOrder.copyOf(evidence);
    traces = List.copyOf(traces);
    unshared = Set.copyOf(unshared);
    unsharedWords = List.copyOf(unsharedWords);
    accepted = List.copyOf(accepted);
    files = List.copyOf(files);
  }

  /**
   * Returns the numbers of a table one of which it bears: its own, unless that is masked. None
   * where nothing is known.
   */
  public List<String> possibleNumbers(String table) {
    return Optional.ofNullable(oneOf.get(table))
        .or(() -> Optional.ofNullable(numbers.get(table)).map(List::of))
        .orElse(List.of());
  }

  /** When it was built, and what says so. */
  public record Built(Edtf date, Optional<String> basis) {}

  /** Who filled in the record, and when. */
  public record Judged(Optional<String> by, Optional<Edtf> on) {}
}
