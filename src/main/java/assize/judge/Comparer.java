package assize.judge;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.date.DaySpan;
import assize.judgment.Comparison;
import assize.judgment.Comparison.Why;
import assize.judgment.Verdict;
import assize.measure.Conformity;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Holds what was found of one aspect against one expected value.
 *
 * @param item the item's id
 * @param aspect what is looked at
 * @param found what was found
 * @param builtOn a build day of the stretch
 * @param build all possible build days
 */
record Comparer(
    RuleSet rules,
    VehicleRecord vehicle,
    String item,
    Aspect aspect,
    Finding found,
    LocalDate builtOn,
    DaySpan build)
    implements Expectation.Cases<Comparison> {

  static Comparison full(BigFraction credit, Why why) {
    Verdict verdict =
        credit.signum() == 0
            ? Verdict.DEPARTS
            : credit.compareTo(BigFraction.ONE) >= 0 ? Verdict.MEETS : Verdict.PARTLY;
    return new Comparison(verdict, credit, why);
  }

  static Comparison meets(Why why) {
    return full(BigFraction.ONE, why);
  }

  static Comparison departs(Why why) {
    return full(BigFraction.ZERO, why);
  }

  static Comparison notShown(Why why) {
    return new Comparison(Verdict.NOT_SHOWN, BigFraction.ZERO, why);
  }

  /** Judges by a probability of conformity (JCGM 106:2012, 7.4 and 8). */
  static Comparison probably(double probability, Why why) {
    if (probability >= Conformity.MEETS) {
      return meets(why);
    }
    if (probability <= Conformity.DEPARTS) {
      return departs(why);
    }
    return new Comparison(Verdict.OPEN, Exact.credit(probability), why);
  }

  private static Comparison unlike() {
    return notShown(() -> "what was found can't be compared with what is expected");
  }

  @Override
  public Comparison word(Expectation.Word expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison word(Finding.Word word) {
            boolean fits =
                aspect == Aspect.FINISH
                    ? rules.isKindOf(word.id(), expected.id())
                    : word.id().equals(expected.id());
            if (!fits) {
              return departs(() -> "found: " + name(word.id()));
            }
            return full(
                expected.credit(),
                () ->
                    word.id().equals(expected.id())
                        ? "found: " + name(word.id())
                        : "found: " + name(word.id()) + ", a kind of " + name(expected.id()));
          }
        });
  }

  private String name(String word) {
    return names().word(item, aspect, word);
  }

  private Names names() {
    return new Names(rules);
  }

  @Override
  public Comparison chip(Expectation.Chip expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison color(Finding.Color color) {
            return Colors.toChip(rules, color, expected.chip(), expected.tolerance());
          }
        });
  }

  @Override
  public Comparison sameColor(Expectation.SameColor expected) {
    Optional<Finding> other =
        Optional.ofNullable(vehicle.observations().get(expected.item()))
            .map(observation -> observation.findings().get(Aspect.COLOR));
    if (other.isEmpty()) {
      return notShown(() -> "the color of " + names().item(expected.item()) + " was not shown");
    }
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison color(Finding.Color color) {
            return other
                .get()
                .match(
                    new OnlyWhere() {
                      @Override
                      public Comparison color(Finding.Color otherColor) {
                        return Colors.toOther(rules, color, otherColor, expected);
                      }
                    });
          }
        });
  }

  @Override
  public Comparison gloss(Expectation.Gloss expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison gloss(Finding.Gloss gloss) {
            return Sizes.gloss(gloss.reading(), expected.range());
          }
        });
  }

  @Override
  public Comparison size(Expectation.Size expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison size(Finding.Size size) {
            return Sizes.size(size.measured(), expected.limits());
          }
        });
  }

  @Override
  public Comparison screwThread(Expectation.ScrewThread expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison screwThread(Finding.ScrewThread thread) {
            return expected.thread().sameAs(thread.thread())
                ? meets(() -> "found: " + thread.thread().text())
                : departs(
                    () ->
                        "found: "
                            + thread.thread().text()
                            + "; "
                            + thread.thread().difference(expected.thread()));
          }
        });
  }

  @Override
  public Comparison partNumber(Expectation.PartNumber expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison stamped(Finding.Stamped stamped) {
            return expected.number().fits(stamped.text())
                ? full(expected.credit(), () -> "stamped " + stamped.text())
                : departs(
                    () ->
                        "stamped "
                            + stamped.text()
                            + Optional.of(stamped)
                                .filter(it -> !it.isMasked())
                                .flatMap(it -> expected.number().nearMiss(it.text()))
                                .map(it -> "; " + it)
                                .orElse(""));
          }
        });
  }

  @Override
  public Comparison madeCode(Expectation.MadeCode expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison stamped(Finding.Stamped stamped) {
            return DateCodes.compare(
                expected.code(), stamped.text(), builtOn, build, rules.scale().tooEarly());
          }
        });
  }

  @Override
  public Comparison pieces(Expectation.Pieces expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison pieces(Finding.Pieces pieces) {
            int off =
                Math.max(
                    0,
                    Math.max(expected.least() - pieces.count(), pieces.count() - expected.most()));
            Why why = () -> "counted " + pieces.count();
            if (off == 0) {
              return meets(why);
            }
            BigFraction credit =
                expected
                    .eachOff()
                    .map(each -> BigFraction.ONE.subtract(each.multiply(off)))
                    .orElse(BigFraction.ZERO);
            return full(
                Exact.max(credit, BigFraction.ZERO), () -> why.words() + ", " + off + " off");
          }
        });
  }

  @Override
  public Comparison yesNo(Expectation.YesNo expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison yesNo(Finding.YesNo answer) {
            Why why = () -> "found: " + said(answer.yes());
            return answer.yes() == expected.yes() ? meets(why) : departs(why);
          }
        });
  }

  private String said(boolean yes) {
    return aspect == Aspect.PRESENT
        ? (yes ? "present" : "not present")
        : (yes ? "works" : "does not work");
  }

  @Override
  public Comparison graded(Expectation.Graded expected) {
    return found.match(
        new OnlyWhere() {
          @Override
          public Comparison word(Finding.Word word) {
            Optional<BigFraction> own = Optional.ofNullable(expected.credits().get(word.id()));
            BigFraction credit =
                expected.credits().isEmpty()
                    ? new Names(rules).credit(aspect, word.id())
                    : own.orElse(BigFraction.ZERO);
            return full(credit, () -> "found: " + word.id());
          }
        });
  }

  /** Only one kind of finding can be compared; the reader has refused the others. */
  private abstract static class OnlyWhere implements Finding.Cases<Comparison> {
    @Override
    public Comparison word(Finding.Word found) {
      return unlike();
    }

    @Override
    public Comparison color(Finding.Color found) {
      return unlike();
    }

    @Override
    public Comparison gloss(Finding.Gloss found) {
      return unlike();
    }

    @Override
    public Comparison size(Finding.Size found) {
      return unlike();
    }

    @Override
    public Comparison screwThread(Finding.ScrewThread found) {
      return unlike();
    }

    @Override
    public Comparison stamped(Finding.Stamped found) {
      return unlike();
    }

    @Override
    public Comparison pieces(Finding.Pieces found) {
      return unlike();
    }

    @Override
    public Comparison yesNo(Finding.YesNo found) {
      return unlike();
    }
  }
}
