package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.NameSuggestions;
import assize.judgment.Judgment;
import assize.record.Observation;
import assize.record.PhysicalTrace;
import assize.report.dossier.DossierView;
import assize.report.dossier.DossierViewFactory;
import assize.report.dossier.HtmlDossier;
import assize.report.html.PageImage;
import assize.report.redacted.RedactionsViewFactory;
import assize.report.text.TerminalEscaper;
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
final class DossierWriter {
  private final Terminal terminal;
  private final Path record;
  private final Judgment judgment;
  private final Path out;
  private final Optional<RedactedReportWriter> copy;

  private DossierWriter(
      Terminal terminal,
      Path record,
      Judgment judgment,
      Path out,
      Optional<RedactedReportWriter> copy) {
    this.terminal = terminal;
    this.record = record;
    this.judgment = judgment;
    this.out = out;
    this.copy = copy;
  }

  /** Begins with the owner's own pages, for a folder. */
  static DossierWriter own(Terminal terminal, Path record, InputLoader.Judged judged, Path out) {
    return new DossierWriter(terminal, record, judged.judgment(), out, Optional.empty());
  }

  /** Begins with copies for others. */
  static DossierWriter shared(Terminal terminal, Path record, InputLoader.Judged judged, Path out) {
    RedactedReportWriter copy =
        RedactedReportWriter.unsealed(
            record,
            judged,
            new ReportWriter.ReportOptions(out, Optional.empty(), false, false, true));
    return new DossierWriter(terminal, record, copy.judgment(), out, Optional.of(copy));
  }

  /** One page, and what it shows, by its own keys. */
  private record Page(DossierView view, Map<String, PageImage> pictures) {}

  /**
   * Writes a page for each item.
   *
   * @param asked the items; none: every disputed one
   * @return whether nothing was wrong with what was asked for, nor with the pictures
   */
  boolean write(Set<String> asked) {
    List<String> disputed = DossierViewFactory.disputed(judgment);
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
    ImageLoader.Read read = pictures(items);
    List<Diagnostic> found = read.found();
    try (OutputTransaction outputs = new OutputTransaction()) {
      if (!new InputLoader(terminal).report(found, false)) {
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
      AtomicFileWriter.checkPages(pages.keySet());
      pages.forEach((place, page) -> outputs.stagePage(place, print(page)));
      List<String> refused = copy.map(RedactedReportWriter::problems).orElse(List.of());
      if (!refused.isEmpty()) {
        refused.forEach(problem -> ("error: " + problem).lines().forEach(terminal::error));
        return false;
      }
      outputs.commit();
      pages.forEach(
          (place, page) ->
              terminal.result(TerminalEscaper.of(page.view().item()) + "\n  " + place));
      copy.flatMap(it -> it.look(read.shown().keySet())).ifPresent(terminal::error);
    }
    return true;
  }

  private Page page(String item, ImageLoader.Read read) {
    Map<String, PageImage> pictures = ReportWriter.asPictures(read);
    if (copy.isEmpty()) {
      DossierView view = DossierViewFactory.of(judgment, item, read.loadErrors()).orElseThrow();
      return new Page(view, pictures);
    }
    RedactionsViewFactory.SharedDossier shared =
        copy.get().dossier(item, read.loadErrors()).orElseThrow();
    Map<String, PageImage> masked = new LinkedHashMap<>();
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
            NameSuggestions.nearest(item, names)
                .map(name -> NameSuggestions.question(item, name))
                .orElseGet(() -> among(disputed));
        problems.add("this rule set has no item \"" + item + "\"; " + near);
      } else if (DossierViewFactory.of(judgment, item, Map.of()).isEmpty()) {
        problems.add(
            "sources do not differ on \"" + item + "\" for this vehicle; " + among(disputed));
      }
    }
    return problems;
  }

  private static String among(List<String> disputed) {
    return disputed.isEmpty() ? "no item is disputed" : "disputed: " + String.join(", ", disputed);
  }

  private ImageLoader.Read pictures(List<String> items) {
    Set<String> cited = items.stream().flatMap(this::cited).collect(Collectors.toUnmodifiableSet());
    List<ImageLoader.ImageRequest> photos =
        copy.map(RedactedReportWriter::photos)
            .orElseGet(() -> ReportWriter.photos(record, judgment.vehicle()));
    return ImageLoader.read(
        Stream.concat(
                photos.stream().filter(photo -> cited.contains(photo.key())),
                SourceImageLoader.wanted(judgment, item -> items.contains(item.id())).stream())
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
            .map(PhysicalTrace::evidence)
            .flatMap(List::stream));
  }
}
