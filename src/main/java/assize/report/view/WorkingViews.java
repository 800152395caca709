package assize.report.view;

import assize.evidence.Testimony;
import assize.evidence.Working;
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
final class WorkingViews {
  /** The most groups of witnesses, and the most sets of positions, whose steps are printed. */
  private static final int MOST_GROUPS = 9;

  private static final int MOST_SETS = 24;

  private final Reading reading;
  private final TestimonyViews testimonies;

  WorkingViews(Reading reading, TestimonyViews testimonies) {
    this.reading = reading;
    this.testimonies = testimonies;
  }

  /** Returns nothing where no source is named. */
  Optional<WorkingView> of(Item item, AspectJudgment aspect) {
    int count = aspect.positions().size();
    List<SourceJudgment> witnesses =
        testimonies.inOrder(aspect).stream()
            .filter(SourceJudgment::isWitness)
            .sorted(
                Comparator.comparing((SourceJudgment it) -> Long.bitCount(it.stands()) != 1)
                    .thenComparing(SourceJudgment::stands))
            .toList();
    if (witnesses.isEmpty()) {
      return Optional.empty();
    }
    Sets sets = new Sets(count);
    Working working =
        Working.of(
            count,
            witnesses.stream()
                .map(it -> new Testimony(it.weightThousandths(), it.stands()))
                .toList());
    boolean tooLong = working.groups().size() > MOST_GROUPS || working.masses().size() > MOST_SETS;
    return Optional.of(
        new WorkingView(
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

  private List<WorkingView.Named> names(Item item, AspectJudgment aspect) {
    List<WorkingView.Named> names = new ArrayList<>();
    for (PositionJudgment position : aspect.positions()) {
      names.add(
          new WorkingView.Named(
              Integer.toString(names.size() + 1),
              reading.words().any(item, aspect.rule().aspect(), position.accepts())));
    }
    names.add(new WorkingView.Named(Sets.ELSE, "a value that nobody mentions"));
    names.add(new WorkingView.Named(Sets.ANY, "all of these together: nothing is ruled out"));
    return names;
  }

  private WorkingView.Witness witness(SourceJudgment source, Sets sets) {
    BigFraction weight = BigFraction.of(source.weightThousandths(), 1000);
    return new WorkingView.Witness(
        testimonies.title(source.source()),
        reading.claims().cite(source.source(), "", "").grade(),
        sets.words(source.stands()),
        Numbers.exact(weight),
        Numbers.exact(BigFraction.ONE.subtract(weight)));
  }

  private static List<WorkingView.Row> pooled(
      Working working, List<SourceJudgment> witnesses, Sets sets) {
    List<WorkingView.Row> rows = new ArrayList<>();
    for (Working.Group group : working.groups()) {
      if (group.members().size() > 1) {
        String doubts =
            group.members().stream()
                .map(i -> BigFraction.of(1000 - witnesses.get(i).weightThousandths(), 1000))
                .map(Numbers::exact)
                .collect(Collectors.joining(" × "));
        rows.add(
            new WorkingView.Row(
                sets.words(group.stands()), "1 − " + doubts, Numbers.exact(group.weight())));
      }
    }
    return rows;
  }

  private static List<WorkingView.Step> steps(Working working, Sets sets) {
    List<WorkingView.Step> steps = new ArrayList<>();
    for (Working.Step step : working.steps()) {
      Map<Long, List<Working.Product>> to = new LinkedHashMap<>();
      step.products().stream()
          .filter(product -> product.value().signum() != 0)
          .sorted(Comparator.comparing(Working.Product::to, Sets.ORDER))
          .forEach(it -> to.computeIfAbsent(it.to(), set -> new ArrayList<>()).add(it));
      List<WorkingView.Row> rows = new ArrayList<>();
      to.forEach(
          (set, products) ->
              rows.add(
                  new WorkingView.Row(
                      sets.words(set),
                      products.stream()
                          .map(WorkingViews::product)
                          .collect(Collectors.joining(" + ")),
                      Numbers.exact(
                          products.stream()
                              .map(Working.Product::value)
                              .reduce(BigFraction.ZERO, BigFraction::add)))));
      String given =
          sets.words(step.group().stands())
              + " with "
              + Numbers.exact(step.group().weight())
              + ", any with "
              + Numbers.exact(step.group().doubt());
      steps.add(new WorkingView.Step((steps.isEmpty() ? "Begin with " : "Take in ") + given, rows));
    }
    return steps;
  }

  private static String product(Working.Product product) {
    if (product.factor().equals(BigFraction.ONE)) {
      return Numbers.exact(product.mass());
    }
    return product.mass().equals(BigFraction.ONE)
        ? Numbers.exact(product.factor())
        : Numbers.exact(product.mass()) + " × " + Numbers.exact(product.factor());
  }

  private static String conflict(Working working) {
    return "Conflict K = "
        + Numbers.exact(working.conflict())
        + ". What is left is 1 − "
        + Numbers.exact(working.conflict())
        + " = "
        + Numbers.exact(working.agreement())
        + "; each mass is divided by it.";
  }

  private static List<WorkingView.Row> masses(Working working, Sets sets) {
    return working.masses().entrySet().stream()
        .filter(entry -> entry.getKey() != 0 && entry.getValue().signum() != 0)
        .sorted(Map.Entry.comparingByKey(Sets.ORDER))
        .map(
            entry ->
                new WorkingView.Row(
                    sets.words(entry.getKey()),
                    Numbers.exact(entry.getValue()) + " ÷ " + Numbers.exact(working.agreement()),
                    Numbers.mass(entry.getValue().divide(working.agreement()).doubleValue())))
        .toList();
  }

  private static List<WorkingView.Figures> figures(Working working, AspectJudgment aspect) {
    List<WorkingView.Figures> figures = new ArrayList<>();
    String bets =
        IntStream.range(0, aspect.positions().size())
            .filter(i -> aspect.positions().get(i).judged())
            .mapToObj(i -> Numbers.exact(bet(working, i)))
            .collect(Collectors.joining(" + "));
    long judged = aspect.positions().stream().filter(PositionJudgment::judged).count();
    for (int i = 0; i < aspect.positions().size(); i++) {
      PositionJudgment position = aspect.positions().get(i);
      long bit = 1L << i;
      figures.add(
          new WorkingView.Figures(
              Integer.toString(i + 1),
              quotient(working, set -> set == bit, position.belief()),
              quotient(working, set -> (set & bit) != 0, position.plausibility()),
              position.judged() && judged > 1
                  ? Numbers.exact(bet(working, i))
                      + " ÷ ("
                      + bets
                      + ") = "
                      + Numbers.mass(position.share())
                  : ""));
    }
    return figures;
  }

  private static String quotient(Working working, LongPredicate counts, double outcome) {
    List<String> parts =
        working.masses().entrySet().stream()
            .filter(entry -> entry.getKey() != 0 && counts.test(entry.getKey()))
            .filter(entry -> entry.getValue().signum() != 0)
            .sorted(Map.Entry.comparingByKey(Sets.ORDER))
            .map(entry -> Numbers.exact(entry.getValue()))
            .toList();
    String sum = parts.isEmpty() ? "0" : String.join(" + ", parts);
    return (parts.size() > 1 ? "(" + sum + ")" : sum)
        + " ÷ "
        + Numbers.exact(working.agreement())
        + " = "
        + Numbers.mass(outcome);
  }

  /** Each set's mass shared equally among its members (Smets and Kennes 1994). */
  private static BigFraction bet(Working working, int position) {
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
