package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.NearNames;
import assize.judgment.Judgment;
import assize.record.Observation;
import assize.record.Trace;
import assize.report.html.HtmlDossier;
import assize.report.html.Picture;
import assize.report.text.Visible;
import assize.report.view.DossierView;
import assize.report.view.DossierViews;
import assize.ruleset.Item;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the pages on what is disputed of one vehicle, all before the first is put into place. */
final class Dossiers {
  private final Terminal terminal;
  private final Path record;
  private final Judgment judgment;

  Dossiers(Terminal terminal, Path record, Judgment judgment) {
    this.terminal = terminal;
    this.record = record;
    this.judgment = judgment;
  }

  /**
   * Writes a page for each item.
   *
   * @param asked the items; none: every disputed one
   * @return whether nothing was wrong with what was asked for, nor with the pictures
   */
  boolean write(Set<String> asked, Path out) {
    List<String> disputed = DossierViews.disputed(judgment);
    List<String> problems = problems(asked, disputed);
    if (!problems.isEmpty()) {
      problems.forEach(problem -> terminal.error("error: " + problem));
      return false;
    }
    List<String> items = asked.isEmpty() ? disputed : List.copyOf(asked);
    if (items.isEmpty()) {
      terminal.result("No item is disputed; nothing was written.");
      return true;
    }
    Pictures.Read read = pictures(items);
    List<Diagnostic> found = read.found();
    try (Outputs outputs = new Outputs()) {
      if (!new Inputs(terminal).report(found, false)) {
        return false;
      }
      Map<String, DossierView> views = new LinkedHashMap<>();
      for (String item : items) {
        views.put(item, DossierViews.of(judgment, item, read.unshown()).orElseThrow());
      }
      OutputFile.check(items.stream().map(item -> place(out, item)).toList());
      Map<String, Picture> pictures = Reports.asPictures(read);
      views.forEach(
          (item, view) -> outputs.stage(place(out, item), HtmlDossier.render(view, pictures)));
      outputs.place();
      views.forEach(
          (item, view) -> terminal.result(Visible.of(view.item()) + "\n  " + place(out, item)));
    }
    return true;
  }

  private Path place(Path out, String item) {
    return out.resolve(judgment.vehicle().id() + "-" + item + ".html");
  }

  private List<String> problems(Set<String> asked, List<String> disputed) {
    List<String> names = judgment.rules().items().map(Item::id).toList();
    List<String> problems = new ArrayList<>();
    for (String item : asked) {
      if (!names.contains(item)) {
        String near =
            NearNames.nearest(item, names)
                .map(name -> "did you mean \"" + name + "\"?")
                .orElseGet(() -> among(disputed));
        problems.add("this rule set has no item \"" + item + "\"; " + near);
      } else if (DossierViews.of(judgment, item, Map.of()).isEmpty()) {
        problems.add(
            "sources do not differ on \"" + item + "\" for this vehicle; " + among(disputed));
      }
    }
    return problems;
  }

  private static String among(List<String> disputed) {
    return disputed.isEmpty() ? "no item is disputed" : "disputed: " + String.join(", ", disputed);
  }

  private Pictures.Read pictures(List<String> items) {
    Set<String> cited = items.stream().flatMap(this::cited).collect(Collectors.toUnmodifiableSet());
    return Pictures.read(
        Stream.concat(
                Reports.photos(record, judgment.vehicle()).stream()
                    .filter(photo -> cited.contains(photo.key())),
                ClaimPictures.wanted(judgment, item -> items.contains(item.id())).stream())
            .toList());
  }

  private Stream<String> cited(String item) {
    return Stream.concat(
        Optional.ofNullable(judgment.vehicle().observations().get(item))
            .map(Observation::evidence)
            .stream()
            .flatMap(List::stream),
        judgment.vehicle().traces().stream()
            .filter(trace -> trace.item().equals(item))
            .map(Trace::evidence)
            .flatMap(List::stream));
  }
}
