package assize.report.view;

import assize.evidence.CombinationSteps;
import assize.evidence.SimpleSupport;
import assize.judgment.AspectJudgment;
import assize.judgment.PositionJudgment;
import assize.judgment.SourceJudgment;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The arithmetic of one aspect, spelled out from the sources' weights to the likely shares. */
final class CombinationStepsViewFactory {
  /** The most groups of witnesses, and the most sets of positions, whose steps are printed. */
  private static final int MOST_GROUPS = 9;

  private static final int MOST_SETS = 24;

  private final ReportContext reading;
  private final SourceStatementViewFactory testimonies;

  CombinationStepsViewFactory(ReportContext reading, SourceStatementViewFactory testimonies) {
    this.reading = reading;
    this.testimonies = testimonies;
  }

  /** Returns nothing where no source is named. */
  Optional<CombinationStepsView> of(Item item, AspectJudgment aspect) {
    int count = aspect.positions().size();
    List<SourceJudgment> witnesses =
        testimonies.inOrder(aspect).stream()
            .filter(SourceJudgment::isWitness)
            .sorted(
                Comparator.comparing(
                        (SourceJudgment it) -> Long.bitCount(it.compatiblePositions()) != 1)
                    .thenComparing(SourceJudgment::compatiblePositions))
            .toList();
    if (witnesses.isEmpty()) {
      return Optional.empty();
    }
    Sets sets = new Sets(count);
    CombinationSteps working =
        CombinationSteps.of(
            count,
            witnesses.stream()
                .map(it -> new SimpleSupport(it.weightThousandths(), it.compatiblePositions()))
                .toList());
    boolean tooLong = working.groups().size() > MOST_GROUPS || working.masses().size() > MOST_SETS;
    return Optional.of(
        new CombinationStepsView(
            names(item, aspect),
            witnesses.stream().map(it -> witness(it, sets)).toList(),
            pooled(working, witnesses, sets),
            tooLong ? List.of() : steps(working, sets),
            tooLong
                ? "There are too many steps to print them; the masses below are their outcome."
                : "",
            conflict(working),
            masses(working, sets),
            figures(working, aspect)));
  }

  private List<CombinationStepsView.Named> names(Item item, AspectJudgment aspect) {
    List<CombinationStepsView.Named> names = new ArrayList<>();
    for (PositionJudgment position : aspect.positions()) {
      names.add(
          new CombinationStepsView.Named(
              Integer.toString(names.size() + 1),
              reading.words().any(item, aspect.rule().aspect(), position.accepts())));
    }
    names.add(new CombinationStepsView.Named(Sets.ELSE, "a value that nobody mentions"));
    names.add(
        new CombinationStepsView.Named(Sets.ANY, "all of these together: nothing is ruled out"));
    return names;
  }

  private CombinationStepsView.Witness witness(SourceJudgment source, Sets sets) {
    BigFraction weight = BigFraction.of(source.weightThousandths(), 1000);
    return new CombinationStepsView.Witness(
        testimonies.title(source.source()),
        reading.claims().cite(source.source(), "", "").grade(),
        sets.words(source.compatiblePositions()),
        NumberFormatter.exact(weight),
        NumberFormatter.exact(BigFraction.ONE.subtract(weight)));
  }

  private static List<CombinationStepsView.CombinationRow> pooled(
      CombinationSteps working, List<SourceJudgment> witnesses, Sets sets) {
    List<CombinationStepsView.CombinationRow> rows = new ArrayList<>();
    for (CombinationSteps.Group group : working.groups()) {
      if (group.members().size() > 1) {
        String doubts =
            group.members().stream()
                .map(i -> BigFraction.of(1000 - witnesses.get(i).weightThousandths(), 1000))
                .map(NumberFormatter::exact)
                .collect(Collectors.joining(" × "));
        rows.add(
            new CombinationStepsView.CombinationRow(
                sets.words(group.compatiblePositions()),
                "1 − " + doubts,
                NumberFormatter.exact(group.weight())));
      }
    }
    return rows;
  }

  private static List<CombinationStepsView.Step> steps(CombinationSteps working, Sets sets) {
    List<CombinationStepsView.Step> steps = new ArrayList<>();
    for (CombinationSteps.Step step : working.steps()) {
      Map<Long, List<CombinationSteps.Product>> to = new LinkedHashMap<>();
      step.products().stream()
          .filter(product -> product.value().signum() != 0)
          .sorted(Comparator.comparing(CombinationSteps.Product::to, Sets.ORDER))
          .forEach(it -> to.computeIfAbsent(it.to(), set -> new ArrayList<>()).add(it));
      List<CombinationStepsView.CombinationRow> rows = new ArrayList<>();
      to.forEach(
          (set, products) ->
              rows.add(
                  new CombinationStepsView.CombinationRow(
                      sets.words(set),
                      products.stream()
                          .map(CombinationStepsViewFactory::product)
                          .collect(Collectors.joining(" + ")),
                      NumberFormatter.exact(
                          products.stream()
                              .map(CombinationSteps.Product::value)
                              .reduce(BigFraction.ZERO, BigFraction::add)))));
      String given =
          sets.words(step.group().compatiblePositions())
              + " with "
              + NumberFormatter.exact(step.group().weight())
              + ", any with "
              + NumberFormatter.exact(step.group().doubt());
      steps.add(
          new CombinationStepsView.Step(
              (steps.isEmpty() ? "Begin with " : "Take in ") + given, rows));
    }
    return steps;
  }

  private static String product(CombinationSteps.Product product) {
    if (product.factor().equals(BigFraction.ONE)) {
      return NumberFormatter.exact(product.mass());
    }
    return product.mass().equals(BigFraction.ONE)
        ? NumberFormatter.exact(product.factor())
        : NumberFormatter.exact(product.mass()) + " × " + NumberFormatter.exact(product.factor());
  }

  private static String conflict(CombinationSteps working) {
    return "Conflict K = "
        + NumberFormatter.exact(working.conflict())
        + ". What is left is 1 − "
        + NumberFormatter.exact(working.conflict())
        + " = "
        + NumberFormatter.exact(working.agreement())
        + "; each mass is divided by it.";
  }

  private static List<CombinationStepsView.CombinationRow> masses(
      CombinationSteps working, Sets sets) {
    return working.masses().entrySet().stream()
        .filter(entry -> entry.getKey() != 0 && entry.getValue().signum() != 0)
        .sorted(Map.Entry.comparingByKey(Sets.ORDER))
        .map(
            entry ->
                new CombinationStepsView.CombinationRow(
                    sets.words(entry.getKey()),
                    NumberFormatter.exact(entry.getValue())
                        + " ÷ "
                        + NumberFormatter.exact(working.agreement()),
                    NumberFormatter.mass(
                        entry.getValue().divide(working.agreement()).doubleValue())))
        .toList();
  }

  private static List<CombinationStepsView.Figures> figures(
      CombinationSteps working, AspectJudgment aspect) {
    List<CombinationStepsView.Figures> figures = new ArrayList<>();
    String bets =
        IntStream.range(0, aspect.positions().size())
            .filter(i -> aspect.positions().get(i).scored())
            .mapToObj(i -> NumberFormatter.exact(bet(working, i)))
            .collect(Collectors.joining(" + "));
    long judged = aspect.positions().stream().filter(PositionJudgment::scored).count();
    for (int i = 0; i < aspect.positions().size(); i++) {
      PositionJudgment position = aspect.positions().get(i);
      long bit = 1L << i;
      figures.add(
          new CombinationStepsView.Figures(
              Integer.toString(i + 1),
              quotient(working, set -> set == bit, position.belief()),
              quotient(working, set -> (set & bit) != 0, position.plausibility()),
              position.scored() && judged > 1
                  ? NumberFormatter.exact(bet(working, i))
                      + " ÷ ("
                      + bets
                      + ") = "
                      + NumberFormatter.mass(position.share())
                  : ""));
    }
    return figures;
  }

  private static String quotient(CombinationSteps working, LongPredicate counts, double outcome) {
    List<String> parts =
        working.masses().entrySet().stream()
            .filter(entry -> entry.getKey() != 0 && counts.test(entry.getKey()))
            .filter(entry -> entry.getValue().signum() != 0)
            .sorted(Map.Entry.comparingByKey(Sets.ORDER))
            .map(entry -> NumberFormatter.exact(entry.getValue()))
            .toList();
    String sum = parts.isEmpty() ? "0" : String.join(" + ", parts);
    return (parts.size() > 1 ? "(" + sum + ")" : sum)
        + " ÷ "
        + NumberFormatter.exact(working.agreement())
        + " = "
        + NumberFormatter.mass(outcome);
  }

  /** Each set's mass shared equally among its members (Smets and Kennes 1994). */
  private static BigFraction bet(CombinationSteps working, int position) {
    return working.masses().entrySet().stream()
        .filter(entry -> (entry.getKey() >> position & 1) != 0)
        .map(entry -> entry.getValue().divide(Long.bitCount(entry.getKey())))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  /** Sets of positions in words. */
  private record Sets(int positions) {
    static final String ELSE = "else";
    static final String ANY = "any";

    String words(long set) {
      if (set == 0) {
        return "nothing (conflict)";
      }
      if (set == (1L << positions + 1) - 1) {
        return ANY;
      }
      List<String> names = new ArrayList<>();
      for (int i = 0; i < positions; i++) {
        if ((set >> i & 1) != 0) {
          names.add(Integer.toString(i + 1));
        }
      }
      if ((set >> positions & 1) != 0) {
        names.add(ELSE);
      }
      return String.join(" or ", names);
    }

    /** Single positions first, then the wider sets; the conflict last. */
    static final Comparator<Long> ORDER =
        Comparator.comparing((Long set) -> set == 0)
            .thenComparing(set -> Long.bitCount(set))
            .thenComparing(set -> set);
  }
}
