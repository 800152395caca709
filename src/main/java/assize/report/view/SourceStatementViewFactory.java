package assize.report.view;

import assize.date.Edtf;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.Source;
import assize.evidence.SourceKind;
import assize.judgment.AspectJudgment;
import assize.judgment.SourceJudgment;
import assize.record.PhysicalTrace;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What each source says of one aspect, within one stretch, in words. */
public final class SourceStatementViewFactory {
  private final ReportContext reading;
  private final ClaimDatesViewFactory dates;

  public SourceStatementViewFactory(ReportContext reading, ClaimDatesViewFactory dates) {
    this.reading = reading;
    this.dates = dates;
  }

  /** Returns the sources that speak, in the rule set's order, the vehicle's traces last. */
  public List<SourceJudgment> inOrder(AspectJudgment aspect) {
    List<String> listed = List.copyOf(reading.judgment().rules().sources().keySet());
    return aspect.sources().stream()
        .sorted(
            Comparator.comparingInt(
                (SourceJudgment it) -> {
                  int at = listed.indexOf(it.source());
                  return at < 0 ? listed.size() : at;
                }))
        .toList();
  }

  SourceStatementView of(Item item, AspectJudgment aspect, SourceJudgment source, int stretch) {
    Optional<PhysicalTrace> trace = reading.claims().trace(source.source());
    Optional<Source> listed =
        Optional.ofNullable(reading.judgment().rules().sources().get(source.source()));
    return new SourceStatementView(
        cite(source.source()),
        trace.isPresent()
            ? SourceKind.TRACE.word()
            : listed.map(Source::kind).map(SourceKind::word).orElse(""),
        NumberFormatter.points((long) source.weightThousandths()),
        listed
            .flatMap(Source::date)
            .or(() -> trace.flatMap(this::taken))
            .map(EdtfFormatter::date)
            .orElse(""),
        listed.flatMap(Source::heldBy).orElse(""),
        source.isWitness(),
        counts(source),
        trace
            .map(it -> List.of(line(item, aspect, it)))
            .orElseGet(() -> lines(item, aspect, source.source(), stretch)));
  }

  /** Returns what a source says, all of its claims together. */
  String says(Item item, AspectJudgment aspect, SourceJudgment source, int stretch) {
    return of(item, aspect, source, stretch).lines().stream()
        .map(SourceStatementView.StatementLine::says)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private Optional<Edtf> taken(PhysicalTrace trace) {
    return trace.evidence().stream()
        .flatMap(
            id -> Optional.ofNullable(reading.judgment().vehicle().evidence().get(id)).stream())
        .flatMap(it -> it.taken().stream())
        .findFirst();
  }

  /** Says whether a source counts, and why not if it adds nothing. */
  String counts(SourceJudgment source) {
    return source.isWitness()
        ? "counts as a witness"
        : "adds nothing: it repeats " + title(source.copyPath().get(source.copyPath().size() - 1));
  }

  String title(String source) {
    return cite(source).title();
  }

  /** Returns a source; a trace by its number, since its place stands with what it says. */
  private CiteView cite(String source) {
    CiteView cite = reading.claims().cite(source, "", "");
    return reading.claims().trace(source).isEmpty()
        ? cite
        : new CiteView(
            cite.anchor(),
            "T" + source.substring(1) + " on this vehicle",
            cite.grade(),
            cite.where(),
            cite.repeats());
  }

  private SourceStatementView.StatementLine line(
      Item item, AspectJudgment aspect, PhysicalTrace trace) {
    String words =
        reading
            .words()
            .any(
                item,
                aspect.rule().aspect(),
                trace.values().getOrDefault(aspect.rule().aspect(), List.of()));
    return new SourceStatementView.StatementLine(
        manner(trace.manner()) + words,
        trace.where().map(it -> it.replaceFirst("[.\\s]+$", "")).orElse(""),
        "this vehicle alone");
  }

  private List<SourceStatementView.StatementLine> lines(
      Item item, AspectJudgment aspect, String source, int stretch) {
    List<SourceStatementView.StatementLine> lines = new ArrayList<>();
    for (Claim claim : aspect.rule().claims()) {
      if (claim.source().equals(Optional.of(source))
          && reading.claims().speaks(claim, reading.dayOf(stretch))) {
        lines.add(
            new SourceStatementView.StatementLine(
                manner(claim.manner())
                    + reading.words().any(item, aspect.rule().aspect(), claim.values()),
                claim.citation().orElse(""),
                dates.days(aspect.rule(), claim)));
      }
    }
    return lines;
  }

  public static String manner(ClaimKind manner) {
    return switch (manner) {
      case SAYS -> "says ";
      case LEAVES_OPEN -> "leaves open: ";
      case RULES_OUT -> "rules out: ";
    };
  }
}
