package assize.report.handbook;

import assize.evidence.Source;
import assize.report.chart.CopyGraph;
import assize.report.handbook.HandbookView.Copying;
import assize.report.handbook.HandbookView.Fact;
import assize.report.handbook.HandbookView.SourceEntry;
import assize.report.view.AnchorIds;
import assize.report.view.EdtfFormatter;
import assize.report.view.LinkView;
import assize.report.view.NumberFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The sources of the handbook, and who copies whom. */
final class HandbookSourceViewFactory {
  private static final int WIDE = 640;
  private static final int NARROW = 300;

  private final HandbookContext reading;
  private final Map<String, Source> sources;

  HandbookSourceViewFactory(HandbookContext reading) {
    this.reading = reading;
    this.sources = reading.rules().sources();
  }

  List<SourceEntry> entries() {
    return sources.values().stream().map(this::entry).toList();
  }

  private SourceEntry entry(Source source) {
    return new SourceEntry(
        AnchorIds.source(source.id()),
        source.id(),
        source.title(),
        source.kind().word(),
        source.grade().name(),
        NumberFormatter.points(
            (long) reading.rules().scale().grades().getOrDefault(source.grade(), 0)),
        source.date().map(EdtfFormatter::date).orElse(""),
        source.heldBy().orElse(""),
        sources.values().stream()
            .filter(other -> source.copies().contains(other.id()))
            .map(HandbookSourceViewFactory::link)
            .toList(),
        cited(source),
        source.notes().orElse(""));
  }

  private static LinkView link(Source source) {
    return new LinkView(AnchorIds.source(source.id()), source.title());
  }

  private List<LinkView> cited(Source source) {
    return reading.claimed(claim -> claim.source().equals(Optional.of(source.id())));
  }

  /** Returns the sources that no item cites. */
  List<LinkView> uncited() {
    return sources.values().stream()
        .filter(source -> cited(source).isEmpty())
        .map(HandbookSourceViewFactory::link)
        .toList();
  }

  /** Returns who copies whom; nothing where nobody does. */
  Optional<Copying> copying() {
    List<Source> rows = rows();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    List<String> order = rows.stream().map(Source::id).toList();
    CopyGraph graph =
        new CopyGraph(
            rows.stream()
                .map(
                    source ->
                        new CopyGraph.Node(
                            source.title() + " [" + source.grade() + "]",
                            source.copies().stream()
                                .filter(order::contains)
                                .map(order::indexOf)
                                .sorted()
                                .toList()))
                .toList());
    List<Fact> words =
        rows.stream()
            .filter(source -> !source.copies().isEmpty())
            .map(source -> new Fact(source.title(), titles(source)))
            .toList();
    String title = "Who copies whom";
    String description =
        words.stream()
            .map(one -> one.name() + " copies " + one.words())
            .collect(Collectors.joining("; "));
    return Optional.of(
        new Copying(
            graph.draw("copying", title, description, WIDE),
            graph.draw("copying-narrow", title, description, NARROW),
            words));
  }

  private String titles(Source source) {
    return sources.values().stream()
        .filter(other -> source.copies().contains(other.id()))
        .map(Source::title)
        .collect(Collectors.joining(" and "));
  }

  /** Returns all that copy or are copied, each after those that it copies and close to them. */
  private List<Source> rows() {
    Set<String> copied =
        sources.values().stream()
            .flatMap(source -> source.copies().stream())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    Map<String, Source> placed = new LinkedHashMap<>();
    for (Source source : sources.values()) {
      if (source.copies().isEmpty() && copied.contains(source.id())) {
        place(source, placed);
      }
    }
    // A circle is refused where rule sets are read; a source that copies an unknown one stands
    // last.
    List<Source> rows = new ArrayList<>(placed.values());
    sources.values().stream()
        .filter(source -> !source.copies().isEmpty() && !placed.containsKey(source.id()))
        .forEach(rows::add);
    return rows;
  }

  private void place(Source source, Map<String, Source> placed) {
    if (placed.containsKey(source.id())
        || !source.copies().stream().filter(sources::containsKey).allMatch(placed::containsKey)) {
      return;
    }
    placed.put(source.id(), source);
    for (Source other : sources.values()) {
      if (other.copies().contains(source.id())) {
        place(other, placed);
      }
    }
  }
}
