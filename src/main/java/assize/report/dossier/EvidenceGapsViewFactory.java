package assize.report.dossier;

import assize.evidence.Claim;
import assize.evidence.Source;
import assize.evidence.SourceKind;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemJudgment;
import assize.judgment.SourceJudgment;
import assize.report.view.ReportContext;
import assize.ruleset.AspectRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What no source speaks of, so that nobody takes silence for assent. */
final class EvidenceGapsViewFactory {
  private final ReportContext reading;

  EvidenceGapsViewFactory(ReportContext reading) {
    this.reading = reading;
  }

  List<String> of(ItemJudgment one, AspectRule rule) {
    Set<String> heard =
        one.stretches().stream()
            .flatMap(stretch -> stretch.aspects().stream())
            .filter(it -> it.rule().aspect() == rule.aspect())
            .map(AspectJudgment::sources)
            .flatMap(List::stream)
            .map(SourceJudgment::source)
            .collect(Collectors.toSet());
    List<String> lines = new ArrayList<>();
    kinds(heard).ifPresent(lines::add);
    elsewhere(rule, heard).ifPresent(lines::add);
    silent(rule, heard).ifPresent(lines::add);
    days(one, rule).ifPresent(lines::add);
    return lines;
  }

  private Optional<String> kinds(Set<String> heard) {
    Set<SourceKind> silent = EnumSet.allOf(SourceKind.class);
    heard.forEach(
        name -> {
          Source listed = reading.judgment().rules().sources().get(name);
          silent.remove(listed == null ? SourceKind.TRACE : listed.kind());
        });
    String kinds =
        Arrays.stream(SourceKind.values())
            .filter(silent::contains)
            .map(SourceKind::word)
            .collect(Collectors.joining(", "));
    return kinds.isEmpty()
        ? Optional.empty()
        : Optional.of("Kinds of source that were not heard on it: " + kinds + ".");
  }

  /** Sources that speak of the item, but of other vehicles. */
  private Optional<String> elsewhere(AspectRule rule, Set<String> heard) {
    String titles =
        speaking(rule).stream()
            .filter(name -> !heard.contains(name))
            .map(this::title)
            .collect(Collectors.joining("; "));
    return titles.isEmpty()
        ? Optional.empty()
        : Optional.of("Speak of it, but not of a vehicle like this one: " + titles + ".");
  }

  private Optional<String> silent(AspectRule rule, Set<String> heard) {
    Set<String> speaking = speaking(rule);
    List<Source> silent =
        reading.judgment().rules().sources().values().stream()
            .filter(it -> !heard.contains(it.id()) && !speaking.contains(it.id()))
            .toList();
    return silent.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Say nothing of it, as far as the standard knows: "
                + silent.stream().map(Source::title).collect(Collectors.joining("; "))
                + ".");
  }

  private Optional<String> days(ItemJudgment one, AspectRule rule) {
    List<String> days = new ArrayList<>();
    for (int i = 0; i < reading.stretches(); i++) {
      boolean spoken =
          one.stretches().get(i).aspects().stream()
              .anyMatch(it -> it.rule().aspect() == rule.aspect() && !it.sources().isEmpty());
      if (!spoken) {
        days.add(reading.days(i, i));
      }
    }
    return days.isEmpty()
        ? Optional.empty()
        : Optional.of("No source speaks of a vehicle built " + String.join("; ", days) + ".");
  }

  private static Set<String> speaking(AspectRule rule) {
    return rule.claims().stream()
        .map(Claim::source)
        .flatMap(Optional::stream)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private String title(String source) {
    return reading.claims().cite(source, "", "").title();
  }
}
