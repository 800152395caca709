package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.judgment.Judgment;
import assize.photo.Bare;
import assize.photo.Box;
import assize.record.Evidence;
import assize.record.VehicleRecord;
import assize.report.html.HtmlReport;
import assize.report.html.HtmlRoster;
import assize.report.html.Picture;
import assize.report.html.SharedPage;
import assize.report.text.JsonTexts;
import assize.report.text.JudgmentJson;
import assize.report.view.RosterEntry;
import assize.report.view.SharedViews;
import assize.share.Copy;
import assize.share.LeavingOut;
import assize.share.Mask;
import assize.share.Secret;
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
  private static final String SHARED = "-shared.html";
  private static final int SHOWN = 5;

  private final Path record;
  private final Judgment judgment;
  private final Reports.Wanted wanted;
  private final Copy copy;
  private final Mask mask;
  private final Path secretFile;
  private final Optional<Parsed<Secret>> kept;
  private final Secret secret;
  private final List<String> problems = new ArrayList<>();

  private Sharing(Path record, Judgment judgment, Reports.Wanted wanted) {
    VehicleRecord vehicle = judgment.vehicle();
    this.record = record;
    this.judgment = judgment;
    this.wanted = wanted;
    this.copy = LeavingOut.of(judgment);
    this.mask = Mask.of(vehicle.numbers().values(), vehicle.unsharedWords());
    this.secretFile = SecretFile.of(record);
    this.kept = SecretFile.read(secretFile);
    this.secret = kept.flatMap(Parsed::toOptional).orElseGet(Secret::random);
  }

  /** Reads the secret of a record, or thinks of a new one. */
  static Sharing of(Path record, Judgment judgment, Reports.Wanted wanted) {
    Sharing sharing = new Sharing(record, judgment, wanted);
    sharing.kept.ifPresent(
        read ->
            read.match(
                good -> true,
                bad -> sharing.problems.add(SecretFile.damaged(sharing.secretFile, bad.reason()))));
    return sharing;
  }

  @Override
  public Judgment judgment() {
    return judgment;
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
    return wanted.out().resolve(mask.text(judgment.vehicle().id()) + SHARED);
  }

  /** Begins with a record for a copy that bears no fingerprint, and so needs no secret. */
  static Sharing unsealed(Path record, Judgment judgment, Reports.Wanted wanted) {
    return new Sharing(record, judgment, wanted);
  }

  private List<Pictures.Wanted> pictures() {
    List<Pictures.Wanted> wanted = new ArrayList<>(photos());
    wanted.addAll(ClaimPictures.wanted(judgment, item -> true));
    return wanted;
  }

  /** Returns the photos of evidence that the copy shows, with what is to be painted over. */
  List<Pictures.Wanted> photos() {
    VehicleRecord vehicle = copy.judgment().vehicle();
    List<Pictures.Wanted> wanted = new ArrayList<>();
    for (Pictures.Wanted one : Reports.photos(record, vehicle)) {
      List<Box> boxes =
          Optional.ofNullable(vehicle.evidence().get(one.key()))
              .map(Sharing::boxes)
              .orElse(List.of());
      wanted.add(new Pictures.Wanted(one.key(), one.file(), one.at(), one.words(), boxes));
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
        outputs.stage(place(), page);
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
    List<String> faults =
        SharedPage.faults(page, mask::text, Bare::faults).stream()
            .map(fault -> "in " + fault.where() + ": " + fault.what())
            .toList();
    refuse("the copy for others", faults);
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
    VehicleRecord vehicle = judgment.vehicle();
    Map<String, String> fingerprints = new LinkedHashMap<>();
    vehicle
        .numbers()
        .forEach(
            (table, number) ->
                fingerprints.put(table, secret.key(vehicle.id(), table).fingerprint(number)));
    return fingerprints;
  }

  @Override
  public String machine() {
    String json = JudgmentJson.of(copy.judgment(), mask::text);
    refuse(
        "the JSON for others",
        JsonTexts.of(json).stream()
            .filter(text -> !mask.text(text).equals(text))
            .map(text -> "in “" + mask.text(text) + "”")
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

  /** Tells of a secret that is new, and of the photos to be looked at. */
  @Override
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (kept.isEmpty()) {
      notes.add(
          "note: "
              + secretFile
              + " is new: keep it, give it to nobody; by it a masked number can be vouched for");
    }
    look(copy.judgment().vehicle().evidence().keySet()).ifPresent(notes::add);
    return notes;
  }

  /** Tells of the photos among some evidence in which nothing is painted over. */
  Optional<String> look(Set<String> evidence) {
    List<String> bare =
        copy.judgment().vehicle().evidence().values().stream()
            .filter(one -> evidence.contains(one.id()))
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
