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
import assize.report.view.SharedViews;
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
  private final Path out;
  private final Optional<Sharing> copy;

  private Dossiers(
      Terminal terminal, Path record, Judgment judgment, Path out, Optional<Sharing> copy) {
    this.terminal = terminal;
    this.record = record;
    this.judgment = judgment;
    this.out = out;
    this.copy = copy;
  }

  /** Begins with the owner's own pages, for a folder. */
  static Dossiers own(Terminal terminal, Path record, Inputs.Judged judged, Path out) {
    return new Dossiers(terminal, record, judged.judgment(), out, Optional.empty());
  }

  /** Begins with copies for others. */
  static Dossiers shared(Terminal terminal, Path record, Inputs.Judged judged, Path out) {
    Sharing copy =
        Sharing.unsealed(
            record, judged, new Reports.Wanted(out, Optional.empty(), false, false, true));
    return new Dossiers(terminal, record, copy.judgment(), out, Optional.of(copy));
  }

  /** One page, and what it shows, by its own keys. */
  private record Page(DossierView view, Map<String, Picture> pictures) {}

  /**
   * Writes a page for each item.
   *
   * @param asked the items; none: every disputed one
   * @return whether nothing was wrong with what was asked for, nor with the pictures
   */
  boolean write(Set<String> asked) {
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
      Map<Path, Page> pages = new LinkedHashMap<>();
      for (String item : items) {
        if (pages.put(place(item), page(item, read)) != null) {
          terminal.error(
              "error: two copies are named " + place(item).getFileName() + "; write one at a time");
          return false;
        }
      }
      OutputFile.checkPages(pages.keySet());
      pages.forEach((place, page) -> outputs.stagePage(place, print(page)));
      List<String> refused = copy.map(Sharing::problems).orElse(List.of());
      if (!refused.isEmpty()) {
        refused.forEach(problem -> ("error: " + problem).lines().forEach(terminal::error));
        return false;
      }
      outputs.place();
      pages.forEach(
          (place, page) -> terminal.result(Visible.of(page.view().item()) + "\n  " + place));
      copy.flatMap(it -> it.look(read.shown().keySet())).ifPresent(terminal::error);
    }
    return true;
  }

  private Page page(String item, Pictures.Read read) {
    Map<String, Picture> pictures = Reports.asPictures(read);
    if (copy.isEmpty()) {
      DossierView view = DossierViews.of(judgment, item, read.unshown()).orElseThrow();
      return new Page(view, pictures);
    }
    SharedViews.SharedDossier shared = copy.get().dossier(item, read.unshown()).orElseThrow();
    Map<String, Picture> masked = new LinkedHashMap<>();
    pictures.forEach((key, picture) -> masked.put(shared.pictures().apply(key), picture));
    return new Page(shared.view(), masked);
  }

  private String print(Page page) {
    String html = HtmlDossier.render(page.view(), page.pictures());
    copy.ifPresent(it -> it.search(html));
    return html;
  }

  private Path place(String item) {
    String name = judgment.vehicle().id() + "-" + item;
    return out.resolve(copy.map(it -> it.masked(name) + "-redacted").orElse(name) + ".html");
  }

  private List<String> problems(Set<String> asked, List<String> disputed) {
    List<String> names = judgment.rules().items().map(Item::id).toList();
    List<String> problems = new ArrayList<>();
    for (String item : asked) {
      if (!names.contains(item)) {
        String near =
            NearNames.nearest(item, names)
                .map(name -> NearNames.question(item, name))
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
    List<Pictures.Wanted> photos =
        copy.map(Sharing::photos).orElseGet(() -> Reports.photos(record, judgment.vehicle()));
    return Pictures.read(
        Stream.concat(
                photos.stream().filter(photo -> cited.contains(photo.key())),
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
