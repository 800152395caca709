package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.image.Photo;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.record.EvidenceItem;
import assize.record.Observation;
import assize.record.PhysicalTrace;
import assize.record.VehicleRecord;
import assize.report.html.PageImage;
import assize.report.results.HtmlResults;
import assize.report.results.ResultsEntry;
import assize.report.text.JudgmentJson;
import assize.report.text.TerminalEscaper;
import assize.report.vehicle.HtmlReport;
import assize.report.vehicle.ReportView;
import assize.report.vehicle.ReportViewFactory;
import assize.ruleset.Award;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the reports of judged vehicles, all of them before the first is put into place. */
final class ReportWriter {
  /** How many items a message names. */
  private static final int CITING = 3;

  /** A page longer than this, in bytes, opens slowly on a phone and is too long for some mail. */
  private static final long LONG_PAGE = 5_000_000;

  private final Terminal terminal;

  ReportWriter(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * What is wanted of the reports.
   *
   * @param out the folder for them
   * @param json where the machine's form goes; with {@code -}, standard output and no report
   * @param skipBadPhotos whether a report is made all the same where a photo can't be shown
   * @param beside whether photos go into a folder beside the page
   * @param share whether they are copies for others
   */
  record ReportOptions(
      Path out, Optional<String> json, boolean skipBadPhotos, boolean beside, boolean share) {}

  /**
   * Writes a report for each judgment.
   *
   * @param judged by the record's file
   * @return whether nothing was wrong with the evidence
   */
  boolean write(Map<Path, InputLoader.Judged> judged, ReportOptions wanted) {
    List<Made> all = new ArrayList<>();
    judged.forEach((record, one) -> all.add(Bug.in(record, () -> made(record, one, wanted))));
    return write(all, wanted);
  }

  /** Begins to make what is wanted of one judgment. */
  static Made made(Path record, InputLoader.Judged judged, ReportOptions wanted) {
    return wanted.share()
        ? RedactedReportWriter.of(record, judged, wanted)
        : new Report(record, judged.judgment(), wanted);
  }

  /** What is made of one judgment. */
  interface Made {
    /** Returns what is told by it. */
    Judgment judgment();

    /** Returns the record's file. */
    Path record();

    /** Returns where its page goes. */
    Path place();

    /**
     * Stages the page and what goes beside it; what is wrong with its photos is added to what was
     * found, and if that is an error nothing is staged.
     *
     * @return the folder of its photos, empty where they are inside the page
     */
    PhotoFolder stage(OutputTransaction outputs, List<Diagnostic> found);

    /** Says that the page of another record has the same name. */
    String twin();

    /** Returns the machine's form, of several lines. */
    String machine();

    /** Returns what stands in the way of handing it out. */
    default List<String> problems() {
      return List.of();
    }

    /**
     * Returns what a results page says of it; {@code report} is the page's file, or empty for none.
     */
    ResultsEntry entry(String report);

    /** Prints its row of a results page. */
    default String row(ResultsEntry entry) {
      return HtmlResults.row(entry.row());
    }

    /** Returns what keeps what has to be kept before the page is put into place. */
    default Runnable keeping() {
      return () -> {};
    }

    /** Returns what its owner has to know. */
    default List<String> notes() {
      return List.of();
    }
  }

  /** The owner's own report. */
  private record Report(Path record, Judgment judgment, ReportOptions wanted) implements Made {
    @Override
    public Path place() {
      return ReportWriter.place(wanted.out(), judgment);
    }

    @Override
    public PhotoFolder stage(OutputTransaction outputs, List<Diagnostic> found) {
      ImageLoader.Read read = pictures(record, judgment);
      if (!note(read, wanted, found)) {
        return PhotoFolder.of(place(), List.of());
      }
      PhotoFolder folder =
          PhotoFolder.of(place(), wanted.beside() ? read.shown().values() : List.of());
      OutputTransaction.Writing page =
          ReportWriter.page(judgment, read, wanted.beside() ? folder::address : Photo::dataUri);
      folder.stage(outputs);
      outputs.stagePage(place(), page);
      return folder;
    }

    @Override
    public String twin() {
      return "another record is named \"" + judgment.vehicle().id() + "\" too";
    }

    @Override
    public String machine() {
      return JudgmentJson.of(judgment);
    }

    @Override
    public ResultsEntry entry(String report) {
      return ResultsEntry.of(judgment, report);
    }
  }

  /** Adds what is wrong with photos to what was found; says whether a page can be made. */
  static boolean note(ImageLoader.Read read, ReportOptions wanted, List<Diagnostic> found) {
    List<Diagnostic> here =
        read.found().stream().map(one -> forPage(one, wanted.skipBadPhotos())).toList();
    found.addAll(here);
    return here.stream().noneMatch(Diagnostic::isError);
  }

  private boolean write(List<Made> all, ReportOptions wanted) {
    Optional<String> json = wanted.json();
    List<PhotoFolder> folders = new ArrayList<>();
    List<Runnable> clearing = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    List<Diagnostic> found = new ArrayList<>();
    Set<Path> pages = pages(all, problems);
    json.filter(file -> pages.contains(Path.of(file)))
        .ifPresent(file -> problems.add(file + ": the report goes there; name another for --json"));
    boolean toOutput = json.equals(Optional.of("-"));
    String machine = json.isPresent() ? machine(all) : "";
    try (OutputTransaction outputs = new OutputTransaction()) {
      if (!toOutput && problems.isEmpty()) {
        json.ifPresent(file -> AtomicFileWriter.checkJson(Path.of(file)));
        AtomicFileWriter.checkPages(pages);
        all.forEach(one -> folders.add(Bug.in(one.record(), () -> one.stage(outputs, found))));
        json.ifPresent(file -> outputs.stage(Path.of(file), machine + "\n"));
      }
      boolean fine = new InputLoader(terminal).report(found, false);
      all.forEach(one -> problems.addAll(one.problems()));
      if (!fine || !problems.isEmpty()) {
        problems.forEach(problem -> ("error: " + problem).lines().forEach(terminal::error));
        return false;
      }
      if (!toOutput) {
        folders.forEach(folder -> clearing.add(folder.clearing()));
        all.forEach(one -> one.keeping().run());
      }
      outputs.commit();
    }
    if (toOutput) {
      terminal.result(machine);
    } else {
      clearing.forEach(Runnable::run);
      for (int i = 0; i < all.size(); i++) {
        written(all.get(i), folders.get(i));
      }
      all.forEach(one -> one.notes().forEach(terminal::error));
    }
    return true;
  }

  /** Returns where a vehicle's report goes. */
  static Path place(Path out, Judgment judgment) {
    return out.resolve(judgment.vehicle().id() + ".html");
  }

  private static Set<Path> pages(List<Made> all, List<String> problems) {
    Set<Path> pages = new LinkedHashSet<>();
    for (Made one : all) {
      if (!pages.add(Bug.in(one.record(), one::place))) {
        problems.add(one.judgment().vehicle().at().file() + ": " + one.twin());
      }
    }
    return pages;
  }

  /** Says what was written, and how long it is. */
  private void written(Made one, PhotoFolder folder) {
    long length = FileSize.of(one.place());
    terminal.result(summary(one.judgment(), one.place()) + " (" + FileSize.words(length) + ")");
    if (!folder.files().isEmpty()) {
      terminal.result("  " + folder.path() + " (" + FileSize.words(folder.bytes()) + ")");
    } else if (length > LONG_PAGE) {
      terminal.error(
          "note: "
              + one.place()
              + " is long for a phone or for mail; --photos folder puts the photos of a report into"
              + " a folder beside it");
    }
  }

  /** A photo that can't be shown is no error where reports are wanted without such. */
  private static Diagnostic forPage(Diagnostic one, boolean skipBadPhotos) {
    if (one.code() != DiagnosticCode.PHOTO_CANNOT_BE_SHOWN) {
      return one;
    }
    return skipBadPhotos
        ? Diagnostic.of(
            DiagnosticCode.PHOTO_LEFT_OUT,
            one.at(),
            one.message(),
            "the report says so in its place")
        : Diagnostic.of(
            one.code(), one.at(), one.message(), "or add --skip-bad-photos, and it is left out");
  }

  private static OutputTransaction.Writing page(
      Judgment judgment, ImageLoader.Read read, Function<Photo, String> address) {
    ReportView view = ReportViewFactory.of(judgment, read.loadErrors());
    return HtmlReport.page(view, asPictures(read, address))::writeTo;
  }

  private static ImageLoader.Read pictures(Path record, Judgment judgment) {
    List<ImageLoader.ImageRequest> wanted = new ArrayList<>(photos(record, judgment.vehicle()));
    wanted.addAll(SourceImageLoader.wanted(judgment, item -> true));
    return ImageLoader.read(wanted);
  }

  /** Returns what a page shows, inside it, by key. */
  static Map<String, PageImage> asPictures(ImageLoader.Read read) {
    return asPictures(read, Photo::dataUri);
  }

  private static Map<String, PageImage> asPictures(
      ImageLoader.Read read, Function<Photo, String> address) {
    Map<Photo, PageImage> made = new IdentityHashMap<>();
    Map<String, PageImage> pictures = new LinkedHashMap<>();
    read.shown()
        .forEach(
            (key, photo) ->
                pictures.put(
                    key,
                    made.computeIfAbsent(
                        photo, it -> new PageImage(address.apply(it), it.width(), it.height()))));
    return pictures;
  }

  /** Returns one judgment as an object of several lines, several as one object a line. */
  private static String machine(List<Made> all) {
    return all.size() == 1
        ? all.get(0).machine().stripTrailing()
        : all.stream().map(one -> line(one.machine())).collect(Collectors.joining("\n"));
  }

  /** Returns the machine's form on one line. */
  static String line(String machine) {
    return machine.replaceAll("\n *", " ").strip();
  }

  /** Returns the photos that a record shows as its evidence. */
  static List<ImageLoader.ImageRequest> photos(Path record, VehicleRecord vehicle) {
    Path folder = AtomicFileWriter.folderOf(record);
    return vehicle.evidence().values().stream()
        .filter(one -> one.kind() == EvidenceItem.Kind.PHOTO)
        .map(
            one ->
                new ImageLoader.ImageRequest(
                    one.id(),
                    folder.resolve(one.what()),
                    one.at(),
                    "evidence \"" + one.id() + "\"" + citing(vehicle, one.id()),
                    List.of()))
        .toList();
  }

  private static String citing(VehicleRecord vehicle, String evidence) {
    List<String> items =
        Stream.concat(
                vehicle.observations().values().stream()
                    .filter(one -> one.evidence().contains(evidence))
                    .map(Observation::item),
                vehicle.traces().stream()
                    .filter(one -> one.evidence().contains(evidence))
                    .map(PhysicalTrace::item))
            .distinct()
            .map(item -> "\"" + item + "\"")
            .toList();
    return items.isEmpty()
        ? " (no item cites it)"
        : " (cited by "
            + String.join(", ", items.subList(0, Math.min(CITING, items.size())))
            + (items.size() > CITING ? " and " + (items.size() - CITING) + " more" : "")
            + ")";
  }

  private static String summary(Judgment judgment, Path page) {
    ScoreRange score = judgment.score();
    String range =
        score.isPoint()
            ? points(score.likely())
            : points(score.likely())
                + " ("
                + points(score.low())
                + " to "
                + points(score.high())
                + ")";
    return TerminalEscaper.of(judgment.vehicle().name())
        + ": "
        + range
        + " of "
        + points(judgment.rules().scale().outOf())
        + judgment.award().reached().map(Award::name).map(name -> ", " + name).orElse("")
        + "\n  "
        + page;
  }

  /** Words thousandths of a point. */
  static String points(long thousandths) {
    BigDecimal exact = BigDecimal.valueOf(thousandths, 3);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }
}
