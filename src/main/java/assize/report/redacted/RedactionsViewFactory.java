package assize.report.redacted;

import assize.record.EvidenceItem;
import assize.redaction.Hidden;
import assize.redaction.MaskCounts;
import assize.redaction.Omission;
import assize.redaction.RedactedJudgment;
import assize.redaction.TextMasker;
import assize.report.dossier.DossierView;
import assize.report.dossier.DossierViewFactory;
import assize.report.results.ResultsEntry;
import assize.report.vehicle.RedactionsView;
import assize.report.vehicle.ReportView;
import assize.report.vehicle.ReportViewFactory;
import assize.report.view.EvidenceView;
import assize.report.view.LinkView;
import assize.report.view.NumberFormatter;
import assize.ruleset.Award;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Turns a judgment into the finished copy for others, and says what it leaves out. */
public final class RedactionsViewFactory {
  private final RedactedJudgment copy;
  private final TextMasker mask;
  private final Map<String, String> hashes;

  private RedactionsViewFactory(
      RedactedJudgment copy, TextMasker mask, Map<String, String> hashes) {
    this.copy = copy;
    this.mask = mask;
    this.hashes = hashes;
  }

  /**
   * A finished copy.
   *
   * @param pictures what the copy calls a picture that the report knows by another key
   */
  public record Shared(ReportView view, UnaryOperator<String> pictures) {}

  /**
   * Masks a report and adds what is left out.
   *
   * @param mask of the record's private words
   * @param hashes of the numbers, by number table
   * @param unshown why a picture can't be shown, by its key
   */
  public static Shared of(
      RedactedJudgment copy,
      TextMasker mask,
      Map<String, String> hashes,
      Map<String, String> unshown) {
    ReportView report = ReportViewFactory.of(copy.judgment(), copy.facts(), unshown);
    MaskingTextMapper texts = new MaskingTextMapper(mask);
    ReportView masked = ViewTextMapper.of(report, texts);
    RedactionsViewFactory views = new RedactionsViewFactory(copy, mask, hashes);
    RedactionsView said =
        ViewTextMapper.of(views.view(report, texts.times()), new Again(texts, mask));
    return new Shared(masked.with(said), texts::key);
  }

  /**
   * A finished copy of the page on one dispute.
   *
   * @param pictures what the copy calls a picture that the report knows by another key
   */
  public record SharedDossier(DossierView view, UnaryOperator<String> pictures) {}

  /** Masks the page on one dispute; nothing where the sources do not differ on that item. */
  public static Optional<SharedDossier> dossier(
      RedactedJudgment copy, TextMasker mask, String item, Map<String, String> unshown) {
    MaskingTextMapper texts = new MaskingTextMapper(mask);
    return DossierViewFactory.of(copy.judgment(), copy.facts(), item, unshown)
        .map(view -> view.asCopy(MaskedWords.of(copy)))
        .map(view -> new SharedDossier(ViewTextMapper.of(view, texts), texts::key));
  }

  /** Masks what a results page says of a vehicle, and of the standard that it was judged by. */
  public static ResultsEntry entry(RedactedJudgment copy, TextMasker mask, String report) {
    ResultsEntry entry = ResultsEntry.of(copy.judgment(), copy.facts(), report);
    ResultsEntry.Standard standard = entry.standard();
    return new ResultsEntry(
        new ResultsEntry.Standard(
            mask.text(standard.id()),
            mask.text(standard.name()),
            mask.text(standard.edition()),
            standard.digest(),
            standard.outOf(),
            standard.awards().stream()
                .map(award -> award.with(Award.NAME, mask.text(award.name())))
                .toList()),
        entry.likely(),
        entry.awards(),
        copy.masking().numbers().stream().flatMapToInt(it -> it.count().stream()).min(),
        ViewTextMapper.of(entry.row(), new MaskingTextMapper(mask)));
  }

  /** Masks what is said of the masks, which does not count. */
  private record Again(MaskingTextMapper texts, TextMasker mask) implements ViewTextMapper.Changes {
    @Override
    public String text(String text) {
      return mask.text(text);
    }

    @Override
    public String name(String name) {
      return texts.name(name);
    }

    @Override
    public String key(String key) {
      return texts.key(key);
    }
  }

  private RedactionsView view(ReportView report, MaskCounts times) {
    List<RedactionsView.PhotoView> covered = new ArrayList<>();
    List<RedactionsView.PhotoView> bare = new ArrayList<>();
    for (EvidenceView one : report.evidence()) {
      if (one.photo() && one.reason().isEmpty()) {
        int boxes = boxes(one.id());
        (boxes > 0 ? covered : bare).add(photo(one, boxes));
      }
    }
    return new RedactionsView(numbers(), words(times), omissions(), covered, bare);
  }

  private int boxes(String evidence) {
    return Optional.ofNullable(copy.judgment().vehicle().evidence().get(evidence))
        .map(EvidenceItem::blackOut)
        .map(List::size)
        .orElse(0);
  }

  private static RedactionsView.PhotoView photo(EvidenceView one, int boxes) {
    return new RedactionsView.PhotoView(
        new LinkView(one.anchor(), one.alt()),
        one.what(),
        boxes == 0 ? "" : NumberFormatter.count(boxes, "part painted over", "parts painted over"));
  }

  private List<RedactionsView.NumberView> numbers() {
    List<RedactionsView.NumberView> numbers = new ArrayList<>();
    for (Hidden one : copy.masking().numbers()) {
      numbers.add(
          new RedactionsView.NumberView(
              MaskedWords.name(copy, one),
              one.masked(),
              NumberFormatter.count(copy.masking().times().of(numbers.size()), "time", "times"),
              MaskedWords.of(one)
                  + (TextMasker.isTooShort(one.showing().number())
                      ? " It is too short to be found among other words: look for it yourself."
                      : ""),
              Optional.ofNullable(hashes.get(one.table())).orElse("")));
    }
    return numbers;
  }

  private String words(MaskCounts times) {
    int words = mask.words().size();
    if (words == 0) {
      return "";
    }
    int count = 0;
    for (int i = 0; i < words; i++) {
      count += times.of(i);
    }
    return NumberFormatter.count(words, "private word is", "private words are")
        + " masked as xxx, "
        + NumberFormatter.count(count, "time", "times")
        + " in all.";
  }

  private List<String> omissions() {
    List<String> lines = new ArrayList<>();
    for (Omission one : copy.omissions()) {
      String what = String.join(", ", one.what());
      lines.add((one.item().isEmpty() ? "Of the record" : "At “" + one.item() + "”") + ": " + what);
    }
    Map<String, String> titles =
        copy.judgment().rules().items().collect(Collectors.toMap(Item::id, Item::title));
    for (String item : copy.masking().leftOut()) {
      lines.add(
          "At “"
              + titles.getOrDefault(item, item)
              + "”: the number stamped there, since its verdict would give a masked number away");
    }
    if (copy.evidence() > 0) {
      lines.add(
          "Of the evidence: "
              + NumberFormatter.count(copy.evidence(), "whole piece", "whole pieces"));
    }
    return lines;
  }
}
