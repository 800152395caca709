package assize.report.view;

import assize.evidence.Claim;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** What sources show, each picture once in a page. */
public final class SourceImageViewFactory {
  private final ReportContext reading;
  private final Map<String, String> unshown;
  private final Map<String, LinkView> places = new HashMap<>();

  public SourceImageViewFactory(ReportContext reading, Map<String, String> unshown) {
    this.reading = reading;
    this.unshown = unshown;
  }

  /**
   * Returns the claims on some items that speak of this vehicle and show something, by the key
   * under which a page looks for the picture.
   */
  public static Map<String, Claim> of(Judgment judgment, Predicate<Item> items) {
    SourceImageViewFactory views =
        new SourceImageViewFactory(new ReportContext(judgment), Map.of());
    Map<String, Claim> all = new LinkedHashMap<>();
    for (ItemJudgment one : judgment.items()) {
      if (!items.test(one.item())) {
        continue;
      }
      for (AspectRule rule : one.item().aspects()) {
        for (Claim claim : views.showing(rule)) {
          claim.photo().ifPresent(photo -> all.putIfAbsent(key(photo), claim));
        }
      }
    }
    return all;
  }

  /** No evidence of a record is named like this, since a name has no stroke. */
  private static String key(Claim.Photo photo) {
    return "source/" + photo.file();
  }

  private List<Claim> showing(AspectRule rule) {
    return rule.claims().stream()
        .filter(claim -> claim.photo().isPresent())
        .filter(this::speaks)
        .toList();
  }

  private boolean speaks(Claim claim) {
    for (int i = 0; i < reading.stretches(); i++) {
      if (reading.claims().speaks(claim, reading.dayOf(i))) {
        return true;
      }
    }
    return false;
  }

  /**
   * Returns what the sources on one aspect show.
   *
   * @param place where they are shown, unless a place before it shows them
   */
  List<EvidenceView> of(AspectRule rule, LinkView place) {
    Map<String, EvidenceView> pictures = new LinkedHashMap<>();
    for (Claim claim : showing(rule)) {
      claim.photo().ifPresent(photo -> pictures.putIfAbsent(key(photo), view(claim, photo, place)));
    }
    return List.copyOf(pictures.values());
  }

  private EvidenceView view(Claim claim, Claim.Photo photo, LinkView place) {
    LinkView at = Optional.ofNullable(places.putIfAbsent(key(photo), place)).orElse(place);
    List<String> words = new ArrayList<>();
    claim.source().map(it -> reading.claims().cite(it, "", "").title()).ifPresent(words::add);
    photo.caption().ifPresent(words::add);
    return new EvidenceView(
        key(photo),
        AnchorIds.evidence(key(photo)),
        "source",
        photo.file(),
        String.join(": ", words),
        "",
        "",
        true,
        at.equals(place),
        at,
        List.of(),
        "",
        "",
        unshown.getOrDefault(key(photo), ""));
  }
}
