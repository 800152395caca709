package assize.report.view;

import assize.evidence.Source;
import assize.evidence.SourceIndependence;
import assize.judgment.AspectJudgment;
import assize.judgment.SourceJudgment;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Who copies whom among the sources that speak of one aspect, as trees from their roots. */
final class CopyTreeViewFactory {
  private final ReportContext reading;
  private final SourceStatementViewFactory testimonies;
  private final SourceIndependence<String> copies;

  CopyTreeViewFactory(ReportContext reading, SourceStatementViewFactory testimonies) {
    this.reading = reading;
    this.testimonies = testimonies;
    this.copies =
        SourceIndependence.of(
            reading.judgment().rules().sources().values().stream()
                .collect(Collectors.toMap(Source::id, Source::copies)));
  }

  /** Returns a tree for each source that others copy; none where every source stands alone. */
  List<CopyTreeView> of(Item item, AspectJudgment aspect, int stretch) {
    Map<String, SourceJudgment> speaking =
        aspect.sources().stream()
            .collect(Collectors.toMap(SourceJudgment::source, Function.identity()));
    Map<String, String> originals = originals(speaking);
    List<String> order = new ArrayList<>(reading.judgment().rules().sources().keySet());
    List<CopyTreeView> trees = new ArrayList<>();
    for (String source : order) {
      if (originals.containsValue(source) && !originals.containsKey(source)) {
        trees.add(
            tree(
                source,
                it -> order.stream().filter(one -> it.equals(originals.get(one))).toList(),
                it -> Optional.ofNullable(speaking.get(it)),
                it -> testimonies.says(item, aspect, it, stretch)));
      }
    }
    return trees;
  }

  /** Returns for each source that copies one which matters here the nearest such. */
  private Map<String, String> originals(Map<String, SourceJudgment> speaking) {
    Map<String, String> originals = new LinkedHashMap<>();
    for (SourceJudgment one : speaking.values()) {
      for (int i = 0; i + 1 < one.copyPath().size(); i++) {
        String here = one.copyPath().get(i);
        String next = one.copyPath().get(i + 1);
        if (copies.copied(here).contains(next)) {
          originals.putIfAbsent(here, next);
        } else {
          originals.putIfAbsent(next, here);
        }
      }
    }
    for (String source : speaking.keySet()) {
      copies.copied(source).stream()
          .filter(speaking::containsKey)
          .findFirst()
          .ifPresent(original -> originals.putIfAbsent(source, original));
    }
    return originals;
  }

  private CopyTreeView tree(
      String source,
      Function<String, List<String>> copiers,
      Function<String, Optional<SourceJudgment>> speaker,
      Function<SourceJudgment, String> says) {
    Optional<SourceJudgment> speaks = speaker.apply(source);
    return new CopyTreeView(
        reading.claims().cite(source, "", ""),
        speaks.map(says).orElse("says nothing of this"),
        speaks.map(SourceJudgment::isWitness).orElse(false),
        speaks.map(it -> counts(it, speaker)).orElse(""),
        copiers.apply(source).stream().map(one -> tree(one, copiers, speaker, says)).toList());
  }

  private String counts(SourceJudgment source, Function<String, Optional<SourceJudgment>> speaker) {
    List<SourceJudgment> copied =
        source.isWitness()
            ? copies.copied(source.source()).stream()
                .flatMap(it -> speaker.apply(it).stream())
                .toList()
            : List.of();
    if (copied.isEmpty()) {
      return testimonies.counts(source);
    }
    return copied.stream().anyMatch(it -> it.compatiblePositions() == source.compatiblePositions())
        ? "counts as a witness, since it weighs more than what it copies"
        : "counts as a witness, since it differs from what it copies";
  }
}
