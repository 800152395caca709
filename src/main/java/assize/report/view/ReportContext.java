package assize.report.view;

import assize.aspect.Aspect;
import assize.aspect.Place;
import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.judge.VehicleFacts;
import assize.judgment.BuildPeriod;
import assize.judgment.Judgment;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/** What every part of the report asks of one judgment. */
public final class ReportContext {
  private final Judgment judgment;
  private final ExpectationFormatter words;
  private final ClaimLookup claims;
  private final Map<String, Item> items = new HashMap<>();
  private final Map<Integer, VehicleFacts> facts = new HashMap<>();

  public ReportContext(Judgment judgment) {
    this(judgment, true);
  }

  /** Begins with a judgment; {@code listed} says whether the page has a list of sources. */
  ReportContext(Judgment judgment, boolean listed) {
    this(judgment, judgment.vehicle(), listed);
  }

  /** Begins with a judgment whose vehicle leaves out some of the facts that claims speak by. */
  public ReportContext(Judgment judgment, VehicleRecord facts) {
    this(judgment, facts, true);
  }

  /** Begins with both. */
  public ReportContext(Judgment judgment, VehicleRecord facts, boolean listed) {
    this.judgment = judgment;
    this.words = new ExpectationFormatter(judgment.rules());
    this.claims = new ClaimLookup(judgment.rules(), judgment.vehicle(), facts, listed);
    judgment.items().forEach(one -> items.put(one.item().id(), one.item()));
  }

  public Judgment judgment() {
    return judgment;
  }

  /** Returns what words for one aspect of an item need. */
  public Place at(Item item, Aspect aspect) {
    return new Place(judgment.rules(), item.id(), aspect);
  }

  public ExpectationFormatter words() {
    return words;
  }

  public ClaimLookup claims() {
    return claims;
  }

  /** Returns how many stretches there are. */
  public int stretches() {
    return judgment.stretches().size();
  }

  /** Returns the first day of a stretch, for which everything in it holds. */
  public LocalDate dayOf(int stretch) {
    return judgment.stretches().get(stretch).days().first();
  }

  /** Returns what is known of the vehicle on the first day of a stretch. */
  public VehicleFacts facts(int stretch) {
    return facts.computeIfAbsent(
        stretch,
        it ->
            new VehicleFacts(judgment.rules(), judgment.vehicle(), DateRange.day(dayOf(stretch))));
  }

  /** Returns the days from one stretch to another in words, or nothing where they are all. */
  public String days(int from, int to) {
    if (from == 0 && to == stretches() - 1) {
      return "";
    }
    BuildPeriod first = judgment.stretches().get(from);
    BuildPeriod last = judgment.stretches().get(to);
    return DateRangeFormatter.of(new DateRange(first.days().first(), last.days().last()));
  }

  /**
   * Returns the days from one stretch to another as they follow "built": "before 12 March 1935".
   */
  public String period(int from, int to) {
    if (from == 0) {
      return "before "
          + DateRangeFormatter.of(judgment.stretches().get(to).days().last().plusDays(1));
    }
    LocalDate first = judgment.stretches().get(from).days().first();
    return to == stretches() - 1
        ? "from " + DateRangeFormatter.of(first) + " on"
        : within(
            DateRangeFormatter.of(
                new DateRange(first, judgment.stretches().get(to).days().last())));
  }

  private static String within(String days) {
    if (!days.contains(" to ")) {
      return Character.isDigit(days.charAt(0)) && days.length() > 4 ? "on " + days : "in " + days;
    }
    return "from " + days;
  }

  /** Returns a stretch's part of all build days, in days. */
  long weight(int stretch) {
    return EdtfFormatter.count(judgment.stretches().get(stretch).days());
  }

  /** Returns all build days, in days. */
  public long allDays() {
    return judgment.stretches().stream().mapToLong(one -> EdtfFormatter.count(one.days())).sum();
  }
}
