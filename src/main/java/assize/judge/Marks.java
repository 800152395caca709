package assize.judge;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.judge.Ground.Held;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * What one aspect comes to, by what was found: worked out once for all findings that are judged
 * alike, and by itself for one that is like no other.
 */
final class Marks {

  /** Judges the vehicle that is looked at by the ground. */
  interface Judging {
    Mark by(Ground ground);
  }

  private final Ground ground;
  private final Aspect aspect;
  private final Likeness likeness;

  /** What is known, by the likeness of what was found; behind those what was not shown comes to. */
  private final AtomicReferenceArray<Mark> known;

  Marks(RuleSet rules, Ground ground) {
    this.ground = ground;
    this.aspect = ground.rule().aspect();
    List<Expectation> values = new ArrayList<>();
    ground.held().stream().filter(Held::judged).forEach(held -> values.addAll(held.accepts()));
    this.likeness = new Likeness(rules, values);
    this.known = new AtomicReferenceArray<>(Likeness.KINDS + 1);
  }

  Ground ground() {
    return ground;
  }

  Aspect aspect() {
    return aspect;
  }

  /** Returns what a finding comes to. */
  Mark of(Finding found, Judging judging) {
    int kind = found.match(likeness);
    return kind == Likeness.ITSELF ? judging.by(ground) : known(kind, judging);
  }

  /** Returns what it comes to that nothing was shown. */
  Mark ofNothing(Judging judging) {
    return known(Likeness.KINDS, judging);
  }

  private Mark known(int kind, Judging judging) {
    Mark mark = known.get(kind);
    if (mark == null) {
      mark = judging.by(ground);
      known.set(kind, mark);
    }
    return mark;
  }
}
