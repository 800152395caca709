package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.image.Bare;
import assize.image.Box;
import assize.judgment.Judgment;
import assize.record.Evidence;
import assize.record.VehicleRecord;
import assize.redaction.Copy;
import assize.redaction.Mask;
import assize.redaction.Secret;
import assize.report.html.HtmlReport;
import assize.report.html.HtmlRoster;
import assize.report.html.Picture;
import assize.report.html.SharedPage;
import assize.report.text.JsonTexts;
import assize.report.text.JudgmentJson;
import assize.report.view.RosterEntry;
import assize.report.view.SharedViews;
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
final class Sharing implements Reports.Made {
  private static final String SHARED = "-redacted.html";
  private static final int SHOWN = 5;

  private final Path record;
  private final VehicleRecord own;
  private final Reports.Wanted wanted;
  private final Copy copy;
  private final Mask mask;
  private final Path secretFile;
  private final Optional<Parsed<Secret>> kept;
  private final Secret secret;
  private final List<String> problems = new ArrayList<>();

  private Sharing(Path record, Inputs.Judged judged, Reports.Wanted wanted) {
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
  static Sharing of(Path record, Inputs.Judged judged, Reports.Wanted wanted) {
    Sharing sharing = new Sharing(record, judged, wanted);
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

  /** Begins with a record for a copy that bears no fingerprint, and so needs no secret. */
  static Sharing unsealed(Path record, Inputs.Judged judged, Reports.Wanted wanted) {
    return new Sharing(record, judged, wanted);
  }

  private List<Pictures.Wanted> pictures() {
    List<Pictures.Wanted> wanted = new ArrayList<>(photos());
    wanted.addAll(ClaimPictures.wanted(judgment(), item -> true));
    return wanted;
  }

  /** Returns the photos of evidence that the copy shows, with what is to be painted over. */
  List<Pictures.Wanted> photos() {
    Map<String, Evidence> shown = judgment().vehicle().evidence();
    List<Pictures.Wanted> wanted = new ArrayList<>();
    for (Pictures.Wanted one : Reports.photos(record, own)) {
      String key = copy.masking().key(one.key());
      Optional.ofNullable(shown.get(key))
          .map(Sharing::boxes)
          .ifPresent(
              boxes ->
                  wanted.add(new Pictures.Wanted(key, one.file(), one.at(), one.words(), boxes)));
    }
    return wanted;
  }

  private static List<Box> boxes(Evidence evidence) {
    return evidence.covers().stream()
        .map(it -> new Box(it.left(), it.top(), it.width(), it.height()))
        .toList();
  }

  @Override
  public String twin() {
    return "another record's copy is named "
        + place().getFileName()
        + " too; write it to a folder of its own by --out";
  }

  @Override
  public PhotoFolder stage(Outputs outputs, List<Diagnostic> found) {
    Pictures.Read read = Pictures.read(pictures());
    if (Reports.note(read, wanted, found)) {
      String page = page(read);
      if (problems.isEmpty()) {
        outputs.stagePage(place(), page);
      }
    }
    return PhotoFolder.of(place(), List.of());
  }

  private String page(Pictures.Read read) {
    SharedViews.Shared shared = SharedViews.of(copy, mask, fingerprints(), read.unshown());
    Map<String, Picture> pictures = new LinkedHashMap<>();
    Reports.asPictures(read)
        .forEach((key, picture) -> pictures.put(shared.pictures().apply(key), picture));
    String page = HtmlReport.render(shared.view(), pictures);
    search(page);
    return page;
  }

  /** Returns the copy of the page on one dispute, and what it calls pictures. */
  Optional<SharedViews.SharedDossier> dossier(String item, Map<String, String> unshown) {
    return SharedViews.dossier(copy, mask, item, unshown);
  }

  /** Returns a text as the copy has it. */
  String masked(String text) {
    return mask.text(text);
  }

  /** Searches a finished page; what should not be there is among the problems from then on. */
  void search(String page) {
    refuse("the copy for others", words(SharedPage.faults(page, this::hidden, Bare::faults)));
  }

  /** Searches what the record's owner wrote, as a page shows it, for the numbers. */
  private void searchTexts() {
    Map<String, String> titles =
        judgment().rules().items().collect(Collectors.toMap(Item::id, Item::title));
    List<String> faults = new ArrayList<>();
    for (Copy.Written one : copy.texts()) {
      String where = Optional.ofNullable(titles.get(one.item())).orElse("the record");
      faults.addAll(words(SharedPage.faultsOfNote(where, one.text(), copy.masking().mask()::text)));
    }
    refuse("the copy for others", faults);
  }

  private static List<String> words(List<SharedPage.Fault> faults) {
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

  private Map<String, String> fingerprints() {
    Map<String, String> fingerprints = new LinkedHashMap<>();
    own.numbers()
        .forEach(
            (table, number) ->
                fingerprints.put(table, secret.key(own.id(), table).fingerprint(number)));
    return fingerprints;
  }

  @Override
  public String machine() {
    String json = JudgmentJson.of(copy.judgment(), mask::text);
    refuse(
        "the JSON for others",
        JsonTexts.of(json).stream()
            .filter(text -> !hidden(text).equals(text))
            .map(text -> "in “" + hidden(text) + "”")
            .toList());
    return json;
  }

  @Override
  public RosterEntry entry(String report) {
    return SharedViews.entry(copy, mask, report);
  }

  /** Searches it too; what should not be there is among the problems from then on. */
  @Override
  public String row(RosterEntry entry) {
    String row = HtmlRoster.row(entry.row());
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
  private record Keeping(Path file, Path record, Secret secret) implements Runnable {
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
            .filter(one -> one.kind() == Evidence.Kind.PHOTO && one.covers().isEmpty())
            .map(Evidence::what)
            .toList();
    return bare.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "note: look at each of these photos for numbers, faces and places, nothing is painted"
                + " over in them: "
                + String.join(", ", bare));
  }
}
