package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.image.BlackoutBox;
import assize.image.MetadataFreeCheck;
import assize.judgment.Judgment;
import assize.record.EvidenceItem;
import assize.record.VehicleRecord;
import assize.redaction.OwnerSecret;
import assize.redaction.RedactedJudgment;
import assize.redaction.TextMasker;
import assize.report.html.PageImage;
import assize.report.html.RedactedPageCheck;
import assize.report.redacted.RedactionsViewFactory;
import assize.report.results.HtmlResults;
import assize.report.results.ResultsEntry;
import assize.report.text.JsonStringFinder;
import assize.report.text.JudgmentJson;
import assize.report.vehicle.HtmlReport;
import assize.ruleset.Item;
import assize.text.Parsed;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The copy of one report for others, made and checked before anything of it is written. */
final class RedactedReportWriter implements ReportWriter.Made {
  private static final String SHARED = "-redacted.html";
  private static final int SHOWN = 5;

  private final Path record;
  private final VehicleRecord own;
  private final ReportWriter.ReportOptions wanted;
  private final RedactedJudgment copy;
  private final TextMasker mask;
  private final Path secretFile;
  private final Optional<Parsed<OwnerSecret>> kept;
  private final OwnerSecret secret;
  private final List<String> problems = new ArrayList<>();

  private RedactedReportWriter(
      Path record, InputLoader.Judged judged, ReportWriter.ReportOptions wanted) {
    this.record = record;
    this.own = judged.judgment().vehicle();
    this.wanted = wanted;
    this.copy = judged.copy();
    this.mask = copy.masking().ofWords();
    this.secretFile = SecretFile.of(record);
    this.kept = SecretFile.read(secretFile);
    this.secret = kept.flatMap(Parsed::toOptional).orElseGet(() -> SecretFile.begin(own.id()));
    searchTexts();
  }

  /** Reads the secret of a record, or thinks of a new one. */
  static RedactedReportWriter of(
      Path record, InputLoader.Judged judged, ReportWriter.ReportOptions wanted) {
    RedactedReportWriter sharing = new RedactedReportWriter(record, judged, wanted);
    sharing.kept.ifPresent(
        read ->
            read.match(
                good -> true,
                bad -> sharing.problems.add(sharing.secretFile + ": " + bad.reason())));
    return sharing;
  }

  @Override
  public Judgment judgment() {
    return copy.judgment();
  }

  @Override
  public Path record() {
    return record;
  }

  @Override
  public List<String> problems() {
    return problems;
  }

  @Override
  public Path place() {
    return wanted.out().resolve(mask.text(judgment().vehicle().id()) + SHARED);
  }

  /** Begins with a record for a copy that bears no hash, and so needs no secret. */
  static RedactedReportWriter unsealed(
      Path record, InputLoader.Judged judged, ReportWriter.ReportOptions wanted) {
    return new RedactedReportWriter(record, judged, wanted);
  }

  private List<ImageLoader.ImageRequest> pictures() {
    List<ImageLoader.ImageRequest> wanted = new ArrayList<>(photos());
    wanted.addAll(SourceImageLoader.wanted(judgment(), item -> true));
    return wanted;
  }

  /** Returns the photos of evidence that the copy shows, with what is to be painted over. */
  List<ImageLoader.ImageRequest> photos() {
    Map<String, EvidenceItem> shown = judgment().vehicle().evidence();
    List<ImageLoader.ImageRequest> wanted = new ArrayList<>();
    for (ImageLoader.ImageRequest one : ReportWriter.photos(record, own)) {
      String key = copy.masking().key(one.key());
      Optional.ofNullable(shown.get(key))
          .map(RedactedReportWriter::boxes)
          .ifPresent(
              boxes ->
                  wanted.add(
                      new ImageLoader.ImageRequest(key, one.file(), one.at(), one.words(), boxes)));
    }
    return wanted;
  }

  private static List<BlackoutBox> boxes(EvidenceItem evidence) {
    return evidence.blackOut().stream()
        .map(it -> new BlackoutBox(it.left(), it.top(), it.width(), it.height()))
        .toList();
  }

  @Override
  public String twin() {
    return "another record's copy is named "
        + place().getFileName()
        + " too; write it to a folder of its own by --out";
  }

  @Override
  public PhotoFolder stage(OutputTransaction outputs, List<Diagnostic> found) {
    ImageLoader.Read read = ImageLoader.read(pictures());
    if (ReportWriter.note(read, wanted, found)) {
      String page = page(read);
      if (problems.isEmpty()) {
        outputs.stagePage(place(), page);
      }
    }
    return PhotoFolder.of(place(), List.of());
  }

  private String page(ImageLoader.Read read) {
    RedactionsViewFactory.Shared shared =
        RedactionsViewFactory.of(copy, mask, hashes(), read.loadErrors());
    Map<String, PageImage> pictures = new LinkedHashMap<>();
    ReportWriter.asPictures(read)
        .forEach((key, picture) -> pictures.put(shared.pictures().apply(key), picture));
    String page = HtmlReport.render(shared.view(), pictures);
    search(page);
    return page;
  }

  /** Returns the copy of the page on one dispute, and what it calls pictures. */
  Optional<RedactionsViewFactory.SharedDossier> dossier(String item, Map<String, String> unshown) {
    return RedactionsViewFactory.dossier(copy, mask, item, unshown);
  }

  /** Returns a text as the copy has it. */
  String masked(String text) {
    return mask.text(text);
  }

  /** Searches a finished page; what should not be there is among the problems from then on. */
  void search(String page) {
    refuse(
        "the copy for others",
        words(RedactedPageCheck.faults(page, this::hidden, MetadataFreeCheck::faults)));
  }

  /** Searches what the record's owner wrote, as a page shows it, for the numbers. */
  private void searchTexts() {
    Map<String, String> titles =
        judgment().rules().items().collect(Collectors.toMap(Item::id, Item::title));
    List<String> faults = new ArrayList<>();
    for (RedactedJudgment.Written one : copy.texts()) {
      String where = Optional.ofNullable(titles.get(one.item())).orElse("the record");
      faults.addAll(
          words(RedactedPageCheck.faultsOfNote(where, one.text(), copy.masking().mask()::text)));
    }
    refuse("the copy for others", faults);
  }

  private static List<String> words(List<RedactedPageCheck.Fault> faults) {
    return faults.stream().map(fault -> "in " + fault.where() + ": " + fault.what()).toList();
  }

  /**
   * Masks private words, and whole numbers too: none is left by now, unless by a mistake of ours.
   */
  private String hidden(String text) {
    return copy.masking().whole(mask.text(text));
  }

  private void refuse(String what, List<String> faults) {
    if (faults.isEmpty()) {
      return;
    }
    int more = faults.size() - SHOWN;
    problems.add(
        record
            + ": "
            + what
            + " still shows what it should not:\n"
            + faults.stream().limit(SHOWN).map(it -> "  " + it + "\n").collect(Collectors.joining())
            + (more > 0 ? "  and " + more + " more\n" : "")
            + "  Nothing was written. Write such a number or word in one piece, or mark the text that"
            + " it stands in `private`; if it is a word of the page itself, name a longer one.");
  }

  private Map<String, String> hashes() {
    Map<String, String> hashes = new LinkedHashMap<>();
    own.numbers()
        .forEach((table, number) -> hashes.put(table, secret.key(own.id(), table).hash(number)));
    return hashes;
  }

  @Override
  public String machine() {
    String json = JudgmentJson.of(copy.judgment(), mask::text);
    refuse(
        "the JSON for others",
        JsonStringFinder.of(json).stream()
            .filter(text -> !hidden(text).equals(text))
            .map(text -> "in “" + hidden(text) + "”")
            .toList());
    return json;
  }

  @Override
  public ResultsEntry entry(String report) {
    return RedactionsViewFactory.entry(copy, mask, report);
  }

  /** Searches it too; what should not be there is among the problems from then on. */
  @Override
  public String row(ResultsEntry entry) {
    String row = HtmlResults.row(entry.row());
    search("<table><tbody>" + row + "</tbody></table>");
    return row;
  }

  @Override
  public Runnable keeping() {
    return kept.isPresent()
        ? () -> SecretFile.clear(secretFile)
        : new Keeping(secretFile, record, secret);
  }

  /** Little enough to be held for each of thousands. */
  private record Keeping(Path file, Path record, OwnerSecret secret) implements Runnable {
    @Override
    public void run() {
      SecretFile.keep(file, record, secret);
    }
  }

  /** Tells which secret is used, and of the photos to be looked at. */
  @Override
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (kept.isEmpty()) {
      notes.add(
          "note: "
              + secretFile
              + " is new: keep it, give it to nobody; by it a masked number can be proved");
    } else {
      notes.addAll(SecretFile.notes(record, own.id(), secret));
    }
    look(copy.judgment().vehicle().evidence().keySet()).ifPresent(notes::add);
    return notes;
  }

  /** Tells of the photos among some evidence in which nothing is painted over. */
  Optional<String> look(Set<String> evidence) {
    List<String> bare =
        own.evidence().values().stream()
            .filter(one -> evidence.contains(copy.masking().key(one.id())))
            .filter(one -> one.kind() == EvidenceItem.Kind.PHOTO && one.blackOut().isEmpty())
            .map(EvidenceItem::what)
            .toList();
    return bare.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "note: look at each of these photos for numbers, faces and places, nothing is painted"
                + " over in them: "
                + String.join(", ", bare));
  }
}
