package assize.cli;

import assize.evidence.Claim;
import assize.judgment.Judgment;
import assize.report.view.SourceImageViewFactory;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.text.FileChecksum;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** The pictures that a rule set's sources show, as pages want them. */
final class SourceImageLoader {
  private SourceImageLoader() {}

  /** Returns what the sources on some items show, as far as they speak of the vehicle. */
  static List<ImageLoader.ImageRequest> wanted(Judgment judgment, Predicate<Item> items) {
    List<ImageLoader.ImageRequest> wanted = new ArrayList<>();
    SourceImageViewFactory.of(judgment, items)
        .forEach(
            (key, claim) ->
                claim
                    .photo()
                    .ifPresent(photo -> wanted.add(wanted(judgment.rules(), key, claim, photo))));
    return wanted;
  }

  /** Returns all that the sources of a rule set show. */
  static List<ImageLoader.ImageRequest> all(RuleSet rules) {
    List<ImageLoader.ImageRequest> wanted = new ArrayList<>();
    rules
        .items()
        .flatMap(item -> item.aspects().stream())
        .flatMap(rule -> rule.claims().stream())
        .forEach(
            claim ->
                claim
                    .photo()
                    .ifPresent(
                        photo -> wanted.add(wanted(rules, "" + wanted.size(), claim, photo))));
    return wanted;
  }

  private static ImageLoader.ImageRequest wanted(
      RuleSet rules, String key, Claim claim, Claim.Photo photo) {
    return new ImageLoader.ImageRequest(
        key,
        folder(rules, photo.at().file().path()).resolve(photo.file()),
        photo.at(),
        "photo of source \"" + claim.source().orElse("") + "\"",
        List.of());
  }

  /**
   * Returns the folder of a rule set: what is left of the place of one of its files without the
   * name that the rule set has for it.
   */
  static Path folder(RuleSet rules, String file) {
    return rules.files().stream()
        .map(FileChecksum::path)
        .filter(name -> file.equals(name) || file.endsWith("/" + name))
        .max(Comparator.comparingInt(String::length))
        .map(name -> Path.of(file.substring(0, file.length() - name.length())))
        .orElseGet(() -> AtomicFileWriter.folderOf(Path.of(file)));
  }
}
