package assize.judge;

import assize.aspect.Finding;
import assize.date.DaySpan;
import assize.evidence.Kleene;
import assize.judge.Mean.Figures;
import assize.judge.Scoring.StretchScore;
import assize.judge.Stretches.Cut;
import assize.judgment.AreaJudgment;
import assize.judgment.Build;
import assize.judgment.ScoreRange;
import assize.judgment.Stretch;
import assize.judgment.Totals;
import assize.judgment.Verdict;
import assize.record.Observation;
import assize.record.Trace;
import assize.record.VehicleRecord;
import assize.ruleset.Award;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Judges one vehicle for its figures alone. */
final class Counted {
  private final Bench bench;
  private final VehicleRecord vehicle;
  private final Set<String> traced;
  private final boolean sharesAsked;
  private final boolean lossesAsked;

  Counted(Bench bench, VehicleRecord vehicle) {
    this.bench = bench;
    this.vehicle = vehicle;
    this.traced = vehicle.traces().stream().map(Trace::item).collect(Collectors.toSet());
    List<Award> awards = bench.rules().awards();
    this.sharesAsked = awards.stream().anyMatch(award -> award.noAreaUnder().isPresent());
    this.lossesAsked = awards.stream().anyMatch(award -> award.noItemOver().isPresent());
  }

  Totals totals() {
    Build build = BuildDays.of(bench.rules(), vehicle, new ArrayList<>());
    List<Cut> cuts = Stretches.of(bench, vehicle, build.days());
    List<Slip[]> slips = slips(cuts, build.days());
    List<StretchScore> scores = scores(slips, Slip::earned);
    boolean allowed = slips.stream().anyMatch(Counted::isAllowed);
    List<StretchScore> strict = allowed ? scores(slips, Slip::strict) : scores;
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      stretches.add(new Stretch(cuts.get(i).days(), scores.get(i).score(), strict.get(i).score()));
    }
    ScoreRange score = Overall.score(cuts, stretches.stream().map(Stretch::score).toList());
    List<AreaJudgment> areas = sharesAsked ? Overall.areas(bench.rules(), cuts, scores) : List.of();
    return new Totals(
        build,
        stretches,
        score,
        Overall.score(cuts, stretches.stream().map(Stretch::strict).toList()),
        Awards.of(bench.rules().awards(), scores, score, areas, worst(cuts, slips)),
        verdicts(slips));
  }

  /** Returns the figures of each item in each stretch; one that nothing changes for keeps them. */
  private List<Slip[]> slips(List<Cut> cuts, DaySpan build) {
    @Nullable Observation[] observed = observed();
    List<Slip[]> all = new ArrayList<>();
    List<Asked> before = List.of();
    for (Cut cut : cuts) {
      List<Asked> asked = bench.lineup(cut.answers());
      ItemJudge judge = new ItemJudge(bench, vehicle, cut, build);
      Slip[] slips = new Slip[asked.size()];
      for (int i = 0; i < slips.length; i++) {
        Asked item = asked.get(i);
        if (item.matters().isEmpty()) {
          slips[i] = Slip.OUT;
        } else if (item.steady() && !before.isEmpty() && item == before.get(i)) {
          slips[i] = all.get(all.size() - 1)[i];
        } else {
          slips[i] = slip(judge, item, observed[i]);
        }
      }
      all.add(slips);
      before = asked;
    }
    return all;
  }

  /** Finds what was observed of each item, quickly where the record follows the rule set. */
  private @Nullable Observation[] observed() {
    @Nullable Observation[] observed = new Observation[bench.items()];
    vehicle.observations().forEach(new Placing(bench, observed));
    return observed;
  }

  /** Puts what was observed of each item in the item's place. */
  private static final class Placing implements BiConsumer<String, Observation> {
    private final Bench bench;
    private final @Nullable Observation[] observed;
    private int next;

    Placing(Bench bench, @Nullable Observation[] observed) {
      this.bench = bench;
      this.observed = observed;
    }

    @Override
    public void accept(String item, Observation one) {
      int found = bench.placeFrom(next, item);
      if (found >= 0) {
        observed[found] = one;
        next = found + 1;
      }
    }
  }

  private Slip slip(ItemJudge judge, Asked asked, @Nullable Observation observed) {
    String id = asked.item().id();
    boolean plain =
        asked.sure()
            && (observed == null || observed.departure().isEmpty())
            && (traced.isEmpty() || !traced.contains(id));
    if (!plain) {
      return Slip.of(judge.judge(asked));
    }
    if (asked.only() != null) {
      return Slip.of(asked.applies(), aspect(judge, id, asked.only(), observed));
    }
    List<Slip> aspects = new ArrayList<>(asked.marks().size());
    for (Marks marks : asked.marks()) {
      aspects.add(aspect(judge, id, marks, observed));
    }
    return Slip.of(asked.applies(), aspects);
  }

  private static Slip aspect(
      ItemJudge judge, String id, Marks marks, @Nullable Observation observed) {
    Marks.Judging judging = ground -> judge.aspects().slip(id, ground);
    Finding found = observed == null ? null : observed.findings().get(marks.aspect());
    return found == null ? marks.ofNothing(judging) : marks.of(found, judging);
  }

  private static boolean isAllowed(Slip[] slips) {
    for (Slip slip : slips) {
      if (slip.earned() != slip.strict() && !slip.earned().equals(slip.strict())) {
        return true;
      }
    }
    return false;
  }

  private List<StretchScore> scores(List<Slip[]> slips, Function<Slip, ScoreRange> points) {
    List<StretchScore> scores = new ArrayList<>();
    for (Slip[] ofItems : slips) {
      List<Lots> lots = bench.lots();
      for (int i = 0; i < ofItems.length; i++) {
        Slip slip = ofItems[i];
        if (slip.applies() == Kleene.YES && bench.isAlone(i)) {
          lots.get(bench.area(i)).plain(slip.possible(), points.apply(slip));
        } else if (slip.counts()) {
          lots.get(bench.area(i))
              .add(Lot.of(bench.item(i), slip.applies(), slip.possible(), points.apply(slip)));
        }
      }
      scores.add(
          sharesAsked
              ? Scoring.score(bench.rules(), lots)
              : new StretchScore(PlainScore.of(bench.rules(), lots), List.of()));
    }
    return scores;
  }

  private Map<Verdict, Integer> verdicts(List<Slip[]> slips) {
    int[] counts = new int[Verdict.values().length];
    for (int i = 0; i < bench.items(); i++) {
      counts[verdict(slips, i).ordinal()]++;
    }
    Map<Verdict, Integer> verdicts = new EnumMap<>(Verdict.class);
    for (Verdict verdict : Verdict.values()) {
      if (counts[verdict.ordinal()] > 0) {
        verdicts.put(verdict, counts[verdict.ordinal()]);
      }
    }
    return verdicts;
  }

  private static Verdict verdict(List<Slip[]> slips, int item) {
    Slip first = slips.get(0)[item];
    if (slips.size() == 1) {
      return first.verdict();
    }
    List<Verdict> applying = new ArrayList<>(slips.size());
    for (Slip[] ofItems : slips) {
      if (ofItems[item].counts()) {
        applying.add(ofItems[item].verdict());
      }
    }
    return ItemJudge.overStretches(slips.size(), applying);
  }

  private Worst worst(List<Cut> cuts, List<Slip[]> slips) {
    if (!lossesAsked) {
      List<Long> nothing = Collections.nCopies(cuts.size(), 0L);
      return new Worst(nothing, nothing, 0);
    }
    List<Long> low = new ArrayList<>();
    List<Long> high = new ArrayList<>();
    for (Slip[] ofItems : slips) {
      long mostLow = 0;
      long mostHigh = 0;
      for (Slip slip : ofItems) {
        mostLow = Math.max(mostLow, slip.possible() - slip.earned().low());
        if (slip.verdict() != Verdict.MAY_APPLY) {
          mostHigh = Math.max(mostHigh, slip.possible() - slip.earned().high());
        }
      }
      low.add(mostLow);
      high.add(mostHigh);
    }
    return new Worst(low, high, worst(cuts, slips, bench.items()));
  }

  private static long worst(List<Cut> cuts, List<Slip[]> slips, int items) {
    long most = 0;
    for (int i = 0; i < items; i++) {
      boolean departing = false;
      List<Figures> figures = new ArrayList<>();
      for (int s = 0; s < cuts.size(); s++) {
        Slip slip = slips.get(s)[i];
        departing |= slip.departing();
        if (slip.counts()) {
          figures.add(Figures.of(cuts.get(s), slip.earned(), slip.possible()));
        }
      }
      if (departing) {
        Mean mean = Mean.of(figures);
        most = Math.max(most, mean.possible() - mean.earned().likely());
      }
    }
    return most;
  }
}
