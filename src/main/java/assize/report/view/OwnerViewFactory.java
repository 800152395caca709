package assize.report.view;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemJudgment;
import assize.judgment.PositionJudgment;
import assize.record.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What the owner holds to be right, beside what the sources hold. */
final class OwnerViewFactory {
  private final ReportContext reading;

  OwnerViewFactory(ReportContext reading) {
    this.reading = reading;
  }

  /** Returns nothing where the record does not say what the owner holds of this aspect. */
  Optional<OwnerView> of(ItemJudgment one, Aspect aspect) {
    return Optional.ofNullable(reading.judgment().vehicle().observations().get(one.item().id()))
        .flatMap(Observation::ownerView)
        .filter(opinion -> opinion.expects().containsKey(aspect))
        .map(
            opinion -> {
              List<Expectation> holds = opinion.expects().getOrDefault(aspect, List.of());
              return new OwnerView(
                  aspect.spoken(),
                  reading.words().any(one.item(), aspect, holds),
                  opinion.reason().orElse(""),
                  stands(one, aspect, holds));
            });
  }

  /** Returns what the owner holds of every aspect on which the sources do not differ. */
  List<OwnerView> apart(ItemJudgment one) {
    List<OwnerView> views = new ArrayList<>();
    for (Aspect aspect : Aspect.values()) {
      boolean differs = judged(one, aspect).stream().anyMatch(AspectViewFactory::differs);
      if (!differs) {
        of(one, aspect).ifPresent(views::add);
      }
    }
    return views;
  }

  private static List<AspectJudgment> judged(ItemJudgment one, Aspect aspect) {
    return one.stretches().stream()
        .flatMap(stretch -> stretch.aspects().stream())
        .filter(it -> it.rule().aspect() == aspect)
        .toList();
  }

  private static String stands(ItemJudgment one, Aspect aspect, List<Expectation> holds) {
    Set<String> held = keys(holds);
    List<PositionJudgment> positions =
        judged(one, aspect).stream().flatMap(it -> it.positions().stream()).toList();
    List<PositionJudgment> same =
        positions.stream().filter(it -> keys(it.accepts()).equals(held)).toList();
    if (same.isEmpty()) {
      return "No source here holds just this.";
    }
    return same.stream().anyMatch(it -> !it.sources().isEmpty() || !it.repeatingSources().isEmpty())
        ? "Some sources hold the same."
        : "No source says so; some leave it open.";
  }

  private static Set<String> keys(List<Expectation> values) {
    return values.stream().map(Expectation::key).collect(Collectors.toSet());
  }
}
