package assize.judge;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.judge.Ground.Held;
import assize.judgment.ScoreRange;
import assize.judgment.Verdict;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one aspect comes to, by what was found, where nothing is allowed for: worked out once for
 * all findings that are judged alike, and by itself for one that is like no other.
 */
final class Marks {

  /** Judges the vehicle that is looked at by the ground. */
  interface Judging {
    Slip by(Ground ground);
  }

  private final Ground ground;
  private final Aspect aspect;
  private final Likeness likeness;

  /** What is known, by the likeness of what was found; first what comes of nothing shown. */
  private volatile @Nullable Slip[] known = {null, null, null};

  Marks(RuleSet rules, Ground ground) {
    this.ground = ground;
    this.aspect = ground.rule().aspect();
    List<Expectation> values = new ArrayList<>();
    ground.held().stream().filter(Held::judged).forEach(held -> values.addAll(held.accepts()));
    this.likeness = new Likeness(rules, values);
  }

  Ground ground() {
    return ground;
  }

  Aspect aspect() {
    return aspect;
  }

  /** Returns what a finding comes to. */
  Slip of(Finding found, Judging judging) {
    int kind = found.match(likeness);
    if (kind >= 0) {
      return known(1 + kind, judging);
    }
    int credit = Likeness.openCredit(kind);
    return credit < 0 ? judging.by(ground) : open(credit);
  }

  /** Returns what it comes to that nothing was shown. */
  Slip ofNothing(Judging judging) {
    return known(0, judging);
  }

  /** What is open may earn nothing, all of it, or most likely its credit. */
  private Slip open(int credit) {
    long possible = ground.rule().possible();
    long likely = Exact.part(possible, credit, Likeness.CREDITS);
    return Slip.of(Verdict.OPEN, possible, new ScoreRange(0, likely, possible));
  }

  private Slip known(int place, Judging judging) {
    @Nullable Slip[] here = known;
    Slip slip = place < here.length ? here[place] : null;
    if (slip == null) {
      slip = judging.by(ground);
      keep(place, slip);
    }
    return slip;
  }

  private synchronized void keep(int place, Slip slip) {
    @Nullable Slip[] more = Arrays.copyOf(known, Math.max(known.length, place + 1));
    more[place] = slip;
    known = more;
  }
}
