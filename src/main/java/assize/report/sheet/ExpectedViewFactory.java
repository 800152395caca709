package assize.report.sheet;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemJudgment;
import assize.judgment.PositionJudgment;
import assize.judgment.SourceJudgment;
import assize.report.sheet.InspectionView.ExpectedValue;
import assize.report.view.CiteView;
import assize.report.view.ClaimDatesViewFactory;
import assize.report.view.ReportContext;
import assize.report.view.SourceStatementViewFactory;
import assize.report.view.ViewPeriods;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is held to be right of one aspect, whatever was found. */
final class ExpectedViewFactory {
  private final ReportContext reading;
  private final ScopeFormatter scopes;
  private final SourceStatementViewFactory testimonies;

  ExpectedViewFactory(ReportContext reading, ScopeFormatter scopes) {
    this.reading = reading;
    this.scopes = scopes;
    this.testimonies = new SourceStatementViewFactory(reading, new ClaimDatesViewFactory(reading));
  }

  /** Days for which the same is held to be right; nothing where nothing is. */
  private record ExpectedPeriod(String built, List<ExpectedValue> values) {}

  /**
   * Returns what is expected, in the order of build days; those that expect the same are joined.
   */
  List<ExpectedValue> of(ItemJudgment one, AspectRule rule) {
    List<ExpectedPeriod> held = new ArrayList<>();
    for (int from = 0; from < reading.stretches(); ) {
      List<ExpectedValue> values = within(one, rule, from);
      int to = from;
      while (to + 1 < reading.stretches()
          && (ViewPeriods.isUnchanged(one, to + 1) || within(one, rule, to + 1).equals(values))) {
        to++;
      }
      if (!values.isEmpty()) {
        held.add(new ExpectedPeriod("built " + reading.period(from, to), values));
      }
      from = to + 1;
    }
    boolean alike = held.stream().map(ExpectedPeriod::values).distinct().count() == 1;
    return alike && coversItem(one, rule)
        ? held.get(0).values()
        : held.stream().flatMap(ExpectedViewFactory::dated).toList();
  }

  /** Says whether something is expected of the aspect on all days on which the item may apply. */
  private static boolean coversItem(ItemJudgment one, AspectRule rule) {
    return one.stretches().stream()
        .filter(stretch -> stretch.applies() != Ternary.NO)
        .allMatch(
            stretch ->
                stretch.aspects().stream().anyMatch(it -> it.rule().aspect() == rule.aspect()));
  }

  private static Stream<ExpectedValue> dated(ExpectedPeriod held) {
    return held.values().stream()
        .map(
            it ->
                new ExpectedValue(
                    held.built() + (it.when().isEmpty() ? "" : ", " + it.when()),
                    it.words(),
                    it.by(),
                    it.scored(),
                    it.swatches()));
  }

  private List<ExpectedValue> within(ItemJudgment one, AspectRule rule, int stretch) {
    Optional<AspectJudgment> here =
        one.stretches().get(stretch).aspects().stream()
            .filter(it -> it.rule().aspect() == rule.aspect())
            .findFirst();
    if (here.isEmpty()) {
      return List.of();
    }
    Scope.Facts facts = reading.facts(stretch);
    boolean unsure =
        rule.claims().stream().anyMatch(claim -> claim.scope().holds(facts) == Ternary.UNKNOWN);
    return unsure ? claims(one.item(), rule, facts) : positions(one.item(), here.get(), stretch);
  }

  private List<ExpectedValue> positions(Item item, AspectJudgment aspect, int stretch) {
    boolean differ = aspect.positions().size() > 1;
    return aspect.positions().stream()
        .map(
            position ->
                expected(
                    "",
                    item,
                    aspect.rule().aspect(),
                    position.accepts(),
                    differ ? by(aspect, position, stretch) : List.of(),
                    position.scored()))
        .toList();
  }

  private ExpectedValue expected(
      String when,
      Item item,
      Aspect aspect,
      List<Expectation> values,
      List<String> by,
      boolean judged) {
    return new ExpectedValue(
        when,
        reading.words().any(item, aspect, values),
        by,
        judged,
        reading.words().swatches(values));
  }

  /** Returns who holds a position, and who leaves it open or rules it out. */
  private List<String> by(AspectJudgment aspect, PositionJudgment position, int stretch) {
    List<String> by = new ArrayList<>();
    reading.claims().of(aspect.rule(), position, reading.dayOf(stretch)).stream()
        .map(ExpectedViewFactory::words)
        .forEach(by::add);
    long bit = 1L << aspect.positions().indexOf(position);
    long other = 1L << aspect.positions().size();
    Set<String> saying =
        aspect.positions().stream()
            .flatMap(it -> Stream.concat(it.sources().stream(), it.repeatingSources().stream()))
            .collect(Collectors.toSet());
    for (SourceJudgment source : testimonies.inOrder(aspect)) {
      if (saying.contains(source.source())) {
        continue;
      }
      boolean stands = (source.compatiblePositions() & bit) != 0;
      boolean leavesOpen = (source.compatiblePositions() & other) == 0;
      if (leavesOpen && stands) {
        by.add("left open by " + words(reading.claims().cite(source.source(), "", "")));
      } else if (!leavesOpen && !stands) {
        by.add("ruled out by " + words(reading.claims().cite(source.source(), "", "")));
      }
    }
    return by;
  }

  private static String words(CiteView cite) {
    return cite.title()
        + (cite.grade().isEmpty() ? "" : ", grade " + cite.grade())
        + (cite.repeats().isEmpty() ? "" : ", repeating " + cite.repeats());
  }

  /** What claims of one kind say, and of which vehicles. */
  private record DatedExpectations(String when, ClaimKind manner, List<Expectation> values) {}

  /** Returns what each claim says, where it is not known of which of them the vehicle is spoken. */
  private List<ExpectedValue> claims(Item item, AspectRule rule, Scope.Facts facts) {
    Map<DatedExpectations, List<String>> said = new LinkedHashMap<>();
    for (Claim claim : rule.claims()) {
      if (claim.scope().holds(facts) != Ternary.NO) {
        List<String> by =
            said.computeIfAbsent(
                new DatedExpectations(
                    scopes.open(claim.scope(), facts), claim.manner(), claim.values()),
                key -> new ArrayList<>());
        claim
            .source()
            .map(source -> words(reading.claims().cite(source, "", "")))
            .ifPresent(by::add);
      }
    }
    boolean differ = said.keySet().stream().map(DatedExpectations::values).distinct().count() > 1;
    List<ExpectedValue> expected = new ArrayList<>();
    said.forEach(
        (one, by) -> {
          ExpectedValue plain =
              expected(
                  one.when(), item, rule.aspect(), one.values(), differ ? by : List.of(), true);
          expected.add(
              one.manner() == ClaimKind.SAYS
                  ? plain
                  : new ExpectedValue(
                      plain.when(),
                      SourceStatementViewFactory.manner(one.manner()) + plain.words(),
                      by,
                      true,
                      plain.swatches()));
        });
    return expected;
  }
}
