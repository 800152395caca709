package assize.report;

import assize.aspect.Aspect;
import assize.aspect.ColorChip;
import assize.aspect.Colors;
import assize.aspect.Comparison;
import assize.aspect.Expectation;
import assize.aspect.Finish;
import assize.aspect.Reason;
import assize.aspect.Verdict;
import assize.aspect.Worded;
import assize.aspect.YesNo;
import assize.date.DateRange;
import assize.date.DateRangeSet;
import assize.date.Edtf;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.DisputeState;
import assize.evidence.Grade;
import assize.evidence.Scope;
import assize.evidence.Source;
import assize.evidence.SourceKind;
import assize.evidence.Ternary;
import assize.judgment.AreaJudgment;
import assize.judgment.AspectJudgment;
import assize.judgment.AwardResult;
import assize.judgment.BuildDate;
import assize.judgment.BuildPeriod;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.Notice;
import assize.judgment.PositionJudgment;
import assize.judgment.ScoreRange;
import assize.judgment.SourceJudgment;
import assize.judgment.Tally;
import assize.record.Departure;
import assize.record.EvidenceItem;
import assize.record.Inspected;
import assize.record.Named;
import assize.record.Observation;
import assize.record.Opinion;
import assize.record.PhysicalTrace;
import assize.record.VehicleRecord;
import assize.ruleset.Area;
import assize.ruleset.AspectRule;
import assize.ruleset.Award;
import assize.ruleset.Hazard;
import assize.ruleset.Item;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import assize.text.FileChecksum;
import assize.text.SourceFile;
import assize.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/** Judgments made by hand, of an invented truck. */
public final class SampleJudgments {
  private static final Span AT = new Span(new SourceFile("rules.yaml", ""), 0, 0);
  private static final BigFraction HALF = BigFraction.of(1, 2);

  private final UnaryOperator<String> text;
  private final Scale.Method method;
  private final List<DateRange> days;

  private SampleJudgments(UnaryOperator<String> text, Scale.Method method, List<DateRange> days) {
    this.text = text;
    this.method = method;
    this.days = days;
  }

  /** One stretch, scored by sums. */
  public static Judgment oneStretch() {
    return new SampleJudgments(UnaryOperator.identity(), Scale.Method.SUM, days(1)).judgment();
  }

  /** Three stretches, of which the last scores better. */
  public static Judgment threeStretches() {
    return new SampleJudgments(UnaryOperator.identity(), Scale.Method.SUM, days(3)).judgment();
  }

  /** One stretch, scored by another method. */
  public static Judgment by(Scale.Method method) {
    return new SampleJudgments(UnaryOperator.identity(), method, days(1)).judgment();
  }

  /** Three stretches in which {@code hostile} stands after every text that a person may write. */
  public static Judgment hostile(String hostile) {
    return new SampleJudgments(it -> it + hostile, Scale.Method.SUM, days(3)).judgment();
  }

  private static List<DateRange> days(int count) {
    List<DateRange> all =
        List.of(
            days("1935-01-07", "1935-03-11"),
            days("1935-03-12", "1935-05-31"),
            days("1935-06-01", "1935-06-20"));
    return all.subList(0, count);
  }

  private static DateRange days(String first, String last) {
    return new DateRange(LocalDate.parse(first), LocalDate.parse(last));
  }

  private static Edtf date(String day) {
    return Edtf.parse(day).toOptional().orElseThrow();
  }

  private Optional<String> some(String words) {
    return Optional.of(text.apply(words));
  }

  private static Expectation word(String id) {
    return new Worded.Right(id, BigFraction.ONE);
  }

  private Claim claim(String source, ClaimKind manner, Scope scope, Expectation... values) {
    return new Claim(
        Optional.of(source),
        some("note 7"),
        scope,
        manner,
        List.of(values),
        Optional.of(
            new Claim.Photo(text.apply("pictures/" + source + ".png"), some("What it shows"), AT)),
        AT);
  }

  private Source source(String id, SourceKind kind, Grade grade, String title, String... copies) {
    return Source.of(id, kind, grade, text.apply(title))
        .with(Source.DATE, Optional.of(date("1932-02-01")))
        .with(Source.HELD_BY, some("the club's archive"))
        .with(Source.COPIES, Set.of(copies))
        .with(Source.NOTES, some("Sheet 2 of *three*; the first is lost."));
  }

  private static final Scope BEFORE_MARCH =
      new Scope.Built(DateRangeSet.of(days("1932-03-01", "1935-03-11")));

  private final Map<String, ItemJudgment> judged = new LinkedHashMap<>();

  private RuleSet rules() {
    Map<String, Source> sources = new LinkedHashMap<>();
    for (Source source :
        List.of(
            source("drawing-204", SourceKind.DRAWING, Grade.A, "Works drawing 204, arrangement"),
            source("guide", SourceKind.CLUB_GUIDE, Grade.C, "Guide for restorers"),
            source("guide-2", SourceKind.CLUB_GUIDE, Grade.D, "The same guide, reprinted", "guide"),
            source(
                "photo-11", SourceKind.FACTORY_PHOTOGRAPH, Grade.B, "Works photograph 11, gray"))) {
      sources.put(source.id(), source);
    }
    Map<String, ColorChip> colors = new LinkedHashMap<>();
    colors.put("green", ColorChip.of("green", text.apply("Works green")));
    colors.put("black", ColorChip.of("black", text.apply("Black")));
    Map<String, Finish> finishes = new LinkedHashMap<>();
    finishes.put("nickel", Finish.of("nickel", text.apply("nickel plate")));
    finishes.put("chrome", Finish.of("chrome", text.apply("chromium plate")));
    return RuleSet.of("tarrowby-type-x", text.apply("Tarrowby Type X light truck"), "3")
        .with(RuleSet.ISSUED, Optional.of(date("2026-03-01")))
        .with(RuleSet.MAKER, some("Tarrowby Motor Company"))
        .with(RuleSet.PURPOSE, some("What it looked like when it left the works."))
        .with(RuleSet.NOTES, some("Third edition."))
        .with(
            RuleSet.SCALE,
            Scale.usual()
                .with(Scale.METHOD, method)
                .with(Scale.ALLOWANCES, Map.of("safety", BigFraction.ONE)))
        .with(
            RuleSet.AWARDS,
            List.of(
                Award.of("fresh", text.apply("Works Fresh"), 94_000)
                    .with(Award.MIN_AREA_SHARE, Optional.of(BigFraction.of(88, 100)))
                    .with(Award.MAX_ITEM_LOSS, OptionalLong.of(4_000)),
                Award.of("first", text.apply("First award"), 80_000),
                Award.of("second", text.apply("Second award"), 60_000)))
        .with(
            RuleSet.MODELS,
            Map.of(
                "X1", Model.of("X1", text.apply("X1 dropside"), days("1932-03-01", "1936-08-31"))))
        .with(RuleSet.MARKETS, Map.of("home", text.apply("Home market")))
        .with(RuleSet.EQUIPMENT, Map.of("heater", text.apply("Cab heater")))
        .with(RuleSet.SOURCES, sources)
        .with(RuleSet.COLORS, colors)
        .with(RuleSet.FINISHES, finishes)
        .with(
            RuleSet.FILES,
            List.of(new FileChecksum(text.apply("rules.yaml"), "0f".repeat(32), 2_048)));
  }

  private Item item(String id, String title, Aspect aspect, long points, Claim... claims) {
    return Item.of(
            id,
            id.startsWith("bed") ? "bed" : "cab",
            text.apply(title),
            points,
            Map.of(aspect, List.of(claims)))
        .with(Item.LOOK, some("The rim, not the center."))
        .with(Item.NOTES, some("**Look twice.** See [the drawing](https://example.org/a)."))
        .with(Item.HAZARDS, id.equals("bed-color") ? List.of(Hazard.LEAD_PAINT) : List.of());
  }

  private PositionJudgment position(
      List<Expectation> accepts,
      List<String> sources,
      List<String> echoes,
      double belief,
      double plausibility,
      double share,
      boolean judgedBy,
      Comparison comparison) {
    return new PositionJudgment(
        accepts,
        sources,
        echoes,
        belief,
        plausibility,
        share,
        judgedBy,
        comparison,
        share > 0 && share < 1
            ? List.of(
                new PositionJudgment.SourcesNeeded(Grade.A, 1),
                new PositionJudgment.SourcesNeeded(Grade.C, 2))
            : List.of());
  }

  private Comparison compared(Verdict verdict, int credit, String why) {
    String words = text.apply(why);
    return new Comparison(verdict, BigFraction.of(credit), new Reason.Said(words));
  }

  private static AspectJudgment aspect(
      AspectRule rule,
      Verdict verdict,
      DisputeState state,
      List<PositionJudgment> positions,
      ScoreRange earned,
      ScoreRange strict,
      long rides) {
    double conflict = state == DisputeState.DISPUTED ? 0.45 : 0;
    return new AspectJudgment(
        rule,
        verdict,
        state,
        conflict,
        state == DisputeState.DISPUTED ? 0.091 : 0.1,
        positions,
        sources(positions),
        BigFraction.of(earned.low(), Math.max(1, rule.possible())),
        BigFraction.of(earned.likely(), Math.max(1, rule.possible())),
        BigFraction.of(earned.high(), Math.max(1, rule.possible())),
        earned.equals(strict) ? Optional.empty() : Optional.of(BigFraction.ONE),
        earned,
        strict,
        rides);
  }

  private static List<SourceJudgment> sources(List<PositionJudgment> positions) {
    List<SourceJudgment> sources = new ArrayList<>();
    for (int i = 0; i < positions.size(); i++) {
      List<String> witnesses = positions.get(i).sources();
      for (String source : witnesses) {
        sources.add(new SourceJudgment(source, 700, 1L << i, List.of(source)));
      }
      for (String echo : positions.get(i).repeatingSources()) {
        sources.add(new SourceJudgment(echo, 300, 1L << i, List.of(echo, witnesses.get(0))));
      }
    }
    return sources;
  }

  private void add(Item item, Ternary applies, Verdict verdict, List<AspectJudgment> aspects) {
    List<ItemInPeriod> stretches = new ArrayList<>();
    ScoreRange whole = ScoreRange.ZERO;
    for (int i = 0; i < days.size(); i++) {
      AspectJudgment aspect = aspects.get(Math.min(i, aspects.size() - 1));
      boolean out = applies == Ternary.NO;
      ScoreRange earned = out ? ScoreRange.ZERO : aspect.earned();
      stretches.add(
          new ItemInPeriod(
              applies,
              out ? Verdict.NOT_APPLICABLE : aspect.verdict(),
              out ? List.of() : List.of(aspect),
              earned,
              out ? ScoreRange.ZERO : aspect.withoutAllowances()));
      whole =
          i == 0
              ? earned
              : new ScoreRange(
                  Math.min(whole.low(), earned.low()),
                  Math.max(
                      Math.min(whole.low(), earned.low()),
                      Math.min(Math.max(whole.high(), earned.high()), whole.likely())),
                  Math.max(whole.high(), earned.high()));
    }
    judged.put(
        item.id(),
        new ItemJudgment(
            item,
            verdict,
            aspects.get(0).dispute(),
            whole,
            applies == Ternary.NO ? 0 : item.points(),
            stretches));
  }

  private void items() {
    Item button =
        item(
            "horn-button",
            "Horn button",
            Aspect.FINISH,
            20_000,
            claim("drawing-204", ClaimKind.SAYS, BEFORE_MARCH, word("nickel")),
            claim("guide", ClaimKind.SAYS, Scope.EVERY, word("chrome")));
    List<PositionJudgment> early =
        List.of(
            position(
                List.of(word("nickel")),
                List.of("drawing-204"),
                List.of(),
                0.818,
                0.909,
                0.9,
                true,
                compared(Verdict.INCORRECT, 0, "chromium plate was found, nickel plate is right")),
            position(
                List.of(word("chrome")),
                List.of("guide"),
                List.of("guide-2"),
                0.091,
                0.182,
                0.1,
                true,
                compared(Verdict.CORRECT, 1, "chromium plate was found")));
    List<PositionJudgment> late =
        List.of(
            position(
                List.of(word("chrome")),
                List.of("guide"),
                List.of("guide-2"),
                0.5,
                1,
                1,
                true,
                compared(Verdict.CORRECT, 1, "chromium plate was found")));
    AspectRule finish = button.aspects().get(0);
    AspectJudgment disputed =
        aspect(
            finish,
            Verdict.UNDECIDED,
            DisputeState.DISPUTED,
            early,
            new ScoreRange(0, 2_000, 20_000),
            new ScoreRange(0, 2_000, 20_000),
            20_000);
    ScoreRange all = new ScoreRange(20_000, 20_000, 20_000);
    add(
        button,
        Ternary.YES,
        Verdict.UNDECIDED,
        List.of(disputed, aspect(finish, Verdict.CORRECT, DisputeState.AGREED, late, all, all, 0)));

    Item color =
        item(
            "bed-color",
            "Color of the load bed",
            Aspect.COLOR,
            30_000,
            claim(
                "drawing-204",
                ClaimKind.SAYS,
                Scope.EVERY,
                new Colors.Chip("green", OptionalDouble.empty())),
            claim(
                "photo-11",
                ClaimKind.LEAVES_OPEN,
                Scope.EVERY,
                new Colors.Chip("green", OptionalDouble.empty()),
                new Colors.Chip("black", OptionalDouble.empty())));
    add(
        color,
        Ternary.YES,
        Verdict.CORRECT,
        List.of(
            aspect(
                color.aspects().get(0),
                Verdict.CORRECT,
                DisputeState.SETTLED,
                List.of(
                    position(
                        List.of(new Colors.Chip("green", OptionalDouble.empty())),
                        List.of("drawing-204", "trace 1"),
                        List.of(),
                        0.93,
                        0.98,
                        1,
                        true,
                        compared(Verdict.CORRECT, 1, "Works green by eye")),
                    position(
                        List.of(new Colors.Chip("black", OptionalDouble.empty())),
                        List.of(),
                        List.of(),
                        0.02,
                        0.07,
                        0,
                        false,
                        compared(Verdict.INCORRECT, 0, "Works green by eye, Black is right"))),
                new ScoreRange(30_000, 30_000, 30_000),
                new ScoreRange(30_000, 30_000, 30_000),
                0)));

    Item lamp =
        item(
            "cab-lamp",
            "Rear lamp",
            Aspect.PRESENT,
            10_500,
            claim("drawing-204", ClaimKind.SAYS, Scope.EVERY, new YesNo.Right(true)));
    add(
        lamp,
        Ternary.YES,
        Verdict.INCORRECT,
        List.of(
            one(
                lamp,
                Verdict.INCORRECT,
                new ScoreRange(10_500, 10_500, 10_500),
                ScoreRange.ZERO,
                compared(Verdict.INCORRECT, 0, "two lamps were found"))));
    Item mirror =
        item(
            "cab-mirror",
            "Mirror",
            Aspect.PRESENT,
            20_000,
            claim("drawing-204", ClaimKind.SAYS, Scope.EVERY, new YesNo.Right(true)));
    add(
        mirror,
        Ternary.YES,
        Verdict.NOT_ASSESSED,
        List.of(
            one(
                mirror,
                Verdict.NOT_ASSESSED,
                new ScoreRange(0, 0, 20_000),
                new ScoreRange(0, 0, 20_000),
                compared(Verdict.NOT_ASSESSED, 0, ""))));
    Item heater =
        item(
            "cab-heater",
            "Heater",
            Aspect.WORKS,
            9_500,
            claim("drawing-204", ClaimKind.SAYS, Scope.EVERY, new YesNo.Right(true)));
    add(
        heater,
        Ternary.UNKNOWN,
        Verdict.MAY_APPLY,
        List.of(
            one(
                heater,
                Verdict.INCORRECT,
                ScoreRange.ZERO,
                ScoreRange.ZERO,
                compared(Verdict.INCORRECT, 0, "it does not work"))));
    Item van =
        item(
            "bed-van",
            "Van doors",
            Aspect.PRESENT,
            10_000,
            claim("drawing-204", ClaimKind.SAYS, Scope.EVERY, new YesNo.Right(true)));
    add(
        van,
        Ternary.NO,
        Verdict.NOT_APPLICABLE,
        List.of(
            one(
                van,
                Verdict.NOT_APPLICABLE,
                ScoreRange.ZERO,
                ScoreRange.ZERO,
                compared(Verdict.NOT_ASSESSED, 0, ""))));
  }

  private AspectJudgment one(
      Item item, Verdict verdict, ScoreRange earned, ScoreRange strict, Comparison comparison) {
    return aspect(
        item.aspects().get(0),
        verdict,
        DisputeState.AGREED,
        List.of(
            position(
                List.of(new YesNo.Right(true)),
                List.of("drawing-204"),
                List.of(),
                0.9,
                1,
                1,
                true,
                comparison)),
        earned,
        strict,
        0);
  }

  private VehicleRecord vehicle() {
    Map<String, Observation> seen = new LinkedHashMap<>();
    seen.put(
        "horn-button",
        Observation.of("horn-button")
            .found(Aspect.FINISH, new Worded.Found("chrome"))
            .with(Observation.EVIDENCE, List.of("photo-1"))
            .with(Observation.NOTE, some("Plated again. <script>alert(1)</script>"))
            .with(Observation.BY, some("a club member"))
            .with(Observation.ON, Optional.of(date("2026-10-03"))));
    seen.put(
        "cab-lamp",
        Observation.of("cab-lamp")
            .found(Aspect.PRESENT, new YesNo.Found(false))
            .with(
                Observation.DEPARTURE,
                Optional.of(
                    Departure.TABLE
                        .blank()
                        .with(Departure.REASON, text.apply("safety"))
                        .with(Departure.EXPLANATION, some("To be seen on the road."))
                        .with(Departure.REVIEW_BY, Optional.of(date("2027-05-01"))))));
    seen.put(
        "bed-color",
        Observation.of("bed-color")
            .found(
                Aspect.COLOR,
                new Colors.Found(
                    Optional.of("green"),
                    Optional.empty(),
                    0,
                    some("north daylight"),
                    some("the owner")))
            .with(
                Observation.OWNER_VIEW,
                Optional.of(
                    Opinion.of(
                        Map.of(
                            Aspect.COLOR,
                            List.of(new Colors.Chip("green", OptionalDouble.empty()))),
                        some("The drawing *says* so.")))));
    return VehicleRecord.of("our-x1", "tarrowby-type-x", text.apply("The owner's dropside"))
        .with(VehicleRecord.EDITION, Optional.of("3"))
        .with(Named.MODEL, Optional.of("X1"))
        .with(Named.NOTES, some("Restored over *six* winters."))
        .with(VehicleRecord.NUMBERS, Map.of("chassis", text.apply("X-4388")))
        .with(VehicleRecord.MARKET, Optional.of("home"))
        .with(
            VehicleRecord.INSPECTED,
            Optional.of(Inspected.of(some("the owner"), Optional.of(date("2026-10-03")))))
        .with(VehicleRecord.OBSERVATIONS, seen)
        .with(
            VehicleRecord.EVIDENCE,
            Map.of(
                "photo-1",
                EvidenceItem.TABLE
                    .blank()
                    .with(EvidenceItem.ID, "photo-1")
                    .with(
                        EvidenceItem.SHOWN,
                        new EvidenceItem.Shown(
                            EvidenceItem.Kind.PHOTO, text.apply("photos/horn-button.png")))
                    .with(EvidenceItem.CAPTION, some("Horn button, before cleaning"))
                    .with(EvidenceItem.TAKEN, Optional.of(date("2025-11-02")))
                    .with(EvidenceItem.BY, some("the owner"))))
        .with(
            VehicleRecord.TRACES,
            List.of(
                PhysicalTrace.TABLE
                    .blank()
                    .with(PhysicalTrace.ITEM, "bed-color")
                    .with(PhysicalTrace.GRADE, Grade.B)
                    .with(
                        PhysicalTrace.SAID,
                        new PhysicalTrace.Said(
                            ClaimKind.SAYS,
                            Map.of(
                                Aspect.COLOR,
                                List.of(new Colors.Chip("green", OptionalDouble.empty())))))
                    .with(PhysicalTrace.WHERE, some("Under the left hinge strap"))
                    .with(PhysicalTrace.EVIDENCE, List.of("photo-1"))))
        .with(
            VehicleRecord.FILES,
            List.of(new FileChecksum(text.apply("record.yaml"), "a1".repeat(32), 1_024)));
  }

  private List<AreaJudgment> areas(RuleSet rules) {
    List<AreaJudgment> areas = new ArrayList<>();
    for (Area area : rules.areas()) {
      List<AreaJudgment.AreaInPeriod> stretches = new ArrayList<>();
      List<ItemJudgment> own =
          judged.values().stream().filter(it -> it.item().area().equals(area.id())).toList();
      for (int i = 0; i < days.size(); i++) {
        Tally low = Tally.EMPTY;
        Tally likely = Tally.EMPTY;
        Tally high = Tally.EMPTY;
        for (ItemJudgment one : own) {
          ItemInPeriod here = one.stretches().get(i);
          BigFraction share = here.applies() == Ternary.UNKNOWN ? HALF : BigFraction.ONE;
          low = low.plus(tally(here.earned().low(), one.possible(), BigFraction.ONE));
          likely = likely.plus(tally(here.earned().likely(), one.possible(), share));
          if (here.applies() == Ternary.YES) {
            high = high.plus(tally(here.earned().high(), one.possible(), BigFraction.ONE));
          }
        }
        stretches.add(
            new AreaJudgment.AreaInPeriod(
                low, likely, high, Set.of(), Set.of("cab-heater"), List.of()));
      }
      ScoreRange earned =
          own.stream().map(ItemJudgment::earned).reduce(ScoreRange.ZERO, ScoreRange::plus);
      long possible = own.stream().mapToLong(ItemJudgment::possible).sum();
      areas.add(new AreaJudgment(area, earned, possible, stretches));
    }
    return areas;
  }

  private static Tally tally(long earned, long possible, BigFraction share) {
    return new Tally(
        BigFraction.of(earned).multiply(share), BigFraction.of(possible).multiply(share));
  }

  private Judgment judgment() {
    items();
    RuleSet bare = rules();
    List<Area> areas =
        List.of(
            Area.of("cab", text.apply("Cab"), 60_000, OptionalLong.of(50_000), of("cab")),
            Area.of("bed", text.apply("Load bed"), 40_000, OptionalLong.empty(), of("bed")));
    RuleSet rules = bare.with(RuleSet.AREAS, areas);
    List<BuildPeriod> stretches = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      ScoreRange score =
          i == 0
              ? new ScoreRange(45_000, 49_706, 89_444)
              : new ScoreRange(67_222 + i, 70_941 + i, 89_444 + i);
      stretches.add(
          new BuildPeriod(
              days.get(i),
              score,
              new ScoreRange(score.low() - 9_000, score.likely() - 9_000, 80_000)));
    }
    DateRange all = new DateRange(days.get(0).first(), days.get(days.size() - 1).last());
    BuildPeriod first = stretches.get(0);
    List<Award> awards = rules.awards();
    return new Judgment(
        rules,
        vehicle(),
        new BuildDate(
            all,
            BuildDate.Basis.NUMBER,
            Optional.of(LocalDate.parse("1935-02-14")),
            List.of(
                new BuildDate.DatingStatement(
                    BuildDate.Basis.NUMBER,
                    text.apply("chassis number X-4388 lies between two"),
                    all),
                new BuildDate.DatingStatement(
                    BuildDate.Basis.MODEL,
                    text.apply("the model's production"),
                    days("1932-03-01", "1934-08-31")))),
        stretches,
        areas(rules),
        List.copyOf(judged.values()),
        new ScoreRange(
            first.score().low(),
            first.score().likely(),
            stretches.get(days.size() - 1).score().high()),
        first.withoutAllowances(),
        new AwardResult(Optional.empty(), Optional.of(awards.get(2)), Optional.of(awards.get(1))),
        List.of(
            new Notice(
                Notice.Kind.BUILD_DAYS, text.apply("The number and the model do not agree."))));
  }

  private List<Item> of(String area) {
    return judged.values().stream()
        .map(ItemJudgment::item)
        .filter(item -> item.area().equals(area))
        .toList();
  }
}
