package assize.docs;

import assize.aspect.Aspect;
import assize.aspect.Colors;
import assize.aspect.Place;
import assize.evidence.Grade;
import assize.judgment.AreaJudgment;
import assize.judgment.AreaJudgment.AreaInPeriod;
import assize.judgment.AreaJudgment.CreditedBack;
import assize.judgment.AspectJudgment;
import assize.judgment.AwardResult;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.PositionJudgment;
import assize.judgment.ScoreRange;
import assize.judgment.Tally;
import assize.measure.CieLab;
import assize.measure.Ciede2000;
import assize.measure.ColorDifference;
import assize.ruleset.Award;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** Looks up in a judgment what a page says that the report says. */
final class ReportFigures {
  private final Judgment judgment;

  ReportFigures(Judgment judgment) {
    this.judgment = judgment;
  }

  /**
   * Returns a figure, a number or a word.
   *
   * @param subject {@code score}, {@code award}, {@code award ID}, {@code area ID}, {@code ITEM} or
   *     {@code ITEM ASPECT}, each but awards also {@code on DATE}
   * @param figure what of it
   * @param of the value that a position holds to be right, where it is a figure of a position
   */
  Object find(String subject, String figure, String of) {
    List<String> words = new ArrayList<>(Arrays.asList(subject.split(" ")));
    Optional<LocalDate> day = Optional.empty();
    int on = words.indexOf("on");
    if (on > 0) {
      day = Optional.of(LocalDate.parse(words.get(on + 1)));
      words = words.subList(0, on);
    }
    Optional<Integer> stretch = day.map(this::stretch);
    return switch (words.get(0)) {
      case "score" -> score(figure, stretch);
      case "award" ->
          words.size() == 1 ? award(judgment.award(), figure) : rule(words.get(1), figure);
      case "area" -> area(words.get(1), figure, stretch);
      default ->
          words.size() == 1
              ? item(words.get(0), figure, stretch)
              : aspect(words.get(0), words.get(1), figure, of, stretch);
    };
  }

  private int stretch(LocalDate day) {
    for (int i = 0; i < judgment.stretches().size(); i++) {
      if (judgment.stretches().get(i).days().last().compareTo(day) >= 0) {
        return i;
      }
    }
    throw new AssertionError("not a build day: " + day);
  }

  private Object score(String figure, Optional<Integer> stretch) {
    boolean strict = figure.endsWith(" without allowances");
    String plain = figure.replace(" without allowances", "");
    if (plain.equals("days")) {
      return BigDecimal.valueOf(judgment.stretches().get(stretch.orElseThrow()).days().days());
    }
    ScoreRange range =
        stretch
            .map(judgment.stretches()::get)
            .map(it -> strict ? it.withoutAllowances() : it.score())
            .orElse(strict ? judgment.withoutAllowances() : judgment.score());
    return ofRange(range, plain);
  }

  private static String award(AwardResult award, String figure) {
    Optional<Award> found =
        switch (figure) {
          case "certain" -> award.certain();
          case "reached" -> award.reached();
          case "possible" -> award.possible();
          default -> throw unknown(figure);
        };
    return found.map(Award::id).orElse("none");
  }

  private BigDecimal rule(String id, String figure) {
    Award award = first(judgment.rules().awards(), it -> it.id().equals(id));
    return switch (figure) {
      case "at" -> points(award.minScore());
      case "no area under" -> exact(award.minAreaShare().orElseThrow());
      case "no item over" -> points(award.maxItemLoss().orElseThrow());
      default -> throw unknown(figure);
    };
  }

  private Object area(String id, String figure, Optional<Integer> stretch) {
    AreaJudgment area = first(judgment.areas(), it -> it.area().id().equals(id));
    if (figure.equals("points")) {
      return points(area.area().points());
    }
    if (figure.startsWith("weighed ")) {
      BigDecimal share = ofRange(area.earned(), figure.substring(8));
      return share
          .multiply(points(area.area().points()))
          .divide(points(area.possible()), java.math.MathContext.DECIMAL128);
    }
    return stretch
        .map(i -> ofTallies(area.stretches().get(i), figure))
        .orElseGet(
            () ->
                figure.equals("possible")
                    ? points(area.possible())
                    : ofRange(area.earned(), figure));
  }

  private static Object ofTallies(AreaInPeriod area, String figure) {
    int last = figure.lastIndexOf(' ');
    String bound = figure.substring(last + 1);
    Tally tally =
        switch (bound) {
          case "low" -> area.low();
          case "likely" -> area.likely();
          case "high" -> area.high();
          default -> throw unknown(figure);
        };
    return switch (last < 0 ? "" : figure.substring(0, last)) {
      case "" -> thousandths(tally.earned());
      case "possible" -> thousandths(tally.possible());
      case "given back" ->
          area.creditedBack().stream()
              .map(it -> thousandths(creditedBack(it, bound)))
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      default -> throw unknown(figure);
    };
  }

  private static BigFraction creditedBack(CreditedBack spared, String bound) {
    return switch (bound) {
      case "low" -> spared.low();
      case "likely" -> spared.likely();
      default -> spared.high();
    };
  }

  private Object item(String id, String figure, Optional<Integer> stretch) {
    ItemJudgment item = first(judgment.items(), it -> it.item().id().equals(id));
    if (figure.startsWith("in for ")) {
      AreaJudgment area = first(judgment.areas(), it -> it.area().id().equals(item.item().area()));
      AreaInPeriod one = area.stretches().get(stretch.orElseThrow());
      boolean low = figure.equals("in for low");
      return (low ? one.outOfLow() : one.outOfHigh()).contains(id) ? "no" : "yes";
    }
    Optional<ItemInPeriod> one = stretch.map(item.stretches()::get);
    if (figure.startsWith("lost ")) {
      BigDecimal possible = points(one.map(ItemInPeriod::possible).orElse(item.possible()));
      ScoreRange earned = one.map(ItemInPeriod::earned).orElse(item.earned());
      return possible.subtract(ofRange(earned, figure.substring(5)));
    }
    return switch (figure) {
      case "verdict" -> one.map(ItemInPeriod::verdict).orElse(item.verdict()).word();
      case "dispute" -> item.dispute().word();
      case "possible" -> points(one.map(ItemInPeriod::possible).orElse(item.possible()));
      default -> ofRange(one.map(ItemInPeriod::earned).orElse(item.earned()), figure);
    };
  }

  private Object aspect(
      String item, String word, String figure, String of, Optional<Integer> stretch) {
    ItemInPeriod one =
        first(judgment.items(), it -> it.item().id().equals(item))
            .stretches()
            .get(stretch.orElse(0));
    AspectJudgment aspect = first(one.aspects(), it -> it.rule().aspect().word().equals(word));
    if (!of.isEmpty()) {
      return position(item, aspect, figure, of);
    }
    return switch (figure) {
      case "verdict" -> aspect.verdict().word();
      case "dispute" -> aspect.dispute().word();
      case "possible" -> points(aspect.possible());
      case "conflict" -> BigDecimal.valueOf(aspect.conflict());
      case "unassigned" -> BigDecimal.valueOf(aspect.unassigned());
      case "credit low" -> exact(aspect.low());
      case "credit likely" -> exact(aspect.likely());
      case "credit high" -> exact(aspect.high());
      case "rides" -> points(aspect.pointsAtStake());
      case "says" ->
          aspect
              .positions()
              .get(0)
              .comparison()
              .reason()
              .words(new Place(judgment.rules(), item, aspect.rule().aspect()));
      default ->
          figure.endsWith(" without allowance")
              ? ofRange(aspect.withoutAllowances(), figure.replace(" without allowance", ""))
              : ofRange(aspect.earned(), figure);
    };
  }

  private Object position(String item, AspectJudgment aspect, String figure, String of) {
    if (figure.startsWith("Δ")) {
      ColorDifference found = difference(item, of);
      return BigDecimal.valueOf(
          switch (figure) {
            case "ΔL′" -> found.dL();
            case "ΔC′" -> found.dC();
            case "ΔH′" -> found.dH();
            case "ΔE00" -> found.de00();
            default -> throw unknown(figure);
          });
    }
    PositionJudgment position =
        first(
            aspect.positions(),
            it ->
                String.join(" or ", it.accepts().stream().map(one -> one.key()).toList())
                    .equals(of));
    if (figure.startsWith("further ")) {
      Grade grade = Grade.valueOf(figure.substring(8));
      return BigDecimal.valueOf(first(position.settling(), it -> it.grade() == grade).sources());
    }
    return switch (figure) {
      case "belief" -> BigDecimal.valueOf(position.belief());
      case "plausibility" -> BigDecimal.valueOf(position.plausibility());
      case "share" -> BigDecimal.valueOf(position.share());
      case "credit" -> exact(position.comparison().credit());
      case "only repeated by" -> String.join(" and ", position.repeatingSources());
      default -> throw unknown(figure);
    };
  }

  private ColorDifference difference(String item, String chip) {
    Colors.Found found =
        (Colors.Found) judgment.vehicle().observations().get(item).findings().get(Aspect.COLOR);
    CieLab target = judgment.rules().colors().get(chip).lab().orElseThrow();
    return Ciede2000.of(found.lab().orElseThrow(), target);
  }

  private static BigDecimal ofRange(ScoreRange range, String figure) {
    return points(
        switch (figure) {
          case "low" -> range.low();
          case "likely" -> range.likely();
          case "high" -> range.high();
          default -> throw unknown(figure);
        });
  }

  private static BigDecimal points(long thousandths) {
    return BigDecimal.valueOf(thousandths, 3);
  }

  private static BigDecimal thousandths(BigFraction exact) {
    return exact(exact).movePointLeft(3);
  }

  private static BigDecimal exact(BigFraction fraction) {
    return fraction.bigDecimalValue(20, java.math.RoundingMode.HALF_EVEN);
  }

  private static AssertionError unknown(String figure) {
    return new AssertionError("no such figure: " + figure);
  }

  private static <T> T first(List<T> list, Predicate<T> wanted) {
    return list.stream()
        .filter(wanted)
        .findFirst()
        .orElseThrow(() -> new AssertionError("not in the judgment"));
  }
}
