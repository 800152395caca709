package assize.report.view;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.date.DateRange;
import assize.evidence.Claim;
import assize.evidence.Source;
import assize.evidence.Ternary;
import assize.judge.VehicleFacts;
import assize.judgment.PositionJudgment;
import assize.record.PhysicalTrace;
import assize.record.VehicleRecord;
import assize.ruleset.AspectRule;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Who says what of this vehicle, and where it stands. */
public final class ClaimLookup {
  private static final Pattern TRACE = Pattern.compile("trace ([0-9]{1,4})");

  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final VehicleRecord facts;
  private final boolean listed;
  private final Map<LocalDate, VehicleFacts> known = new HashMap<>();

  /**
   * Begins with a rule set and a record.
   *
   * @param facts the record as it was judged, where {@code vehicle} leaves some of it out
   * @param listed whether the page has a list of sources to lead to
   */
  ClaimLookup(RuleSet rules, VehicleRecord vehicle, VehicleRecord facts, boolean listed) {
    this.rules = rules;
    this.vehicle = vehicle;
    this.facts = facts;
    this.listed = listed;
  }

  /** Says whether a claim speaks, or may speak, of this vehicle if it was built on that day. */
  public boolean speaks(Claim claim, LocalDate day) {
    VehicleFacts onDay =
        known.computeIfAbsent(day, it -> new VehicleFacts(rules, facts, DateRange.day(it)));
    return claim.scope().holds(onDay) != Ternary.NO;
  }

  /** Returns the sources of a position, those that add nothing last. */
  public List<CiteView> of(AspectRule rule, PositionJudgment position, LocalDate day) {
    List<CiteView> cites = new ArrayList<>();
    for (String source : position.sources()) {
      cites.add(cite(source, where(rule, source, position.accepts(), day), ""));
    }
    for (String source : position.repeatingSources()) {
      String repeats = repeats(source, position);
      cites.add(cite(source, where(rule, source, position.accepts(), day), repeats));
    }
    return cites;
  }

  /** Returns the titles of what a source copies, of the same position before all others. */
  private String repeats(String source, PositionJudgment position) {
    Set<String> copied =
        Optional.ofNullable(rules.sources().get(source)).map(Source::copies).orElse(Set.of());
    List<Source> all =
        rules.sources().values().stream().filter(it -> copied.contains(it.id())).toList();
    List<Source> here =
        all.stream()
            .filter(
                it ->
                    position.sources().contains(it.id())
                        || position.repeatingSources().contains(it.id()))
            .toList();
    return (here.isEmpty() ? all : here)
        .stream().map(Source::title).collect(Collectors.joining(" and "));
  }

  /** Returns who says so, of a source or of one of the record's traces. */
  public CiteView cite(String source, String where, String repeats) {
    Optional<PhysicalTrace> trace = trace(source);
    String title =
        trace
            .map(it -> "Trace on this vehicle" + it.where().map(at -> ": " + at).orElse(""))
            .or(() -> Optional.ofNullable(rules.sources().get(source)).map(Source::title))
            .orElse(source);
    String grade =
        trace
            .map(it -> it.grade().name())
            .or(() -> Optional.ofNullable(rules.sources().get(source)).map(it -> it.grade().name()))
            .orElse("");
    boolean known = trace.isPresent() || rules.sources().containsKey(source);
    return new CiteView(
        listed && known ? AnchorIds.source(source) : "", title, grade, where, repeats);
  }

  /** Returns the trace that judging gives such a name. */
  Optional<PhysicalTrace> trace(String source) {
    Matcher matcher = TRACE.matcher(source);
    if (rules.sources().containsKey(source) || !matcher.matches()) {
      return Optional.empty();
    }
    int index = Integer.parseInt(matcher.group(1)) - 1;
    return index >= 0 && index < vehicle.traces().size()
        ? Optional.of(vehicle.traces().get(index))
        : Optional.empty();
  }

  private String where(AspectRule rule, String source, List<Expectation> accepts, LocalDate day) {
    Set<String> keys = accepts.stream().map(Expectation::key).collect(Collectors.toSet());
    List<String> places =
        rule.claims().stream()
            .filter(claim -> claim.source().equals(Optional.of(source)))
            .filter(claim -> claim.values().stream().anyMatch(it -> keys.contains(it.key())))
            .filter(claim -> speaks(claim, day))
            .flatMap(claim -> claim.citation().stream())
            .distinct()
            .toList();
    return String.join("; ", places);
  }

  /** Returns the traces of one aspect of one item, by the names that judging gives them. */
  List<String> traces(String item, Aspect aspect) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < vehicle.traces().size(); i++) {
      PhysicalTrace trace = vehicle.traces().get(i);
      if (trace.item().equals(item) && trace.values().containsKey(aspect)) {
        names.add("trace " + (i + 1));
      }
    }
    return names;
  }
}
