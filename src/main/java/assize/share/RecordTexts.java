package assize.share;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.record.Evidence;
import assize.record.Observation;
import assize.record.Opinion;
import assize.record.Trace;
import assize.record.VehicleRecord;
import assize.record.VehicleRecord.Built;
import assize.record.VehicleRecord.Judged;
import assize.text.Fingerprint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Changes every text of a record that its owner wrote freely; words of the standard stay. */
final class RecordTexts {
  private final Changes changes;

  private RecordTexts(Changes changes) {
    this.changes = changes;
  }

  /** What becomes of texts. */
  interface Changes {
    /**
     * Returns what a text becomes.
     *
     * @param item the item it stands at; empty for none
     */
    String text(String item, String text);

    /** Returns what a text becomes that may be a word of the standard. */
    default String word(String item, String text) {
      return text(item, text);
    }

    /** Returns what the name of a piece of evidence becomes: another for each. */
    default String key(String key) {
      return text("", key);
    }

    /** Returns what a number that is stamped on an item becomes; nothing where it must not stay. */
    default Optional<String> stamped(String item, Aspect aspect, String text) {
      return Optional.of(text(item, text));
    }
  }

  /**
   * Returns a record with its texts changed.
   *
   * @param numbers its numbers as they are to be shown
   * @param oneOf the numbers that each may be
   */
  static VehicleRecord of(
      VehicleRecord vehicle,
      Map<String, String> numbers,
      Map<String, List<String>> oneOf,
      Changes changes) {
    return new RecordTexts(changes).of(vehicle, numbers, oneOf);
  }

  /** Returns every text of a record, but for those that may be words of the standard. */
  static List<Copy.Written> in(VehicleRecord vehicle) {
    List<Copy.Written> texts = new ArrayList<>();
    of(
        vehicle,
        Map.of(),
        Map.of(),
        new Changes() {
          @Override
          public String text(String item, String text) {
            texts.add(new Copy.Written(item, text));
            return text;
          }

          @Override
          public String word(String item, String text) {
            return text;
          }
        });
    return texts;
  }

  private VehicleRecord of(
      VehicleRecord vehicle, Map<String, String> numbers, Map<String, List<String>> oneOf) {
    Map<String, Observation> observations = new LinkedHashMap<>();
    vehicle.observations().forEach((item, one) -> observations.put(item, observation(one)));
    Map<String, Evidence> evidence = new LinkedHashMap<>();
    vehicle.evidence().values().forEach(one -> evidence.put(changes.key(one.id()), evidence(one)));
    return new VehicleRecord(
        text("", vehicle.id()),
        text("", vehicle.rules()),
        vehicle.edition().map(it -> changes.word("", it)),
        text("", vehicle.name()),
        vehicle.model(),
        text("", vehicle.notes()),
        numbers,
        oneOf,
        vehicle.built().map(it -> new Built(it.date(), text("", it.basis()))),
        vehicle.plant(),
        vehicle.market(),
        vehicle.equipment(),
        vehicle.judged().map(it -> new Judged(text("", it.by()), it.on())),
        observations,
        evidence,
        vehicle.traces().stream().map(this::trace).toList(),
        vehicle.unshared(),
        vehicle.unsharedWords(),
        vehicle.accepted(),
        vehicle.files().stream()
            .map(it -> new Fingerprint(text("", it.path()), it.sha256(), it.bytes()))
            .toList(),
        vehicle.at());
  }

  private String text(String item, String text) {
    return changes.text(item, text);
  }

  private Optional<String> text(String item, Optional<String> text) {
    return text.map(it -> changes.text(item, it));
  }

  private List<String> keys(List<String> keys) {
    return keys.stream().map(changes::key).toList();
  }

  private Evidence evidence(Evidence one) {
    return new Evidence(
        changes.key(one.id()),
        one.kind(),
        text("", one.what()),
        text("", one.caption()),
        one.taken(),
        text("", one.by()),
        one.covers(),
        one.isUnshared(),
        one.at());
  }

  private Observation observation(Observation one) {
    Map<Aspect, Finding> findings = new LinkedHashMap<>();
    one.findings()
        .forEach(
            (aspect, found) ->
                finding(one.item(), aspect, found).ifPresent(it -> findings.put(aspect, it)));
    return new Observation(
        one.item(),
        findings,
        keys(one.evidence()),
        text(one.item(), one.note()),
        text(one.item(), one.by()),
        one.on(),
        one.departure().map(it -> departure(one.item(), it)),
        one.opinion().map(it -> opinion(one.item(), it)),
        one.unshared(),
        one.at());
  }

  private Optional<Finding> finding(String item, Aspect aspect, Finding found) {
    if (found instanceof Finding.Stamped stamped) {
      return changes.stamped(item, aspect, stamped.text()).map(Finding.Stamped::new);
    }
    if (found instanceof Finding.Color color) {
      return Optional.of(
          new Finding.Color(
              color.chip(),
              color.lab(),
              color.uncertainty(),
              text(item, color.light()),
              text(item, color.by())));
    }
    return Optional.of(found);
  }

  private Observation.Departure departure(String item, Observation.Departure one) {
    return new Observation.Departure(
        changes.word(item, one.reason()), text(item, one.why()), one.until(), one.at());
  }

  private Opinion opinion(String item, Opinion one) {
    return new Opinion(expected(item, one.holds()), text(item, one.because()), one.at());
  }

  private Trace trace(Trace one) {
    return new Trace(
        one.item(),
        one.grade(),
        one.manner(),
        expected(one.item(), one.values()),
        text(one.item(), one.where()),
        keys(one.evidence()),
        one.at());
  }

  private Map<Aspect, List<Expectation>> expected(
      String item, Map<Aspect, List<Expectation>> values) {
    Map<Aspect, List<Expectation>> changed = new LinkedHashMap<>(values);
    changed.replaceAll(
        (aspect, all) -> all.stream().map(one -> expected(item, aspect, one)).toList());
    return changed;
  }

  private Expectation expected(String item, Aspect aspect, Expectation one) {
    if (!(one instanceof Expectation.PartNumber part)) {
      return one;
    }
    String written = part.number().text();
    String changed =
        Optional.of(written)
            .filter(it -> part.number().isLiteral())
            .flatMap(it -> changes.stamped(item, aspect, it))
            .orElseGet(() -> text(item, written));
    return changed.equals(written) ? one : part.with(changed);
  }
}
