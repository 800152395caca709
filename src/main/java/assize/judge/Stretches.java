package assize.judge;

import assize.aspect.Aspect;
import assize.aspect.DateCodePattern;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.date.DaySpan;
import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.record.Trace;
import assize.record.VehicleRecord;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Cuts the possible build days wherever something that concerns the vehicle begins or ends, and
 * joins what is alike again.
 */
final class Stretches {
  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final DaySpan build;
  private final List<Scope> scopes = new ArrayList<>();
  private final List<Dated> dated = new ArrayList<>();

  /** A date code found where one is expected. */
  private record Dated(DateCodePattern code, List<DaySpan> meanings) {}

  /**
   * Build days for which everything is judged alike.
   *
   * @param days all of them
   * @param sample days of them within which no date condition changes
   */
  record Cut(DaySpan days, DaySpan sample) {}

  private Stretches(RuleSet rules, VehicleRecord vehicle, DaySpan build) {
    this.rules = rules;
    this.vehicle = vehicle;
    this.build = build;
    rules.items().forEach(this::gather);
    vehicle.traces().forEach(this::gather);
  }

  static List<Cut> of(RuleSet rules, VehicleRecord vehicle, DaySpan build) {
    return new Stretches(rules, vehicle, build).cut();
  }

  private void gather(Item item) {
    scopes.add(item.scope());
    for (AspectRule rule : item.aspects()) {
      Optional<Finding> found =
          Optional.ofNullable(vehicle.observations().get(item.id()))
              .map(observation -> observation.findings().get(rule.aspect()));
      for (Claim claim : rule.claims()) {
        scopes.add(claim.scope());
        if (rule.aspect() == Aspect.DATE_CODE && found.isPresent()) {
          claim.values().forEach(value -> gather(value, found.get()));
        }
      }
    }
  }

  private void gather(Trace trace) {
    Optional<Finding> found =
        Optional.ofNullable(vehicle.observations().get(trace.item()))
            .map(observation -> observation.findings().get(Aspect.DATE_CODE));
    List<Expectation> codes = trace.values().getOrDefault(Aspect.DATE_CODE, List.of());
    found.ifPresent(it -> codes.forEach(code -> gather(code, it)));
  }

  private void gather(Expectation expected, Finding found) {
    if (expected instanceof Expectation.MadeCode made && found instanceof Finding.Stamped stamped) {
      dated.add(new Dated(made.code(), DateCodes.meanings(made.code(), stamped.text(), build)));
    }
  }

  private List<Cut> cut() {
    TreeSet<LocalDate> starts = new TreeSet<>();
    starts.add(build.first());
    Stream.concat(
            scopes.stream().flatMap(Scope::buildDays),
            rules.models().values().stream().map(Model::built))
        .forEach(
            span -> {
              starts.add(span.first());
              if (!span.openEnd()) {
                starts.add(span.last().plusDays(1));
              }
            });
    for (Dated code : dated) {
      code.meanings().forEach(made -> starts.addAll(code.code().made().cuts(made)));
      starts.addAll(DateCodes.turns(code.code(), code.meanings(), build));
    }
    List<LocalDate> within =
        starts.stream()
            .filter(day -> !day.isBefore(build.first()) && !day.isAfter(build.last()))
            .toList();
    List<Cut> cuts = new ArrayList<>();
    List<Object> before = List.of();
    for (int i = 0; i < within.size(); i++) {
      LocalDate last = i + 1 < within.size() ? within.get(i + 1).minusDays(1) : build.last();
      DaySpan days = DaySpan.of(within.get(i), last);
      List<Object> state = state(days);
      if (!cuts.isEmpty() && state.equals(before)) {
        Cut previous = cuts.remove(cuts.size() - 1);
        cuts.add(new Cut(DaySpan.of(previous.days().first(), last), previous.sample()));
      } else {
        cuts.add(new Cut(days, days));
      }
      before = state;
    }
    return cuts;
  }

  /** Returns everything that depends on the build day. */
  private List<Object> state(DaySpan days) {
    List<Object> state = new ArrayList<>();
    VehicleFacts facts = new VehicleFacts(rules, vehicle, days);
    scopes.forEach(scope -> state.add(scope.holds(facts)));
    for (Dated code : dated) {
      for (DaySpan made : code.meanings()) {
        state.add(code.code().made().allows(made, days.first()));
        state.add(made.first().isAfter(code.code().made().window(days.first()).last()));
      }
      state.add(DateCodes.nearest(code.meanings(), code.code().made().window(days.first())));
    }
    return state;
  }
}
