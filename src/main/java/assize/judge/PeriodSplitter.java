package assize.judge;

import assize.aspect.Aspect;
import assize.aspect.CodeMeanings;
import assize.aspect.DateCodes;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.aspect.PartNumbers;
import assize.date.DateRange;
import assize.pattern.DateCodePattern;
import assize.record.PhysicalTrace;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Cuts the possible build days wherever something that concerns the vehicle begins or ends, and
 * joins what is alike again.
 */
final class PeriodSplitter {
  /** The most date codes found times the pieces that they cut the build days into. */
  private static final int MOST_CODES_IN_PIECES = 100_000;

  private final CompiledRuleSet bench;
  private final VehicleRecord vehicle;
  private final DateRange build;
  private final List<Dated> dated = new ArrayList<>();

  /** A date code found where one is expected. */
  private record Dated(DateCodePattern code, List<DateRange> meanings) {}

  /**
   * Build days for which everything is judged alike.
   *
   * @param days all of them
   * @param sample days of them within which no date condition changes
   * @param answers of every condition
   * @param worlds every way in which the vehicle can be on these days; none where they are too many
   */
  record Cut(DateRange days, DateRange sample, ConditionResults answers, List<World> worlds) {
    Cut {
      worlds = List.copyOf(worlds);
    }

    /** Returns the same up to a later day. */
    Cut until(LocalDate last) {
      return new Cut(DateRange.of(days.first(), last), sample, answers, worlds);
    }

    /** Says whether another begins on the day behind it. */
    boolean isBefore(Cut next) {
      return days.last().plusDays(1).equals(next.days.first());
    }
  }

  /**
   * What depends on the build day.
   *
   * @param ways in which the vehicle can be, each with its weight
   * @param codes how the date codes that were found stand to it
   */
  private record State(ConditionResults answers, List<Object> ways, List<Object> codes) {}

  private PeriodSplitter(CompiledRuleSet bench, VehicleRecord vehicle, DateRange build) {
    this.bench = bench;
    this.vehicle = vehicle;
    this.build = build;
    bench.dated().forEach(this::gather);
    vehicle.traces().forEach(this::gather);
  }

  static List<Cut> of(CompiledRuleSet bench, VehicleRecord vehicle, DateRange build) {
    return new PeriodSplitter(bench, vehicle, build).cut();
  }

  /** Says whether the date codes that were found cut the build days into too many pieces. */
  static Optional<String> crowded(CompiledRuleSet bench, VehicleRecord vehicle, DateRange build) {
    PeriodSplitter stretches = new PeriodSplitter(bench, vehicle, build);
    long codes = stretches.dated.size();
    int pieces = codes == 0 ? 0 : stretches.starts(MOST_CODES_IN_PIECES / codes).size();
    return codes * pieces <= MOST_CODES_IN_PIECES
        ? Optional.empty()
        : Optional.of(
            "the "
                + codes
                + " date codes found cut the build days into "
                + pieces
                + " pieces or more; codes times pieces may be at most "
                + MOST_CODES_IN_PIECES);
  }

  private void gather(Item item) {
    item.aspects().stream()
        .filter(rule -> rule.aspect() == Aspect.DATE_CODE)
        .flatMap(rule -> rule.claims().stream())
        .forEach(claim -> gather(item.id(), claim.values()));
  }

  private void gather(PhysicalTrace trace) {
    gather(trace.item(), trace.values().getOrDefault(Aspect.DATE_CODE, List.of()));
  }

  private void gather(String item, List<Expectation> codes) {
    Optional.ofNullable(vehicle.observations().get(item))
        .map(observation -> observation.findings().get(Aspect.DATE_CODE))
        .ifPresent(found -> codes.forEach(code -> gather(code, found)));
  }

  private void gather(Expectation expected, Finding found) {
    if (expected instanceof DateCodes.Right made && found instanceof PartNumbers.Found stamped) {
      dated.add(new Dated(made.code(), CodeMeanings.meanings(made.code(), stamped.text(), build)));
    }
  }

  /** Returns the first day of each piece; may end with the first that is more than enough. */
  private List<LocalDate> starts(long enough) {
    NavigableSet<LocalDate> starts = new TreeSet<>(bench.turns(build));
    starts.add(build.first());
    Worlds.turns(bench, vehicle).stream().filter(build::contains).forEach(starts::add);
    for (Dated code : dated) {
      Stream.concat(
              code.meanings().stream().flatMap(made -> code.code().made().cuts(made).stream()),
              CodeMeanings.turns(code.code(), code.meanings(), build).stream())
          .filter(build::contains)
          .forEach(starts::add);
      if (starts.size() > enough) {
        break;
      }
    }
    return List.copyOf(starts);
  }

  private List<Cut> cut() {
    List<LocalDate> within = starts(Long.MAX_VALUE);
    List<DateRange> pieces = new ArrayList<>();
    for (int i = 0; i < within.size(); i++) {
      LocalDate last = i + 1 < within.size() ? within.get(i + 1).minusDays(1) : build.last();
      pieces.add(DateRange.of(within.get(i), last));
    }
    Optional<Map<DateRange, List<World>>> worlds = Worlds.of(bench, vehicle, pieces);
    List<Cut> cuts = new ArrayList<>();
    List<State> before = List.of();
    for (DateRange days : pieces) {
      List<World> ways = worlds.map(it -> it.getOrDefault(days, List.of())).orElse(List.of());
      if (worlds.isPresent() && ways.isEmpty()) {
        continue;
      }
      List<State> state = List.of(state(days, ways));
      Cut cut = new Cut(days, days, state.get(0).answers(), ways);
      if (state.equals(before) && cuts.get(cuts.size() - 1).isBefore(cut)) {
        cuts.add(cuts.remove(cuts.size() - 1).until(days.last()));
      } else {
        cuts.add(cut);
      }
      before = state;
    }
    return cuts;
  }

  private State state(DateRange days, List<World> ways) {
    List<Object> codes = new ArrayList<>();
    for (Dated code : dated) {
      DateRange window = code.code().made().window(days.first());
      for (DateRange made : code.meanings()) {
        codes.add(code.code().made().allows(made, days.first()));
        codes.add(made.first().isAfter(window.last()));
      }
      codes.add(CodeMeanings.nearest(code.meanings(), window));
    }
    if (ways.isEmpty()) {
      VehicleFacts facts = new VehicleFacts(bench.rules(), vehicle, days);
      return new State(bench.answers(facts), List.copyOf(facts.possibleModels()), codes);
    }
    List<Object> alike = new ArrayList<>();
    ways.forEach(it -> alike.addAll(List.of(it.supposed(), it.weight())));
    return new State(bench.answers(ways), alike, codes);
  }
}
